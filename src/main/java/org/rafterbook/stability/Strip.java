package org.rafterbook.stability;

/**
 * A chordwise strip of panels as the wake sees it. All lengths in metres, places in the axes of the airframe.
 *
 * @param surface index of the surface
 * @param line index of the unbroken piece it belongs to
 * @param grid index in the shared spanwise grid
 * @param y1 right edge across
 * @param z1 its height
 * @param y2 left edge across
 * @param z2 its height
 * @param middleY place of the control points across
 * @param middleZ their height
 * @param middleEdge the leading edge there
 * @param middleChord the chord there
 * @param trailingX the later of the two trailing edges aft of the origin
 */
record Strip(
        int surface,
        int line,
        int grid,
        double y1,
        double z1,
        double y2,
        double z2,
        double middleY,
        double middleZ,
        double middleEdge,
        double middleChord,
        double trailingX) {

    double width() {
        return y2 - y1;
    }

    /** Width along the slant. */
    double slant() {
        return Math.hypot(y2 - y1, z2 - z1);
    }

    /** Rise over width. */
    double slope() {
        return (z2 - z1) / (y2 - y1);
    }
}
