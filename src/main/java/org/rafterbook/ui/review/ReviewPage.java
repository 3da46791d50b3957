package org.rafterbook.ui.review;

import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.correct.ThatTimeForm;
import org.rafterbook.ui.kit.KeyCap;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Counted;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewPoint;

/**
 * What stands below the history: the table of changes over what is said of them, times and chances beside it. Where there
 * is little room one of table, sayings and charts is in front, and their keys turn them.
 */
final class ReviewPage {

    private static final double NARROW_EM = 78;
    private static final double LOW_EM = 56;

    /** Below this height two charts below each other would both be too low to be read. */
    private static final double ONE_CHART_EM = 62;

    private static final PseudoClass LOW = PseudoClass.getPseudoClass("low");

    /** What is in front where not all has room. */
    private enum Front {
        TABLE,
        SAYINGS,
        CHARTS
    }

    private final ReviewModel model;
    private final ChangeTable table;
    private final NotesPanel notes;
    private final TryNext tryNext;
    private final TrialsPanel trials;
    private final TimeAgainst times;
    private final ChanceToTouch touch;
    private final Faces plans = new Faces();
    private final Faces sayings = new Faces();
    private final HBox below;
    private final VBox tablePart;
    private final Sheet left = new Sheet();
    private final StackPane right = new StackPane();
    private final VBox column = Lay.column(12);
    private final HBox row = Lay.row(12);
    private final HBox node;
    private final Label flights = Words.hint("");
    private final Label claims = Words.small("");
    private final Set<String> decided = Set.of("T", "A", "X", "L", "U", "D");
    private boolean narrow;
    private final BiFunction<String, Runnable, ThatTimeForm> thatTime;
    private final Action different;
    private @Nullable ThatTimeForm form;
    private boolean low;
    private boolean oneChart;
    private boolean chanceInFront;
    private boolean anyJudged;
    private Front front = Front.TABLE;

    /**
     * @param thatTime opens the form that puts a flight right, and gets what brings the charts back
     */
    ReviewPage(
            ReviewModel model, Keys keys, QuantityFormat format, BiFunction<String, Runnable, ThatTimeForm> thatTime) {
        this.model = model;
        this.thatTime = thatTime;
        table = new ChangeTable(model);
        different = keys.on("D", "It was different that time", this::openThatTime);
        notes = new NotesPanel(model, different);
        trials = new TrialsPanel(model, keys, this::toTrials);
        tryNext = new TryNext(model, keys, this::toForm, this::toTrials);
        times = new TimeAgainst(model, keys);
        touch = new ChanceToTouch(model, format);
        keys.on("W", "Trim changes", this::toTable).at(table.view());
        faces(keys);
        times.choice().key(keys.on("V", "Against margin or a setting", this::toPlot));
        Action chance = keys.on("K", "Another chance to touch", this::takeNextChance);
        touch.section().beside(new KeyCap(chance.key()));
        chance.at(touch.section());
        claims.setWrapText(true);
        claims.setMinHeight(Label.USE_PREF_SIZE);
        tablePart = Lay.grow(Lay.column(
                0,
                Lay.styled(
                        Lay.row(
                                12,
                                Words.caption("Which trim change raised the time?"),
                                Lay.space(),
                                flights,
                                new KeyCap("W")),
                        "table-caption"),
                Lay.grow(table.node()),
                Lay.styled(new VBox(claims), "claims")));
        below = new HBox(half(plans), Lay.styled(new Region(), "upright-hairline"), half(sayings));
        below.getStyleClass().add("below-table");
        left.setMinSize(0, 0);
        left.add(tablePart);
        left.add(below);
        VBox.setVgrow(below, Priority.NEVER);
        right.getStyleClass().add("review-right");
        HBox.setHgrow(right, Priority.SOMETIMES);
        node = Lay.styled(Lay.row(12, Lay.grow(left), right), "page");
        node.setFillHeight(true);
        model.part(() -> show(model.answer()));
        model.flightProperty().subscribe(point -> {
            different.enabledProperty().set(point != null);
            if (point != null && !model.isTaking()) {
                sayings.bring(notes);
            }
        });
        model.changeProperty().subscribe(change -> {
            if (change != null && !model.isTaking() && model.flightProperty().get() == null) {
                sayings.bring(says);
            }
        });
    }

    private Node says = new Region();

    private void faces(Keys keys) {
        Node basis = new Basis(model, keys).node();
        Node handling = new HandlingPanel(model).node();
        Node goBack = new GoBackPanel(model, keys).node();
        says = new ChangeSays(model).node();
        plans.face(keys.on("N", "What to try next", this::toTryNext), tryNext.node())
                .face(keys.on("Y", "Trials", this::toTrials), trials.node())
                .face(keys.on("B", "Going back", () -> bring(plans, goBack, false)), goBack);
        sayings.face(keys.on("S", "What is said", () -> bring(sayings, says, false)), says)
                .face(
                        keys.on("/", "Notes", () -> {
                            bring(sayings, notes, false);
                            notes.search();
                        }),
                        notes)
                .face(keys.on("G", "Handling", () -> bring(sayings, handling, true)), handling)
                .face(keys.on("R", "Basis", () -> bring(sayings, basis, true)), basis);
    }

    Node node() {
        return node;
    }

    /** True for actions that a part of the page enables by itself. */
    boolean decides(Action action) {
        return decided.contains(action.key());
    }

    private static <N extends Region> N half(N part) {
        part.setMinWidth(0);
        part.setPrefWidth(100);
        return Lay.grow(part);
    }

    private void openThatTime() {
        ReviewPoint point = model.flightProperty().get();
        if (point != null) {
            ThatTimeForm opened = thatTime.apply(point.flight().id(), this::closeThatTime);
            form = opened;
            front = Front.CHARTS;
            turn();
            opened.opened();
        }
    }

    /** True while a form stands in the place of the charts. */
    boolean isInForm() {
        return form != null;
    }

    private void closeThatTime() {
        form = null;
        toTable();
    }

    private void toTryNext() {
        bring(plans, tryNext.node(), false);
    }

    private void toTrials() {
        bring(plans, trials.node(), true);
    }

    private void toForm() {
        bring(plans, tryNext.node(), true);
    }

    /**
     * Brings a content to the front of its half.
     *
     * @param large true for what is long: it takes the table's room too, as anything does whose key is pressed again
     */
    private void bring(Faces faces, Node content, boolean large) {
        boolean again = faces.isInFront(content) && front != Front.CHARTS;
        faces.bring(content);
        front = large || low || again ? Front.SAYINGS : Front.TABLE;
        turn();
        Node rolls = front == Front.TABLE ? table.view() : faces.rolling();
        if (rolls != null) {
            rolls.requestFocus();
        }
    }

    void toTable() {
        front = Front.TABLE;
        turn();
        table.view().requestFocus();
    }

    private void toPlot() {
        front = Front.CHARTS;
        chanceInFront = false;
        turn();
        times.choice().open();
    }

    private void takeNextChance() {
        boolean hidden = narrow ? front != Front.CHARTS : oneChart && !chanceInFront;
        if (hidden) {
            front = Front.CHARTS;
            chanceInFront = true;
            turn();
        } else {
            touch.takeNext();
        }
    }

    /** Goes from the search into what it found; false where the cursor was elsewhere. */
    boolean enter() {
        return notes.leaveSearch();
    }

    /** Leaves a form, the search, or what is in front of the table; false where none was so. */
    boolean back() {
        if (notes.isSearching()) {
            model.searchProperty().set("");
            toTable();
            return true;
        }
        if (tryNext.back() || trials.back()) {
            toTable();
            return true;
        }
        if (front != Front.TABLE) {
            toTable();
            return true;
        }
        return false;
    }

    private void show(@Nullable ModelReview answer) {
        if (answer != null) {
            flights.setText(Counted.of(answer.counted(), "flight")
                    + (answer.atLeast() == 0 ? "" : ", " + answer.atLeast() + " of them \"at least\"")
                    + (answer.changes().isEmpty() ? "" : "; 90 % intervals"));
            claims.setText(answer.claims().line());
            anyJudged = answer.isComplete() && answer.claims().judged() > 0;
            Lay.show(claims.getParent(), anyJudged && !low);
        }
    }

    /** Fits the parts to the room, in em; true where the height is low. */
    boolean fold(double widthEm, double heightEm) {
        narrow = widthEm < NARROW_EM;
        low = heightEm < LOW_EM;
        oneChart = !narrow && heightEm < ONE_CHART_EM;
        right.pseudoClassStateChanged(LOW, narrow);
        Pane charts = narrow ? row : column;
        column.getChildren().clear();
        row.getChildren().clear();
        charts.getChildren().setAll(half(times.node()), half(touch.node()));
        turn();
        return low;
    }

    private void turn() {
        Node beside = form == null ? (narrow ? row : column) : form.node();
        if (!right.getChildren().equals(List.of(beside))) {
            right.getChildren().setAll(beside);
        }
        Lay.show(times.node(), !oneChart || !chanceInFront);
        Lay.show(touch.node(), !oneChart || chanceInFront);
        boolean charts = narrow && front == Front.CHARTS;
        Lay.show(left, !charts);
        Lay.show(right, !narrow || charts);
        boolean sayingsInFront = front == Front.SAYINGS;
        Lay.show(tablePart, !sayingsInFront);
        VBox.setVgrow(below, sayingsInFront ? Priority.ALWAYS : Priority.NEVER);
        below.pseudoClassStateChanged(LOW, low || sayingsInFront);
        plans.fold(low && !sayingsInFront);
        sayings.fold(low && !sayingsInFront);
        Lay.show(claims.getParent(), anyJudged && !low);
    }
}
