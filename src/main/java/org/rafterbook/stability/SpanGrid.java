package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * The spanwise panel edges that all surfaces share, and the places of the control points between them. Every end of a
 * surface is an edge of all, so that no surface's trailing vortices pass close by another's control points: without that
 * the neutral point of a tailplane level with the wing jumps by centimetres.
 */
final class SpanGrid {

    /** Ends nearer than this share of the longest half span count as one, so that no panel vanishes. */
    private static final double SAME = 1e-6;

    private static final int LEAST_PANELS = 3;
    private static final double INSET = 0.25;

    private final double[] edges;
    private final double[] mids;
    private final List<Inner> strips;
    private final double sweepBend;

    private SpanGrid(List<Inner> strips, double sweepBend) {
        this.strips = strips;
        this.sweepBend = sweepBend;
        edges = new double[strips.size() + 1];
        mids = new double[strips.size()];
        for (int i = 0; i < strips.size(); i++) {
            edges[i] = strips.get(i).at(0);
            edges[i + 1] = strips.get(i).at(1);
            mids[i] = strips.get(i).at(0.5);
        }
    }

    /** Where a share of one strip, in the angle, lies across. */
    private interface Inner {
        double at(double share);
    }

    static SpanGrid of(List<SpanLine> lines, LatticeSettings settings) {
        return settings.spacing() == LatticeSettings.Spacing.COSINE ? cosine(lines, settings) : even(lines, settings);
    }

    private static SpanGrid cosine(List<SpanLine> lines, LatticeSettings settings) {
        SpanDensity density = new SpanDensity(lines);
        List<Double> places = density.withBends(ends(lines));
        double step = Math.PI / 2 / settings.spanwise();
        List<Inner> strips = new ArrayList<>();
        for (int k = 1; k < places.size(); k++) {
            SpanInterval interval = new SpanInterval(places.get(k - 1), places.get(k), density, step, LEAST_PANELS);
            for (int i = 0; i < interval.panels(); i++) {
                int first = i;
                strips.add(share -> interval.place(first + share));
            }
        }
        return new SpanGrid(strips, density.sweepBend());
    }

    private static SpanGrid even(List<SpanLine> lines, LatticeSettings settings) {
        double longest = longest(lines);
        List<Double> places = ends(lines);
        boolean inset = settings.spacing() == LatticeSettings.Spacing.EVEN_INSET;
        List<Inner> strips = new ArrayList<>();
        for (int k = 1; k < places.size(); k++) {
            double start = inset && k == 1 && lines.get(0).fromIsTip() ? INSET : 0;
            double stop = inset && k == places.size() - 1 ? INSET : 0;
            even(strips, places.get(k - 1), places.get(k), longest / settings.spanwise(), start, stop);
        }
        return new SpanGrid(strips, 0);
    }

    /**
     * Where surfaces end, each place once, and the middle that all of them share: a lopsided model that differs little from
     * a symmetric one then has almost its panels.
     */
    private static List<Double> ends(List<SpanLine> lines) {
        double longest = longest(lines);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        TreeSet<Double> ends = new TreeSet<>();
        for (SpanLine line : lines) {
            ends.add(line.fromM());
            ends.add(line.toM());
            least = Math.min(least, line.splitM());
            most = Math.max(most, line.splitM());
        }
        if (most - least <= SAME * longest) {
            ends.add(most);
        }
        List<Double> places = new ArrayList<>();
        for (double end : ends) {
            if (places.isEmpty() || end - places.get(places.size() - 1) > SAME * longest) {
                places.add(end);
            }
        }
        return places;
    }

    private static double longest(List<SpanLine> lines) {
        return lines.stream().mapToDouble(SpanLine::halfSpanM).max().orElse(0);
    }

    private static void even(List<Inner> strips, double from, double to, double width, double start, double stop) {
        int n = Math.max(1, (int) Math.ceil((to - from) / width - 1e-6));
        double panel = (to - from) / (n + start + stop);
        for (int i = 0; i < n; i++) {
            int first = i;
            boolean last = i == n - 1 && stop == 0;
            strips.add(share -> last && share == 1 ? to : from + panel * (start + first + share));
        }
    }

    /** The strongest change of slope of any surface's edges across a rib or the middle. */
    double sweepBend() {
        return sweepBend;
    }

    int strips() {
        return mids.length;
    }

    double edge(int index) {
        return edges[index];
    }

    double mid(int strip) {
        return mids[strip];
    }

    /** Place across of a share (0 to 1, in the angle) of a strip. */
    double within(int strip, double share) {
        return strips.get(strip).at(share);
    }

    /** Index of the edge nearest to a place. */
    int edgeAt(double yM) {
        int next = Arrays.binarySearch(edges, yM);
        if (next >= 0) {
            return next;
        }
        next = -next - 1;
        if (next == 0) {
            return 0;
        }
        if (next == edges.length) {
            return edges.length - 1;
        }
        return yM - edges[next - 1] <= edges[next] - yM ? next - 1 : next;
    }
}
