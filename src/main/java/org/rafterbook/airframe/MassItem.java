package org.rafterbook.airframe;

/**
 * A mass of the airframe; one that carries a surface's name moves with that surface.
 *
 * @param massKg mass, kg
 * @param aftM centre aft of the origin, m
 * @param riseM centre above the stick's centre line, m
 */
public record MassItem(String name, double massKg, double aftM, double riseM) {}
