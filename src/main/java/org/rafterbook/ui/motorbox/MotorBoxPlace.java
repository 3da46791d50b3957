package org.rafterbook.ui.motorbox;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.power.Wind;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.CautionBox;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Segments;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Book;
import org.rafterbook.work.MotorDesk;

/** The Motor box: batches, motors and winds, added and put right in the form beside the tables. */
public final class MotorBoxPlace implements Place {

    private final MotorBoxModel model;
    private final QuantityFormat format;
    private final ReadOnlyObjectWrapper<Keys> keys;
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final Table<MotorDesk.Boxed> motors = new Table<>("motors");
    private final Table<Wind> winds = new Table<>("winds of the motor picked");
    private final MotorPage motorPage;
    private final WindPage windPage;
    private final BatchPage batchPage;
    private final Segments<BoxPage> pages;
    private final StackPane shownPage = new StackPane();
    private final Action correct;
    private final HBox root;
    private BoxPage page;

    public MotorBoxPlace(Tools tools, Book book, DisplayUnits units) {
        model = new MotorBoxModel(tools, book);
        format = new QuantityFormat(units);
        motorPage = new MotorPage(model, units);
        windPage = new WindPage(model, units);
        batchPage = new BatchPage(model, units);
        page = motorPage;
        pages = new Segments<BoxPage>("What to add", List.of(motorPage, windPage, batchPage), BoxPage::name);
        Keys own = tools.keys();
        own.on("L", "List of motors", () -> motors.view().requestFocus());
        own.on("M", "A motor", () -> turnTo(motorPage, true));
        own.on("W", "A wind of the picked motor", () -> turnTo(windPage, true));
        own.on("B", "A batch", () -> turnTo(batchPage, true));
        Action add = own.on("A", "Add as new", () -> page.add());
        correct = own.on("C", "Put it right", () -> page.correct());
        own.on("Esc", "Leave the field", () -> motors.view().requestFocus());
        own.hint("L ↑ ↓", "pick a motor");
        own.hint("M W B", "motor, wind, batch");
        own.hint("A", "add as new");
        own.hint("C", "put it right");
        keys = new ReadOnlyObjectWrapper<>(own);
        columns();
        pages.onChosen(chosen -> turnTo(chosen, false));
        root = page(lists(), form(Buttons.primary(add), Buttons.secondary(correct)));
        motors.selectedProperty().subscribe(this::picked);
        winds.selectedProperty().subscribe(this::pickedWind);
        model.boxProperty().subscribe(this::show);
        turnTo(motorPage, false);
    }

    private void columns() {
        motors.text("motor", 5, m -> m.motor().name()).styled("strong");
        motors.text("batch", 6, MotorDesk.Boxed::batch);
        motors.number(
                "loop",
                format.unitOf(Quantity.LENGTH),
                4.6,
                m -> format.number(Quantity.LENGTH, m.motor().loopLengthM()));
        motors.number(
                "mass",
                format.unitOf(Quantity.MASS),
                4.4,
                m -> format.number(Quantity.MASS, m.motor().massKg()));
        motors.number("wound", "times", 4.6, m -> String.valueOf(m.winds().size()));
        motors.number(
                "breaks at about",
                "turns",
                8.4,
                m -> m.limit() == null
                        ? QuantityFormat.UNKNOWN
                        : format.number(Quantity.TURNS, m.limit().expected()) + " ± "
                                + format.number(
                                        Quantity.TURNS,
                                        (m.limit().high() - m.limit().low()) / 2));
        motors.text("state", 4.8, MotorDesk.Boxed::state).grow();
        motors.ifEmpty("No motor yet. Give name, loop and mass as measured, then add it.");
        winds.number("wind", "", 4, w -> String.valueOf(w.ordinal()));
        winds.number("turns", "", 6, w -> format.number(Quantity.TURNS, w.turnsWound()));
        winds.number("backed off", "", 7, w -> format.number(Quantity.TURNS, w.turnsBackedOff()));
        winds.number(
                "highest", format.unitOf(Quantity.TORQUE), 6, w -> format.number(Quantity.TORQUE, w.maxTorqueNm()));
        winds.number(
                "at launch",
                format.unitOf(Quantity.TORQUE),
                6,
                w -> format.number(Quantity.TORQUE, w.launchTorqueNm()));
        winds.text("ended", 7, w -> w.end() == null ? "" : w.end().word().replace('-', ' '))
                .grow();
        winds.ifEmpty("No wind of this motor yet. Those that are flown are logged from the Hall.");
    }

    private Sheet lists() {
        Sheet list = new Sheet();
        list.section("Motors", "limits with the batch's own constant, else 44.5 ± 3");
        list.add(Lay.grow(motors));
        list.section("Winds of the motor picked", "");
        list.add(Lay.grow(winds));
        // common practice among rubber flyers, no source
        list.section(new CautionBox(
                "While you wind:",
                "eyes covered, nobody in line with the motor, off the model or in a tube. Check for nicks first. Never climb"
                        + " after a hung model. The venue's and the class's rules come first."));
        list.setMinSize(0, 0);
        list.setMaxHeight(Double.MAX_VALUE);
        return list;
    }

    private Sheet form(Button add, Button right) {
        Sheet form = new Sheet();
        VBox parts = Lay.styled(Lay.column(12, pages, shownPage, Lay.row(8, add, right)), "section");
        ScrollPane rolling = new ScrollPane(parts);
        rolling.setFitToWidth(true);
        rolling.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        rolling.setFocusTraversable(false);
        rolling.setMinSize(0, 0);
        form.add(Lay.grow(rolling));
        form.setMaxHeight(Double.MAX_VALUE);
        return Lay.styled(form, "box-form");
    }

    private static HBox page(Sheet lists, Sheet form) {
        HBox row = Lay.styled(Lay.row(12, Lay.grow(lists), form), "page");
        row.setFillHeight(true);
        return row;
    }

    private void turnTo(BoxPage now, boolean edit) {
        page = now;
        pages.choose(now);
        shownPage.getChildren().setAll(now.node());
        correct.enabledProperty().set(now.hasPicked());
        if (edit) {
            now.edit();
        }
    }

    private void picked(MotorDesk.@Nullable Boxed boxed) {
        motorPage.show(boxed);
        windPage.of(boxed);
        winds.rows(boxed == null ? List.of() : boxed.winds());
        correct.enabledProperty().set(page.hasPicked());
    }

    private void pickedWind(@Nullable Wind wind) {
        windPage.show(wind);
        correct.enabledProperty().set(page.hasPicked());
    }

    private void show(MotorDesk.Box box) {
        MotorDesk.Boxed before = motors.selected();
        motorPage.offer(box.batches());
        batchPage.offer(box.batches());
        motors.rows(box.motors());
        box.motors().stream()
                .filter(m ->
                        before != null && m.motor().id().equals(before.motor().id()))
                .findFirst()
                .ifPresent(motors::select);
        long ready =
                box.motors().stream().filter(m -> m.state().equals("ready")).count();
        subtitle.set(
                box.motors().isEmpty()
                        ? "batches, motors and winds"
                        : box.motors().size() + " motors, " + ready + " ready; "
                                + box.batches().size() + (box.batches().size() == 1 ? " batch" : " batches"));
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
        return subtitle.getReadOnlyProperty();
    }

    @Override
    public void shown() {
        model.attach();
    }

    @Override
    public void hidden() {
        model.detach();
    }
}
