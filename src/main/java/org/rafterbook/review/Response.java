package org.rafterbook.review;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Counted;

/**
 * How duration goes with one quantity, as far as the flights tell.
 *
 * @param axis the quantity: a setting, or the stability margin
 * @param curve places of the whole range in ascending order
 * @param points the flights it rests on
 * @param flown lowest and highest value flown; nothing is drawn beyond
 * @param valuesFlown distinct values flown
 * @param days sessions the flights come from
 * @param best where the best value lies with 90 % probability
 * @param littleLost where less than 1 % is expected to be lost against the best; null where that holds nowhere yet
 * @param parabola 90 % interval of the vertex of a least-squares parabola, the simple cross-check; null where its
 *     curvature is not significant; told only where it lies within what was flown
 * @param agreement probability of level means as far from the curve as these if one peak is right
 * @param next what to try next on this axis
 */
public record Response(
        SettingInfo axis,
        List<CurvePoint> curve,
        List<ResponsePoint> points,
        Span flown,
        int valuesFlown,
        int days,
        Span best,
        @Nullable Span littleLost,
        @Nullable Span parabola,
        double agreement,
        NextTry next) {

    /** Below this probability the sentence warns that the flights do not fit a curve with one peak. */
    public static final double DOUBTFUL = 0.02;

    public Response {
        curve = List.copyOf(curve);
        points = List.copyOf(points);
    }

    /**
     * One place on the curve, in an average session.
     *
     * @param value the place, in the axis's unit
     * @param logDuration mean natural logarithm of duration in seconds
     * @param logLow lower end of the 90 % band
     * @param logHigh upper end of the 90 % band
     * @param peakProbability probability that the best value is this one of all places
     * @param expectedLoss expected loss of log duration against the best
     */
    public record CurvePoint(
            double value,
            double logDuration,
            double logLow,
            double logHigh,
            double peakProbability,
            double expectedLoss) {}

    /** True where the flights do not fit a curve with one peak. */
    public boolean isDoubtful() {
        return agreement < DOUBTFUL;
    }

    /** Flights cut short, which count as "at least". */
    public int atLeast() {
        return (int) points.stream().filter(ResponsePoint::atLeast).count();
    }

    /** What the curve says, sentence by sentence: the best, what is nearly as good, what it rests on, the warning. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add(bestInWords());
        sentences.add(littleLostInWords());
        String base = "From " + Counted.of(points.size(), "flight") + " at " + valuesFlown + " values on "
                + Counted.of(days, "day");
        sentences.add(base + (atLeast() > 0 ? ", " + atLeast() + " of them counted as \"at least\"." : "."));
        if (parabola != null && flown.holds(parabola.low()) && flown.holds(parabola.high())) {
            sentences.add("A plain parabola through the same flights has its top between " + show(parabola.low())
                    + " and " + show(parabola.high()) + unit() + " (90 %).");
        }
        if (isDoubtful()) {
            sentences.add("The times at the single values do not fit a curve with one peak: trust the points, not the"
                    + " curve.");
        }
        return List.copyOf(sentences);
    }

    /** Where the best lies among what was flown, or on which side of it: what was never flown is not spoken of. */
    public String bestInWords() {
        if (best.low() > flown.high()) {
            return "Best " + axis.label() + " probably above " + show(flown.high()) + unit()
                    + ", the highest flown (90 %).";
        }
        if (best.high() < flown.low()) {
            return "Best " + axis.label() + " probably below " + show(flown.low()) + unit()
                    + ", the lowest flown (90 %).";
        }
        boolean low =
                reaches(flown.low() - best.low(), best.low() <= curve.get(0).value());
        boolean high = reaches(
                best.high() - flown.high(),
                best.high() >= curve.get(curve.size() - 1).value());
        if (low && high) {
            return "Where the best " + axis.label() + " lies cannot be told yet (90 %).";
        }
        if (low) {
            return "Best " + axis.label() + " probably " + show(best.high()) + unit() + " or less (90 %)"
                    + unflown(flown.low() - best.low(), "below " + show(flown.low()));
        }
        if (high) {
            return "Best " + axis.label() + " probably " + show(best.low()) + unit() + " or more (90 %)"
                    + unflown(best.high() - flown.high(), "above " + show(flown.high()));
        }
        return "Best " + axis.label() + " probably between " + show(best.low()) + " and " + show(best.high()) + unit()
                + " (90 %).";
    }

    private boolean reaches(double beyondFlown, boolean toTheEnd) {
        return toTheEnd || beyondFlown > grid() / 2;
    }

    private String unflown(double beyond, String where) {
        return beyond > grid() / 2 ? "; nothing " + where + unit() + " was flown." : ".";
    }

    /** What of {@link #best} was flown; null where it lies beyond all that was. */
    public @Nullable Span bestFlown() {
        return amongFlown(best);
    }

    /** What of {@link #littleLost} was flown; null where nothing was. */
    public @Nullable Span littleLostFlown() {
        return littleLost == null ? null : amongFlown(littleLost);
    }

    private @Nullable Span amongFlown(Span span) {
        double low = Math.max(span.low(), flown.low());
        double high = Math.min(span.high(), flown.high());
        return low > high ? null : new Span(low, high);
    }

    /** What is nearly as good as the best, as far as it was flown. */
    public String littleLostInWords() {
        if (littleLost == null) {
            return "Too little is known to say which values cost less than 1 %.";
        }
        Span told = littleLostFlown();
        if (told == null) {
            return "No value flown is known to cost less than 1 %.";
        }
        return show(told.low()).equals(show(told.high()))
                ? "Of what was flown " + show(told.low()) + unit() + " costs less than 1 %."
                : "Anything from " + show(told) + " costs less than 1 %.";
    }

    private String show(Span span) {
        return show(span.low()) + " to " + show(span.high()) + unit();
    }

    private String show(double value) {
        return Figures.value(value, resolution());
    }

    /** No finer than the curve's places, nor than half a step of the setting, nor than a margin is told. */
    private double resolution() {
        double step = axis.step() == null ? 0 : axis.step() / 2;
        return Figures.decade(Math.max(grid(), axis.isSetting() ? step : SettingInfo.MARGIN_RESOLUTION));
    }

    private double grid() {
        return (curve.get(curve.size() - 1).value() - curve.get(0).value()) / (curve.size() - 1);
    }

    private String unit() {
        return axis.afterNumber();
    }
}
