package org.rafterbook.flight;

import org.rafterbook.units.UserError;

/**
 * Density of moist air by the CIPM-2007 equation: A. Picard, R. S. Davis, M. Gläser, K. Fujii, Metrologia 45 (2008)
 * 149-155.
 *
 * <p>ρ = p M_a / (Z R T) (1 - x_v (1 - M_v / M_a)), with x_v = h f(p, t) p_sv(T) / p and 400 parts per million of carbon
 * dioxide. Stated for 600 to 1100 hPa and 15 to 27 °C; used here, and smooth, from 300 to 1200 hPa and -30 to 60 °C.
 */
public final class MoistAir {

    private static final double MOLAR_GAS_CONSTANT = 8.314472;
    private static final double MOLAR_MASS_DRY_AIR = 28.96546e-3;
    private static final double MOLAR_MASS_WATER = 18.01528e-3;
    private static final double CELSIUS_ZERO_K = 273.15;
    private static final double LOWEST_PA = 30_000;
    private static final double HIGHEST_PA = 120_000;
    private static final double COLDEST_K = 243.15;
    private static final double HOTTEST_K = 333.15;

    private MoistAir() {}

    /**
     * Density, kg/m3.
     *
     * @param temperatureK temperature, K
     * @param pressurePa station pressure, Pa; never a pressure reduced to sea level
     * @param humidity relative humidity, fraction
     */
    public static double densityKgPerM3(double temperatureK, double pressurePa, double humidity) {
        if (!(pressurePa >= LOWEST_PA && pressurePa <= HIGHEST_PA)) {
            throw UserError.badInput("Air density needs the pressure at the site, between 300 and 1200 hPa.");
        }
        if (!(humidity >= 0 && humidity <= 1)) {
            throw UserError.badInput("The humidity must lie between 0 and 100 %.");
        }
        double water =
                humidity * enhancement(temperatureK, pressurePa) * saturationPressurePa(temperatureK) / pressurePa;
        double drySide = pressurePa
                * MOLAR_MASS_DRY_AIR
                / (compressibility(temperatureK, pressurePa, water) * MOLAR_GAS_CONSTANT * temperatureK);
        return drySide * (1 - water * (1 - MOLAR_MASS_WATER / MOLAR_MASS_DRY_AIR));
    }

    /** Saturation vapour pressure of water, Pa: exp(A T^2 + B T + C + D / T). */
    public static double saturationPressurePa(double temperatureK) {
        if (!(temperatureK >= COLDEST_K && temperatureK <= HOTTEST_K)) {
            throw UserError.badInput("The air's temperature must lie between −30 and 60 °C.");
        }
        return Math.exp(1.2378847e-5 * temperatureK * temperatureK
                - 1.9121316e-2 * temperatureK
                + 33.93711047
                - 6.3431645e3 / temperatureK);
    }

    private static double enhancement(double temperatureK, double pressurePa) {
        double t = temperatureK - CELSIUS_ZERO_K;
        return 1.00062 + 3.14e-8 * pressurePa + 5.6e-7 * t * t;
    }

    private static double compressibility(double temperatureK, double pressurePa, double water) {
        double t = temperatureK - CELSIUS_ZERO_K;
        double ratio = pressurePa / temperatureK;
        double first = 1.58123e-6
                - 2.9331e-8 * t
                + 1.1043e-10 * t * t
                + (5.707e-6 - 2.051e-8 * t) * water
                + (1.9898e-4 - 2.376e-6 * t) * water * water;
        double second = 1.83e-11 - 0.765e-8 * water * water;
        return 1 - ratio * first + ratio * ratio * second;
    }
}
