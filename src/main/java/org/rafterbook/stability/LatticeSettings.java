package org.rafterbook.stability;

/**
 * How finely the lattice is laid.
 *
 * @param spanwise panels over half the longest span (more where another surface ends within it)
 * @param chordwise panels along each chord; with {@code extrapolated} the coarser of two counts, and the least: small gaps
 *     and very low aspect ratios take more
 * @param extrapolated true where the lattice is solved with {@code chordwise} and twice as many panels along the chord and
 *     the error, which falls with the square of the count, is taken out
 * @param spacing how panel edges lie across the span
 */
public record LatticeSettings(int spanwise, int chordwise, boolean extrapolated, Spacing spacing) {

    /** The settings of every margin shown. */
    public static final LatticeSettings DEFAULT = new LatticeSettings(18, 2, true, Spacing.COSINE);

    /** How panel edges lie across the span between the places where a surface ends. */
    public enum Spacing {
        /** Cosine towards every surface's end, control points at the middle angle. */
        COSINE,
        /** Even; of the outermost panels the last quarter is left out (Hough, J. Aircraft 10, 1973). */
        EVEN_INSET,
        /** Even, up to the very end. */
        EVEN
    }

    public LatticeSettings {
        if (spanwise < 1 || chordwise < 1) {
            throw new IllegalArgumentException("a lattice needs at least one panel each way");
        }
    }

    /** Panels as published examples name them, without extrapolation. */
    public static LatticeSettings plain(int spanwise, int chordwise, Spacing spacing) {
        return new LatticeSettings(spanwise, chordwise, false, spacing);
    }
}
