package org.rafterbook.ui.bench;

import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;

/**
 * How an airframe is laid on the drawing: both views on one scale, the whole of it in sight at zoom 1. Lengths in mm on the
 * rule, heights in pixels from the drawing's top.
 *
 * @param lowMm value at the left end of the rule
 * @param highMm value at its right end
 * @param pxPerMm scale of both views
 * @param middlePx centre line of the view from above
 * @param stickPx the stick's centre line in the side view
 * @param sideTopPx where the side view begins
 */
record AirframeFit(double lowMm, double highMm, double pxPerMm, double middlePx, double stickPx, double sideTopPx) {

    private static final double CAPTION = 26;
    private static final double SIDE_CAPTION = 46;
    private static final double FOOT = 44;
    private static final double MOST_PX_PER_MM = 4;

    /** The outermost lengths of an airframe, mm. */
    private record Extent(double fore, double aft, double left, double right, double low, double high) {

        static Extent of(Airframe airframe) {
            double fore = -25;
            double aft = 120;
            double left = 40;
            double right = 40;
            double high = 25;
            double low = -12;
            for (Surface s : airframe.surfaces()) {
                for (Rib rib : s.ribs()) {
                    boolean fin = s.role() == Role.FIN;
                    fore = Math.min(fore, 1000 * (s.edgeAftM() + rib.edgeAftM()));
                    aft = Math.max(aft, 1000 * (s.edgeAftM() + rib.edgeAftM() + rib.chordM()));
                    right = fin ? right : Math.max(right, 1000 * (rib.outM() - s.offsetLeftM()));
                    high = Math.max(high, 1000 * (s.riseM() + rib.riseM() + (fin ? rib.outM() : 0.006)));
                    low = Math.min(low, 1000 * (s.riseM() + rib.riseM()));
                }
                for (Rib rib : s.leftRibs()) {
                    left = s.role() == Role.FIN ? left : Math.max(left, 1000 * (rib.outM() + s.offsetLeftM()));
                }
            }
            return new Extent(fore, aft, left, right, low, high);
        }
    }

    /**
     * Lays an airframe.
     *
     * @param width pixels from the first to the last graduation
     * @param height pixels of the drawing
     * @param px pixels of one of the design
     * @param zoom 1 shows all of it
     */
    static AirframeFit of(Airframe airframe, double width, double height, double px, double zoom) {
        Extent e = Extent.of(airframe);
        double words = (CAPTION + SIDE_CAPTION + FOOT) * px;
        double wide = width / (e.aft - e.fore + 20);
        double tall = (height - words) / (e.left + e.right + e.high - e.low + 10);
        double whole = Math.max(0.05, Math.min(wide, tall));
        double scale = Math.min(whole * zoom, Math.max(whole, MOST_PX_PER_MM * px));
        double middle = scale == whole ? (e.aft + e.fore) / 2 : about(airframe, (e.aft + e.fore) / 2);
        double half = width / scale / 2;
        // what height is left over is shared out between the views
        double spare = Math.max(0, height - words - scale * (e.left + e.right + e.high - e.low + 10));
        double axis =
                scale == whole ? CAPTION * px + spare * 0.35 + scale * e.right : CAPTION * px + (height - words) * 0.35;
        double sideTop = scale == whole ? axis + scale * e.left + spare * 0.3 : axis + (height - words) * 0.35;
        double stick = sideTop + SIDE_CAPTION * px + scale * (e.high + 5);
        return new AirframeFit(
                middle - half, middle + half, scale, axis, Math.min(stick, height - FOOT * px / 2), sideTop);
    }

    /** Whether there is room for dimensions between the lines. */
    boolean isRoomy(double px) {
        return pxPerMm > 0.75 * px;
    }

    /** Zoomed in, the middle of the wings' mean chord is what one wants to see. */
    private static double about(Airframe airframe, double otherwise) {
        WingGeometry wings = WingGeometry.of(airframe);
        return wings.areaM2() > 0 ? 1000 * (wings.meanChordEdgeM() + wings.meanChordM() / 2) : otherwise;
    }
}
