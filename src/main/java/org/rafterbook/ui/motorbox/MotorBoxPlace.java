package org.rafterbook.ui.motorbox;

import java.util.List;
import java.util.Locale;
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
import org.rafterbook.ui.kit.RollingPane;
import org.rafterbook.ui.kit.Segments;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.Counted;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Book;
import org.rafterbook.work.MotorDesk;

/** The Motor box: batches, motors and winds, added and put right in the form beside the tables. */
public final class MotorBoxPlace implements Place {

    private static final String PICK_FIRST = "Pick a motor: its winds stand here.";

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
    private final Action keep;
    private final Button asNew;
    private boolean refreshing;
    private final HBox root;
    private BoxPage page;

    public MotorBoxPlace(Tools tools, Book book, DisplayUnits units) {
        model = new MotorBoxModel(tools, book);
        format = new QuantityFormat(units);
        motorPage = new MotorPage(model, units);
        windPage = new WindPage(model, units);
        batchPage = new BatchPage(model, units, this::showKeep);
        page = motorPage;
        pages = new Segments<BoxPage>("What to add", List.of(motorPage, windPage, batchPage), BoxPage::name);
        Keys own = tools.keys();
        own.on("L", "List of motors", () -> motors.view().requestFocus());
        own.on("M", "A new motor", () -> begin(motorPage));
        own.on("W", "A new wind of the picked motor", () -> begin(windPage));
        own.on("B", "A new batch", () -> begin(batchPage));
        keep = own.on("Enter", "Keep", this::enter);
        asNew = Buttons.secondary(own.on("A", "Add as new", this::add));
        own.on("Esc", "Leave it", this::leave);
        own.hint("L ↑ ↓", "pick a motor");
        own.hint("M W B", "new motor, wind, batch");
        own.hint("Enter", "keep, or edit what is picked");
        own.hint("A", "add as new");
        own.hint("Esc", "leave it");
        keys = new ReadOnlyObjectWrapper<>(own);
        columns();
        pages.onChosen(chosen -> turnTo(chosen, false));
        root = page(lists(), form(Buttons.primary(keep), asNew));
        motors.selectedProperty().subscribe(this::picked);
        winds.selectedProperty().subscribe(this::pickedWind);
        model.boxProperty().subscribe(this::show);
        turnTo(motorPage, false);
    }

    private void columns() {
        motors.text("motor", 4.2, m -> m.motor().name()).styled("strong");
        motors.text("batch", 5.6, MotorDesk.Boxed::batch).grow(3);
        motors.number(
                "loop",
                format.unitOf(Quantity.LENGTH),
                4.2,
                m -> format.number(Quantity.LENGTH, m.motor().loopLengthM()));
        motors.number(
                "mass",
                format.unitOf(Quantity.MASS),
                4,
                m -> format.number(Quantity.MASS, m.motor().massKg()));
        motors.number("wound", "times", 4.2, m -> String.valueOf(m.winds().size()));
        motors.number(
                "breaks at about",
                "turns",
                7.6,
                m -> m.limit() == null
                        ? QuantityFormat.UNKNOWN
                        : format.number(Quantity.TURNS, m.limit().expected()) + " ± "
                                + format.number(
                                        Quantity.TURNS,
                                        (m.limit().high() - m.limit().low()) / 2));
        motors.text("state", 4.4, MotorDesk.Boxed::state).grow();
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
        winds.ifEmpty(PICK_FIRST);
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
        VBox parts = Lay.styled(Lay.column(12, pages, shownPage, Lay.column(8, add, right)), "section");
        ScrollPane rolling = new RollingPane(parts);
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
        showKeep();
        if (edit) {
            now.edit();
        }
    }

    /** Says what Enter does: it adds what is new and puts right what is picked. */
    private void showKeep() {
        String picked = page.picked();
        keep.labelProperty()
                .set(picked.isEmpty() ? "Add the " + page.name().toLowerCase(Locale.ROOT) : "Put " + picked + " right");
        Lay.show(asNew, !picked.isEmpty());
    }

    private void begin(BoxPage now) {
        if (now == motorPage) {
            motors.view().getSelectionModel().clearSelection();
        } else if (now == windPage) {
            winds.view().getSelectionModel().clearSelection();
        }
        now.begin();
        turnTo(now, true);
    }

    private void enter() {
        if (motors.view().isFocused() && motors.selected() != null) {
            turnTo(motorPage, true);
        } else if (winds.view().isFocused() && winds.selected() != null) {
            turnTo(windPage, true);
        } else if (page.picked().isEmpty()) {
            add();
        } else {
            page.correct(() -> motors.view().requestFocus());
        }
    }

    private void add() {
        BoxPage of = page;
        of.add(() -> begin(of));
    }

    private void leave() {
        page.reset();
        motors.view().requestFocus();
    }

    private void picked(MotorDesk.@Nullable Boxed boxed) {
        if (!refreshing) {
            motorPage.show(boxed == null ? null : boxed.motor());
            windPage.of(boxed);
            winds.ifEmpty(
                    boxed == null
                            ? PICK_FIRST
                            : "No wind of this motor yet. Those that are flown are logged from the Hall.");
            winds.rows(boxed == null ? List.of() : boxed.winds());
            showKeep();
        }
    }

    private void pickedWind(@Nullable Wind wind) {
        if (!refreshing) {
            windPage.show(wind);
            showKeep();
        }
    }

    private void show(MotorDesk.Box box) {
        MotorDesk.Boxed before = motors.selected();
        Wind windBefore = winds.selected();
        motorPage.offer(box.batches());
        batchPage.offer(box.batches());
        refreshing = true;
        motors.rows(box.motors());
        MotorDesk.Boxed now = box.motors().stream()
                .filter(m ->
                        before != null && m.motor().id().equals(before.motor().id()))
                .findFirst()
                .orElse(null);
        if (now != null) {
            motors.view().getSelectionModel().select(now); // the list stays where it is scrolled to
        }
        refreshing = false;
        picked(now);
        winds.rows().stream()
                .filter(w -> windBefore != null && w.id().equals(windBefore.id()))
                .findFirst()
                .ifPresent(winds::select);
        long ready =
                box.motors().stream().filter(m -> m.state().equals("ready")).count();
        subtitle.set(
                box.motors().isEmpty()
                        ? "batches, motors and winds"
                        : Counted.of(box.motors().size(), "motor") + ", " + ready + " ready; "
                                + Counted.of(box.batches().size(), "batch"));
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
