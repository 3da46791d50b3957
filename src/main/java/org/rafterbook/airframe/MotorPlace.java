package org.rafterbook.airframe;

/**
 * The motor on the stick as balance sees it.
 *
 * @param massKg mass of the motor, kg
 * @param aftM middle between the hooks aft of the origin, m
 */
public record MotorPlace(double massKg, double aftM) {}
