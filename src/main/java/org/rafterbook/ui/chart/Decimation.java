package org.rafterbook.ui.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Thins marks above two a pixel: of each pixel column the best, the worst and those cut short stay. */
final class Decimation {

    private static final int MOST_PER_PIXEL = 2;

    private Decimation() {}

    static <K> List<FlightMark<K>> thin(List<FlightMark<K>> marks, Scale x) {
        double pixels = Math.abs(x.highPx() - x.lowPx());
        if (marks.size() <= MOST_PER_PIXEL * pixels) {
            return marks;
        }
        Map<Long, FlightMark<K>> best = new HashMap<>();
        Map<Long, FlightMark<K>> worst = new HashMap<>();
        for (FlightMark<K> mark : marks) {
            long column = Math.round(x.at(mark.x()));
            best.merge(column, mark, (a, b) -> b.y() > a.y() ? b : a);
            worst.merge(column, mark, (a, b) -> b.y() < a.y() ? b : a);
        }
        Set<FlightMark<K>> kept = new HashSet<>(best.values());
        kept.addAll(worst.values());
        List<FlightMark<K>> thinned = new ArrayList<>();
        for (FlightMark<K> mark : marks) {
            if (mark.atLeast() || kept.contains(mark)) {
                thinned.add(mark);
            }
        }
        return thinned;
    }
}
