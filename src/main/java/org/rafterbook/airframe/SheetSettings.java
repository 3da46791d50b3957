package org.rafterbook.airframe;

import java.util.ArrayList;
import java.util.List;

/** The settings a model gets with its first sheet: where each wing and tailplane sits and at which incidence. */
public final class SheetSettings {

    /**
     * A setting still without id and letter.
     *
     * @param step usual step, SI
     * @param tolerance two values nearer than half of this are the same, SI
     */
    public record Offer(SheetPath path, String label, double step, double tolerance) {}

    private SheetSettings() {}

    /** Offers in the order they are listed; height is offered only where there are several wings (their gap). */
    public static List<Offer> of(Airframe airframe) {
        List<Offer> offers = new ArrayList<>();
        long wings =
                airframe.surfaces().stream().filter(s -> s.role() == Role.WING).count();
        for (Surface s : airframe.surfaces()) {
            if (s.role() == Role.FIN) {
                continue;
            }
            if (s.role() == Role.WING) {
                offers.add(offer(s, SheetPath.Key.EDGE_AFT, "position", 0.001, 0.0002));
            }
            offers.add(offer(s, SheetPath.Key.INCIDENCE, "incidence", Math.toRadians(0.25), Math.toRadians(0.05)));
            if (s.role() == Role.WING && wings > 1) {
                offers.add(offer(s, SheetPath.Key.RISE, "height", 0.001, 0.0002));
            }
        }
        return offers;
    }

    /** The offer for any other key of a sheet, with customary steps (common practice, no source). */
    public static Offer offerFor(SheetPath path) {
        double step = switch (path.key()) {
            case EDGE_AFT, RISE, OFFSET_LEFT, AFT, SPAN, CHORD -> 0.001;
            case INCIDENCE, TILT, ZERO_LIFT -> Math.toRadians(0.25);
            case CM_QUARTER -> 0.01;
            case CAMBER -> 0.005;
            case MASS -> 1e-5;
        };
        String what = switch (path.key()) {
            case EDGE_AFT, AFT -> "position";
            case RISE -> "height";
            case OFFSET_LEFT -> "offset to the left";
            case INCIDENCE -> "incidence";
            case TILT -> "tilt";
            case CAMBER -> "camber";
            case MASS -> "mass";
            case ZERO_LIFT -> "angle of zero lift";
            case CM_QUARTER -> "moment coefficient";
            case SPAN -> "span";
            case CHORD -> "chord";
        };
        return new Offer(path, capital(path.item()) + " " + what, step, step / 5);
    }

    private static Offer offer(Surface s, SheetPath.Key key, String what, double step, double tolerance) {
        return new Offer(new SheetPath(s.name(), key), capital(s.name()) + " " + what, step, tolerance);
    }

    private static String capital(String name) {
        return name.isEmpty() ? name : Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
