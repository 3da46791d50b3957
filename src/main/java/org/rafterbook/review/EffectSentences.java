package org.rafterbook.review;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Counted;

/** Says in words what is known of one change; effects in whole per cent, each with its interval and flights. */
final class EffectSentences {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    /** Both numbers must be beyond this before opposite signs are called a disagreement, per cent. */
    private static final double WORTH_A_SIGN = 2;

    /** Stated chances above this come true less often: .59 as .51, .78 as .65 in simulated seasons. */
    private static final double MOST_SAID = 0.5;

    private final ReviewInput input;
    private final ChangeEffect change;
    private final Verdict verdict;
    private final @Nullable EffectContext context;
    private final List<String> sentences = new ArrayList<>();

    EffectSentences(ReviewInput input, ChangeEffect change, Verdict verdict, @Nullable EffectContext context) {
        this.input = input;
        this.change = change;
        this.verdict = verdict;
        this.context = context;
    }

    /** The change with everything that is to be said of it. */
    ChangeEffect complete() {
        switch (change.comparison()) {
            case SAME_DAY, ACROSS_DAYS -> judged();
            case MOVED_TOGETHER -> movedTogether();
            case ONE_SIDE_UNFLOWN -> unflown();
        }
        sameDay();
        ceiling();
        confirmation();
        return change.with(sentences);
    }

    private void judged() {
        Estimate effect = change.effect();
        if (effect == null || context == null) {
            sentences.add(name() + ": " + flights() + ", compared "
                    + (change.comparison() == Comparison.SAME_DAY ? "on the same day." : "only across days."));
            return;
        }
        if (change.word() == Word.NO_CLEAR_DIFFERENCE) {
            sentences.add(name() + ": no clear difference (" + Percent.signed(effect.effectPercent())
                    + ", 90 % interval " + band(effect) + "). " + capital(flights()) + ".");
            double hidden = Math.max(Math.abs(effect.lowPercent()), Math.abs(effect.highPercent()));
            sentences.add(
                    Percent.isNothing(hidden)
                            ? "A difference, if there is any, is smaller than 1 %."
                            : "That is not \u201cno effect\u201d: an effect of " + Percent.plain(hidden)
                                    + " could still hide here" + wouldShow(hidden / 100, context) + ".");
        } else {
            sentences.add(name() + ": " + change.word().word() + " the time, best guess "
                    + Percent.signed(effect.effectPercent()) + " (90 % interval " + band(effect) + "). "
                    + capital(flights()) + ".");
        }
        if (change.comparison() == Comparison.ACROSS_DAYS) {
            sentences.add(acrossDays(context));
        }
        if (effect.sd() > 0.9 * context.season().levelScale()) {
            sentences.add("The flights say almost nothing about this change.");
        }
        for (Pair other : context.hardToTell()) {
            sentences.add("Hard to tell from " + name(input.setting(other.setting()), other.from(), other.to())
                    + ": what one gains the other loses. Fly one of them without the other.");
        }
        Double best = change.probabilityBest();
        if (context.likeliestBest() && best != null && change.word().isRaise()) {
            sentences.add("Of the changes judged by themselves it is the likeliest to have raised the time most, "
                    + Figures.oddsAtLeast(Math.min(best, MOST_SAID)) + ".");
        }
        turns(effect, context);
    }

    private static String wouldShow(double gain, EffectContext known) {
        OptionalInt each =
                FlightsNeeded.perSetting(gain, Percent.asPrinted(known.season().flightScatter()), 0.80);
        return each.isEmpty()
                ? ""
                : "; about " + each.getAsInt() + " + " + each.getAsInt()
                        + " flights alternating on one day would show it";
    }

    private String acrossDays(EffectContext known) {
        Double scatter = known.season().dayScatter();
        return "Compared only on different days (" + change.daysFrom() + " and " + days(change.daysTo()) + "): "
                + (scatter == null
                        ? "how far the day alone moves your times cannot be told, as no day holds two flights that count."
                        : "the day alone moves your times by about " + Percent.scatter(scatter) + ".")
                + " Fly both on one day.";
    }

    private void movedTogether() {
        Estimate joint = change.effect();
        String together = name() + " and " + partners() + " always changed together: they cannot be told apart.";
        if (joint == null) {
            sentences.add(together + " " + capital(flights()) + ".");
            unlogged();
            return;
        }
        sentences.add(together + " Together: " + Percent.signed(joint.effectPercent()) + " (90 % interval "
                + band(joint) + "). " + capital(flights()) + ".");
        if (context != null && !verdict.onOneDay()) {
            sentences.add(acrossDays(context));
        }
        unlogged();
    }

    /** What moved together only because nobody noted it at one of the two values. */
    private void unlogged() {
        unlogged("turns", "Turns are", f -> f.motor().fullTurns() != null);
        unlogged("air density", "The air is", f -> f.densityKgM3() != null);
        unlogged("motor", "The motor is", f -> f.motor().motorId() != null);
    }

    private void unlogged(String partner, String lead, Predicate<ReviewFlight> noted) {
        boolean from = clean(change.from()).anyMatch(noted);
        boolean to = clean(change.to()).anyMatch(noted);
        if (from != to && verdict.names().contains(partner)) {
            sentences.add(lead + " noted at "
                    + change.setting().show(from ? change.from() : change.to()) + " only, not at "
                    + change.setting().show(from ? change.to() : change.from())
                    + ": what was not noted cannot be held equal. Note it with both.");
        }
    }

    private Stream<ReviewFlight> clean(Level level) {
        return counted(level).filter(ReviewFlight::isExact);
    }

    private String partners() {
        return verdict.together().isEmpty()
                ? "something else"
                : verdict.together().stream().map(this::changeOf).collect(Collectors.joining(" and "));
    }

    private String changeOf(Partner partner) {
        return partner.from() == null || partner.to() == null
                ? "the " + partner.name()
                : name(input.setting(partner.name()), partner.from(), partner.to());
    }

    private void unflown() {
        boolean neither = change.flightsFrom() == 0 && change.flightsTo() == 0;
        Level open = change.flightsFrom() == 0 ? change.from() : change.to();
        int cutShort = (change.flightsFrom() == 0 ? change.atLeastFrom() : 0)
                + (change.flightsTo() == 0 ? change.atLeastTo() : 0);
        String where = neither ? "at either value" : "at " + change.setting().show(open);
        String what = cutShort == 0
                ? "no flight " + where + " counts yet"
                : "no clean flight " + where + " yet, " + Counted.of(cutShort, "flight") + " there "
                        + (cutShort == 1 ? "was" : "were") + " cut short and "
                        + (cutShort == 1 ? "says" : "say") + " only \u201cat least\u201d";
        sentences.add(name() + ": no answer yet, " + what + ". " + capital(flights()) + ". "
                + (cutShort == 0
                        ? "Fly both values on one day, 3 + 3, alternating."
                        : "Fly both values again, alternating, so that nothing cuts a flight short: on fewer turns or with less"
                                + " launch torque."));
    }

    private void sameDay() {
        SameDayResult result = change.sameDay();
        if (result == null) {
            switch (change.comparison()) {
                case SAME_DAY, ACROSS_DAYS -> sentences.add("Not compared on one day with everything else equal.");
                case ONE_SIDE_UNFLOWN -> sentences.add("A same-day comparison needs clean flights at both, too.");
                case MOVED_TOGETHER -> {}
            }
            return;
        }
        Double low = result.lowPercent();
        Double high = result.highPercent();
        String interval = low == null || high == null
                ? "too few flights for an interval"
                : "90 % interval " + Percent.band(low, high);
        sentences.add("Same-day comparison: " + Percent.signed(result.effectPercent()) + " (" + interval + "), "
                + Counted.of(result.flightsFrom(), "flight") + " and " + result.flightsTo() + " on "
                + days(result.days()) + ".");
        if (result.orderNotMixed()) {
            sentences.add("Order not mixed, one value was always flown first: warming-up could be the cause.");
        }
        Estimate effect = change.effect();
        if (effect != null && disagrees(result, effect)) {
            sentences.add("The two ways of looking disagree: repeat A-B-A-B on one day.");
        }
    }

    private static boolean disagrees(SameDayResult result, Estimate effect) {
        Double se = result.se();
        double apart = Math.abs(result.effect() - effect.mean());
        boolean far = se != null && apart > 2 * se && !Percent.isNothing(Percent.of(apart));
        boolean opposite = result.effect() * effect.mean() < 0
                && Math.abs(result.effectPercent()) > WORTH_A_SIGN
                && Math.abs(effect.effectPercent()) > WORTH_A_SIGN;
        return far || opposite;
    }

    private void turns(Estimate effect, EffectContext known) {
        Double more = change.moreTurns();
        Estimate slope = known.season().turnsSlope();
        if (more == null || slope == null || Math.abs(Percent.of(slope.mean() * more)) < 1) {
            return;
        }
        sentences.add(change.setting().show(change.to()) + " was flown on about "
                + Percent.plain(Math.abs(Percent.of(more))) + (more > 0 ? " more" : " fewer") + " turns: of the "
                + Percent.signed(Percent.of(effect.mean() + slope.mean() * more)) + " as flown, about "
                + Percent.signed(Percent.of(slope.mean() * more)) + " is turns.");
    }

    private void ceiling() {
        if (change.ceilingLimited()) {
            sentences.add("Ceiling-limited, a third or more of the flights at one of the values touched: "
                    + "this says more about the hall than the trim.");
        }
    }

    private void confirmation() {
        Confirmation confirmation = change.confirmation();
        if (confirmation == null) {
            return;
        }
        if (confirmation.laterDay() == null) {
            sentences.add("To be confirmed: fly both values again on a later day.");
            return;
        }
        SameDayResult later = confirmation.sameDay();
        Double low = later == null ? null : later.lowPercent();
        Double high = later == null ? null : later.highPercent();
        String says = later == null
                ? "nothing, as something else differed between their flights"
                : Percent.signed(later.effectPercent())
                        + (low == null || high == null
                                ? " (too few flights for an interval)"
                                : " (90 % interval " + Percent.band(low, high) + ")")
                        + ", " + Counted.of(later.flightsFrom(), "flight") + " and " + later.flightsTo();
        sentences.add("Flown again from " + DAY.format(confirmation.laterDay()) + " on; the later days alone say "
                + says + ".");
    }

    private String name() {
        return name(change.setting(), change.from(), change.to());
    }

    private static String name(SettingInfo setting, Level from, Level to) {
        return setting.label() + " " + from.label() + " \u2192 " + setting.show(to);
    }

    private String flights() {
        int cutShort = change.atLeastFrom() + change.atLeastTo();
        String common = change.commonDays() == 0
                ? noCommonDay()
                : ", " + days(change.commonDays()) + (change.commonDays() == 1 ? " holds both" : " hold both");
        long takenOut = input.flights().stream()
                .filter(f -> f.outcome().takenOut() && (isAt(f, change.from()) || isAt(f, change.to())))
                .count();
        return Counted.of(change.flightsFrom(), "clean flight") + " at "
                + change.setting().show(change.from()) + " and "
                + change.flightsTo() + " at " + change.setting().show(change.to()) + common
                + (cutShort == 0
                        ? ""
                        : "; " + Counted.of(cutShort, "cut-short flight") + (cutShort == 1 ? " counts" : " count")
                                + " as \u201cat least\u201d")
                + (takenOut == 0
                        ? ""
                        : "; " + takenOut + " left out by the flyer although flagged after "
                                + (takenOut == 1 ? "its" : "their") + " time was known or nobody knows when");
    }

    /** Days are counted by clean flights; where only these are missing, the flyer did fly both on one day. */
    private String noCommonDay() {
        Set<String> days = sessions(change.from());
        days.retainAll(sessions(change.to()));
        if (days.isEmpty()) {
            return ", no day holds both";
        }
        return change.flightsFrom() == 0 || change.flightsTo() == 0 ? "" : ", no day holds clean flights at both";
    }

    private boolean isAt(ReviewFlight flight, Level level) {
        Level flown = flight.settings().get(change.setting().key());
        return flown != null && flown.same(level);
    }

    private Set<String> sessions(Level level) {
        return counted(level).map(ReviewFlight::sessionId).collect(Collectors.toCollection(HashSet::new));
    }

    private Stream<ReviewFlight> counted(Level level) {
        return input.counted().stream().filter(flight -> isAt(flight, level));
    }

    private static String band(Estimate estimate) {
        return Percent.band(estimate.lowPercent(), estimate.highPercent());
    }

    private static String days(int days) {
        return Counted.of(days, "day");
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
