package org.rafterbook.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** Counts over simulated seasons how the effects, and before/after means beside them, stand against the truth. */
final class SeasonTally {

    private int seasons;
    private int flights;
    private int changes;
    private int compared;
    private int unflown;
    private int nothing;
    private int nothingRaised;
    private int notHelping;
    private int notHelpingRaised;
    private int gains;
    private int gainsRaised;
    private int seasonsWithFalse;
    private int joint;
    private int jointHeld;
    private int jointTold;
    private int held;
    private double squares;
    private double width;
    private int meansAnswered;
    private int meansFalse;
    private int meansNotHelping;
    private double meansSquares;
    private final double[] squaresBy = new double[2];
    private final int[] heldBy = new int[2];
    private final int[] countBy = new int[2];

    void add(SimulatedSeason season) {
        ReviewInput input = season.input();
        ReviewAnswer answer = Effects.of(input);
        seasons++;
        flights += input.flights().size();
        boolean anyFalse = false;
        for (ChangeEffect change : answer.changes()) {
            double truth = season.truth(change.setting().key(), change.from(), change.to());
            changes++;
            boolean raised = change.word() == Word.RAISED;
            if (Math.abs(truth) < 1e-12) {
                nothing++;
                nothingRaised += raised ? 1 : 0;
            }
            if (truth < 1e-12) {
                notHelping++;
                notHelpingRaised += raised ? 1 : 0;
                anyFalse |= raised;
            }
            if (truth >= Math.log(1.03)) {
                gains++;
                gainsRaised += raised ? 1 : 0;
            }
            switch (change.comparison()) {
                case SAME_DAY, ACROSS_DAYS -> addCompared(change, truth);
                case MOVED_TOGETHER -> addJoint(change, truth, season, input);
                case ONE_SIDE_UNFLOWN -> unflown++;
            }
            addMeans(input, change, truth);
        }
        seasonsWithFalse += anyFalse ? 1 : 0;
    }

    private void addCompared(ChangeEffect change, double truth) {
        Estimate effect = Objects.requireNonNull(change.effect());
        int kind = change.comparison() == Comparison.SAME_DAY ? 0 : 1;
        compared++;
        countBy[kind]++;
        squares += square(effect.mean() - truth);
        squaresBy[kind] += square(effect.mean() - truth);
        width += effect.high() - effect.low();
        boolean holds = effect.low() <= truth && truth <= effect.high();
        held += holds ? 1 : 0;
        heldBy[kind] += holds ? 1 : 0;
    }

    /** The true joint effect: own, and what each partner went through in the step that moved both. */
    private void addJoint(ChangeEffect change, double truth, SimulatedSeason season, ReviewInput input) {
        joint++;
        Estimate effect = change.effect();
        if (effect == null) {
            return;
        }
        double sum = truth;
        for (String other : change.togetherWith()) {
            sum += partner(change, other, season, input);
        }
        jointTold++;
        jointHeld += effect.low() <= sum && sum <= effect.high() ? 1 : 0;
    }

    private static double partner(ChangeEffect change, String other, SimulatedSeason season, ReviewInput input) {
        List<ReviewFlight> clean =
                input.flights().stream().filter(ReviewFlight::isExact).toList();
        List<TrimStep> steps = new ArrayList<>();
        for (int i = 1; i < clean.size(); i++) {
            steps.add(new TrimStep(clean.get(i - 1).settings(), clean.get(i).settings()));
        }
        steps.addAll(input.steps());
        for (TrimStep step : steps) {
            String own = change.setting().key();
            if (step.changed().contains(own) && step.changed().contains(other)) {
                if (step.from(own).same(change.from()) && step.to(own).same(change.to())) {
                    return season.truth(other, step.from(other), step.to(other));
                }
                if (step.from(own).same(change.to()) && step.to(own).same(change.from())) {
                    return season.truth(other, step.to(other), step.from(other));
                }
            }
        }
        throw new AssertionError(change.setting().key() + " never moved with " + other);
    }

    /** What means of the spells on either side of the change would have claimed: after better than before is a gain. */
    private void addMeans(ReviewInput input, ChangeEffect change, double truth) {
        String setting = change.setting().key();
        List<ReviewFlight> flown = input.flights();
        for (int i = 1; i < flown.size(); i++) {
            Level before = Objects.requireNonNull(flown.get(i - 1).settings().get(setting));
            Level after = Objects.requireNonNull(flown.get(i).settings().get(setting));
            if (before.same(change.from()) && after.same(change.to())) {
                double difference = spell(flown, i, 1) - spell(flown, i - 1, -1);
                meansAnswered++;
                meansSquares += square(difference - truth);
                if (truth < 1e-12) {
                    meansNotHelping++;
                    meansFalse += difference > 0 ? 1 : 0;
                }
                return;
            }
        }
    }

    private static double spell(List<ReviewFlight> flown, int start, int step) {
        double sum = 0;
        int count = 0;
        for (int i = start;
                i >= 0
                        && i < flown.size()
                        && flown.get(i).settings().equals(flown.get(start).settings());
                i += step) {
            sum += Math.log(flown.get(i).durationS());
            count++;
        }
        return sum / count;
    }

    double coverage() {
        return 100.0 * held / compared;
    }

    double rmse() {
        return 100 * Math.sqrt(squares / compared);
    }

    double nothingRaised() {
        return 100.0 * nothingRaised / nothing;
    }

    double power() {
        return gains == 0 ? 0 : 100.0 * gainsRaised / gains;
    }

    double comparedShare() {
        return 100.0 * compared / changes;
    }

    double jointCoverage() {
        return 100.0 * jointHeld / jointTold;
    }

    int jointTold() {
        return jointTold;
    }

    private static double square(double x) {
        return x * x;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                """
                %d seasons, %.1f flights and %.1f changes a season
                  compared %.0f %% of changes (same day %.0f %%, across days %.0f %%), moved together %.0f %%, unflown %.0f %%
                  90 %% bands hold %.1f %% (same day %.1f, across days %.1f), width %.1f points
                  RMSE %.2f points (same day %.2f, across days %.2f)
                  'raised' of changes that did nothing %.2f %%, of those with no gain %.2f %%, in %.1f %% of seasons
                  'raised' of true gains of 3 %% and more: %.1f %% (of %d)
                  joint effects: %d of %d told, bands hold %.1f %%
                  before/after means beside: RMSE %.2f points, a 'gain' for %.0f %% of changes with none""",
                seasons,
                (double) flights / seasons,
                (double) changes / seasons,
                comparedShare(),
                100.0 * countBy[0] / changes,
                100.0 * countBy[1] / changes,
                100.0 * joint / changes,
                100.0 * unflown / changes,
                coverage(),
                100.0 * heldBy[0] / countBy[0],
                100.0 * heldBy[1] / countBy[1],
                100 * width / compared,
                rmse(),
                100 * Math.sqrt(squaresBy[0] / countBy[0]),
                100 * Math.sqrt(squaresBy[1] / countBy[1]),
                nothingRaised(),
                100.0 * notHelpingRaised / notHelping,
                100.0 * seasonsWithFalse / seasons,
                power(),
                gains,
                jointTold,
                joint,
                jointCoverage(),
                100 * Math.sqrt(meansSquares / meansAnswered),
                100.0 * meansFalse / meansNotHelping);
    }
}
