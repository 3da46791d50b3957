package org.rafterbook.flight;

import org.rafterbook.units.UserError;

/**
 * The standard atmosphere's lowest layer (ISO 2533:1975): temperature, pressure and density by geopotential height, for
 * the pressure at a site without a barometer.
 *
 * <p>T = 288.15 K - 0.0065 K/m H, p = 101325 Pa (T / 288.15 K)^(g / (R 0.0065)), ρ = p / (R T), with g = 9.80665 m/s2
 * and R = 287.05287 J/(kg K). Valid from -2000 to 11 000 m.
 */
public final class StandardAtmosphere {

    /** Pressure at sea level, Pa. */
    public static final double SEA_LEVEL_PA = 101_325;

    private static final double SEA_LEVEL_K = 288.15;
    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double GAS_CONSTANT = 287.05287;
    private static final double GRAVITY = 9.80665;
    private static final double LOWEST_M = -2_000;
    private static final double HIGHEST_M = 11_000;

    private StandardAtmosphere() {}

    /** Temperature at a height, K. */
    public static double temperatureK(double heightM) {
        if (!(heightM >= LOWEST_M && heightM <= HIGHEST_M)) {
            throw UserError.badInput("The height above the sea must lie between −2000 and 11000 m.");
        }
        return SEA_LEVEL_K - LAPSE_K_PER_M * heightM;
    }

    /** Pressure at a height, Pa: the station pressure of a site on an average day. */
    public static double pressurePa(double heightM) {
        return SEA_LEVEL_PA * Math.pow(temperatureK(heightM) / SEA_LEVEL_K, GRAVITY / (GAS_CONSTANT * LAPSE_K_PER_M));
    }

    /** Density of dry air at a height, kg/m3. */
    public static double densityKgPerM3(double heightM) {
        return pressurePa(heightM) / (GAS_CONSTANT * temperatureK(heightM));
    }

    /** Station pressure from a pressure reduced to sea level, as weather services give it, Pa; in the same proportion. */
    public static double stationPressurePa(double seaLevelPressurePa, double heightM) {
        return seaLevelPressurePa * pressurePa(heightM) / SEA_LEVEL_PA;
    }
}
