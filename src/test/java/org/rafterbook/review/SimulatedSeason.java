package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.random.Well19937c;

/**
 * A season flown by an adaptive flyer with known true effects: four settings, 8 to 16 sessions of 4 to 12 flights, turns
 * that creep up during a session, low halls in which the best climbers touch, changes that are undone after a poor spell.
 * The true effects add up on the logarithm of duration.
 */
final class SimulatedSeason {

    private static final int SETTINGS = 4;
    private static final int MOST_LEVELS = 5;

    private final Scenario scenario;
    private final Well19937c random;
    private final List<List<Double>> effects = new ArrayList<>();
    private final List<List<Double>> heights = new ArrayList<>();
    private final List<ReviewFlight> flights = new ArrayList<>();
    private final List<Double> latentHeights = new ArrayList<>();
    private final int[] now = new int[SETTINGS];
    private int[] before = new int[SETTINGS];
    private double blockSum;
    private int blockCount;
    private double previousMean = Double.NaN;

    private SimulatedSeason(Scenario scenario, long seed, double threshold) {
        this.scenario = scenario;
        random = new Well19937c(seed);
        for (int k = 0; k < SETTINGS; k++) {
            effects.add(new ArrayList<>(List.of(0.0)));
            heights.add(new ArrayList<>(List.of(0.0)));
        }
        fly(threshold);
    }

    static SimulatedSeason of(Scenario scenario, long seed, double threshold) {
        return new SimulatedSeason(scenario, seed, threshold);
    }

    /** The height above which flights touch, so that the scenario's share of them does. */
    static double threshold(Scenario scenario) {
        double[] all = java.util.stream.LongStream.range(0, 60)
                .mapToObj(seed -> new SimulatedSeason(scenario, 900_000 + seed, Double.POSITIVE_INFINITY))
                .flatMap(season -> season.latentHeights.stream())
                .mapToDouble(h -> h)
                .sorted()
                .toArray();
        return Estimate.quantile(all, 1 - scenario.touched());
    }

    ReviewInput input() {
        return ReviewInput.of("simulated", flights, SeasonBuilder.settingsOf(flights));
    }

    /** True effect of going from one value of a setting to another, on ln duration. */
    double truth(String setting, Level from, Level to) {
        List<Double> own = effects.get(setting.charAt(1) - '0');
        return own.get(Integer.parseInt(to.key())) - own.get(Integer.parseInt(from.key()));
    }

    private void fly(double threshold) {
        int sessions = 8 + random.nextInt(9);
        double trend = Scenario.TREND_SD * random.nextGaussian();
        for (int s = 0; s < sessions; s++) {
            flySession(s, (double) s / (sessions - 1), trend, threshold);
        }
    }

    private void flySession(int session, double t, double trend, double threshold) {
        if (session > 0 && random.nextDouble() < scenario.changeAtStart()) {
            change();
        }
        int count = 4 + random.nextInt(9);
        double day = Scenario.DAY_SD * random.nextGaussian();
        double lnDensity = 0.02 * random.nextGaussian();
        double creep = 0.02 * random.nextDouble();
        boolean low = random.nextDouble() < 0.60;
        double noise = 0;
        for (int order = 1; order <= count; order++) {
            if (order > 1 && blockCount >= 2 && random.nextDouble() < scenario.changeWithin()) {
                change();
            }
            double turns = Math.min(0.80 + creep * order, 0.96) * Math.exp(0.02 * random.nextGaussian()) / 0.85;
            double fresh = Scenario.FLIGHT_SD * random.nextGaussian();
            noise = order == 1
                    ? fresh
                    : scenario.memory() * noise + Math.sqrt(1 - scenario.memory() * scenario.memory()) * fresh;
            double y = 4.8
                    + 0.9 * Math.log(turns)
                    + 0.5 * lnDensity
                    + trend * t
                    + scenario.learning() * (1 - Math.exp(-3 * t))
                    + scenario.perFlight() * order
                    + sum(effects)
                    + day
                    + noise;
            if (random.nextDouble() < scenario.spoilt()) {
                y += Math.log(1 - (0.10 + 0.15 * random.nextDouble()));
            }
            double height = Math.log(turns) + sum(heights) + 0.05 * random.nextGaussian() - (low ? 0 : 1.0);
            latentHeights.add(height);
            boolean touches = height > threshold;
            double loss = random.nextDouble();
            if (touches) {
                y += Math.log(1 - 0.25 * loss);
            }
            double duration = Math.exp(y);
            double recorded = 1275 * turns * (1 + 0.005 * random.nextGaussian());
            log(session, order, duration, touches, recorded, 1.19 * Math.exp(lnDensity));
            blockSum += duration;
            blockCount++;
        }
    }

    private void log(int session, int order, double duration, boolean touched, double turns, double density) {
        Map<String, Level> settings = new TreeMap<>();
        for (int k = 0; k < SETTINGS; k++) {
            settings.put("a" + k, Level.number(now[k]));
        }
        flights.add(ReviewFlight.of(
                        "f" + flights.size(),
                        "s" + session,
                        SeasonBuilder.FIRST_DAY.plusDays(7L * session),
                        order,
                        touched ? Outcome.atLeast(duration, "touched") : Outcome.exact(duration),
                        settings)
                .with(MotorUse.turns(turns), density));
    }

    private double sum(List<List<Double>> ofLevels) {
        double sum = 0;
        for (int k = 0; k < SETTINGS; k++) {
            sum += ofLevels.get(k).get(now[k]);
        }
        return sum;
    }

    /** After a block poorer than the one before the flyer often goes back; else something new or older is tried. */
    private void change() {
        double mean = blockSum / blockCount;
        int[] left = now.clone();
        if (mean < previousMean && random.nextDouble() < 0.60) {
            System.arraycopy(before, 0, now, 0, SETTINGS);
        } else {
            int first = random.nextInt(SETTINGS);
            alter(first);
            if (random.nextDouble() < 0.15) {
                alter((first + 1 + random.nextInt(SETTINGS - 1)) % SETTINGS);
            }
        }
        if (!Arrays.equals(left, now)) {
            before = left;
            previousMean = mean;
            blockSum = 0;
            blockCount = 0;
        }
    }

    private void alter(int setting) {
        List<Double> own = effects.get(setting);
        boolean older = own.size() > 1 && random.nextDouble() < 0.30 || own.size() == MOST_LEVELS;
        if (older) {
            now[setting] = (now[setting] + 1 + random.nextInt(own.size() - 1)) % own.size();
            return;
        }
        double size = scenario.smallest() + (scenario.largest() - scenario.smallest()) * random.nextDouble();
        double effect = random.nextDouble() < scenario.nothing() ? 0 : random.nextBoolean() ? size : -size;
        own.add(own.get(now[setting]) + Math.log(1 + effect));
        heights.get(setting).add(heights.get(setting).get(now[setting]) + 0.03 * random.nextGaussian());
        now[setting] = own.size() - 1;
    }
}
