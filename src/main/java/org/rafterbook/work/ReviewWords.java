package org.rafterbook.work;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Estimate;
import org.rafterbook.review.Level;
import org.rafterbook.review.SeasonFigures;
import org.rafterbook.units.Counted;
import org.rafterbook.units.QuantityFormat;

/** What a review says, in sentences; the same on screens and on the command line. */
public final class ReviewWords {

    private static final String NOT_ON_ONE_DAY = "Not compared on one day: no day holds clean flights of both with all"
            + " else equal. Fly both on one day, turn about.";

    private ReviewWords() {}

    /** A value of the change's setting with its unit, such as 146 mm. */
    public static String value(ReviewChange change, Level level) {
        return change.setting().show(level);
    }

    /** What changed, such as "wing edge 146 mm, was 149". */
    public static String title(ReviewChange change) {
        return change.setting().label() + " " + value(change, change.to()) + ", was "
                + change.from().label();
    }

    /** Whole per cent with its sign, such as +4 %. */
    public static String percent(double percent) {
        return signed(percent) + " %";
    }

    private static String signed(double percent) {
        String text = QuantityFormat.rounded(percent, 0);
        return text.equals("−0") || text.equals("0") ? "0" : percent > 0 ? "+" + text : text;
    }

    /** A count with its noun, such as "1 flight". */
    public static String count(int n, String noun) {
        return Counted.of(n, noun);
    }

    /** Everything to be said of a change: the statement first, then the same-day comparison, or that there is none. */
    public static List<String> sentences(ReviewChange change) {
        return change.said().sentences();
    }

    /** Why there is no full answer and what is needed next; null where there is one. */
    public static @Nullable String missing(ReviewChange change) {
        if (change.effectPercent() != null) {
            return change.sameDay() == null ? NOT_ON_ONE_DAY : null;
        }
        return switch (change.comparison()) {
            case SAME_DAY, ACROSS_DAYS -> "The effect is not computed yet.";
            case MOVED_TOGETHER ->
                "Always changed together with " + String.join(" and ", change.togetherWith())
                        + ": cannot be told apart. Fly one of them changed alone.";
            case ONE_SIDE_UNFLOWN -> "No clean flight with " + unflown(change) + " yet: fly two or more.";
        };
    }

    private static String unflown(ReviewChange change) {
        if (change.flightsFrom() == 0 && change.flightsTo() == 0) {
            return "either value";
        }
        return value(change, change.flightsFrom() == 0 ? change.from() : change.to());
    }

    /** What the whole review rests on, one sentence each. */
    public static List<String> basis(ModelReview answer) {
        List<String> sentences = new ArrayList<>();
        sentences.add(count(answer.counted(), "flight") + " on " + count(answer.versions(), "version") + ", "
                + count(answer.riggings().size(), "rigging") + ", " + count(answer.trimChanges(), "change") + ".");
        if (answer.waiting() > 0) {
            sentences.add(count(answer.waiting(), "flight") + " of the open trial enter when it is judged.");
        }
        SeasonFigures season = answer.season();
        if (season != null) {
            sentences.add(
                    "Every effect is what is left with turns, air density, order in the session, the season's trend"
                            + " and the motor held equal.");
            Estimate turns = season.turnsSlope();
            if (turns != null) {
                sentences.add("One per cent more turns gave about " + QuantityFormat.rounded(turns.mean(), 1)
                        + " % more time (90 % interval " + QuantityFormat.rounded(turns.low(), 1) + " to "
                        + QuantityFormat.rounded(turns.high(), 1) + ").");
            }
        }
        if (answer.claims().judged() > 0) {
            sentences.add(answer.claims().sentence());
        }
        sentences.addAll(answer.remarks());
        return sentences;
    }
}
