package org.rafterbook.stability;

import org.jspecify.annotations.Nullable;

/**
 * What trim depends on beside the geometry.
 *
 * @param massKg all-up mass, kg
 * @param balanceM balance point aft of the origin, m
 * @param airDensity kg/m^3
 * @param glideRatio lift over drag; only the slow mode and the propeller's term use it, and weakly
 * @param inertiaKgM2 moment of inertia in pitch about the balance point; null takes a tenth of the all-up mass times the
 *     tail arm squared; the slow mode hardly depends on it
 * @param circleRadiusM radius of the circle flown, m; null for straight flight
 * @param propeller the propeller's fin effect; null leaves it out
 */
public record TrimConditions(
        double massKg,
        double balanceM,
        double airDensity,
        double glideRatio,
        @Nullable Double inertiaKgM2,
        @Nullable Double circleRadiusM,
        @Nullable PropellerTerm propeller) {

    /** An assumption for models of this kind, stated where it shows. */
    public static final double USUAL_GLIDE_RATIO = 6;

    /** Straight flight without a propeller's term. */
    public static TrimConditions straight(double massKg, double balanceM, double airDensity) {
        return new TrimConditions(massKg, balanceM, airDensity, USUAL_GLIDE_RATIO, null, null, null);
    }
}
