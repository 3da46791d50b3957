package org.rafterbook.review;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Worded;

/**
 * A trial worth flying, with what it will show.
 *
 * @param setting the setting to compare
 * @param from one value
 * @param to the other value
 * @param open what is open about the two
 * @param keep what has to be kept, since it always moved with this one: labels of settings, the motor and the like
 * @param cautions what is to be known before the second value is tried, in sentences
 * @param forecast what the flights will show; null where too little was flown to tell how far times scatter
 * @param larger the smallest trial that would narrow the interval to the difference the flyer cares about; null with
 *     {@code forecast}
 */
public record TrialProposal(
        SettingInfo setting,
        Level from,
        Level to,
        Open open,
        List<String> keep,
        List<String> cautions,
        @Nullable Forecast forecast,
        @Nullable Forecast larger) {

    public TrialProposal {
        keep = List.copyOf(keep);
        cautions = List.copyOf(cautions);
    }

    /** What is open about two values. */
    public enum Open implements Worded {
        /** A value worth trying by the response curve. */
        WORTH_TRYING,
        /** They were never changed without something else. */
        MOVED_TOGETHER,
        /** They were compared only on different days. */
        ACROSS_DAYS,
        /** One of them has no flight that tells. */
        UNFLOWN,
        /** The interval leaves open whether there is a difference. */
        UNCLEAR,
        /** A claim that no later session has tested. */
        TO_BE_CONFIRMED;

        @Override
        public String word() {
            return Worded.super.word().replace('-', ' ');
        }
    }

    /** The plan, its order drawn with this seed. */
    public TrialPlan draw(long seed) {
        return TrialPlan.draw(setting, from, to, perSide(), seed);
    }

    /** Flights with each value. */
    public int perSide() {
        return forecast == null ? TrialPlan.USUAL_PER_SIDE : forecast.perSide();
    }

    /** Such as "Trial: propeller 320 or 300 mm, loop kept." */
    public String title() {
        return "Trial: " + setting.label() + " " + from.label() + " or " + setting.show(to) + kept() + ".";
    }

    private String kept() {
        return keep.isEmpty() ? "" : ", " + String.join(" and ", keep) + " kept";
    }

    /** The same as advice beside what always moved together: what to fly to separate it, and what that will show. */
    String toSeparate() {
        return "To separate them fly " + setting.label() + " " + from.label() + " and " + setting.show(to)
                + " alternating" + kept() + ". " + forecastInWords();
    }

    /** The trial, what it will show and why, sentence by sentence. */
    public List<String> sentences() {
        String why = switch (open) {
            case WORTH_TRYING -> "By the curve it is the value with the highest expected gain.";
            case MOVED_TOGETHER ->
                keep.isEmpty()
                        ? "So far the two values were never flown on one date."
                        : "So far " + setting.label() + " was never changed without " + String.join(" and ", keep)
                                + ".";
            case ACROSS_DAYS -> "So far the two values were compared only on different days.";
            case UNFLOWN -> "So far there are not clean flights at both.";
            case UNCLEAR -> "So far there is no clear answer.";
            case TO_BE_CONFIRMED -> "What was claimed has not been flown again on a later day.";
        };
        List<String> sentences = new ArrayList<>(List.of(title(), why));
        sentences.addAll(cautions);
        sentences.add(forecastInWords());
        return List.copyOf(sentences);
    }

    /** False where it is no use to fly it: the difference is known to be too small. */
    boolean isWorthFlying(double difference) {
        return forecast == null || !canBeSettled() || !forecast.isSettled(difference);
    }

    private boolean canBeSettled() {
        return switch (open) {
            case UNCLEAR, ACROSS_DAYS -> true;
            case WORTH_TRYING, MOVED_TOGETHER, UNFLOWN, TO_BE_CONFIRMED -> false;
        };
    }

    /** What is said in the place of a trial that is not worth flying. */
    String settled() {
        double widest = forecast == null ? 0 : Percent.of(forecast.widest());
        return "You are there, within what " + 2 * perSide() + " flights can show: " + setting.label() + " "
                + from.label() + " and " + setting.show(to) + " differ by "
                + (Percent.isNothing(widest) ? "less than 1 %" : "no more than " + Percent.plain(widest)) + " (90 %).";
    }

    private String forecastInWords() {
        if (forecast == null || larger == null) {
            return FlightsNeeded.trialSentence(perSide(), FlightsNeeded.USUAL_SCATTER);
        }
        String narrowed = Percent.halfWidth(larger.halfWidth());
        String more = narrowed.equals(Percent.halfWidth(forecast.halfWidth()))
                ? ""
                : " " + larger.perSide() + " + " + larger.perSide() + " would bring it to " + narrowed + ".";
        return forecast.sentence()
                + (forecast.hasLittleChance() ? " So few would hardly tell: fly more of each, or leave it." : "")
                + more;
    }
}
