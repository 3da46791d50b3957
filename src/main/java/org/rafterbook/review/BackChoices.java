package org.rafterbook.review;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.BackChoice.Reason;

/** What 'back' offers: the last setting, those marked good, and the one with the highest estimate. */
final class BackChoices {

    private final ReviewInput input;
    private final Map<String, Level> now;

    BackChoices(ReviewInput input, Map<String, Level> now) {
        this.input = input;
        this.now = now;
    }

    /**
     * The choices in this order, each once, without what is set now.
     *
     * @param markedGood combinations the flyer marked good, latest first
     * @param fit null where too little was flown for estimates
     */
    List<BackChoice> of(List<Map<String, Level>> markedGood, @Nullable SeasonFit fit) {
        Map<Map<String, Level>, Set<Reason>> reasons = new LinkedHashMap<>();
        Map<String, Level> last = last();
        if (last != null) {
            offer(reasons, last, Reason.LAST_SETTING);
        }
        markedGood.forEach(good -> offer(reasons, good, Reason.WELL_BEHAVED));
        Map<String, Level> best = null;
        BackChoice.Estimated estimated = null;
        if (fit != null) {
            Versions versions = new Versions(fit);
            for (Map<String, Level> version : versions.flown()) {
                BackChoice.Estimated candidate = versions.against(version, now);
                if (candidate != null
                        && candidate.mean() > 0
                        && (estimated == null || candidate.mean() > estimated.mean())) {
                    best = version;
                    estimated = candidate;
                }
            }
        }
        if (best != null) {
            offer(reasons, best, Reason.HIGHEST_ESTIMATE);
        }
        List<BackChoice> choices = new ArrayList<>();
        for (Map.Entry<Map<String, Level>, Set<Reason>> entry : reasons.entrySet()) {
            boolean byEstimate = entry.getValue().contains(Reason.HIGHEST_ESTIMATE);
            choices.add(new BackChoice(entry.getKey(), entry.getValue(), byEstimate ? estimated : null));
        }
        return List.copyOf(choices);
    }

    private void offer(Map<Map<String, Level>, Set<Reason>> reasons, Map<String, Level> settings, Reason reason) {
        if (!settings.equals(now)) {
            reasons.computeIfAbsent(settings, s -> EnumSet.noneOf(Reason.class)).add(reason);
        }
    }

    /** What was set before the change that led to what is set now; null where nothing was changed. */
    private @Nullable Map<String, Level> last() {
        for (int i = input.steps().size() - 1; i >= 0; i--) {
            TrimStep step = input.steps().get(i);
            if (step.after().equals(now)) {
                return step.before();
            }
        }
        return null;
    }

    /** The combinations flown, compared by the season's model at its mean variances. */
    private static final class Versions {

        private final SeasonFit fit;
        private final NormalEquations equations;
        private final Map<Map<String, Level>, double[]> rows = new LinkedHashMap<>();

        Versions(SeasonFit fit) {
            this.fit = fit;
            Design design = fit.design();
            int columns = design.columns().size();
            double[] weight = new double[design.flights().size()];
            for (int i = 0; i < weight.length; i++) {
                weight[i] = fit.weight(i);
                double[] row = new double[columns];
                for (int j = 0; j < columns; j++) {
                    row[j] = design.columns().get(j).kind() == DesignColumn.Kind.LEVEL ? design.at(i, j) : 0;
                }
                rows.putIfAbsent(design.flights().get(i).settings(), row);
            }
            double[] precision = new double[columns];
            fit.model().precision(fit.tauSquared(), precision);
            equations = new NormalEquations(fit.model().rows());
            equations.set(
                    weight,
                    fit.draws().responseMeans(),
                    fit.flightVariance(),
                    precision,
                    fit.model().priorMean(),
                    1 / fit.dayVariance());
        }

        Set<Map<String, Level>> flown() {
            return rows.keySet();
        }

        /** Null where one of the two was never flown. */
        BackChoice.@Nullable Estimated against(Map<String, Level> version, Map<String, Level> now) {
            double[] there = rows.get(version);
            double[] here = rows.get(now);
            if (there == null || here == null) {
                return null;
            }
            double[] contrast = new double[here.length];
            double mean = 0;
            for (int j = 0; j < contrast.length; j++) {
                contrast[j] = there[j] - here[j];
                mean += contrast[j] * fit.draws().columnMeans()[j];
            }
            return new BackChoice.Estimated(mean, Math.sqrt(equations.variance(contrast)));
        }
    }
}
