package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What a season's model says about each pair: what can be told, and the effects where they are computed. */
final class JudgedSeason {

    private final List<Pair> pairs;
    private final Design design;
    private final List<Verdict> verdicts;
    private final List<double[]> contrasts = new ArrayList<>();
    private final int[] contrastOf;
    private final int trend;
    private final int turns;
    private final @Nullable SeasonFit fit;
    private final List<Estimate> estimates;
    private final @Nullable Confirmations confirmations;
    private final double[] best;

    /**
     * Judges.
     *
     * @param input with at least one clean flight
     * @param compute false where only what can be told is wanted, without effects
     */
    JudgedSeason(ReviewInput input, List<Pair> pairs, SameDay sameDay, boolean compute, Progress progress) {
        this.pairs = pairs;
        design = new Design(input);
        Confounding confounding = new Confounding(design, input.steps());
        verdicts = pairs.stream().map(confounding::judge).toList();
        contrastOf = verdicts.stream()
                .mapToInt(verdict -> ask(contrasts, verdict.contrast()))
                .toArray();
        trend = ask(contrasts, unit(DesignColumn.Kind.TREND));
        turns = ask(contrasts, unit(DesignColumn.Kind.TURNS));
        fit = compute ? SeasonFit.of(design, contrasts, progress) : null;
        estimates = fit == null
                ? List.of()
                : IntStream.range(0, contrasts.size())
                        .mapToObj(fit.draws()::estimate)
                        .toList();
        confirmations = fit == null ? null : new Confirmations(fit, sameDay);
        best = fit == null ? new double[pairs.size()] : shareOfBest(fit.draws());
    }

    private static int ask(List<double[]> contrasts, double @Nullable [] contrast) {
        if (contrast == null) {
            return -1;
        }
        contrasts.add(contrast);
        return contrasts.size() - 1;
    }

    private double @Nullable [] unit(DesignColumn.Kind kind) {
        int column = design.column(kind);
        return column < 0 ? null : design.unit(column);
    }

    Design design() {
        return design;
    }

    @Nullable
    SeasonFit fit() {
        return fit;
    }

    Verdict verdict(int pair) {
        return verdicts.get(pair);
    }

    /** The effect of a pair, or its joint effect; null where none can be told or none is computed. */
    @Nullable
    Estimate estimate(int pair) {
        return estimateOf(contrastOf[pair]);
    }

    private @Nullable Estimate estimateOf(int contrast) {
        return fit == null || contrast < 0 ? null : estimates.get(contrast);
    }

    int judged() {
        List<double[]> distinct = new ArrayList<>();
        for (Verdict verdict : verdicts) {
            double[] contrast = verdict.contrast();
            if (contrast != null && distinct.stream().noneMatch(d -> sameUpToSign(d, contrast))) {
                distinct.add(contrast);
            }
        }
        return distinct.size();
    }

    private static boolean sameUpToSign(double[] a, double[] b) {
        return Arrays.equals(a, b)
                || Arrays.equals(a, Arrays.stream(b).map(v -> 0 - v).toArray());
    }

    @Nullable
    SeasonFigures figures() {
        return fit == null
                ? null
                : new SeasonFigures(
                        Draws.mean(fit.draws().sigma()),
                        design.isAnyDayRepeated()
                                ? Double.valueOf(Draws.mean(fit.draws().between()))
                                : null,
                        Draws.mean(fit.draws().tau()),
                        estimateOf(trend),
                        estimateOf(turns),
                        design.heldEqual());
    }

    @Nullable
    Confirmation confirmation(int pair) {
        Estimate estimate = estimate(pair);
        double[] contrast = verdicts.get(pair).contrast();
        return confirmations == null || estimate == null || contrast == null
                ? null
                : confirmations.of(pairs.get(pair), contrast, estimate.mean() > 0);
    }

    /** Share of draws in which each pair told by itself raised the time most. */
    private double[] shareOfBest(Draws draws) {
        double[] share = new double[pairs.size()];
        int count = draws.sigma().length;
        for (int draw = 0; draw < count; draw++) {
            int top = -1;
            for (int k = 0; k < share.length; k++) {
                if (isJudgedAlone(k)
                        && (top < 0
                                || draws.contrasts()[contrastOf[k]][draw] > draws.contrasts()[contrastOf[top]][draw])) {
                    top = k;
                }
            }
            if (top >= 0) {
                share[top] += 1.0 / count;
            }
        }
        return share;
    }

    private boolean isJudgedAlone(int pair) {
        Comparison comparison = verdicts.get(pair).comparison();
        return comparison == Comparison.SAME_DAY || comparison == Comparison.ACROSS_DAYS;
    }

    /** Stated probabilities of being the best are too high near the top, hence the limit. */
    @Nullable
    Double probabilityBest(int pair) {
        return fit == null || !isJudgedAlone(pair) ? null : Double.valueOf(Math.min(0.9, best[pair]));
    }

    @Nullable
    EffectContext context(int pair) {
        return fit == null
                ? null
                : new EffectContext(Objects.requireNonNull(figures()), isLikeliestBest(pair), hardToTell(pair));
    }

    private boolean isLikeliestBest(int pair) {
        long judgedAlone =
                IntStream.range(0, best.length).filter(this::isJudgedAlone).count();
        return judgedAlone > 1
                && isJudgedAlone(pair)
                && IntStream.range(0, best.length).allMatch(k -> best[k] <= best[pair]);
    }

    private double correlation(int a, int b) {
        double[] x = Objects.requireNonNull(fit).draws().contrasts()[a];
        double[] y = fit.draws().contrasts()[b];
        double sum = 0;
        for (int k = 0; k < x.length; k++) {
            sum += (x[k] - estimates.get(a).mean()) * (y[k] - estimates.get(b).mean());
        }
        return sum / ((x.length - 1) * estimates.get(a).sd() * estimates.get(b).sd());
    }

    /** Pairs of other settings whose effects trade off against this one's. */
    private List<Pair> hardToTell(int pair) {
        List<Pair> others = new ArrayList<>();
        for (int k = 0; k < pairs.size(); k++) {
            if (isJudgedAlone(pair)
                    && isJudgedAlone(k)
                    && !pairs.get(k).setting().equals(pairs.get(pair).setting())
                    && Math.abs(correlation(contrastOf[pair], contrastOf[k])) > 0.7) {
                others.add(pairs.get(k));
            }
        }
        return others;
    }
}
