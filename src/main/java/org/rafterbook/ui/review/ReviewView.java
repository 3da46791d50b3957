package org.rafterbook.ui.review;

import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.correct.ThatTimeForm;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.FittingFrame;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.Counted;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewDesk;

/** The place Review: history along the top, which trim change raised the time, and all it rests on. */
public final class ReviewView implements Place {

    private final ProgressRule progress = new ProgressRule();
    private final Errors errors;
    private final ReviewModel model;
    private final Keys keys;
    private final ReadOnlyObjectWrapper<Keys> keysNow;
    private final HistoryStrip strip;
    private final ReviewPage page;
    private final Node empty;
    private final FittingFrame node;
    private final Button modelButton;
    private final Action compute;
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper(PlaceId.REVIEW.title());
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ObservableList<Node> figures;
    private final HBox footNote = Lay.row(4, new AtLeastSign(), Words.aside("at least this long: cut short"));

    /** Metric units. */
    public ReviewView(ReviewDesk desk, Tools tools) {
        this(desk, tools, DisplayUnits.METRIC);
    }

    public ReviewView(ReviewDesk desk, Tools tools, DisplayUnits units) {
        errors = tools.errors();
        model = new ReviewModel(desk, tools.background(), progress);
        keys = tools.keys();
        keysNow = new ReadOnlyObjectWrapper<>(keys);
        strip = new HistoryStrip(model);
        modelButton = Buttons.secondary(keys.on("M", "Model", this::chooseModel));
        Action full = keys.on("F", "Full motors only", model::turnFullMotorsOnly);
        model.fullMotorsOnlyProperty()
                .subscribe(on -> full.labelProperty().set(on ? "Full motors only" : "Partial motors too"));
        Action equal = keys.on("E", "Time at equal turns and air", this::turnEqual);
        model.equalTurnsProperty()
                .subscribe(on -> equal.labelProperty().set(on ? "Time at equal turns and air" : "Time as flown"));
        compute = keys.on("C", "Compute the effects", model::load);
        Button computing = Buttons.secondary(compute);
        model.stoppedProperty().subscribe(on -> Lay.show(computing, on));
        figures = FXCollections.observableArrayList(
                progress, computing, Buttons.secondary(full), Buttons.secondary(equal), modelButton);
        page = new ReviewPage(
                model, keys, new QuantityFormat(units), (flight, leave) -> thatTime(tools, flight, leave));
        keys.on("H", "History", strip.node()::requestFocus).at(strip.node());
        keys.on("Enter", "Only the flights of the picked change", this::turnOnlyItsFlights);
        keys.on("Esc", "Back: end the search, show all flights", this::back);
        keys.hint("↑ ↓", "pick a change");
        keys.hint("Enter", "its flights");
        keys.hint("H ← →", "pick a flight");
        keys.hint("V", "against margin, setting …");
        keys.hint("S R", "what is said, basis; again: larger");
        empty = empty(tools);
        node = new FittingFrame((width, height, em) -> strip.low(page.fold(width, height)));
        node.show(page.node(), empty);
        node.getStylesheets().add(ReviewView.class.getResource("review.css").toExternalForm());
        model.anyProperty().subscribe(on -> {
            Lay.show(page.node(), on);
            if (on && model.isAttached()) {
                page.toTable(); // what is hidden takes no keys
            }
        });
        model.part(() -> show(model.answer()), model.loadedProperty(), model.stoppedProperty());
    }

    private ThatTimeForm thatTime(Tools tools, String flightId, Runnable leave) {
        ThatTimeForm form = ThatTimeForm.ofFlight(tools, model.desk().book(), flightId, () -> {
            keysNow.set(keys);
            leave.run();
        });
        keysNow.set(form.keys());
        return form;
    }

    private Node empty(Tools tools) {
        Button hall = Buttons.primary(
                keys.action("Go to the Hall", () -> tools.showing().set(PlaceId.HALL)));
        Label says =
                Words.prose("Every flight will stand here at its time, on the version it flew; with two values of a"
                        + " setting flown on one day, Review says which raised the time and how sure that is.");
        says.setMaxWidth(520);
        VBox box = Lay.column(12, Words.head("No flight yet"), says, hall);
        box.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        Sheet sheet = new Sheet();
        sheet.section(box);
        sheet.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        return sheet;
    }

    private void show(@Nullable ModelReview answer) {
        boolean loaded = model.loadedProperty().get();
        Lay.show(empty, loaded && answer == null);
        for (Action action : keys.actions()) {
            if (answer == null) {
                action.enabledProperty().set(false);
            } else if (!page.decides(action)) {
                action.enabledProperty().set(true);
            }
        }
        compute.enabledProperty().set(model.stoppedProperty().get());
        subtitle.set(
                answer == null
                        ? loaded ? "" : model.stoppedProperty().get() ? "stopped" : "reading the flights …"
                        : Counted.of(answer.points().size(), "flight"));
        title.set(
                answer == null
                        ? PlaceId.REVIEW.title()
                        : PlaceId.REVIEW.title() + ": " + answer.model().name());
    }

    /** Shows the model of this id. */
    public void show(String modelId) {
        model.pick(modelId);
    }

    private void chooseModel() {
        ContextMenu menu = new ContextMenu();
        for (Model one : model.modelsProperty().get()) {
            MenuItem item = new MenuItem(one.name());
            item.setOnAction(event -> model.pick(one));
            menu.getItems().add(item);
        }
        menu.show(modelButton, Side.BOTTOM, 0, 0);
    }

    private void turnEqual() {
        model.equalTurnsProperty().set(!model.equalTurnsProperty().get());
    }

    private void turnOnlyItsFlights() {
        if (!page.enter()) {
            model.onlyItsFlightsProperty().set(!model.onlyItsFlightsProperty().get());
        }
    }

    private void back() {
        if (page.back()) {
            return;
        }
        if (!model.searchProperty().get().isEmpty()) {
            model.searchProperty().set("");
            page.toTable();
        } else if (model.onlyItsFlightsProperty().get()) {
            model.onlyItsFlightsProperty().set(false);
        } else if (model.flightProperty().get() != null) {
            model.flightProperty().set(null);
        } else {
            errors.clear();
        }
    }

    /** What it shows, for tests and pictures. */
    ReviewModel model() {
        return model;
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public Node rule() {
        return strip.node();
    }

    @Override
    public ObservableValue<Keys> keys() {
        return keysNow.getReadOnlyProperty();
    }

    @Override
    public ObservableValue<String> title() {
        return title.getReadOnlyProperty();
    }

    @Override
    public ObservableValue<String> subtitle() {
        return subtitle.getReadOnlyProperty();
    }

    @Override
    public ObservableList<Node> figures() {
        return figures;
    }

    @Override
    public Node footNote() {
        return footNote;
    }

    @Override
    public void shown() {
        model.attach();
        if (!page.isInForm()) {
            page.toTable();
        }
    }

    @Override
    public void hidden() {
        model.detach();
    }
}
