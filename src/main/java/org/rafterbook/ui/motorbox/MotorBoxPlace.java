package org.rafterbook.ui.motorbox;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.power.Motor;
import org.rafterbook.power.MotorLimits;
import org.rafterbook.power.RubberBatch;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindDraft;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.CautionBox;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.Book;
import org.rafterbook.work.MotorDesk;

/** The Motor box: batches, motors and winds, added and put right in the forms beside the tables. */
public final class MotorBoxPlace implements Place {

    private final Book book;
    private final FxBackground background;
    private final FxBackground.Slot slot = new FxBackground.Slot();
    private final ReadOnlyObjectWrapper<Keys> keys;
    private final StackPane root = new StackPane();
    private final Table<MotorDesk.Boxed> motors = new Table<>("motors");
    private final Table<Wind> winds = new Table<>("winds of the motor picked");
    private final ChoiceField<RubberBatch> batch = new ChoiceField<>("Batch", RubberBatch::name);
    private final Field<String> newBatch = Field.words("Name of a new batch");
    private final Field<String> name = Field.words("Motor").required();
    private final Field<TypedValue> loop = Field.quantity("Loop when tied", Quantity.LENGTH, DisplayUnits.METRIC);
    private final Field<TypedValue> mass = Field.quantity("Mass of the rubber", Quantity.MASS, DisplayUnits.METRIC);
    private final Field<TypedValue> turns = Field.quantity("Turns put in", Quantity.TURNS, DisplayUnits.METRIC);
    private final Field<TypedValue> backOff = Field.quantity("Backed off", Quantity.TURNS, DisplayUnits.METRIC);
    private final Field<TypedValue> torque = Field.quantity("Launch torque", Quantity.TORQUE, DisplayUnits.METRIC);
    private final Action keepWind;
    private final Action correct;
    private @Nullable RubberBatch chosen;
    private @Nullable Subscription listening;

    public MotorBoxPlace(Tools tools, Book book, DisplayUnits units) {
        this.book = book;
        this.background = tools.background();
        Keys own = tools.keys();
        Action add = own.on("A", "Add as a new motor", this::add);
        correct = own.on("C", "Put this motor right", this::correct);
        keepWind = own.on("W", "Put this wind right", this::correctWind);
        own.hint("A", "add a motor");
        own.hint("C", "put it right");
        own.hint("W", "put the wind right");
        keys = new ReadOnlyObjectWrapper<>(own);
        motors.text("motor", 5, m -> m.motor().name());
        motors.text("batch", 5, MotorDesk.Boxed::batch);
        motors.number("loop", "mm", 5, m -> shown(Quantity.LENGTH, m.motor().loopLengthM(), 0));
        motors.number("mass", "g", 5, m -> shown(Quantity.MASS, m.motor().massKg(), 2));
        motors.number("times wound", "", 7, m -> String.valueOf(m.winds().size()));
        motors.number("breaks at about", "turns", 10, m -> limit(m.limit()));
        motors.text("state", 8, MotorDesk.Boxed::state).grow();
        motors.ifEmpty("No motor yet. Name it, give loop and mass as measured, then add it.");
        motors.selectedProperty().subscribe(this::picked);
        winds.number("wind", "", 4, w -> String.valueOf(w.ordinal()));
        winds.number("turns", "", 5, w -> shown(Quantity.TURNS, w.turnsWound(), 0));
        winds.number("backed off", "", 6, w -> shown(Quantity.TURNS, w.turnsBackedOff(), 0));
        winds.number("torque at launch", "N·mm", 9, w -> shown(Quantity.TORQUE, w.launchTorqueNm(), 2));
        winds.text("ended", 7, w -> w.end() == null ? "" : w.end().word()).grow();
        winds.ifEmpty("No wind of this motor yet. Winds are logged from the Hall.");
        winds.selectedProperty().subscribe(this::pickedWind);
        batch.onChosen(b -> chosen = b);
        newBatch.onKept(typed -> {
            if (typed != null && !typed.isBlank()) {
                newBatch.fill("");
                background.call(progress -> book.motors().addBatch(typed)).then(made -> {
                    chosen = made;
                    load();
                });
            }
        });
        Sheet list = new Sheet();
        list.section("Motors", "limits with the batch's own constant, else 44.5 ± 3");
        list.add(Lay.grow(motors));
        list.section("Winds of the motor picked", "");
        list.add(Lay.grow(winds));
        list.section(new CautionBox(
                "While you wind:",
                "eyes covered, nobody in line with the motor, off the model or in a tube. Check for nicks first. Never climb"
                        + " after a hung model. The venue's and the class's rules come first."));
        Sheet form = new Sheet();
        form.section("Batch", "", batch, newBatch);
        form.section(
                "Motor",
                "in the order of measuring",
                name,
                loop,
                mass,
                Buttons.primary(add),
                Buttons.secondary(correct));
        form.section("Wind picked", "", turns, backOff, torque, Buttons.secondary(keepWind));
        ScrollPane rolling = new ScrollPane(form);
        rolling.setFitToWidth(true);
        rolling.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        rolling.setFocusTraversable(false);
        rolling.setPrefWidth(330);
        rolling.setMinSize(290, 0);
        list.setMinSize(0, 0);
        root.getStyleClass().add("pad-16");
        root.getChildren().add(fillingRow(list, rolling));
        picked(null);
        pickedWind(null);
    }

    private static HBox fillingRow(Sheet list, ScrollPane form) {
        HBox row = Lay.row(12, Lay.grow(list), form);
        row.setFillHeight(true);
        row.setMinSize(0, 0);
        return row;
    }

    private static String shown(Quantity quantity, @Nullable Double si, int decimals) {
        return si == null
                ? QuantityFormat.UNKNOWN
                : QuantityFormat.rounded(quantity.unit(DisplayUnits.METRIC).fromSi(si), decimals);
    }

    private static String limit(MotorLimits.@Nullable Band band) {
        return band == null
                ? QuantityFormat.UNKNOWN
                : QuantityFormat.rounded(band.expected(), 0) + " ± "
                        + QuantityFormat.rounded((band.high() - band.low()) / 2, 0);
    }

    private void picked(MotorDesk.@Nullable Boxed boxed) {
        correct.enabledProperty().set(boxed != null);
        winds.rows(boxed == null ? List.of() : boxed.winds());
        if (boxed != null) {
            Motor motor = boxed.motor();
            name.fill(motor.name());
            loop.fill(motor.loopLengthM() == null ? "" : shown(Quantity.LENGTH, motor.loopLengthM(), 1));
            mass.fill(motor.massKg() == null ? "" : shown(Quantity.MASS, motor.massKg(), 3));
        }
    }

    private void pickedWind(@Nullable Wind wind) {
        keepWind.enabledProperty().set(wind != null);
        turns.fill(wind == null || wind.turnsWound() == null ? "" : shown(Quantity.TURNS, wind.turnsWound(), 0));
        backOff.fill(
                wind == null || wind.turnsBackedOff() == null ? "" : shown(Quantity.TURNS, wind.turnsBackedOff(), 0));
        torque.fill(
                wind == null || wind.launchTorqueNm() == null ? "" : shown(Quantity.TORQUE, wind.launchTorqueNm(), 2));
    }

    private boolean formIsSound() {
        return name.check() & loop.check() & mass.check();
    }

    private static @Nullable Double si(Field<TypedValue> field) {
        TypedValue value = field.value();
        return value == null ? null : value.si();
    }

    private Map<String, String> typed() {
        Map<String, String> typed = new HashMap<>();
        if (loop.value() != null) {
            typed.put("loopLengthM", loop.typed());
        }
        if (mass.value() != null) {
            typed.put("massKg", mass.typed());
        }
        return typed;
    }

    private void add() {
        if (!formIsSound()) {
            return;
        }
        RubberBatch of = chosen;
        String named = name.typed();
        Double loopM = si(loop);
        Double massKg = si(mass);
        Map<String, String> typed = typed();
        background
                .call(progress -> book.motors().addMotor(named, of == null ? null : of.id(), loopM, massKg, typed))
                .then(made -> load());
    }

    private void correct() {
        MotorDesk.Boxed boxed = motors.selected();
        if (boxed == null || !formIsSound()) {
            return;
        }
        Motor was = boxed.motor();
        Motor right = new Motor(
                was.id(),
                name.typed().strip(),
                was.batchId(),
                si(loop),
                si(mass),
                was.cutFrom(),
                was.fraction(),
                was.madeOn(),
                was.fate(),
                was.notes(),
                typed());
        background.call(progress -> book.motors().correct(right)).then(made -> load());
    }

    private void correctWind() {
        Wind was = winds.selected();
        if (was == null || !(turns.check() & backOff.check() & torque.check())) {
            return;
        }
        Wind right = WindDraft.of(was)
                .turnsWound(si(turns))
                .turnsBackedOff(si(backOff))
                .launchTorqueNm(si(torque))
                .done();
        background.call(progress -> book.motors().correct(right)).then(made -> load());
    }

    private void load() {
        background.call(progress -> book.motors().load()).in(slot).then(box -> {
            MotorDesk.Boxed before = motors.selected();
            batch.offer(box.batches(), chosen);
            motors.rows(box.motors());
            box.motors().stream()
                    .filter(m -> before != null
                            && m.motor().id().equals(before.motor().id()))
                    .findFirst()
                    .ifPresent(motors::select);
        });
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public ObservableValue<Keys> keys() {
        return keys.getReadOnlyProperty();
    }

    @Override
    public ObservableValue<String> subtitle() {
        return Place.always("batches, motors and winds");
    }

    @Override
    public void shown() {
        listening = book.onChange(() -> Platform.runLater(this::load));
        load();
    }

    @Override
    public void hidden() {
        slot.cancel();
        if (listening != null) {
            listening.cancel();
            listening = null;
        }
    }
}
