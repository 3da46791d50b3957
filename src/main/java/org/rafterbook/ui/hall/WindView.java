package org.rafterbook.ui.hall;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindEnd;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.CautionBox;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.MotorLimit;
import org.rafterbook.work.WindForm;

/** The winding step: motor, turns, back-off and torque, under cautions that never go away. */
final class WindView implements HallSheet {

    private final HallModel model;
    private final QuantityFormat format;
    private final ChoiceField<Motor> motors = new ChoiceField<>("Motor", Motor::name);
    private final Field<String> newMotor = Field.words("A new motor's name");
    private final Field<TypedValue> loop;
    private final Field<TypedValue> mass;
    private final Field<TypedValue> ratio;
    private final Field<TypedValue> turns;
    private final Field<TypedValue> off;
    private final Field<TypedValue> maxTorque;
    private final Field<TypedValue> launchTorque;
    private final Label limits = Words.prose("");
    private final Label total = Words.prose("");
    private final Label hint = Words.prose("");
    private final Sheet sheet = new Sheet();
    private final Action done;
    private @Nullable String motorId;
    private @Nullable String filled;
    private boolean filledOnce;
    private boolean begunHere;

    WindView(HallModel model, Keys keys, DisplayUnits units) {
        this.model = model;
        this.format = new QuantityFormat(units);
        loop = Field.quantity("Loop, as tied", Quantity.LENGTH, units);
        mass = Field.quantity("Mass", Quantity.MASS, units);
        ratio = Field.quantity("Winder", Quantity.PLAIN, units).unit("to 1").prompt("turns");
        turns = Field.quantity("Turns", Quantity.TURNS, units).large();
        off = Field.quantity("Back-off", Quantity.TURNS, units).large();
        maxTorque = Field.quantity("Highest torque", Quantity.TORQUE, units).large();
        launchTorque = Field.quantity("Launch torque", Quantity.TORQUE, units).large();
        done = keys.on("Enter", "Keep and go on", this::done);
        keys.on("Esc", "Back without more", () -> model.stateProperty().set(HallState.PREPARING));
        motors.key(keys.on("M", "Motor", motors::open));
        newMotor.key(keys.on("A", "Add a motor", newMotor::edit));
        ratio.key(keys.on("G", "Winder's gear", ratio::edit));
        turns.key(keys.on("T", "Turns", turns::edit));
        off.key(keys.on("B", "Back-off", off::edit));
        maxTorque.key(keys.on("H", "Highest torque", maxTorque::edit));
        launchTorque.key(keys.on("L", "Launch torque", launchTorque::edit));
        Action letDown = keys.on("D", "Let down", () -> model.preparing().endWind(WindEnd.LET_DOWN));
        Action broke = keys.on("X", "The motor broke", () -> model.preparing().endWind(WindEnd.BROKE));
        Action add = keys.action("Add this motor", this::addMotor);
        keys.hint("T", "turns");
        keys.hint("B", "back-off");
        keys.hint("L", "launch torque");
        keys.hint("M", "motor");
        keys.hint("Enter", "done");
        motors.onChosen(motor -> {
            motorId = motor.id();
            showLimits(motor);
            keep();
            HallForm.leave(sheet);
        });
        numbers().forEach(field -> field.onKept(v -> keep()));
        Sheet.Section before = new Sheet.Section("Before the first turn", "", cautions());
        Sheet.Section motor = new Sheet.Section(
                "Motor",
                "",
                Lay.row(12, Lay.grow(motors), ratio),
                limits,
                HallForm.fields(newMotor, loop, mass, Buttons.secondary(add)));
        Sheet.Section wind = new Sheet.Section(
                "This wind",
                "kept as it is typed",
                HallForm.fields(turns, off, maxTorque, launchTorque),
                total,
                hint,
                Lay.row(12, Buttons.secondary(letDown), Buttons.secondary(broke)));
        sheet.add(Lay.rolling(new VBox(before, Lay.hairline(), motor, Lay.hairline(), wind)));
        sheet.section(Buttons.main(done, Words.body("The next flight goes on this wind.")));
    }

    /** Common practice among rubber flyers, no source. */
    private static Node cautions() {
        return Lay.column(
                4,
                new CautionBox(
                        "Cover your eyes.",
                        "Glasses on; nobody in line with a stretched motor. Wind off the model or in a tube."),
                new CautionBox(
                        "Look for nicks first.", "Turn the motor through your fingers; a nicked motor is not wound."),
                new CautionBox(
                        "The venue's and the class's rules come first.", "Never climb after a model that is hung up."));
    }

    @Override
    public Node node() {
        return sheet;
    }

    private void done() {
        if (HallForm.accepted(numbers())) {
            HallForm.leave(sheet);
            model.stateProperty().set(HallState.PREPARING);
        }
    }

    private List<Field<TypedValue>> numbers() {
        return List.of(ratio, turns, off, maxTorque, launchTorque);
    }

    private void addMotor() {
        if (HallForm.check(List.of(loop, mass))) {
            TypedValue loopTyped = loop.value();
            TypedValue massTyped = mass.value();
            String name = newMotor.typed();
            model.change(
                    d -> d.winding().addMotor(name, loopTyped, massTyped),
                    motor -> {
                        motorId = motor.id();
                        List.of(newMotor, loop, mass).forEach(f -> f.fill(""));
                        showLimits(motor);
                        keep();
                        HallForm.leave(sheet); // Enter now goes on instead of adding another
                    },
                    newMotor::refuse);
        }
    }

    private void keep() {
        if (!HallForm.check(numbers())) {
            return;
        }
        begunHere = true;
        Double gear = HallForm.si(ratio);
        double by = gear == null ? 1 : gear;
        if (!(by > 0)) {
            ratio.refuse("A winder's gear is a number above zero, such as 15.");
            return;
        }
        Double wound = HallForm.si(turns);
        Double back = HallForm.si(off);
        Map<String, String> typed = new HashMap<>();
        put(typed, "turnsWound", turns);
        put(typed, "turnsBackedOff", off);
        put(typed, "maxTorqueNm", maxTorque);
        put(typed, "launchTorqueNm", launchTorque);
        WindForm form = new WindForm(
                motorId,
                wound == null ? null : Double.valueOf(wound * by),
                back == null ? null : Double.valueOf(back * by),
                HallForm.si(maxTorque),
                HallForm.si(launchTorque),
                gear,
                typed);
        total.setText(
                wound == null
                        ? ""
                        : QuantityFormat.rounded((wound - (back == null ? 0 : back)) * by, 0)
                                + " motor turns at launch");
        model.preparing().wind(form, (back != null && wound != null && back > wound ? off : turns)::refuse);
    }

    private static void put(Map<String, String> typed, String what, Field<?> field) {
        if (!field.typed().isBlank()) {
            typed.put(what, field.typed().strip());
        }
    }

    private void showLimits(@Nullable Motor motor) {
        HallData data = model.data();
        MotorLimit limit = motor == null || data == null ? null : data.limits().get(motor.id());
        if (motor == null || limit == null) {
            limits.setText(motor == null ? "" : "With its loop and mass the turns it should take are shown here.");
            return;
        }
        limits.setText("loop " + format.text(Quantity.LENGTH, motor.loopLengthM()) + ", "
                + format.text(Quantity.MASS, motor.massKg()) + ": expected to break at about "
                + Texts.turns(limit.turns().expected()) + " turns ("
                + Texts.turns(limit.turns().low()) + " to "
                + Texts.turns(limit.turns().high()) + "), by "
                + (limit.batch() == null
                        ? "a published rule of thumb; your own motors come first"
                        : "the turns constant of batch " + limit.batch()));
    }

    @Override
    public void show(HallData data) {
        Wind wind = data.prepared().wind();
        String id = wind == null ? null : wind.id();
        if (filledOnce && Objects.equals(id, filled)) {
            offer(data);
            return;
        }
        // a wind begun by what was typed here stands in the fields already; one begun elsewhere does not
        boolean justBegun = filledOnce && filled == null && id != null && begunHere;
        begunHere = false;
        filledOnce = true;
        filled = id;
        if (!justBegun) {
            fill(data, wind);
        }
        offer(data);
        Wind last =
                data.prepared().last() == null ? null : data.prepared().last().wind();
        hint.setText(
                last == null
                        ? ""
                        : "Last time: " + Texts.turns(last.turnsWound()) + " turns, back-off "
                                + Texts.turns(last.turnsBackedOff()) + ", launch torque "
                                + format.text(Quantity.TORQUE, last.launchTorqueNm()) + ".");
    }

    private void fill(HallData data, @Nullable Wind wind) {
        motorId = wind == null ? null : wind.motorId();
        Map<String, String> typed = wind == null ? Map.of() : wind.asTyped();
        turns.fill(typed.getOrDefault("turnsWound", ""));
        off.fill(typed.getOrDefault("turnsBackedOff", ""));
        maxTorque.fill(torque(typed.get("maxTorqueNm"), wind == null ? null : wind.maxTorqueNm()));
        launchTorque.fill(torque(typed.get("launchTorqueNm"), wind == null ? null : wind.launchTorqueNm()));
        ratio.fill(data.ratio()
                .map(gear -> QuantityFormat.rounded(gear, gear == Math.rint(gear) ? 0 : 2))
                .orElse(""));
        total.setText("");
    }

    /** As typed where that names its unit; a bare number was in the units of then, which may not be those of now. */
    private String torque(@Nullable String typed, @Nullable Double torqueNm) {
        return torqueNm == null
                ? ""
                : typed != null && Texts.namesItsUnit(typed) ? typed : format.shortest(Quantity.TORQUE, torqueNm, 4);
    }

    private void offer(HallData data) {
        Motor chosen = data.motors().stream()
                .filter(m -> m.id().equals(motorId))
                .findFirst()
                .orElse(null);
        motors.offer(data.motors(), chosen);
        Motor proposed = data.prepared().proposed();
        motors.quietly(
                chosen == null && proposed != null ? proposed.name() + " is of the same size and has rested" : "");
        showLimits(chosen);
    }
}
