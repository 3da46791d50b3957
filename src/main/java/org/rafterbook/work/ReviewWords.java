package org.rafterbook.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Level;
import org.rafterbook.review.SameDayResult;
import org.rafterbook.units.QuantityFormat;

/** What a review says, in sentences; the same on screens and on the command line. */
public final class ReviewWords {

    private ReviewWords() {}

    /** A value of the change's setting with its unit, such as 146 mm. */
    public static String value(ReviewChange change, Level level) {
        return ReviewLevels.show(change.setting(), level);
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

    /** A band of whole per cents, such as −1 to +9 %. */
    public static String band(double low, double high) {
        return signed(low) + " to " + percent(high);
    }

    private static String signed(double percent) {
        String text = QuantityFormat.rounded(percent, 0);
        return text.equals("−0") || text.equals("0") ? "0" : percent > 0 ? "+" + text : text;
    }

    /** A time as minutes and seconds, such as 9:50. */
    public static String time(double seconds) {
        long s = Math.round(seconds);
        return String.format(Locale.ROOT, "%d:%02d", s / 60, s % 60);
    }

    /** A count with its noun, such as "1 flight". */
    public static String count(int n, String noun) {
        return n + " " + noun + (n == 1 ? "" : "s");
    }

    /** Everything to be said of a change, the verdict first. */
    public static List<String> sentences(ReviewAnswer answer, ReviewChange change) {
        List<String> sentences = new ArrayList<>();
        sentences.add(verdict(change));
        SameDayResult sameDay = change.sameDay();
        if (sameDay != null) {
            sentences.add(basis(answer, change));
            Double low = change.lowPercent();
            Double high = change.highPercent();
            if (low != null && high != null && change.word() == EffectWord.NO_CLEAR_DIFFERENCE) {
                double most = Math.max(Math.abs(low), Math.abs(high));
                sentences.add("That is not \"no effect\": one of " + QuantityFormat.rounded(most, 0)
                        + " % could still hide here.");
            }
            if (sameDay.orderNotMixed()) {
                sentences.add(
                        "Order not mixed: all flights of one value came first, so warming-up could be the cause.");
            }
        }
        String missing = missing(change);
        if (missing != null) {
            sentences.add(missing);
        }
        return sentences;
    }

    private static String verdict(ReviewChange change) {
        String what = change.setting().label() + ", " + change.from().label() + " to " + value(change, change.to());
        Double effect = change.effectPercent();
        if (effect == null) {
            return what + ": " + change.word().word() + ".";
        }
        Double low = change.lowPercent();
        Double high = change.highPercent();
        String duration = change.word().up() || change.word().down() ? " duration" : "";
        return what + ": " + change.word().word() + duration + ", best guess " + percent(effect)
                + (low == null || high == null ? "" : " (90 % interval " + band(low, high) + ")") + ".";
    }

    private static String basis(ReviewAnswer answer, ReviewChange change) {
        int atLeast = (int) answer.points().stream()
                .filter(p -> answer.enters(p) && p.atLeast() && holds(p, change))
                .count();
        return "Compared on one day: " + count(change.flightsFrom(), "clean flight") + " with the first value and "
                + change.flightsTo() + " with the second on " + count(change.commonDays(), "common day")
                + ", at equal turns and air"
                + (atLeast == 0 ? "." : "; " + atLeast + " cut short count only as \"at least\" and are not in it.");
    }

    private static boolean holds(ReviewPoint point, ReviewChange change) {
        Level level = point.flight().settings().get(change.setting().key());
        return level != null && (level.same(change.from()) || level.same(change.to()));
    }

    /** Why there is no full answer and what is needed next; null where there is one. */
    public static @Nullable String missing(ReviewChange change) {
        return switch (change.comparison()) {
            case SAME_DAY ->
                change.probabilityRaised() == null
                        ? "One flight of each a day, or times that do not differ, give no interval: fly two of each"
                                + " on one day."
                        : null;
            case ACROSS_DAYS ->
                "Not compared on one day: no day holds clean flights of both with all else equal. Fly both on one"
                        + " day, turn about.";
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
    public static List<String> basis(ReviewAnswer answer) {
        List<String> sentences = new ArrayList<>();
        sentences.add(count(answer.counted(), "flight") + " on " + count(answer.versions(), "version") + ", "
                + count(answer.riggings().size(), "rigging") + ", " + count(answer.trimChanges(), "change") + ".");
        if (answer.atLeast() > 0) {
            sentences.add(answer.atLeast() + " cut short: they count as \"at least\".");
        }
        if (answer.waiting() > 0) {
            sentences.add(count(answer.waiting(), "flight") + " of the open trial enter when it is judged.");
        }
        int leftOut = answer.leftOut().size();
        if (leftOut > 0) {
            sentences.add(count(leftOut, "flight") + " left out, each with its reason beside it.");
        }
        long noTurns = answer.points().stream()
                .filter(p -> answer.enters(p) && p.flight().motor().turnsUsed() == null)
                .count();
        if (noTurns > 0) {
            sentences.add(
                    noTurns == answer.counted()
                            ? "No turns were logged: more turns cannot be told from better trim."
                            : noTurns + " without turns: the day's mean stands in.");
        }
        long assumed = answer.points().stream()
                .filter(p -> answer.enters(p) && p.flight().humidityAssumed())
                .count();
        if (assumed > 0) {
            sentences.add(assumed + " with humidity taken as 50 %.");
        }
        return sentences;
    }
}
