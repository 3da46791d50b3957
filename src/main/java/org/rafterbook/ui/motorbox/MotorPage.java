package org.rafterbook.ui.motorbox;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;
import org.rafterbook.power.Motor;
import org.rafterbook.power.RubberBatch;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.work.MotorDesk;

/** A motor: its name, batch, loop and mass, and what became of it. */
final class MotorPage extends PickedPage<Motor> {

    /** A batch by name, or none. */
    private record BatchChoice(@Nullable String id, String name) {}

    private static final BatchChoice NONE = new BatchChoice(null, "not known");

    private final MotorBoxModel model;
    private final Field<String> name = Field.words("Motor").required();
    private final ChoiceField<BatchChoice> batch = new ChoiceField<>("Batch", BatchChoice::name);
    private final Entry loop;
    private final Entry mass;
    private final Field<String> fate = Field.words("What became of it").prompt("empty while it is in use");
    private final Node node;

    MotorPage(MotorBoxModel model, DisplayUnits units) {
        this.model = model;
        loop = new Entry("Loop when tied", Quantity.LENGTH, "loopLengthM", units);
        mass = new Entry("Mass of the rubber", Quantity.MASS, "massKg", units);
        node = Lay.column(8, name, batch, loop.field(), mass.field(), fate);
        offer(List.of());
    }

    @Override
    public String name() {
        return "Motor";
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public void edit() {
        name.edit();
    }

    /** Offers these batches. */
    void offer(List<RubberBatch> batches) {
        List<BatchChoice> choices = new ArrayList<>(List.of(NONE));
        batches.forEach(b -> choices.add(new BatchChoice(b.id(), b.name())));
        BatchChoice before = batch.chosen();
        String wanted = before == null ? null : before.id();
        batch.offer(choices, find(choices, wanted));
    }

    private static BatchChoice find(List<BatchChoice> choices, @Nullable String id) {
        return choices.stream()
                .filter(c -> id != null && id.equals(c.id()))
                .findFirst()
                .orElse(NONE);
    }

    @Override
    public void reset() {
        Motor motor = shown();
        name.fill(motor == null ? "" : motor.name());
        if (motor != null) {
            // a new motor is most often of the batch of the one before
            batch.offer(batch.box().getItems(), find(batch.box().getItems(), motor.batchId()));
        }
        loop.fill(motor == null ? null : motor.loopLengthM());
        mass.fill(motor == null ? null : motor.massKg());
        fate.fill(motor == null || motor.fate() == null ? "" : motor.fate());
    }

    @Override
    public String picked() {
        Motor motor = shown();
        return motor == null ? "" : motor.name();
    }

    private boolean sound() {
        return name.check() & entriesAreSound();
    }

    @Override
    List<Entry> entries() {
        return List.of(loop, mass);
    }

    private @Nullable String batchId() {
        BatchChoice chosen = batch.chosen();
        return chosen == null ? null : chosen.id();
    }

    @Override
    public void add(Runnable then) {
        if (sound()) {
            String named = name.typed();
            String of = batchId();
            Double loopM = loop.si();
            Double massKg = mass.si();
            Map<String, String> typed = typed(Map.of());
            model.enter(desk -> desk.addMotor(named, of, loopM, massKg, typed), name, then);
        }
    }

    @Override
    public void correct(Runnable then) {
        Motor was = shown();
        if (was != null && sound()) {
            Motor right = new Motor(
                    was.id(),
                    name.typed().strip(),
                    batchId(),
                    loop.si(),
                    mass.si(),
                    was.cutFrom(),
                    was.fraction(),
                    was.madeOn(),
                    fate.typed().isBlank() ? null : fate.typed().strip(),
                    was.notes(),
                    typed(was.asTyped()));
            Function<MotorDesk, Motor> entry = desk -> desk.correct(right);
            model.enter(entry, name, then);
        }
    }
}
