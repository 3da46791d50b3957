package org.rafterbook.work;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Estimate;
import org.rafterbook.review.Level;
import org.rafterbook.review.SameDayResult;
import org.rafterbook.review.SeasonFigures;
import org.rafterbook.units.Counted;
import org.rafterbook.units.QuantityFormat;

/** What a review says, in sentences; the same on screens and on the command line. */
public final class ReviewWords {

    private static final String NOT_ON_ONE_DAY = "Not compared on one day: no day holds clean flights of both with all"
            + " else equal. Fly both on one day, turn about.";

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

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

    /** Everything to be said of a change: the statement first, then the same-day comparison, or that there is none. */
    public static List<String> sentences(ReviewChange change) {
        return change.said().sentences();
    }

    /** Why there is no same-day comparison, or none with an interval, and what is needed; null where there is one. */
    public static @Nullable String sameDayMissing(ReviewChange change) {
        SameDayResult sameDay = change.sameDay();
        return sameDay == null
                ? NOT_ON_ONE_DAY
                : sameDay.low() == null
                        ? "Too few flights for an interval: each day holds only one of each value."
                        : null;
    }

    /** Why there is no effect and what is needed next; null where there is one. */
    public static @Nullable String missing(ReviewChange change) {
        if (change.effectPercent() != null) {
            return null;
        }
        return switch (change.comparison()) {
            case SAME_DAY, ACROSS_DAYS -> "The effect is not computed yet.";
            case MOVED_TOGETHER ->
                "Always changed together with " + String.join(" and ", change.togetherWith())
                        + ": cannot be told apart. Fly one of them changed alone.";
            case ONE_SIDE_UNFLOWN ->
                "No clean flight with " + unflown(change) + " yet: fly two or more that nothing cuts short.";
        };
    }

    private static String unflown(ReviewChange change) {
        if (change.flightsFrom() == 0 && change.flightsTo() == 0) {
            return "either value";
        }
        return value(change, change.flightsFrom() == 0 ? change.from() : change.to());
    }

    /** What the answer to a change rests on: the flights at each value, the days that hold both, what was held equal. */
    public static List<String> basis(ModelReview answer, ReviewChange change) {
        List<String> sentences = new ArrayList<>();
        sentences.add("What \u201c" + change.setting().label() + " "
                + change.from().label() + " \u2192 " + value(change, change.to()) + "\u201d rests on:");
        List<ReviewPoint> from = at(answer, change, change.from());
        List<ReviewPoint> to = at(answer, change, change.to());
        sentences.add("At " + value(change, change.from()) + ": " + flights(answer, from));
        sentences.add("At " + value(change, change.to()) + ": " + flights(answer, to));
        Set<LocalDate> both = new TreeSet<>(days(answer, from));
        both.retainAll(days(answer, to));
        sentences.add(
                both.isEmpty()
                        ? "No day holds clean flights at both."
                        : "Clean flights at both on "
                                + both.stream().map(DAY::format).collect(Collectors.joining(", ")) + ".");
        return sentences;
    }

    private static List<ReviewPoint> at(ModelReview answer, ReviewChange change, Level level) {
        return answer.points().stream()
                .filter(p -> {
                    Level flown = p.flight().settings().get(change.setting().key());
                    return flown != null && flown.same(level) && !p.waiting();
                })
                .toList();
    }

    private static String flights(ModelReview answer, List<ReviewPoint> points) {
        int clean = (int) points.stream()
                .filter(p -> answer.enters(p) && p.flight().isExact())
                .count();
        int atLeast = (int)
                points.stream().filter(p -> answer.enters(p) && p.atLeast()).count();
        int out = (int) points.stream().filter(p -> !p.counts()).count();
        int aside = points.size() - clean - atLeast - out;
        String versions = points.stream().map(ReviewPoint::version).distinct().collect(Collectors.joining(", "));
        return Counted.of(clean, "clean flight") + " on "
                + Counted.of(days(answer, points).size(), "day")
                + (atLeast == 0 ? "" : ", " + atLeast + " cut short and counted as \u201cat least\u201d")
                + (out == 0 ? "" : ", " + out + " left out")
                + (aside == 0 ? "" : ", " + aside + " on a part of a motor set aside")
                + (versions.isEmpty() ? "." : "; flown on " + versions + ".");
    }

    private static Set<LocalDate> days(ModelReview answer, List<ReviewPoint> points) {
        return points.stream()
                .filter(p -> answer.enters(p) && p.flight().isExact())
                .map(p -> p.flight().sessionDate())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String listed(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** Every flight that is left out, with its reason. */
    public static List<String> leftOut(ModelReview answer) {
        return answer.leftOut().stream()
                .map(point -> "Left out: flight " + point.flight().orderInSession() + " of "
                        + DAY.format(point.flight().sessionDate()) + ", "
                        + point.flight().outcome().reason() + ".")
                .toList();
    }

    /** What the whole review rests on, one sentence each. */
    public static List<String> basis(ModelReview answer) {
        List<String> sentences = new ArrayList<>();
        sentences.add(Counted.of(answer.counted(), "flight") + " on " + Counted.of(answer.versions(), "version") + ", "
                + Counted.of(answer.riggings().size(), "rigging") + ", " + Counted.of(answer.trimChanges(), "change")
                + ".");
        if (answer.waiting() > 0) {
            sentences.add(Counted.of(answer.waiting(), "flight") + " of the open trial enter when it is judged.");
        }
        SeasonFigures season = answer.season();
        if (season != null) {
            sentences.add(
                    season.heldEqual().isEmpty()
                            ? "Every effect is as flown: nothing else that was logged differed."
                            : "Every effect is what is left with " + listed(season.heldEqual()) + " held equal.");
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
