package org.rafterbook.ui.review;

import java.util.Arrays;
import java.util.List;
import org.rafterbook.ui.chart.Axis;

/** The upright axis of times; it need not start at 0. */
final class TimeAxis {

    private static final double[] STEPS = {5, 10, 15, 30, 60, 120, 300, 600, 1200, 3600};
    private static final int MOST_STEPS = 4;
    private static final double FAR = 6;

    private TimeAxis() {}

    /** An axis that holds these times, s, with whole steps at its ends. */
    static Axis of(List<Double> seconds) {
        if (seconds.isEmpty()) {
            return Axis.minutes(0, 600);
        }
        double[] sorted = seconds.stream().mapToDouble(s -> s).sorted().toArray();
        double middle = sorted[sorted.length / 2];
        // one time far off all the others must not press these together; it is drawn at the edge
        double low =
                Arrays.stream(sorted).filter(s -> s > middle / FAR).findFirst().orElse(middle);
        double high = Arrays.stream(sorted).filter(s -> s < middle * FAR).max().orElse(middle);
        double spread = Math.max(high - low, 0.05 * high);
        double step = STEPS[STEPS.length - 1];
        for (double candidate : STEPS) {
            if (spread / candidate <= MOST_STEPS) {
                step = candidate;
                break;
            }
        }
        double foot = Math.max(0, Math.floor((low - 0.15 * step) / step) * step);
        return Axis.minutes(foot, Math.max(Math.ceil((high + 0.35 * step) / step) * step, foot + 2 * step));
    }
}
