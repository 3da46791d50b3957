package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.rafterbook.units.Counted;

/**
 * How high a model climbs for a launch torque, from its own flights: ln(peak height) = a + b ln(torque) + settings + day +
 * error, normal errors, heights known within ends. A touched flight would have come at least as high as what it touched;
 * a height between two marks stays between them. Dropping touched flights, or taking them as exact, makes the torque
 * advised too high.
 */
public final class CeilingModel {

    static final int FEWEST = 3;

    private static final double TAU = 0.08;
    private static final int EVERY = 4;

    private final List<HeightFlight> flights;
    private final double lnReference;
    /** Kept draws: log height at the reference torque, its slope, the next flight's scatter in a session of its own. */
    private final double[] level;

    private final double[] slope;
    private final double[] scatter;

    /**
     * Keeps every fourth draw, which says as much as all: neighbours are alike.
     *
     * @param unknownVariance of the trim's part that no flight tells, for settings with values never flown
     */
    private CeilingModel(List<HeightFlight> flights, double lnReference, Draws draws, double unknownVariance) {
        this.flights = flights;
        this.lnReference = lnReference;
        int n = draws.sigma().length / EVERY;
        level = new double[n];
        slope = new double[n];
        scatter = new double[n];
        for (int k = 0; k < n; k++) {
            double sigma = draws.sigma()[k * EVERY];
            double between = draws.between()[k * EVERY];
            level[k] = draws.contrasts()[0][k * EVERY];
            slope[k] = draws.contrasts()[1][k * EVERY];
            scatter[k] = Math.sqrt(sigma * sigma + between * between + unknownVariance);
        }
    }

    /**
     * Fits the model's flights.
     *
     * @param all all its flights; those without launch torque or height, and those on a part of a motor, are not used
     * @param now the settings for which heights are wanted
     * @throws java.util.concurrent.CancellationException where {@code progress} says it is no longer wanted
     */
    public static Answer<CeilingModel> of(List<ReviewFlight> all, Map<String, Level> now, Progress progress) {
        List<HeightFlight> flights =
                all.stream().map(HeightFlight::of).filter(Objects::nonNull).toList();
        if (flights.size() < FEWEST) {
            return Answer.cannotTell("Launch torque and peak height are known together for "
                    + Counted.of(flights.size(), "flight") + " on a full motor. " + FEWEST
                    + " are needed before anything can be told: log both.");
        }
        double lnReference = flights.stream()
                .mapToDouble(f -> StrictMath.log(f.torqueNm()))
                .average()
                .orElseThrow();
        Columns columns = new Columns(flights, now);
        double[][] dense =
                flights.stream().map(f -> columns.row(f, lnReference)).toArray(double[][]::new);
        List<String> sessions =
                flights.stream().map(HeightFlight::sessionId).distinct().toList();
        int[] group =
                flights.stream().mapToInt(f -> sessions.indexOf(f.sessionId())).toArray();
        double[] low =
                flights.stream().mapToDouble(f -> StrictMath.log(f.lowM())).toArray();
        double[] high = flights.stream()
                .mapToDouble(f -> Double.isInfinite(f.highM()) ? f.highM() : StrictMath.log(f.highM()))
                .toArray();
        CensoredModel model = new CensoredModel(
                new SparseRows(dense, columns.size(), group, sessions.size()),
                low,
                high,
                columns.priorMean(meanHeight(low, high)),
                columns.priorSd(),
                columns.isLevel(),
                ScalePrior.halfT(3, 0.06),
                ScalePrior.halfT(3, 0.02),
                LevelPrior.fixed(TAU),
                Double.POSITIVE_INFINITY);
        Draws draws = Sampler.run(model, List.of(columns.now(), columns.slope()), progress);
        return Answer.known(new CeilingModel(flights, lnReference, draws, columns.unflown() * TAU * TAU / 2));
    }

    private static double meanHeight(double[] low, double[] high) {
        double sum = 0;
        for (int i = 0; i < low.length; i++) {
            sum += Double.isInfinite(low[i]) ? high[i] : Double.isInfinite(high[i]) ? low[i] : (low[i] + high[i]) / 2;
        }
        return sum / low.length;
    }

    List<HeightFlight> flights() {
        return flights;
    }

    /** Lowest and highest launch torque flown, N m. */
    public Span flownNm() {
        return new Span(
                flights.stream().mapToDouble(HeightFlight::torqueNm).min().orElseThrow(),
                flights.stream().mapToDouble(HeightFlight::torqueNm).max().orElseThrow());
    }

    /** Chance that the next flight, in a session of its own, reaches this height. */
    public double chance(double torqueNm, double heightM) {
        return Arrays.stream(chances(torqueNm, heightM)).sum() / level.length;
    }

    /** The same draw by draw, for what is not known about the chance itself. */
    double[] chances(double torqueNm, double heightM) {
        double x = StrictMath.log(torqueNm) - lnReference;
        double limit = StrictMath.log(heightM);
        double[] chances = new double[level.length];
        for (int k = 0; k < chances.length; k++) {
            chances[k] = Normal.cumulative((level[k] + slope[k] * x - limit) / scatter[k]);
        }
        return chances;
    }

    /** Log peak height of the next flight, in a session of its own. */
    NormalMixture lnPeak(double torqueNm) {
        double x = StrictMath.log(torqueNm) - lnReference;
        double[] weight = new double[level.length];
        double[] mean = new double[level.length];
        Arrays.fill(weight, 1.0 / weight.length);
        for (int k = 0; k < mean.length; k++) {
            mean[k] = level[k] + slope[k] * x;
        }
        return new NormalMixture(weight, mean, scatter);
    }

    /** Level, torque, and one column for each value of each setting that has at least two among the flights. */
    private static final class Columns {

        private record Value(String setting, String key) {}

        private final List<Value> levels = new ArrayList<>();
        private final Map<String, Level> now;
        private final int unflown;

        Columns(List<HeightFlight> flights, Map<String, Level> now) {
            this.now = now;
            Set<String> settings = flights.stream()
                    .flatMap(f -> f.settings().keySet().stream())
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            int missing = 0;
            for (String setting : settings) {
                Set<String> keys = flights.stream()
                        .map(f -> key(f.settings(), setting))
                        .collect(Collectors.toCollection(LinkedHashSet::new));
                if (keys.size() > 1) {
                    keys.forEach(key -> levels.add(new Value(setting, key)));
                }
                missing += keys.contains(key(now, setting)) ? 0 : 1;
            }
            unflown = missing;
        }

        private static String key(Map<String, Level> settings, String setting) {
            Level level = settings.get(setting);
            return level == null ? "" : level.key();
        }

        int size() {
            return 2 + levels.size();
        }

        /** Settings whose value now none of the flights had. */
        int unflown() {
            return unflown;
        }

        double[] row(HeightFlight flight, double lnReference) {
            double[] row = of(flight.settings());
            row[1] = StrictMath.log(flight.torqueNm()) - lnReference;
            return row;
        }

        /** Level and settings as they are now, at the reference torque. */
        double[] now() {
            return of(now);
        }

        double[] slope() {
            double[] slope = new double[size()];
            slope[1] = 1;
            return slope;
        }

        private double[] of(Map<String, Level> settings) {
            double[] row = new double[size()];
            row[0] = 1;
            for (int j = 0; j < levels.size(); j++) {
                row[2 + j] = key(settings, levels.get(j).setting())
                                .equals(levels.get(j).key())
                        ? 1
                        : 0;
            }
            return row;
        }

        double[] priorMean(double meanLnHeight) {
            double[] mean = new double[size()];
            mean[0] = meanLnHeight;
            mean[1] = 1;
            return mean;
        }

        double[] priorSd() {
            double[] sd = new double[size()];
            sd[0] = 1;
            sd[1] = 0.5;
            return sd;
        }

        boolean[] isLevel() {
            boolean[] level = new boolean[size()];
            Arrays.fill(level, 2, level.length, true);
            return level;
        }
    }
}
