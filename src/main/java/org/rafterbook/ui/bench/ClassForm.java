package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.rules.ClassFinding;
import org.rafterbook.rules.ClassSheet;
import org.rafterbook.stability.Weights;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Parsed;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.BenchDesk;

/** The class a model flies in: which sheet, its limits with rule book and year, and how the model stands to them. */
final class ClassForm extends EntryForm {

    private static final ClassSheet NONE = blank("", "no class");
    private static final ClassSheet NEW = blank("", "a new class sheet");

    private final ChoiceField<ClassSheet> sheets = new ChoiceField<>("Flies in", ClassForm::name);
    private final Field<String> name = Field.words("Class");
    private final Field<String> book = Field.words("Rule book");
    private final Field<Integer> year = Field.number("Year", ClassForm::year);
    private final Amount airframe;
    private final Amount motor;
    private final Amount span;
    private final Amount chord;
    private final Amount tail;
    private final Amount propeller;
    private final VBox limits = Lay.column(12);
    private final VBox checks = Lay.column(4);
    private ClassSheet edited = NONE;

    ClassForm(BenchContext context) {
        super(context, "Class", "the class's own rules come first");
        DisplayUnits units = context.units();
        airframe = new Amount("Airframe at least", Quantity.MASS, units);
        motor = new Amount("Motor at most", Quantity.MASS, units);
        span = new Amount("Span at most", Quantity.LENGTH, units);
        chord = new Amount("Wing chord at most", Quantity.LENGTH, units);
        tail = new Amount("Tail span at most", Quantity.LENGTH, units);
        propeller = new Amount("Propeller at most", Quantity.LENGTH, units);
        limits.getChildren()
                .addAll(
                        name,
                        Lay.even(12, book, year),
                        Lay.even(12, airframe.field(), motor.field()),
                        Lay.even(12, span.field(), chord.field()),
                        Lay.even(12, tail.field(), propeller.field()));
        sheets.onChosen(this::edit);
        edit(NONE);
        form.add(sheets, checks, limits);
        actions("Keep the class", this::keep);
    }

    private static ClassSheet blank(String id, String name) {
        return new ClassSheet(id, name, "", 0, null, null, null, null, null, null, null);
    }

    private static String name(ClassSheet sheet) {
        return sheet.year() == 0 ? sheet.name() : sheet.name() + ", " + sheet.year();
    }

    private static Parsed<Integer> year(String typed) {
        return typed.matches("(19|20|21)\\d\\d")
                ? Parsed.accepted(Integer.parseInt(typed))
                : Parsed.refused("A year is written with four figures, such as 2026.");
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        ClassSheet now = bench.facts().classSheet();
        model.background()
                .call(progress -> context.book().bench().classes().all())
                .then(all -> {
                    List<ClassSheet> choices = new ArrayList<>(all);
                    choices.add(0, NONE);
                    choices.add(NEW);
                    ClassSheet chosen = all.stream()
                            .filter(s -> now != null && s.id().equals(now.id()))
                            .findFirst()
                            .orElse(NONE);
                    sheets.offer(choices, chosen);
                    edit(chosen);
                });
        checks(bench);
        form.focus(sheets.box());
    }

    private void checks(BenchDesk.Bench bench) {
        checks.getChildren().clear();
        for (ClassFinding finding : bench.facts().findings()) {
            String sign = switch (finding.standing()) {
                case KEPT -> "✓ ";
                case BROKEN -> "× ";
                case UNKNOWN -> "? ";
            };
            var line = Words.small(sign + finding.sentence());
            line.setWrapText(true);
            if (finding.standing() == ClassFinding.Standing.BROKEN) {
                line.getStyleClass().add("form-refusal");
            }
            checks.getChildren().add(line);
        }
        Weights weights = bench.facts().weights();
        Double lost = weights.timeLost();
        if (lost != null && lost > 0) {
            checks.getChildren()
                    .add(Words.prose("The excess costs about " + QuantityFormat.rounded(lost * 100, 0)
                            + " % of the time: it goes with mass to the power −1.5."));
        }
    }

    private void edit(ClassSheet sheet) {
        edited = sheet;
        Lay.show(limits, sheet != NONE);
        name.fill(sheet == NEW || sheet == NONE ? "" : sheet.name());
        book.fill(sheet.ruleBook());
        year.fill(sheet.year() == 0 ? "" : String.valueOf(sheet.year()));
        airframe.fill(sheet.minAirframeKg());
        motor.fill(sheet.maxMotorKg());
        span.fill(sheet.maxSpanM());
        chord.fill(sheet.maxChordM());
        tail.fill(sheet.maxTailSpanM());
        propeller.fill(sheet.maxPropellerM());
    }

    private void keep() {
        if (edited == NEW && sheets.box().isFocused()) {
            name.edit(); // on to what the new sheet says
            return;
        }
        String id = modelId();
        if (edited == NONE) {
            enter(progress -> {
                context.book().bench().classes().choose(id, null);
                return true;
            });
            return;
        }
        name.required();
        year.required();
        boolean sound = name.check() & year.check();
        for (Amount limit : List.of(airframe, motor, span, chord, tail, propeller)) {
            sound &= limit.field().check() && above(limit);
        }
        Integer of = year.value();
        if (sound && of != null) {
            ClassSheet sheet = new ClassSheet(
                    edited.id(),
                    name.typed().strip(),
                    book.typed().strip(),
                    of,
                    airframe.si(),
                    motor.si(),
                    span.si(),
                    chord.si(),
                    tail.si(),
                    propeller.si(),
                    edited.notes());
            enter(progress -> context.book().bench().classes().keep(id, sheet));
        }
    }

    private static boolean above(Amount limit) {
        @Nullable Double typed = limit.si();
        if (typed != null && typed <= 0) {
            limit.field().refuse("A limit is above zero; empty stands for none.");
            return false;
        }
        return true;
    }
}
