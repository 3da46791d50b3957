package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Counted;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;

/**
 * The chance to touch one obstacle by launch torque, never beyond 10 % above the highest torque flown.
 *
 * @param limitM height of the obstacle, m
 * @param curve torques in ascending order; the chance never falls
 * @param flownNm lowest and highest launch torque flown, N m
 * @param flights flights it rests on
 * @param touched how many of them touched something
 * @param told flights that are known to have reached the height or to have stayed below it
 */
public record Ceiling(double limitM, List<Risk> curve, Span flownNm, int flights, int touched, List<Told> told) {

    /** Changes whenever the same input would give another answer. */
    public static final String EDITION = "3";

    /** How far above the highest torque flown anything is told, as a factor. */
    public static final double REACH = 1.10;

    /** How far below the lowest torque flown a torque is advised, as a factor: there the advice is cautious anyway. */
    private static final double DOWN = 0.5;

    private static final int PLACES = 121;
    private static final double NEAR = 0.05;

    public Ceiling {
        curve = List.copyOf(curve);
        told = List.copyOf(told);
    }

    /** A flight that tells: its launch torque, N m, and whether it came as high as the obstacle. */
    public record Told(double torqueNm, boolean reached) {}

    /**
     * The chance at one torque.
     *
     * @param torqueNm launch torque, N m
     * @param chance of the next flight, in a session of its own
     * @param low 5 % quantile of what the flights leave open about that chance
     * @param high 95 % quantile
     * @param drawn true where the torque lies within what was flown and 10 % above
     */
    public record Risk(double torqueNm, double chance, double low, double high, boolean drawn) {}

    /**
     * A torque for a chosen chance.
     *
     * @param torqueNm the highest torque at which the chance is no higher than chosen, N m
     * @param limitedByFlown true where a higher torque might do but lies more than 10 % above what was flown
     * @param lowNm where the chance may be as high as chosen already, the lower end of a 90 % interval, N m; 0 where that
     *     is below half the lowest torque flown
     * @param highNm where it may be no higher still, the upper end; infinite where that is beyond what is told
     */
    public record Advice(double torqueNm, boolean limitedByFlown, double lowNm, double highNm) {}

    /** The simple cross-check: flights within 5 % of a torque, and how many of them reached the height. */
    public record Count(int reached, int flown) {}

    /** The chances to reach a height. */
    public static Ceiling of(CeilingModel model, double limitM) {
        Span flown = model.flownNm();
        double from = flown.low() * DOWN;
        double to = flown.high() * REACH;
        List<Risk> curve = new ArrayList<>();
        double chance = 0;
        double low = 0;
        double high = 0;
        for (int k = 0; k < PLACES; k++) {
            double torque = from * Math.pow(to / from, k / (PLACES - 1.0));
            double[] open = model.chances(torque, limitM);
            chance = Math.max(chance, Arrays.stream(open).sum() / open.length);
            Arrays.sort(open);
            low = Math.max(low, Estimate.quantile(open, 0.05));
            // Far out on the tail the mean is carried by the few draws above the quantile.
            high = Math.max(chance, Math.max(high, Estimate.quantile(open, 0.95)));
            curve.add(new Risk(torque, chance, low, high, torque >= flown.low() * (1 - 1e-12)));
        }
        return new Ceiling(
                limitM,
                curve,
                flown,
                model.flights().size(),
                (int) model.flights().stream().filter(HeightFlight::touched).count(),
                model.flights().stream()
                        .filter(f -> f.reached(limitM) || f.stayedBelow(limitM))
                        .map(f -> new Told(f.torqueNm(), f.reached(limitM)))
                        .toList());
    }

    /** The chance at a torque; null more than 10 % above the highest flown. */
    public @Nullable Double chance(double torqueNm) {
        if (torqueNm > flownNm.high() * REACH * (1 + 1e-9)) {
            return null;
        }
        if (torqueNm <= curve.get(0).torqueNm()) {
            return curve.get(0).chance();
        }
        for (int k = 1; k < curve.size(); k++) {
            Risk above = curve.get(k);
            if (torqueNm <= above.torqueNm() || k == curve.size() - 1) {
                Risk below = curve.get(k - 1);
                double part = Math.min(1, (torqueNm - below.torqueNm()) / (above.torqueNm() - below.torqueNm()));
                return below.chance() + part * (above.chance() - below.chance());
            }
        }
        throw new AssertionError("torque " + torqueNm);
    }

    /** The highest torque with a chance no higher than this; null where even half the lowest torque flown has a higher. */
    public @Nullable Advice torqueFor(double chosen) {
        double from = curve.get(0).torqueNm();
        double torque = crossing(chosen, Risk::chance);
        return torque < from
                ? null
                : new Advice(
                        Math.min(torque, highest()),
                        torque > highest(),
                        crossing(chosen, Risk::high),
                        crossing(chosen, Risk::low));
    }

    private double highest() {
        return curve.get(curve.size() - 1).torqueNm();
    }

    /** Where a line of the curve first rises above a chance: 0 before its start, infinite where it stays below. */
    private double crossing(double chosen, ToDoubleFunction<Risk> line) {
        if (line.applyAsDouble(curve.get(0)) > chosen) {
            return 0;
        }
        for (int k = 1; k < curve.size(); k++) {
            double above = line.applyAsDouble(curve.get(k));
            if (above > chosen) {
                double below = line.applyAsDouble(curve.get(k - 1));
                double from = curve.get(k - 1).torqueNm();
                return from + (chosen - below) / (above - below) * (curve.get(k).torqueNm() - from);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Flights within 5 % of a torque that are known to have reached the height or to have stayed below it. */
    public Count near(double torqueNm) {
        List<Told> near = told.stream()
                .filter(f -> Math.abs(f.torqueNm() / torqueNm - 1) <= NEAR)
                .toList();
        return new Count((int) near.stream().filter(Told::reached).count(), near.size());
    }

    /** Flights that came as high as the obstacle. */
    public int reached() {
        return (int) told.stream().filter(Told::reached).count();
    }

    /** Flights that stayed below it. */
    public int below() {
        return told.size() - reached();
    }

    /** Flights of whose height only ends on both sides of it are known. */
    public int notKnown() {
        return flights - told.size();
    }

    /** Where the flights came to, all of them: "5 as high, 45 below, 5 not known". */
    public String counts() {
        return reached() + " as high, " + below() + " below"
                + (notKnown() == 0 ? "" : ", " + notKnown() + " not known");
    }

    /** What it says for a chance of 1 in 20, 1 in 10 and 1 in 5. */
    public String sentence(QuantityFormat format) {
        Advice careful = torqueFor(0.05);
        String base = " (" + Counted.of(flights, "flight") + ", " + touched + " touched)";
        if (careful == null) {
            return String.format(
                    Locale.ROOT,
                    "Even at half the lowest torque flown the chance to touch is above 1 in 20%s: fly lower first.",
                    base);
        }
        StringBuilder text = new StringBuilder();
        if (careful.limitedByFlown()) {
            return text.append(within(format, careful.torqueNm()))
                    .append(
                            ", 10 % above the highest torque flown, still keeps the chance of touching at or below 1 in 20")
                    .append(base)
                    .append("; nothing is told beyond.")
                    .toString();
        }
        text.append(torque(format, careful, "90 % interval "))
                .append(" keeps the chance of touching at about 1 in 20")
                .append(base)
                .append('.');
        String[] odds = {"1 in 10", "1 in 5"};
        double[] chances = {0.10, 0.20};
        for (int i = 0; i < odds.length; i++) {
            Advice advice = torqueFor(chances[i]);
            if (advice != null && !advice.limitedByFlown()) {
                text.append(" At ")
                        .append(torque(format, advice, ""))
                        .append(": ")
                        .append(odds[i])
                        .append('.');
            }
        }
        return text.toString();
    }

    /** A torque with what is open about it; one decimal more than a reading has: rounding by 4 % is a risk of its own. */
    private static String torque(QuantityFormat format, Advice advice, String lead) {
        String low = format.number(Quantity.TORQUE, advice.lowNm(), decimals(format));
        String high = format.number(Quantity.TORQUE, advice.highNm(), decimals(format));
        boolean open = Double.isInfinite(advice.highNm());
        String interval =
                advice.lowNm() > 0 ? low + (open ? " or more" : " to " + high) : open ? "" : high + " or less";
        return format.text(Quantity.TORQUE, advice.torqueNm(), decimals(format))
                + (interval.isEmpty() ? "" : " (" + lead + interval + ")");
    }

    /** A torque that is a limit, rounded to the inside. */
    private static String within(QuantityFormat format, double torqueNm) {
        double unit = Quantity.TORQUE.unit(format.units()).toSi(1);
        double step = Math.pow(10, -decimals(format)) * unit;
        return format.text(Quantity.TORQUE, Math.floor(torqueNm / step + 1e-9) * step, decimals(format));
    }

    private static int decimals(QuantityFormat format) {
        return format.units() == DisplayUnits.METRIC ? 2 : 3;
    }
}
