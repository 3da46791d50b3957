package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;

/**
 * The solved flow about one arrangement of surfaces, linear in angle of attack, pitch rate and each surface's incidence,
 * twist and camber: these may change without a new factorisation. Fins carry no lift in the longitudinal problem and are
 * left out. Immutable but for answers it keeps; thread-safe.
 */
public final class GeometrySolution {

    private final List<Surface> surfaces;
    private final WingGeometry wings;
    private final LatticeSettings settings;
    private final LatticeFamily lattices;
    private final FarWake farWake;
    private final List<Loads> incidences = new ArrayList<>();
    private final List<double[]> alphaCirculations;
    private final Loads alpha;
    private final Loads pitch;

    /** Camber and twists that were asked for, by surface and twist of its ribs. */
    private final Map<List<?>, Loads> pieces = new ConcurrentHashMap<>();

    private GeometrySolution(Airframe airframe, LatticeSettings settings) {
        this.settings = settings;
        surfaces = lifting(airframe);
        wings = WingGeometry.of(airframe);
        lattices = LatticeFamily.of(surfaces, settings);
        Panels panels = lattices.coarsest().panels();
        farWake = new FarWake(panels.strips(), panels.mirrored());
        Loads sum = Loads.zero(surfaces.size(), panels.strips().size());
        List<double[]> circulations = List.of();
        for (int s = 0; s < surfaces.size(); s++) {
            int turned = s;
            List<double[]> own = lattices.solve(lattice -> lattice.turned(turned));
            circulations = circulations.isEmpty() ? own : sum(circulations, own);
            Loads loads = lattices.loads(own);
            incidences.add(loads);
            sum = sum.plus(1, loads);
        }
        alphaCirculations = circulations;
        alpha = sum;
        pitch = lattices.loads(lattices.solve(Lattice::pitching));
    }

    private static List<double[]> sum(List<double[]> a, List<double[]> b) {
        List<double[]> sum = new ArrayList<>();
        for (int l = 0; l < a.size(); l++) {
            double[] both = a.get(l).clone();
            add(both, 1, b.get(l));
            sum.add(both);
        }
        return sum;
    }

    /**
     * Solves an arrangement.
     *
     * @param airframe without geometry problems that hide the neutral point, at least one lifting surface
     */
    static GeometrySolution of(Airframe airframe, LatticeSettings settings) {
        return new GeometrySolution(airframe, settings);
    }

    private static List<Surface> lifting(Airframe airframe) {
        return airframe.surfaces().stream().filter(s -> s.role() != Role.FIN).toList();
    }

    /** True where another airframe differs from the solved one at most in incidence, twist, camber, masses or fins. */
    public boolean fits(Airframe other) {
        List<Surface> others = lifting(other);
        if (others.size() != surfaces.size()) {
            return false;
        }
        for (int s = 0; s < surfaces.size(); s++) {
            if (!flat(surfaces.get(s)).equals(flat(others.get(s)))) {
                return false;
            }
        }
        return true;
    }

    /** The lifting surfaces without what enters through the onset flow alone. */
    static List<Surface> shape(Airframe airframe) {
        return lifting(airframe).stream().map(GeometrySolution::flat).toList();
    }

    /** A surface without what enters through the onset flow alone. */
    private static Surface flat(Surface s) {
        List<Rib> left = s.ribsLeft();
        return new Surface(
                s.name(),
                s.role(),
                s.edgeAftM(),
                s.riseM(),
                0,
                0,
                s.ribs().stream().map(GeometrySolution::flat).toList(),
                left == null ? null : left.stream().map(GeometrySolution::flat).toList(),
                s.offsetLeftM(),
                s.tiltRad(),
                null,
                null);
    }

    private static Rib flat(Rib r) {
        return new Rib(r.outM(), r.edgeAftM(), r.chordM(), r.riseM(), 0);
    }

    /** Loads per radian of angle of attack. */
    Loads alpha() {
        return alpha;
    }

    /** Loads per radian of one surface's incidence. */
    Loads incidence(int surface) {
        return incidences.get(surface);
    }

    /** Loads at zero angle of attack that incidences, twist and camber of an airframe cause that {@link #fits fits}. */
    Loads fixed(Airframe airframe) {
        List<Surface> turned = lifting(airframe);
        Loads sum = alpha.times(0);
        for (int s = 0; s < turned.size(); s++) {
            Surface surface = turned.get(s);
            SectionCamber section = SectionCamber.of(surface);
            sum = sum.plus(surface.incidenceRad() + section.turnRad(), incidences.get(s));
            if (section.parabola() != 0) {
                sum = sum.plus(section.parabola(), camber(s));
            }
            if (hasTwist(surface)) {
                sum = sum.plus(1, twist(s, surface));
            }
        }
        return sum;
    }

    /** Loads per unit of a surface's parabolic camber, solved when first asked for. */
    private Loads camber(int surface) {
        return pieces.computeIfAbsent(
                List.of(surface), key -> lattices.loads(lattices.solve(lattice -> lattice.cambered(surface))));
    }

    private Loads twist(int index, Surface surface) {
        List<Double> twist = Stream.of(surface.ribs(), surface.leftRibs())
                .flatMap(List::stream)
                .map(Rib::twistRad)
                .toList();
        return pieces.computeIfAbsent(
                List.of(index, twist),
                key -> lattices.loads(lattices.solve(lattice -> lattice.twisted(index, surface))));
    }

    private static boolean hasTwist(Surface s) {
        return s.ribs().stream().anyMatch(r -> r.twistRad() != 0)
                || s.leftRibs().stream().anyMatch(r -> r.twistRad() != 0);
    }

    private static void add(double[] sum, double factor, double[] other) {
        for (int i = 0; i < sum.length && factor != 0; i++) {
            sum[i] += factor * other[i];
        }
    }

    /** Induced drag over rho V^2, m^2. */
    double inducedDrag(Loads loads) {
        return farWake.drag(loads.circulation());
    }

    /** Surfaces that carry lift, in the sheet's order. */
    public List<Surface> surfaces() {
        return surfaces;
    }

    /** All wings taken together. */
    public WingGeometry wings() {
        return wings;
    }

    /** The settings it was solved with. */
    public LatticeSettings settings() {
        return settings;
    }

    /** Panels along each chord; with extrapolation the coarsest of several counts. */
    public int chordwise() {
        return lattices.coarsest().panels().chordwise();
    }

    /** Unknowns of the largest matrix solved. */
    public int size() {
        return lattices.lattices().stream()
                .mapToInt(lattice -> lattice.panels().size())
                .max()
                .orElse(0);
    }

    /** Neutral point aft of the origin, m. */
    public double neutralPointM() {
        return alpha.centreM();
    }

    /** Lift slope of the whole model on the wing area, per rad. */
    public double liftSlopePerRad() {
        return 2 * alpha.totalLift() / wings.areaM2();
    }

    /** Share of each surface in the lift of an angle of attack, in the sheet's order. */
    public Map<String, Double> liftShare() {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (int s = 0; s < surfaces.size(); s++) {
            shares.put(surfaces.get(s).name(), alpha.lift()[s] / alpha.totalLift());
        }
        return shares;
    }

    /** Mean gradient of the downwash that the other surfaces cause at one. */
    public double downwashGradient(int surface) {
        return lattices.downwashAt(surface, alphaCirculations);
    }

    /** Lift coefficient per qc/2V of a pitch rate about a place, on wing area and mean chord. */
    public double liftPerPitch(double aboutM) {
        return 4 * pitchAbout(aboutM).totalLift() / (wings.areaM2() * wings.meanChordM());
    }

    /** Moment coefficient per qc/2V of a pitch rate about a place, nose up positive; pitch damping is negative. */
    public double momentPerPitch(double aboutM) {
        double chord = wings.meanChordM();
        return 4 * pitchAbout(aboutM).noseUpAbout(aboutM) / (wings.areaM2() * chord * chord);
    }

    private Loads pitchAbout(double aftM) {
        return pitch.plus(-aftM, alpha);
    }

    /** Neutral point with the influence of one surface on another scaled, and the loads of some scaled afterwards. */
    double scaledNeutralPointM(double[][] influence, double[] load) {
        Lattice lattice = lattices.coarsest();
        double[] onset = new double[lattice.panels().size()];
        for (int s = 0; s < surfaces.size(); s++) {
            add(onset, 1, lattice.turned(s));
        }
        Loads loads = lattice.loads(lattice.solveScaled(onset, influence));
        double lift = 0;
        double moment = 0;
        for (int s = 0; s < surfaces.size(); s++) {
            lift += load[s] * loads.lift()[s];
            moment += load[s] * loads.moment()[s];
        }
        return moment / lift;
    }

    /** Neutral point of the coarsest lattice alone, from which perturbations are counted. */
    double coarseNeutralPointM() {
        return lattices.coarsest().loads(alphaCirculations.get(0)).centreM();
    }
}
