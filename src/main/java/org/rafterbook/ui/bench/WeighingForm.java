package org.rafterbook.ui.bench;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Rigged;
import org.rafterbook.work.Weighings;

/** What the scale and the balance edge say, in the order of measuring, above what they said before. */
final class WeighingForm extends EntryForm {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    private final Field<TypedValue> mass;
    private final Field<TypedValue> motor;
    private final Field<TypedValue> balance;
    private final Field<TypedValue> motorAft;
    private final Field<TypedValue> accuracy;
    private final Field<String> notes = Field.words("Notes");
    private final Table<Weighing> before = new Table<>("weighings");

    WeighingForm(BenchContext context) {
        super(context, "Scale and balance edge", "no trim change");
        DisplayUnits units = context.units();
        mass = Field.quantity("All on the scale", Quantity.MASS, units)
                .refuseIf(v -> v.si() <= 0, v -> "A mass on the scale is above zero.");
        motor = Field.quantity("Motor on board", Quantity.MASS, units)
                .quietly("empty: none, the bare airframe")
                .refuseIf(
                        v -> mass.value() != null && v.si() >= mass.value().si(),
                        v -> "More than all that was on the scale.");
        balance = Field.quantity("Balanced, aft of the bearing", Quantity.LENGTH, units);
        motorAft = Field.quantity("Middle of the motor", Quantity.LENGTH, units);
        accuracy = Field.quantity("Good to ±", Quantity.LENGTH, units)
                .refuseIf(v -> v.si() < 0, v -> "An accuracy is not below zero.");
        before.text("day", 4, w -> DAY.format(w.at().atZone(ZoneId.systemDefault())));
        before.number("scale", "g", 4, w -> grams(w.massKg()));
        before.number("motor", "g", 4, w -> grams(w.motorKg()));
        QuantityFormat format = context.format();
        String unit = format.unitOf(Quantity.LENGTH);
        before.number("balance", unit, 5, w -> format.number(Quantity.LENGTH, w.balanceM()));
        before.number("±", unit, 3, w -> format.number(Quantity.LENGTH, w.accuracyM()));
        before.text("notes", 6, w -> w.notes() == null ? "" : w.notes()).grow();
        before.asHighAsItsRows();
        form.beside(mass, motor).beside(balance, accuracy).add(motorAft, notes);
        form.caption("Before").add(before);
        form.add(Words.hint("Pick a line and press Del to take it away."));
        form.keys().on("Del", "Take the weighing away", this::remove);
        actions("Keep the weighing", this::keep);
    }

    private static String grams(@Nullable Double kg) {
        return BenchWords.number(kg == null ? null : (Double) (kg * 1000), 2);
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        loaded(bench);
        super.opened(bench);
    }

    @Override
    public void loaded(BenchDesk.Bench bench) {
        before.rows(bench.facts().weighings());
        Rigged shown = BenchModel.shown(bench);
        Airframe geometry = shown.geometry();
        MotorPlace place = geometry == null ? null : geometry.motor();
        motorAft.quietly(
                place == null
                        ? "needed with a motor on board"
                        : "empty: " + context.format().text(Quantity.LENGTH, place.aftM()));
    }

    private void remove() {
        Weighing picked = before.selected();
        if (picked != null) {
            String id = picked.id();
            model.enter(
                    progress -> {
                        context.book().bench().weighings().remove(id);
                        return true;
                    },
                    done -> {},
                    form::refuse);
        }
    }

    private void keep() {
        boolean sound = true;
        for (Field<TypedValue> field : List.of(mass, motor, balance, accuracy, motorAft)) {
            sound &= field.check();
        }
        if (sound && mass.value() == null && balance.value() == null) {
            mass.refuse("Type the mass, the balance point or both.");
            return;
        }
        if (sound) {
            String id = versionId();
            Weighings.Form typed = new Weighings.Form(
                    mass.value(), balance.value(), motor.value(), motorAft.value(), accuracy.value(), notes.typed());
            enter(progress -> context.book().bench().weighings().add(id, typed));
        }
    }
}
