package org.rafterbook.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Planform;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;

/**
 * Trim from a solved flow: CL = Cm about the neutral point over the margin, and how it answers to each incidence
 * (dCL/di = Cm_i about the neutral point over the margin), which is why touchiness grows as one over the margin.
 */
public final class Trim {

    private static final double GRAVITY = 9.80665;
    private static final double HALF_DEGREE = Math.toRadians(0.5);

    /** Below this a margin counts as none: trim would be anywhere. */
    private static final double NO_MARGIN = 1e-4;

    /** Below this, a moment coefficient per radian, a turned surface moves trim by nothing to speak of. */
    private static final double NO_MOMENT = 1e-3;

    /**
     * Beyond this no thin cambered wing flies steadily. Plates with 4 to 9 % of camber stall at about 1.1 to 1.4 at the
     * Reynolds numbers of indoor models (from memory of the plate tests in the tradition of Schmitz, Aerodynamik des
     * Flugmodells, 1942; no table opened); the rest is left for what linear theory does not know.
     */
    private static final double MOST_LIFT = 1.6;

    private static final double LIFT_FOR_THRUST = 0.8;

    private final GeometrySolution solution;
    private final Airframe airframe;
    private final TrimConditions conditions;
    private final WingGeometry wings;
    private final double area;
    private final double chord;
    private final Loads fixed;

    private Trim(GeometrySolution solution, Airframe airframe, TrimConditions conditions) {
        this.solution = solution;
        this.airframe = airframe;
        this.conditions = conditions;
        wings = solution.wings();
        area = wings.areaM2();
        chord = wings.meanChordM();
        fixed = solution.fixed(airframe);
    }

    /**
     * Trims an airframe whose influence geometry is that of the solution; a turned incidence needs no new solution.
     *
     * @throws IllegalArgumentException if the airframe does not {@link GeometrySolution#fits fit} or mass or density are not
     *     above zero
     */
    public static TrimAnswer of(GeometrySolution solution, Airframe airframe, TrimConditions conditions) {
        if (!solution.fits(airframe)) {
            throw new IllegalArgumentException("the airframe's surfaces are not those that were solved");
        }
        if (!(conditions.massKg() > 0) || !(conditions.airDensity() > 0)) {
            throw new IllegalArgumentException("mass and air density must be above zero");
        }
        return new Trim(solution, airframe, conditions).answer();
    }

    private TrimAnswer answer() {
        double shift = propellerShift(LIFT_FOR_THRUST);
        double neutral = solution.neutralPointM() + shift;
        double margin = (neutral - conditions.balanceM()) / chord;
        Double lift = handsOff(neutral, margin);
        for (int pass = 0; pass < 2 && conditions.propeller() != null && lift != null; pass++) {
            shift = propellerShift(lift);
            neutral = solution.neutralPointM() + shift;
            margin = (neutral - conditions.balanceM()) / chord;
            lift = handsOff(neutral, margin);
        }
        if (lift == null || lift > MOST_LIFT) {
            return new TrimAnswer(
                    margin,
                    shift,
                    lift,
                    null,
                    null,
                    List.of(),
                    touchiness(neutral, margin, null),
                    null,
                    null,
                    null,
                    slowMode(margin, LIFT_FOR_THRUST, neutral),
                    lift == null ? whyNoTrim(margin, neutral) : null,
                    lift == null ? null : beyondStall(lift, neutral));
        }
        double speed = Math.sqrt(2 * conditions.massKg() * GRAVITY / (conditions.airDensity() * area * lift));
        double slope = solution.alpha().totalLift() + propellerSlope(lift) / 2;
        double angle = (lift * area / 2 - fixed.totalLift()) / slope;
        Loads loads = fixed.plus(angle, solution.alpha());
        double drag = conditions.airDensity() * speed * speed * solution.inducedDrag(loads);
        return new TrimAnswer(
                margin,
                shift,
                lift,
                speed,
                angle,
                surfaces(loads, angle),
                touchiness(neutral, margin, lift),
                drag,
                drag * speed,
                circle(speed, neutral, margin),
                slowMode(margin, lift, neutral),
                null,
                null);
    }

    private String beyondStall(double lift, double neutral) {
        return String.format(
                        Locale.ROOT,
                        "No steady glide here: the wing would have to fly at a lift coefficient of %.1f, beyond stall.",
                        lift)
                + turned("Less", "more", neutral, "brings it down");
    }

    /** Which surfaces to turn: those whose moment about the neutral point is the largest either way; empty where none has one. */
    private String turned(String raising, String lowering, double neutral, String does) {
        int up = 0;
        int down = 0;
        double[] moment = new double[solution.surfaces().size()];
        for (int s = 0; s < moment.length; s++) {
            moment[s] = momentAbout(neutral, solution.incidence(s));
            up = moment[s] > moment[up] ? s : up;
            down = moment[s] < moment[down] ? s : down;
        }
        return moment[up] > NO_MOMENT && moment[down] < -NO_MOMENT
                ? " " + raising + " incidence on the "
                        + solution.surfaces().get(up).name() + " or " + lowering + " on the "
                        + solution.surfaces().get(down).name() + " " + does + "."
                : "";
    }

    private double propellerSlope(double lift) {
        PropellerTerm propeller = conditions.propeller();
        return propeller == null ? 0 : propeller.slopeAreaM2(lift * area / conditions.glideRatio());
    }

    private double propellerShift(double lift) {
        PropellerTerm propeller = conditions.propeller();
        if (propeller == null) {
            return 0;
        }
        double slopeArea = solution.liftSlopePerRad() * area;
        return propeller.shiftM(solution.neutralPointM(), slopeArea, lift * area / conditions.glideRatio());
    }

    /** Moment coefficient of loads about the neutral point. */
    private double momentAbout(double aftM, Loads loads) {
        return 2 * loads.noseUpAbout(aftM) / (area * chord);
    }

    /**
     * A propeller's normal force has no moment at zero angle; about the shifted neutral point the angle's moment of model and
     * propeller together is nil, as it is of the model alone about its own.
     */
    private @Nullable Double handsOff(double neutral, double margin) {
        if (margin <= NO_MARGIN) {
            return null;
        }
        double lift = momentAbout(neutral, fixed) / margin;
        return lift > 0 ? lift : null;
    }

    private String whyNoTrim(double margin, double neutral) {
        if (Math.abs(margin) <= NO_MARGIN) {
            return "No trim of its own: the balance point lies at the neutral point, so the model has no speed that it"
                    + " returns to.";
        }
        if (margin < 0) {
            return "No trim of its own: the balance point lies behind the neutral point, and an upset grows instead of"
                    + " dying away.";
        }
        return momentAbout(neutral, fixed) < 0
                ? "No trim of its own: with these incidences the model noses over at every speed."
                        + turned("More", "less", neutral, "gives it one")
                : "No trim of its own: the incidences balance at no lift.";
    }

    private List<TrimAnswer.OfSurface> surfaces(Loads loads, double angle) {
        List<TrimAnswer.OfSurface> list = new ArrayList<>();
        List<Surface> surfaces = solution.surfaces();
        for (int s = 0; s < surfaces.size(); s++) {
            String name = surfaces.get(s).name();
            Surface now = airframe.surfaces().stream()
                    .filter(a -> a.name().equals(name))
                    .findFirst()
                    .orElseThrow();
            double own = 2 * loads.lift()[s] / Planform.of(now).areaM2();
            double met = angle + now.incidenceRad() - SectionCamber.of(now).zeroLiftRad();
            list.add(
                    new TrimAnswer.OfSurface(name, loads.lift()[s] / loads.totalLift(), own, met, own / (2 * Math.PI)));
        }
        return list;
    }

    private List<TrimAnswer.Touchiness> touchiness(double neutral, double margin, @Nullable Double lift) {
        List<TrimAnswer.Touchiness> list = new ArrayList<>();
        if (Math.abs(margin) <= NO_MARGIN) {
            return list;
        }
        for (int s = 0; s < solution.surfaces().size(); s++) {
            double change = momentAbout(neutral, solution.incidence(s)) / margin * HALF_DEGREE;
            list.add(new TrimAnswer.Touchiness(
                    solution.surfaces().get(s).name(), change, lift == null ? null : -change / lift / 2));
        }
        return list;
    }

    private TrimAnswer.@Nullable Circle circle(double speed, double neutral, double margin) {
        Double radius = conditions.circleRadiusM();
        if (radius == null || !(radius > 0)) {
            return null;
        }
        double bank = Math.atan(speed * speed / (GRAVITY * radius));
        Double arm = wings.tailArmM();
        double change = solution.momentPerPitch(neutral) * chord / (2 * radius) * Math.sin(bank) / margin;
        return new TrimAnswer.Circle(bank, arm == null ? 0 : arm / radius * Math.sin(bank), change);
    }

    private SlowMode slowMode(double margin, double lift, double neutral) {
        double balance = conditions.balanceM();
        double induced = 2 * solution.inducedDrag(solution.alpha()) / area;
        double slope = solution.liftSlopePerRad();
        double lagLift = 0;
        double lagMoment = 0;
        double added = 0;
        double addedInertia = 0;
        for (int s = 0; s < solution.surfaces().size(); s++) {
            Surface surface = solution.surfaces().get(s);
            Planform plan = Planform.of(surface);
            double mass = AddedMass.of(surface, conditions.airDensity());
            double arm = plan.meanChordEdgeM() + plan.meanChordM() / 2 - balance;
            added += mass;
            addedInertia += mass * arm * arm;
            if (surface.role() == Role.TAILPLANE) {
                double behind = plan.quarterChordM() - balance;
                double own = 2 * solution.incidence(s).lift()[s] / area;
                double lag = 2 * own * behind / chord * solution.downwashGradient(s);
                lagLift += lag;
                lagMoment += lag * behind / chord;
            }
        }
        Double arm = wings.tailArmM();
        double length = arm == null ? chord : Math.abs(arm);
        Double inertia = conditions.inertiaKgM2();
        // The share of lift that the angle brings makes drag grow as its square: C_D = C_L^2/(pi A) of the whole wake.
        double dragPerAngle = 2 * lift * induced / slope;
        return SlowMode.of(new SlowMode.Inputs(
                conditions.massKg(),
                inertia == null ? conditions.massKg() * length * length / 10 : inertia,
                conditions.airDensity(),
                area,
                chord,
                lift,
                lift / conditions.glideRatio(),
                dragPerAngle,
                slope,
                -margin * slope,
                solution.liftPerPitch(balance),
                solution.momentPerPitch(balance),
                lagLift,
                lagMoment,
                added,
                addedInertia));
    }
}
