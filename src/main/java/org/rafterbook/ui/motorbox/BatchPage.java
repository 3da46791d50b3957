package org.rafterbook.ui.motorbox;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import org.rafterbook.power.RubberBatch;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;

/** A batch of rubber: its name, width and own turns constant. */
final class BatchPage implements BoxPage {

    private final MotorBoxModel model;
    private final ChoiceField<RubberBatch> batches = new ChoiceField<>("Batch to put right", RubberBatch::name);
    private final Field<String> name = Field.words("Name").required();
    private final Entry width;
    private final Entry constant;
    private final Node node;

    /** @param chosen told that another batch is to be put right */
    BatchPage(MotorBoxModel model, DisplayUnits units, Runnable chosen) {
        this.model = model;
        width = new Entry("Width as bought", Quantity.STRIP_WIDTH, "widthM", units);
        constant = new Entry("Its own turns constant", Quantity.PLAIN, "turnsConstant", units);
        constant.field().quietly("in^-1.5 g^0.5; 44.5 ± 3 where you have none");
        batches.onChosen(batch -> {
            reset();
            chosen.run();
        });
        node = Lay.column(8, batches, name, width.field(), constant.field());
    }

    @Override
    public String name() {
        return "Batch";
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public void edit() {
        name.edit();
    }

    /** Offers these batches; the one chosen before stays so. */
    void offer(List<RubberBatch> all) {
        RubberBatch before = batches.chosen();
        RubberBatch now = all.stream()
                .filter(b -> before != null && b.id().equals(before.id()))
                .findFirst()
                .orElse(null);
        batches.offer(all, now);
        Lay.show(batches, !all.isEmpty());
    }

    @Override
    public String picked() {
        RubberBatch chosen = batches.chosen();
        return chosen == null ? "" : chosen.name();
    }

    @Override
    public void begin() {
        batches.offer(batches.box().getItems(), null);
        reset();
    }

    @Override
    public void reset() {
        RubberBatch chosen = batches.chosen();
        name.fill(chosen == null ? "" : chosen.name());
        width.fill(chosen == null ? null : chosen.widthM());
        constant.fill(chosen == null ? null : chosen.turnsConstant());
    }

    private boolean sound() {
        return name.check() & width.check() & constant.check();
    }

    private Map<String, String> typed(Map<String, String> before) {
        Map<String, String> typed = new HashMap<>(before);
        width.typed(typed);
        constant.typed(typed);
        return typed;
    }

    @Override
    public void add(Runnable then) {
        if (sound()) {
            String named = name.typed();
            Double widthM = width.si();
            Double own = constant.si();
            Map<String, String> typed = typed(Map.of());
            model.enter(desk -> desk.addBatch(named, widthM, own, typed), name, then);
        }
    }

    @Override
    public void correct(Runnable then) {
        RubberBatch was = batches.chosen();
        if (was != null && sound()) {
            RubberBatch right = new RubberBatch(
                    was.id(),
                    name.typed().strip(),
                    was.openedOn(),
                    width.si(),
                    constant.si(),
                    was.notes(),
                    typed(was.asTyped()));
            model.enter(desk -> desk.correct(right), name, then);
        }
    }
}
