package org.rafterbook.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;
import org.rafterbook.stability.SketchComparison;

/** Designs compared before they are built: sketches of a model, the version it is rigged as, and other models. */
public final class Comparison {

    /** How far a wing may be slid where its setting has no limits, m. */
    private static final double REACH_M = 0.04;

    private final BenchDesk desk;
    private final Riggings riggings;

    Comparison(BenchDesk desk, Riggings riggings) {
        this.desk = desk;
        this.riggings = riggings;
    }

    /**
     * Something that can be compared.
     *
     * @param ofThisModel true for the model on the bench
     */
    public record Design(String name, Rigged rigged, boolean ofThisModel) {}

    /** The model's version shown and now, its sketches, then other models as they are rigged; all with geometry. */
    public List<Design> designs(Rigged shown) {
        List<Design> designs = new ArrayList<>();
        add(designs, shown, true);
        add(designs, riggings.now(shown.model().id()), true);
        riggings.sketches(shown.model().id()).forEach(s -> add(designs, s, true));
        for (Model model : riggings.models()) {
            if (!model.id().equals(shown.model().id())) {
                add(designs, riggings.now(model.id()), false);
                riggings.sketches(model.id()).forEach(s -> add(designs, s, false));
            }
        }
        return designs;
    }

    private static void add(List<Design> designs, Rigged rigged, boolean own) {
        boolean known = designs.stream()
                .anyMatch(d -> d.rigged().version().id().equals(rigged.version().id()));
        if (!known && rigged.geometry() != null) {
            designs.add(new Design(own ? rigged.name() : rigged.model().name() + " " + rigged.name(), rigged, own));
        }
    }

    /**
     * The designs side by side, each from the balance it has: a measured one counts.
     *
     * @param margin equal for all, fraction of the mean chord, as it would be shown: with the flyer's zero
     * @param airframeKg equal for all, without the motor
     * @param lift lift coefficient at trim
     */
    public List<SketchComparison.Row> of(
            List<Design> designs, double margin, double airframeKg, double lift, Surroundings in, Progress progress) {
        List<SketchComparison.Row> rows = new ArrayList<>();
        for (Design design : designs) {
            progress.step(rows.size(), designs.size(), "designs");
            AsFlown flown = AsFlown.of(desk.look(design.rigged(), in));
            Airframe airframe = flown.airframe();
            if (airframe != null) {
                double[] slide = slide(design.rigged(), airframe);
                SketchComparison.Terms terms = new SketchComparison.Terms(
                        margin - flown.zero(), airframeKg, airframe.motor(), lift, in.airDensity(), slide[0], slide[1]);
                rows.addAll(SketchComparison.of(Map.of(design.name(), airframe), terms));
            }
        }
        return rows;
    }

    /** How far the sliders let the wings go ahead and aft of where they are, m. */
    private static double[] slide(Rigged rigged, Airframe airframe) {
        double ahead = Double.POSITIVE_INFINITY;
        double aft = Double.POSITIVE_INFINITY;
        for (Surface wing : WingGeometry.of(airframe).wings()) {
            String path = new SheetPath(wing.name(), SheetPath.Key.EDGE_AFT).toString();
            for (SettingDef setting : rigged.settings()) {
                if (path.equals(setting.path())) {
                    @Nullable Double low = setting.low();
                    @Nullable Double high = setting.high();
                    ahead = low == null ? ahead : Math.min(ahead, wing.edgeAftM() - low);
                    aft = high == null ? aft : Math.min(aft, high - wing.edgeAftM());
                }
            }
        }
        return new double[] {
            Double.isFinite(ahead) ? Math.max(0, ahead) : REACH_M, Double.isFinite(aft) ? Math.max(0, aft) : REACH_M
        };
    }
}
