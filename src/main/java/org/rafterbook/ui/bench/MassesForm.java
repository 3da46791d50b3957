package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.stability.Weights;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Airframes;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Job;
import org.rafterbook.work.Parts;
import org.rafterbook.work.Rigged;

/** The masses of the airframe, one of them in the fields below the table, and what they add up to. */
final class MassesForm extends EntryForm {

    private static final MassItem NEW = new MassItem("", 0, 0, 0);
    private static final String MOTOR = "motor";

    private final Table<MassItem> table = new Table<>("masses");
    private final Field<String> name = Field.words("Name").quietly("one that carries a surface's name moves with it");
    private final Amount mass;
    private final Amount aft;
    private final Amount rise;
    private final ChoiceField<String> shared = new ChoiceField<>("The very piece flies also in", s -> s);
    private final VBox sums = Lay.column(2);
    private final VBox since = Lay.column(0);
    private Map<String, List<String>> sharedNow = Map.of();
    private List<Parts.Elsewhere> elsewhere = List.of();
    private @Nullable SinceChoice asked;
    private MassItem edited = NEW;
    private boolean loading;

    MassesForm(BenchContext context) {
        super(context, "Parts and masses", "places aft of the bearing");
        DisplayUnits units = context.units();
        mass = new Amount("Mass", Quantity.MASS, units);
        aft = new Amount("Centre aft of the bearing", Quantity.LENGTH, units);
        rise = new Amount("Above the stick", Quantity.LENGTH, units);
        table.text("part", 7, m -> m.name().isEmpty() ? "add a mass" : m.name()).grow();
        table.number("mass", "g", 4, m -> m == NEW ? "" : BenchWords.number(isGiven(m) ? m.massKg() * 1000 : null, 2));
        QuantityFormat format = context.format();
        table.number(
                "at",
                format.unitOf(Quantity.LENGTH),
                4.5,
                m -> m == NEW ? "" : format.number(Quantity.LENGTH, isGiven(m) ? (Double) m.aftM() : null));
        table.text("also in", 5, m -> String.join(", ", sharedNow.getOrDefault(m.name(), List.of())));
        table.asHighAsItsRows();
        table.selectedProperty().subscribe(row -> {
            if (row != null && !loading) {
                edit(row);
            }
        });
        form.add(table, name).beside(mass.field(), aft.field()).add(rise.field(), shared, since, sums);
        form.keys().on("Del", "Take the mass away", this::remove);
        form.keys().hint("Del", "take it away");
        actions("Keep the mass", this::keep);
    }

    /** A motor of which nothing is known yet has neither mass nor place. */
    private static boolean isGiven(MassItem row) {
        return !row.name().equals(MOTOR) || row.massKg() > 0;
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        SinceChoice choice = new SinceChoice(bench);
        asked = choice;
        since.getChildren().setAll(choice.node());
        loaded(bench);
        Airframe geometry = BenchModel.shown(bench).geometry();
        if (geometry == null || geometry.masses().isEmpty()) {
            next();
        } else {
            pick(geometry.masses().get(0));
            form.focus(table.view());
        }
    }

    private void pick(MassItem row) {
        table.select(row);
        edit(row);
    }

    /** On to a mass that is not there yet. */
    private void next() {
        pick(NEW);
        form.focus(name.input());
    }

    @Override
    public void loaded(BenchDesk.Bench bench) {
        sharedNow = bench.facts().shared();
        Airframe geometry = BenchModel.shown(bench).geometry();
        List<MassItem> rows = new ArrayList<>();
        if (geometry != null) {
            rows.addAll(geometry.masses());
            MotorPlace motor = geometry.motor();
            rows.add(new MassItem(MOTOR, motor == null ? 0 : motor.massKg(), motor == null ? 0 : motor.aftM(), 0));
        }
        rows.add(NEW);
        show(rows);
        sums(bench.facts());
        String id = bench.now().model().id();
        model.background()
                .call(progress -> context.book().bench().parts().elsewhere(id))
                .then(found -> {
                    elsewhere = found;
                    share(edited);
                });
    }

    /** What is being typed stays, unless its mass has become another meanwhile. */
    private void show(List<MassItem> rows) {
        MassItem same = rows.stream()
                .filter(m -> m.name().equals(edited.name()))
                .findFirst()
                .orElse(NEW);
        loading = true;
        table.rows(rows);
        table.select(same);
        loading = false;
        if (!same.equals(edited)) {
            edit(same);
        }
    }

    private void sums(BenchDesk.Facts facts) {
        Weights weights = facts.weights();
        sums.getChildren().clear();
        say("Sum of the parts without the motor " + BenchWords.grams(weights.sumKg()));
        Double apart = weights.scaleLessSumKg();
        if (apart != null) {
            say("The scale shows " + BenchWords.grams(Math.abs(apart)) + (apart < 0 ? " less." : " more."));
        }
        Double over = weights.overMinimumKg();
        Double lost = weights.timeLost();
        if (over != null && facts.classSheet() != null) {
            say(BenchWords.grams(Math.abs(over)) + (over < 0 ? " below" : " above") + " the minimum of "
                    + facts.classSheet().name()
                    + (lost == null || lost <= 0
                            ? "."
                            : ": about " + QuantityFormat.rounded(lost * 100, 0)
                                    + " % of the time (time goes with mass to the power −1.5)."));
        }
    }

    private void say(String sentence) {
        var line = Words.small(sentence);
        line.setWrapText(true);
        sums.getChildren().add(line);
    }

    private void edit(MassItem row) {
        edited = row;
        boolean motor = row.name().equals(MOTOR);
        name.fill(row.name());
        name.input().setEditable(row == NEW);
        mass.fill(row == NEW || motor && row.massKg() == 0 ? null : row.massKg());
        aft.fill(row == NEW || motor && row.massKg() == 0 ? null : row.aftM());
        rise.fill(row == NEW ? null : row.riseM());
        Lay.show(rise.field(), !motor);
        Lay.show(since, !motor);
        name.quietly(
                motor
                        ? "a usual motor and the middle between its hooks"
                        : "one that carries a surface's name moves with it");
        share(row);
    }

    private void share(MassItem row) {
        List<String> others = elsewhere.stream()
                .filter(e -> e.mass().name().equals(row.name()))
                .map(e -> e.model().name())
                .toList();
        Lay.show(shared, row != NEW && !row.name().equals(MOTOR) && !others.isEmpty());
        List<String> choices = new ArrayList<>(List.of("this model alone"));
        choices.addAll(others);
        List<String> now = sharedNow.getOrDefault(row.name(), List.of());
        shared.offer(choices, now.isEmpty() ? choices.get(0) : now.get(0));
    }

    private void remove() {
        if (edited != NEW && !edited.name().equals(MOTOR)) {
            MassItem gone = edited;
            String version = versionId();
            Airframes.Since when = asked == null ? Airframes.Since.ALWAYS : asked.chosen();
            model.<Rigged>enter(
                    progress -> context.book().bench().airframes().mass(version, gone, null, when),
                    done -> {},
                    form::refuse);
        }
    }

    private void keep() {
        if (table.view().isFocused()) {
            (edited == NEW ? name : mass.field()).edit();
            return;
        }
        name.required();
        mass.field().required();
        aft.field().required();
        boolean sound = name.check()
                & mass.field().check()
                & aft.field().check()
                & rise.field().check();
        Rigged shown = shown();
        Double grams = mass.si();
        if (!sound || shown == null || grams == null) {
            return;
        }
        String id = shown.model().id();
        if (edited.name().equals(MOTOR)) {
            MotorPlace motor = new MotorPlace(grams, aft.si(0));
            stay(progress -> {
                context.book().bench().airframes().motor(id, motor);
                return shown;
            });
            return;
        }
        MassItem before = edited == NEW ? null : edited;
        MassItem after = new MassItem(name.typed().strip(), grams, aft.si(0), rise.si(0));
        if (before == null && table.rows().stream().anyMatch(m -> m.name().equals(after.name()))) {
            name.refuse("There is a mass of that name already.");
            return;
        }
        String version = shown.version().id();
        Airframes.Since when = asked == null ? Airframes.Since.ALWAYS : asked.chosen();
        String with = shared.isVisible() ? shared.chosen() : null;
        String other = elsewhere.stream()
                .filter(e -> e.model().name().equals(with) && e.mass().name().equals(after.name()))
                .map(e -> e.model().id())
                .findFirst()
                .orElse(null);
        Parts.Sharing sharing = with == null ? Parts.Sharing.AS_IT_IS : new Parts.Sharing(true, other);
        stay(progress -> context.book().bench().parts().mass(version, before, after, when, sharing));
    }

    /** Enters it and goes on to the next mass. */
    private void stay(Job<Rigged> entry) {
        model.<Rigged>enter(entry, done -> next(), form::refuse);
    }
}
