package org.rafterbook.ui.review;

import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Comparison;
import org.rafterbook.review.HandlingSummary;
import org.rafterbook.review.SameDayResult;
import org.rafterbook.ui.chart.IntervalBar;
import org.rafterbook.ui.chart.IntervalHead;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.kit.EffectWordView;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.ClockTime;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewChange;
import org.rafterbook.work.ReviewWords;

/** Every pair of values that were changed into each other: how they were compared, the interval and the word. */
final class ChangeTable {

    private static final String NONE =
            "No setting was changed yet, so there is nothing to compare. Change one in the Hall"
                    + " and fly both values on one day, turn about: two flights of each are the least.";
    private static final int FEW = 3;
    private static final double LEAST_REACH = 10;
    private static final double MOST_REACH = 30;
    private static final double TWO_LINES_EM = 2.72;

    private final ReviewModel model;
    private final Table<ReviewChange> table = new Table<>("Trim changes compared");
    private final Label none = Words.prose("");
    private final Label effectHead = Lay.styled(new Label(), "effect-head");
    private final Table<ReviewChange>.Column forest;
    private Map<Integer, String> names = Map.of();
    private IntervalBar.Range range = new IntervalBar.Range(-LEAST_REACH, LEAST_REACH, LEAST_REACH / 2);
    private double usualS;
    private boolean complete;
    private boolean filling;

    ChangeTable(ReviewModel model) {
        this.model = model;
        none.setMaxWidth(460);
        table.view().setPlaceholder(none);
        table.view().getStyleClass().add("change-table");
        table.rowHeight(TWO_LINES_EM);
        table.node("what changed", 11.6, ChangeTable::title).grow();
        table.node("from, to;\nclean", 8.4, this::pair);
        table.node("compared", 6, ChangeTable::compared);
        table.node("effect", 6.2, this::effect).head(effectHead);
        forest = table.node("", 7.6, this::interval).styled("forest");
        table.node("in words", 12.4, this::word);
        table.node("upsets\nrecovered", 5.6, ChangeTable::recovered);
        table.selectedProperty().subscribe(change -> {
            if (!filling && change != null) {
                model.changeProperty().set(change);
            }
        });
        model.part(this::fill);
        model.part(this::select, model.changeProperty());
    }

    Table<ReviewChange> node() {
        return table;
    }

    TableView<ReviewChange> view() {
        return table.view();
    }

    private void select() {
        ReviewChange change = model.changeProperty().get();
        if (change != null && change != table.selected()) {
            filling = true;
            table.select(change);
            filling = false;
        }
    }

    private void fill() {
        ModelReview answer = model.answer();
        filling = true;
        List<ReviewChange> changes = answer == null ? List.of() : answer.changesToTell();
        names = answer == null ? Map.of() : answer.versionNames();
        usualS = answer == null ? Double.NaN : answer.usualTimeS();
        complete = answer != null && answer.isComplete();
        none.setText(answer == null ? "" : NONE);
        double reach = changes.stream()
                .map(this::drawn)
                .mapToDouble(Drawn::reach)
                .max()
                .orElse(0);
        reach = Math.min(MOST_REACH, Math.max(LEAST_REACH, Math.ceil(reach / 10) * 10));
        range = new IntervalBar.Range(-reach, reach, reach / 2);
        forest.head(new IntervalHead(range));
        effectHead.setText(Double.isNaN(usualS) ? "effect" : "effect, at\nusual " + ClockTime.minutesSeconds(usualS));
        table.rows(changes);
        filling = false;
    }

    /** An effect in per cent with its 90 % interval, and the fewest flights on a side; null where there is none. */
    private record Drawn(
            @Nullable Double effect,
            @Nullable Double low,
            @Nullable Double high,
            int fewest) {

        /** Per cent on each side of 0 that hold it. */
        double reach() {
            return low == null || high == null ? 0 : Math.max(Math.abs(low), Math.abs(high));
        }
    }

    /** What the effects say; until they are computed, what flights of one day say by themselves. */
    private Drawn drawn(ReviewChange change) {
        SameDayResult day = complete ? null : change.sameDay();
        return day == null
                ? new Drawn(
                        change.effectPercent(),
                        change.lowPercent(),
                        change.highPercent(),
                        Math.min(change.flightsFrom(), change.flightsTo()))
                : new Drawn(
                        day.effectPercent(),
                        day.lowPercent(),
                        day.highPercent(),
                        Math.min(day.flightsFrom(), day.flightsTo()));
    }

    private static Node title(ReviewChange change) {
        return twoLines(
                Words.bold(
                        change.comparison() == Comparison.MOVED_TOGETHER
                                ? change.setting().label() + " and " + String.join(" and ", change.togetherWith())
                                : change.setting().label()),
                Words.small(ReviewWords.value(change, change.to()) + ", was "
                        + change.from().label()));
    }

    private static Node compared(ReviewChange change) {
        String word = change.comparison().word();
        int last = word.lastIndexOf(' ');
        return change.comparison() == Comparison.SAME_DAY
                ? Words.body(word)
                : twoLines(Words.body(word.substring(0, last)), Words.body(word.substring(last + 1)));
    }

    private Node pair(ReviewChange change) {
        return twoLines(
                Lay.row(
                        4,
                        new MarkView(FlightMarks.of(change.fromVersion())),
                        Words.body(names.getOrDefault(change.fromVersion(), "") + " →"),
                        new MarkView(FlightMarks.of(change.toVersion())),
                        Words.body(names.getOrDefault(change.toVersion(), ""))),
                Words.hint(change.flightsFrom() + " and " + change.flightsTo() + " flights"));
    }

    private Node effect(ReviewChange change) {
        Double effect = drawn(change).effect();
        if (effect == null) {
            return Words.hint("–");
        }
        boolean joint = complete && change.comparison() == Comparison.MOVED_TOGETHER;
        Label percent = Words.bold(
                (joint ? change.togetherWith().size() > 1 ? "all " : "both " : "") + ReviewWords.percent(effect));
        return Double.isNaN(usualS)
                ? percent
                : twoLines(percent, Words.small(ClockTime.difference(usualS * effect / 100)));
    }

    private Node interval(ReviewChange change) {
        Drawn drawn = drawn(change);
        Double low = drawn.low();
        Double high = drawn.high();
        Double effect = drawn.effect();
        return new IntervalBar(
                range,
                low == null || high == null || effect == null
                        ? null
                        : new IntervalBar.Interval(low, effect, high, drawn.fewest() < FEW));
    }

    private Node word(ReviewChange change) {
        if (complete || change.comparison() == Comparison.ONE_SIDE_UNFLOWN) {
            return new EffectWordView(change.word());
        }
        SameDayResult day = change.sameDay();
        return day == null
                ? Words.hint("to come")
                : twoLines(
                        Words.body("same day, " + day.flightsFrom() + " and " + day.flightsTo()),
                        Words.hint("effect to come"));
    }

    private static Node recovered(ReviewChange change) {
        return twoLines(Words.body(counts(change.handlingFrom())), Words.body(counts(change.handlingTo())));
    }

    private static String counts(HandlingSummary handling) {
        return handling.recovered().isKnown() ? handling.recovered().counts() : "–";
    }

    private static Node twoLines(Node first, Node second) {
        var both = Lay.column(0, first, second);
        both.setAlignment(Pos.CENTER_LEFT);
        return both;
    }
}
