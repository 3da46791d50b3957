package org.rafterbook.review;

import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.jspecify.annotations.Nullable;

/**
 * Log duration of the next flight from the latest flights alike, without any draws, so that it follows while a setting or
 * the turns are changed.
 *
 * <p>Times are scaled to the planned turns and tonight's air (duration goes with turns and with the root of density), then
 * averaged by how much two flights share: day, settings, build, motor, and how long ago they were; the same prior
 * deviations as in the effects model. Scatter from flight to flight and from day to day is averaged over a grid by how
 * well it explains the flights. Errors are Student's with six degrees of freedom, as in the effects model: a flight far
 * off all others weighs (6 + 1) / (6 + (residual / scatter)^2), found by iterated weighting, so that one spoilt flight
 * among several moves little. Flights cut short stand at their expected time and weigh less. Own method of this project.
 */
final class DurationForecast {

    private static final int LATEST = 40;

    private static final double LEVEL_SD = 1;
    private static final double SETTING_SD = 0.08 / Math.sqrt(2);
    private static final double BUILD_SD = 0.05;
    private static final double MOTOR_SD = 0.02;
    private static final double SLOPE_SD = 0.3;
    private static final double TREND_SD = 0.08;
    private static final double SEASON_DAYS = 150;

    private static final double[] FLIGHT_SDS = {0.015, 0.02, 0.027, 0.036, 0.048, 0.063, 0.084, 0.112, 0.15};
    private static final double[] DAY_SDS = {0.005, 0.012, 0.02, 0.03, 0.045, 0.068, 0.10};
    private static final double FLIGHT_SCALE = 0.10;
    private static final double DAY_SCALE = 0.04;
    private static final int IMPUTATIONS = 4;

    private static final double DEGREES = 6;
    private static final int WEIGHTINGS = 8;

    /** Squared ratio of Student's 95 % quantile to the normal one, at six degrees of freedom: 1.943 and 1.645. */
    private static final double WIDER = 1.395;

    private final List<ReviewFlight> flights;
    private final NextFlight next;
    private final double[] turns;
    private final double[] density;
    private final double[] scaled;
    private final int unscaled;
    /** 1 where two flights share their session. */
    private final RealMatrix sameDay;

    private final RealVector sameDayAsNext;

    /** Of flights that count, in flying order, on the same share of a motor as the next one; at least one. */
    DurationForecast(List<ReviewFlight> alike, NextFlight next) {
        flights = alike.subList(Math.max(0, alike.size() - LATEST), alike.size());
        this.next = next;
        int n = flights.size();
        turns = new double[n];
        density = new double[n];
        scaled = new double[n];
        int unknown = 0;
        Double planned = next.turnsUsed() == null ? usualTurns(flights) : next.turnsUsed();
        for (int i = 0; i < n; i++) {
            ReviewFlight flight = flights.get(i);
            Double byTurns = lnRatio(flight.motor().turnsUsed(), planned);
            Double byDensity = lnRatio(flight.densityKgM3(), next.densityKgM3());
            turns[i] = byTurns == null ? 0 : byTurns;
            density[i] = byDensity == null ? 0 : byDensity;
            unknown += byTurns == null || next.turnsUsed() == null || byDensity == null ? 1 : 0;
            scaled[i] = StrictMath.log(flight.outcome().countsS()) - turns[i] - 0.5 * density[i];
        }
        unscaled = unknown;
        sameDay = MatrixUtils.createRealMatrix(n, n);
        sameDayAsNext = MatrixUtils.createRealVector(new double[n]);
        for (int i = 0; i < n; i++) {
            String session = flights.get(i).sessionId();
            sameDayAsNext.setEntry(i, session.equals(next.sessionId()) ? 1 : 0);
            for (int j = 0; j < n; j++) {
                sameDay.setEntry(i, j, session.equals(flights.get(j).sessionId()) ? 1 : 0);
            }
        }
    }

    /** Before the next flight's turns are known those usual so far, so that relaunches are not taken for poor flights. */
    private static @Nullable Double usualTurns(List<ReviewFlight> flights) {
        double[] known = flights.stream()
                .map(f -> f.motor().turnsUsed())
                .filter(Objects::nonNull)
                .mapToDouble(turns -> turns)
                .toArray();
        return known.length == 0 ? null : Double.valueOf(median(known));
    }

    List<ReviewFlight> flights() {
        return flights;
    }

    /** Flights for which the turns or the air are unknown, or all where the next flight's are. */
    int unscaled() {
        return unscaled;
    }

    private static @Nullable Double lnRatio(@Nullable Double flown, @Nullable Double planned) {
        return flown == null || planned == null || !(flown > 0) || !(planned > 0)
                ? null
                : Double.valueOf(StrictMath.log(flown / planned));
    }

    NormalMixture lnDuration() {
        RealMatrix shared = shared();
        RealVector ahead = ahead();
        double prior = own();
        double[] y = expected(shared);
        double middle = median(y);
        RealVector residual = MatrixUtils.createRealVector(y).mapSubtract(middle);
        int count = FLIGHT_SDS.length * DAY_SDS.length;
        double[] logWeight = new double[count];
        double[] means = new double[count];
        double[] sds = new double[count];
        int k = 0;
        for (double flightSd : FLIGHT_SDS) {
            for (double daySd : DAY_SDS) {
                Fit fit = fit(shared, residual, flightSd, daySd);
                RealVector cross = ahead.add(sameDayAsNext.mapMultiply(daySd * daySd));
                logWeight[k] = fit.logDensity() + logHalfT(flightSd, FLIGHT_SCALE) + logHalfT(daySd, DAY_SCALE);
                means[k] = middle + cross.dotProduct(fit.solved());
                double known = cross.dotProduct(fit.cholesky().getSolver().solve(cross));
                double scatter = WIDER * flightSd * flightSd;
                sds[k++] = Math.sqrt(scatter + Math.max(prior + daySd * daySd - known, 0));
            }
        }
        return new NormalMixture(normalised(logWeight), means, sds);
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        return 0.5 * (sorted[(n - 1) / 2] + sorted[n / 2]);
    }

    /**
     * The flights explained by one pair of scatters.
     *
     * @param cholesky of their covariance
     * @param solved the covariance's inverse times the residuals
     * @param logDensity of the residuals and their weights, up to a constant
     */
    private record Fit(CholeskyDecomposition cholesky, RealVector solved, double logDensity) {}

    private Fit fit(RealMatrix shared, RealVector residual, double flightSd, double daySd) {
        double[] omega = omega(residual, flightSd);
        CholeskyDecomposition cholesky = new CholeskyDecomposition(covariance(shared, flightSd, daySd, omega));
        RealVector solved = cholesky.getSolver().solve(residual);
        for (int step = 0; step < WEIGHTINGS; step++) {
            RealVector error = solved.copy();
            for (int i = 0; i < omega.length; i++) {
                error.setEntry(i, noise(i, flightSd, omega) * solved.getEntry(i));
            }
            omega = omega(error, flightSd);
            cholesky = new CholeskyDecomposition(covariance(shared, flightSd, daySd, omega));
            solved = cholesky.getSolver().solve(residual);
        }
        double density = -0.5 * residual.dotProduct(solved);
        for (int i = 0; i < omega.length; i++) {
            density += 0.5 * DEGREES * (StrictMath.log(omega[i]) - omega[i])
                    - StrictMath.log(cholesky.getL().getEntry(i, i));
        }
        return new Fit(cholesky, solved, density);
    }

    /** How much each flight weighs by how far off it is; one cut short stands where it is expected and weighs whole. */
    private double[] omega(RealVector error, double flightSd) {
        double[] omega = new double[flights.size()];
        for (int i = 0; i < omega.length; i++) {
            double z = error.getEntry(i) / flightSd;
            omega[i] = flights.get(i).isExact() ? (DEGREES + 1) / (DEGREES + z * z) : 1;
        }
        return omega;
    }

    private double noise(int flight, double flightSd, double[] omega) {
        return flightSd * flightSd / (weight(flight) * omega[flight]);
    }

    /** The grids are about geometric, hence the factor x of the prior's density. */
    private static double logHalfT(double x, double scale) {
        double u = x / scale;
        return -2 * StrictMath.log(1 + u * u / 3) + StrictMath.log(x);
    }

    private static double[] normalised(double[] logWeight) {
        double top = Double.NEGATIVE_INFINITY;
        for (double w : logWeight) {
            top = Math.max(top, w);
        }
        double sum = 0;
        double[] weight = new double[logWeight.length];
        for (int k = 0; k < weight.length; k++) {
            weight[k] = StrictMath.exp(logWeight[k] - top);
            sum += weight[k];
        }
        for (int k = 0; k < weight.length; k++) {
            weight[k] /= sum;
        }
        return weight;
    }

    /** The scaled times; for a flight cut short what is expected of it given that it would have lasted longer. */
    private double[] expected(RealMatrix shared) {
        double[] y = scaled.clone();
        if (flights.stream().allMatch(ReviewFlight::isExact)) {
            return y;
        }
        double flightSd = FlightsNeeded.USUAL_SCATTER;
        double daySd = FlightsNeeded.USUAL_DAY_SCATTER;
        for (int step = 0; step < IMPUTATIONS; step++) {
            RealVector residual = MatrixUtils.createRealVector(y).mapSubtract(median(y));
            RealVector solved = fit(shared, residual, flightSd, daySd).solved();
            for (int i = 0; i < y.length; i++) {
                if (!flights.get(i).isExact()) {
                    double fit = y[i] - flightSd * flightSd / weight(i) * solved.getEntry(i);
                    double z = (scaled[i] - fit) / flightSd;
                    y[i] = fit + flightSd * Normal.density(z) / Math.max(Normal.cumulative(-z), 1e-300);
                }
            }
        }
        return y;
    }

    private double weight(int flight) {
        return flights.get(flight).isExact() ? 1 : ResponsePoint.AT_LEAST_WEIGHT;
    }

    private RealMatrix covariance(RealMatrix shared, double flightSd, double daySd, double[] omega) {
        RealMatrix covariance = shared.add(sameDay.scalarMultiply(daySd * daySd));
        for (int i = 0; i < flights.size(); i++) {
            covariance.addToEntry(i, i, noise(i, flightSd, omega));
        }
        return covariance;
    }

    private RealMatrix shared() {
        RealMatrix shared = MatrixUtils.createRealMatrix(flights.size(), flights.size());
        for (int i = 0; i < flights.size(); i++) {
            ReviewFlight a = flights.get(i);
            for (int j = 0; j < flights.size(); j++) {
                ReviewFlight b = flights.get(j);
                double slopes = SLOPE_SD * SLOPE_SD * (turns[i] * turns[j] + density[i] * density[j]);
                double trend = TREND_SD * TREND_SD * ago(i) * ago(j);
                boolean motor = a.motor().motorId() != null
                        && a.motor().motorId().equals(b.motor().motorId());
                shared.setEntry(
                        i, j, slopes + trend + alike(a.settings(), b.settings(), a.build() == b.build(), motor));
            }
        }
        return shared;
    }

    private RealVector ahead() {
        RealVector ahead = MatrixUtils.createRealVector(new double[flights.size()]);
        for (int i = 0; i < flights.size(); i++) {
            ReviewFlight a = flights.get(i);
            boolean motor =
                    next.motorId() != null && next.motorId().equals(a.motor().motorId());
            ahead.setEntry(i, alike(a.settings(), next.settings(), a.build() == next.build(), motor));
        }
        return ahead;
    }

    private double own() {
        return alike(next.settings(), next.settings(), true, next.motorId() != null);
    }

    private double ago(int flight) {
        return ChronoUnit.DAYS.between(flights.get(flight).sessionDate(), next.date()) / SEASON_DAYS;
    }

    private static double alike(Map<String, Level> a, Map<String, Level> b, boolean sameBuild, boolean sameMotor) {
        double sum =
                LEVEL_SD * LEVEL_SD + (sameBuild ? BUILD_SD * BUILD_SD : 0) + (sameMotor ? MOTOR_SD * MOTOR_SD : 0);
        Set<String> settings = new HashSet<>(a.keySet());
        settings.addAll(b.keySet());
        for (String setting : settings) {
            Level one = a.get(setting);
            Level other = b.get(setting);
            boolean same = one == null ? other == null : other != null && one.same(other);
            sum += same ? SETTING_SD * SETTING_SD : 0;
        }
        return sum;
    }
}
