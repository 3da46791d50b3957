package org.rafterbook.ui.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Marks of equal x are moved aside by at most 4 px of the design, so that each can be seen. */
final class Spread {

    static final double MOST_PX = 4;
    private static final double APART_PX = 2.5;

    private Spread() {}

    /** How far each mark is moved, in pixels of the design. */
    static double[] offsets(List<? extends FlightMark<?>> marks) {
        Map<Double, List<Integer>> byX = new HashMap<>();
        for (int i = 0; i < marks.size(); i++) {
            byX.computeIfAbsent(marks.get(i).x(), x -> new ArrayList<>()).add(i);
        }
        double[] offsets = new double[marks.size()];
        byX.values().forEach(group -> {
            int n = group.size();
            double step = n < 2 ? 0 : Math.min(APART_PX, 2 * MOST_PX / (n - 1));
            for (int i = 0; i < n; i++) {
                offsets[group.get(i)] = (i - (n - 1) / 2.0) * step;
            }
        });
        return offsets;
    }
}
