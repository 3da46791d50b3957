package org.rafterbook.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds the sessions that test a claim: those flown after the claim could first be made that hold both values.
 *
 * <p>What could be claimed after each session is told by the normal equations of the flights up to it, at the whole
 * season's posterior mean variances.
 */
final class Confirmations {

    private static final double CLAIM = 0.95;

    private final SeasonFit fit;
    private final SameDay sameDay;
    private final List<String> sessions;
    private final List<NormalEquations> upTo = new ArrayList<>();
    private final List<double[]> estimates = new ArrayList<>();

    Confirmations(SeasonFit fit, SameDay sameDay) {
        this.fit = fit;
        this.sameDay = sameDay;
        sessions = fit.design().sessions();
    }

    /** How the claim about a pair stands. */
    Confirmation of(Pair pair, double[] contrast, boolean raised) {
        int first = firstClaim(contrast, raised);
        Set<String> later = new HashSet<>(sessions.subList(first + 1, sessions.size()));
        ReviewFlight test = firstWithBoth(pair, later);
        return test == null
                ? new Confirmation(null, null)
                : new Confirmation(test.sessionDate(), sameDay.compare(pair.setting(), pair.from(), pair.to(), later));
    }

    private int firstClaim(double[] contrast, boolean raised) {
        prepare();
        for (int s = 0; s < sessions.size(); s++) {
            double mean = 0;
            for (int j = 0; j < contrast.length; j++) {
                mean += contrast[j] * estimates.get(s)[j];
            }
            double z = mean / Math.sqrt(upTo.get(s).variance(contrast));
            if (Normal.cumulative(raised ? z : -z) >= CLAIM) {
                return s;
            }
        }
        return sessions.size() - 1;
    }

    private @Nullable ReviewFlight firstWithBoth(Pair pair, Set<String> later) {
        for (String session : sessions) {
            List<ReviewFlight> flown = fit.design().flights().stream()
                    .filter(f -> f.isExact() && f.sessionId().equals(session) && later.contains(session))
                    .toList();
            if (flown.stream().anyMatch(pair::isFrom) && flown.stream().anyMatch(pair::isTo)) {
                return flown.get(0);
            }
        }
        return null;
    }

    private void prepare() {
        if (!upTo.isEmpty()) {
            return;
        }
        CensoredModel model = fit.model();
        double[] precision = new double[fit.design().columns().size()];
        model.precision(fit.tauSquared(), precision);
        for (int s = 0; s < sessions.size(); s++) {
            Set<String> flown = new HashSet<>(sessions.subList(0, s + 1));
            double[] weight = new double[model.rows().size];
            for (int i = 0; i < weight.length; i++) {
                String session = fit.design().flights().get(i).sessionId();
                weight[i] = flown.contains(session) ? fit.weight(i) : 0;
            }
            NormalEquations equations = new NormalEquations(model.rows());
            equations.set(
                    weight,
                    fit.draws().responseMeans(),
                    fit.flightVariance(),
                    precision,
                    model.priorMean(),
                    1 / fit.dayVariance());
            double[] theta = new double[precision.length];
            equations.solve(theta, new double[sessions.size()]);
            upTo.add(equations);
            estimates.add(theta);
        }
    }
}
