package org.rafterbook.ui.review;

import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.css.PseudoClass;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.MarkShape;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.FittingFrame;
import org.rafterbook.ui.kit.KeyCap;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.look.Token;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewDesk;
import org.rafterbook.work.ReviewWords;

/** The place Review: history along the top, comparisons, times against margin and settings, notes. */
public final class ReviewView implements Place {

    private static final double NARROW_EM = 78;
    private static final double LOW_EM = 56;
    private static final PseudoClass LOW = PseudoClass.getPseudoClass("low");

    private final ProgressRule progress = new ProgressRule();
    private final Errors errors;
    private final ReviewModel model;
    private final Keys keys;
    private final HistoryStrip strip;
    private final ChangeTable table;
    private final DurationPlot plot;
    private final NotesPanel notes;
    private final ChoiceField<ReviewAxis> axis = new ChoiceField<>("Time against", ReviewAxis::name);
    private final Label flights = Words.hint("");
    private final Label plotWords = Words.prose("");
    private final FittingFrame node = new FittingFrame(this::fold);
    private final Sheet left = new Sheet();
    private final VBox right = Lay.column(12);
    private final HBox below = new HBox();
    private boolean narrow;
    private boolean plotInFront;
    private final HBox page;
    private final Node empty;
    private final ContextMenu menu = new ContextMenu();
    private final Button modelButton;
    private final Action fullMotors;
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ObservableList<Node> figures;
    private final HBox footNote = Lay.row(4, new AtLeastSign(), Words.aside("at least this long: cut short"));

    public ReviewView(ReviewDesk desk, Tools tools) {
        errors = tools.errors();
        model = new ReviewModel(desk, tools.background(), progress);
        keys = tools.keys();
        strip = new HistoryStrip(model);
        table = new ChangeTable(model);
        plot = new DurationPlot(model);
        notes = new NotesPanel(model);
        modelButton = Buttons.secondary(keys.on("M", "Model", this::chooseModel));
        fullMotors = keys.on("F", "Full motors only", model::turnFullMotorsOnly);
        figures = FXCollections.observableArrayList(progress, Buttons.secondary(fullMotors), modelButton);
        keys.on("W", "Trim changes", this::toTable).at(table);
        keys.on("H", "History", strip::requestFocus).at(strip);
        keys.on("Enter", "Only the flights of the picked change", this::turnOnlyItsFlights);
        axis.key(keys.on("V", "Against margin or a setting", this::toPlot)).onChosen(model.axisProperty()::set);
        notes.key(keys.on("/", "Search notes", notes::search));
        keys.on("Esc", "Back: end the search, show all flights", this::back);
        keys.hint("↑ ↓", "pick a change");
        keys.hint("Enter", "its flights");
        keys.hint("H ← →", "pick a flight");
        keys.hint("V", "against margin, setting …");
        keys.hint("/", "search notes");
        page = page();
        empty = empty(tools);
        node.show(page, empty);
        String style = ReviewView.class.getResource("review.css").toExternalForm();
        node.getStylesheets().add(style);
        model.answerProperty().subscribe(this::show);
        model.loadedProperty().subscribe(() -> show(model.answerProperty().get()));
        model.axisProperty().subscribe(now -> tellPlot());
        model.fullMotorsOnlyProperty()
                .subscribe(full -> fullMotors.labelProperty().set(full ? "All motors" : "Full motors only"));
    }

    private HBox page() {
        left.setMinSize(0, 0);
        VBox top = Lay.grow(Lay.column(
                0,
                Lay.styled(
                        Lay.row(
                                12,
                                Words.caption("Which trim change raised the time?"),
                                Lay.space(),
                                flights,
                                new KeyCap("W")),
                        "table-caption"),
                Lay.grow(table)));
        left.add(top);
        SayingPanel says = SayingPanel.ofChange(model);
        below.getChildren()
                .setAll(half(says), Lay.styled(new javafx.scene.layout.Region(), "upright-hairline"), half(notes));
        below.getStyleClass().add("below-table");
        left.add(below);
        VBox.setVgrow(below, javafx.scene.layout.Priority.NEVER);
        Sheet chart = new Sheet();
        plotWords.setMinHeight(0);
        StackPane drawn = new StackPane(plot, plotWords);
        drawn.setMinSize(0, 0);
        chart.section(axis, Lay.grow(drawn));
        Lay.grow(chart.getChildren().get(0));
        Sheet basis = new Sheet();
        basis.add(SayingPanel.ofBasis(model));
        basis.getStyleClass().add("basis");
        right.getChildren().setAll(Lay.grow(chart), basis);
        HBox.setHgrow(right, javafx.scene.layout.Priority.SOMETIMES);
        right.getStyleClass().add("review-right");
        HBox all = Lay.styled(Lay.row(12, Lay.grow(left), right), "page");
        all.setFillHeight(true);
        return all;
    }

    private static <N extends javafx.scene.layout.Region> N half(N part) {
        part.setMinWidth(0);
        part.setPrefWidth(100);
        return Lay.grow(part);
    }

    private Node empty(Tools tools) {
        Button hall = Buttons.primary(
                keys.action("Go to the Hall", () -> tools.showing().set(PlaceId.HALL)));
        Label says =
                Words.prose("Every flight will stand here at its time, on the version it flew; with two values of a"
                        + " setting flown on one day, Review says which raised the time and how sure that is.");
        says.setMaxWidth(520);
        VBox box = Lay.column(12, Words.head("No flight yet"), says, hall);
        box.setMaxSize(javafx.scene.layout.Region.USE_PREF_SIZE, javafx.scene.layout.Region.USE_PREF_SIZE);
        Sheet sheet = new Sheet();
        sheet.section(box);
        sheet.setMaxSize(javafx.scene.layout.Region.USE_PREF_SIZE, javafx.scene.layout.Region.USE_PREF_SIZE);
        return sheet;
    }

    private void show(@Nullable ModelReview answer) {
        boolean loaded = model.loadedProperty().get();
        Lay.show(page, answer != null);
        Lay.show(empty, loaded && answer == null);
        for (Action action : keys.actions()) {
            action.enabledProperty().set(answer != null);
        }
        if (answer == null) {
            subtitle.set(loaded ? "" : "reading the flights …");
            return;
        }
        subtitle.set(answer.model().name() + ", "
                + ReviewWords.count(answer.points().size(), "flight")
                + (answer.input().fullMotorsOnly() ? ", full motors only" : ""));
        flights.setText(ReviewWords.count(answer.counted(), "flight")
                + (answer.atLeast() == 0 ? "" : ", " + answer.atLeast() + " of them \"at least\"")
                + "; 90 % intervals");
        ReviewAxis chosen = ReviewAxis.of(answer).stream()
                .filter(a -> a.same(model.axisProperty().get()))
                .findFirst()
                .orElse(ReviewAxis.MARGIN);
        axis.offer(ReviewAxis.of(answer), chosen);
        tellPlot();
    }

    /** Fits the parts to the room: with little width one of table and plot is in front, W and V turn them. */
    private void fold(double widthEm, double heightEm, double emPx) {
        narrow = widthEm < NARROW_EM;
        boolean low = heightEm < LOW_EM;
        table.em(emPx);
        strip.low(low);
        below.pseudoClassStateChanged(LOW, low);
        right.pseudoClassStateChanged(LOW, narrow);
        front();
    }

    private void front() {
        Lay.show(left, !narrow || !plotInFront);
        Lay.show(right, !narrow || plotInFront);
    }

    private void toTable() {
        plotInFront = false;
        front();
        table.requestFocus();
    }

    private void toPlot() {
        plotInFront = true;
        front();
        axis.open();
    }

    private void tellPlot() {
        ReviewAxis now = model.axisProperty().get();
        axis.box().getSelectionModel().select(now);
        int count = plot.count();
        axis.quietly("n = " + count + (count == 0 ? "" : ", open marks are \"at least\""));
        plot.setVisible(count > 0);
        plotWords.setText(
                count > 0
                        ? ""
                        : now.isMargin()
                                ? "No flight has a margin: the model needs its geometry and balance, on the Bench or"
                                        + " from an airframe sheet. V draws the times against a setting."
                                : "No flight that counts tells its " + now.name() + ".");
    }

    /** Shows the model of this id. */
    public void show(String modelId) {
        model.pick(modelId);
    }

    private void chooseModel() {
        menu.getItems().clear();
        for (Model one : model.modelsProperty().get()) {
            MenuItem item = new MenuItem(one.name());
            item.setOnAction(event -> model.pick(one));
            menu.getItems().add(item);
        }
        menu.show(modelButton, Side.BOTTOM, 0, 0);
    }

    private void turnOnlyItsFlights() {
        if (notes.leaveSearch()) {
            return;
        }
        model.onlyItsFlightsProperty().set(!model.onlyItsFlightsProperty().get());
    }

    private void back() {
        if (!model.searchProperty().get().isEmpty()) {
            model.searchProperty().set("");
            table.requestFocus();
        } else if (model.onlyItsFlightsProperty().get()) {
            model.onlyItsFlightsProperty().set(false);
        } else if (model.flightProperty().get() != null) {
            model.flightProperty().set(null);
        } else if (narrow && plotInFront) {
            toTable();
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
        return strip;
    }

    @Override
    public ObservableValue<Keys> keys() {
        return new ReadOnlyObjectWrapper<>(keys).getReadOnlyProperty();
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
        table.requestFocus();
    }

    @Override
    public void hidden() {
        model.detach();
    }

    /** The sign of a flight that was cut short. */
    private static final class AtLeastSign extends Drawing {

        private AtLeastSign() {
            wish(1, 1.8);
        }

        @Override
        protected void paint(Pen pen) {
            pen.mark(
                    MarkShape.CIRCLE,
                    Token.INK_2,
                    MarkStyle.AT_LEAST,
                    pen.width() / 2,
                    pen.height() / 2 + pen.px(4),
                    8.5);
        }
    }
}
