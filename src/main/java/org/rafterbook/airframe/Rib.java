package org.rafterbook.airframe;

/**
 * One rib of a half surface; between ribs all runs straight.
 *
 * @param outM distance from the surface's middle along the span, before tilt, m
 * @param edgeAftM leading edge aft of the surface's root leading edge, m
 * @param chordM chord, m
 * @param riseM height of the leading edge above the root's, m
 * @param twistRad own angle of this rib relative to the root, leading edge up positive (wash-in), rad
 */
public record Rib(double outM, double edgeAftM, double chordM, double riseM, double twistRad) {}
