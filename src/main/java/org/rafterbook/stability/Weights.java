package org.rafterbook.stability;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.MassItem;

/**
 * An airframe's masses against the scale and the class's minimum.
 *
 * @param sumKg sum of the parts without motor, kg; null without parts
 * @param scaleLessSumKg what the scale shows more than the parts add up to, kg; null without a weighing
 * @param overMinimumKg mass above the class's minimum, negative below, kg; null without either
 * @param timeLost share of the time that the excess costs, 0 at or below the minimum; time goes with all-up mass^-1.5
 */
public record Weights(
        @Nullable Double sumKg,
        @Nullable Double scaleLessSumKg,
        @Nullable Double overMinimumKg,
        @Nullable Double timeLost) {

    /**
     * @param scaleKg the airframe on the scale without motor, kg; null if it was never weighed
     * @param minimumKg least mass of the class without motor, kg; null without a class
     * @param motorKg the motor flown, kg
     */
    public static Weights of(
            List<MassItem> masses, @Nullable Double scaleKg, @Nullable Double minimumKg, double motorKg) {
        double total = masses.stream().mapToDouble(MassItem::massKg).sum();
        Double sum = total > 0 ? (Double) total : null;
        Double mass = scaleKg != null ? scaleKg : sum;
        Double over = mass == null || minimumKg == null ? null : mass - minimumKg;
        return new Weights(
                sum,
                scaleKg == null || sum == null ? null : scaleKg - sum,
                over,
                mass == null || minimumKg == null ? null : timeLost(mass + motorKg, minimumKg + motorKg));
    }

    /** Share of the time that flying heavier costs, 1 - (light/heavy)^1.5. */
    public static double timeLost(double heavyKg, double lightKg) {
        return heavyKg > lightKg && lightKg > 0 ? 1 - Math.pow(lightKg / heavyKg, 1.5) : 0;
    }
}
