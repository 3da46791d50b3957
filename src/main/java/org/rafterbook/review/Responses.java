package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Response curves and what to try next from flights that were corrected for everything else. */
public final class Responses {

    /** More steps than this in the range are not told apart when choosing what to try next. */
    private static final int STEPS_AT_MOST = 200;

    private static final int VALUES_NEEDED = 3;

    private Responses() {}

    /**
     * The curve of log duration along an axis.
     *
     * @param axis the setting or the margin; its limits give the range, widened to what was flown; where it has none,
     *     the range reaches a quarter beyond what was flown
     * @param points the flights, values in the axis's unit
     */
    public static Answer<Response> of(SettingInfo axis, List<ResponsePoint> points) {
        double tolerance = axis.tolerance() == null ? 0 : axis.tolerance();
        List<Double> values = distinct(points, tolerance);
        if (values.size() < VALUES_NEEDED) {
            return Answer.cannotTell(tooFew(axis, values));
        }
        List<Double> clean = distinct(points.stream().filter(p -> !p.atLeast()).toList(), tolerance);
        if (clean.size() < VALUES_NEEDED) {
            return Answer.cannotTell(tooFewClean(axis, clean));
        }
        Span flown = new Span(
                points.stream().mapToDouble(ResponsePoint::value).min().orElseThrow(),
                points.stream().mapToDouble(ResponsePoint::value).max().orElseThrow());
        Span range = range(axis, flown);
        double[] candidates = candidates(axis, range, values);
        List<ResponsePoint> scaled =
                points.stream().map(p -> p.at(scale(range, p.value()))).toList();
        OnePeakFit fit = OnePeak.fit(
                scaled, Arrays.stream(candidates).map(v -> scale(range, v)).toArray());

        double[] peak = fit.peak();
        double[] loss = fit.expectedLoss();
        List<Response.CurvePoint> curve = new ArrayList<>();
        for (int k = 0; k < OnePeak.GRID; k++) {
            NormalMixture spread = fit.spread(k);
            curve.add(new Response.CurvePoint(
                    range.low() + range.width() * OnePeak.place(k),
                    fit.curve(k),
                    spread.quantile(0.05),
                    spread.quantile(0.95),
                    peak[k],
                    loss[k]));
        }
        double onePercent = -StrictMath.log(0.99);
        double[] little = curve.stream()
                .filter(p -> p.expectedLoss() < onePercent)
                .mapToDouble(Response.CurvePoint::value)
                .toArray();
        List<Integer> region = fit.peakRegion(0.90);
        return Answer.known(new Response(
                axis,
                curve,
                points,
                flown,
                values.size(),
                (int) points.stream().map(ResponsePoint::session).distinct().count(),
                new Span(
                        curve.get(region.get(0)).value(),
                        curve.get(region.get(region.size() - 1)).value()),
                little.length == 0 ? null : new Span(little[0], little[little.length - 1]),
                Parabola.fit(points, (flown.low() + flown.high()) / 2)
                        .flatMap(p -> p.vertexSpan(0.90))
                        .orElse(null),
                fit.agreement(),
                next(axis, fit, range, scaled)));
    }

    /**
     * The suggestion among the fit's places beyond the grid, against the flown one with the highest mean: what was never
     * flown can be worth trying, but one is not there before one has flown it. In simulation (60 seasons each, parabola and
     * cliff) this ends as near the best as taking the highest mean flown or not, and loses less on the way.
     */
    private static NextTry next(SettingInfo axis, OnePeakFit fit, Span range, List<ResponsePoint> scaled) {
        int[] within = places(fit, scaled, NextTry.REACH);
        int incumbent = -1;
        for (int k : places(fit, scaled, 0)) {
            incumbent = incumbent < 0 || fit.curve(k) > fit.curve(incumbent) ? k : incumbent;
        }
        int best = incumbent;
        OnePeakFit.Gain gain = new OnePeakFit.Gain(0, 0.5, 0, 0);
        for (int k : within) {
            OnePeakFit.Gain candidate = fit.gain(k, incumbent);
            if (k != incumbent && candidate.expected() > gain.expected()) {
                best = k;
                gain = candidate;
            }
        }
        return new NextTry(
                axis,
                range.low() + range.width() * fit.at(best),
                range.low() + range.width() * fit.at(incumbent),
                gain.expected(),
                gain.chance(),
                gain.mean(),
                gain.sd());
    }

    /** Places beyond the grid no further than this from anything flown. */
    private static int[] places(OnePeakFit fit, List<ResponsePoint> scaled, double reach) {
        return IntStream.range(OnePeak.GRID, fit.places())
                .filter(k -> scaled.stream().anyMatch(p -> Math.abs(p.value() - fit.at(k)) <= reach + 1e-9))
                .toArray();
    }

    /** Values that differ by more than the tolerance from the one below, ascending. */
    private static List<Double> distinct(List<ResponsePoint> points, double tolerance) {
        List<Double> values = new ArrayList<>();
        points.stream().mapToDouble(ResponsePoint::value).sorted().forEach(v -> {
            if (values.isEmpty() || v - values.get(values.size() - 1) > tolerance) {
                values.add(v);
            }
        });
        return values;
    }

    private static String tooFew(SettingInfo axis, List<Double> values) {
        if (values.isEmpty()) {
            return "No flight that counts tells its " + axis.label() + ". A curve needs three values flown.";
        }
        List<String> shown = values.stream().map(axis::show).toList();
        return values.size() == 1
                ? "Only " + shown.get(0) + " was flown for " + axis.label()
                        + ". A curve needs three values: fly two more."
                : "Only two values were flown for " + axis.label() + ", " + String.join(" and ", shown)
                        + ". A curve needs three: fly one more.";
    }

    /** A flight cut short tells how little a value flies at least, never how much: by itself it makes no value of a curve. */
    private static String tooFewClean(SettingInfo axis, List<Double> clean) {
        return (clean.isEmpty()
                        ? "No value of " + axis.label() + " has a clean flight"
                        : "Of the values of " + axis.label() + " only "
                                + clean.stream().map(axis::show).collect(Collectors.joining(" and "))
                                + (clean.size() == 1 ? " has" : " have") + " clean flights")
                + "; elsewhere all were cut short. A curve needs clean flights at three.";
    }

    private static Span range(SettingInfo axis, Span flown) {
        double beyond = flown.width() / 4;
        double low = axis.low() == null ? flown.low() - beyond : Math.min(axis.low(), flown.low());
        double high = axis.high() == null ? flown.high() + beyond : Math.max(axis.high(), flown.high());
        return new Span(low, high);
    }

    private static double scale(Span range, double value) {
        return (value - range.low()) / range.width();
    }

    /** The values that can be set: those flown, and whole steps between the limits, or round values without a step. */
    private static double[] candidates(SettingInfo axis, Span range, List<Double> values) {
        Double own = axis.step();
        double round = Figures.decade(range.width() / (OnePeak.GRID - 1));
        boolean stepped = own != null && own > 0 && range.width() / own <= STEPS_AT_MOST;
        double step = own != null && stepped ? own : range.width() / round > STEPS_AT_MOST ? 5 * round : round;
        double anchor = stepped ? values.get(0) : 0;
        TreeSet<Double> candidates = new TreeSet<>(values);
        long first = (long) Math.ceil((range.low() - anchor) / step - 1e-9);
        long last = (long) Math.floor((range.high() - anchor) / step + 1e-9);
        for (long k = first; k <= last; k++) {
            double value = anchor + k * step;
            if (values.stream().noneMatch(v -> Math.abs(v - value) < 1e-6 * range.width())) {
                candidates.add(value);
            }
        }
        return candidates.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
