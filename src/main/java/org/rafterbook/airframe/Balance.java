package org.rafterbook.airframe;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * All-up mass and balance point. A measured balance wins over the masses; for another motor or a moved part the
 * airframe's own moment is kept and the differences are added.
 */
public final class Balance {

    private Balance() {}

    /**
     * The balance of an airframe as its sheet has it.
     *
     * @param flown the motor flown, null for the sheet's own
     */
    public static BalancePoint of(Airframe airframe, @Nullable MotorPlace flown) {
        MotorPlace motor = flown == null ? airframe.motor() : flown;
        Double measured = airframe.measuredBalanceM();
        if (measured != null) {
            return carried(airframe, measured, airframe.motor(), null, airframe, motor);
        }
        return computed(airframe.masses(), motor);
    }

    /**
     * A measured balance carried over to another motor, other masses or slid surfaces.
     *
     * @param measuredAt the airframe as it stood on the edge
     * @param measuredBalanceM balance point found, aft of the origin, m
     * @param motorOnBoard the motor on board while it was measured, null for none
     * @param totalMassKg all-up mass on the scale at that time with that motor; null takes the sum of the masses
     * @param now the airframe as it flies
     * @param motorNow the motor it flies with, null for none
     */
    public static BalancePoint carried(
            Airframe measuredAt,
            double measuredBalanceM,
            @Nullable MotorPlace motorOnBoard,
            @Nullable Double totalMassKg,
            Airframe now,
            @Nullable MotorPlace motorNow) {
        double motorThen = motorOnBoard == null ? 0 : motorOnBoard.massKg();
        double motorHere = motorNow == null ? 0 : motorNow.massKg();
        boolean sameMotor = Objects.equals(motorOnBoard, motorNow);
        boolean sameMasses = measuredAt.masses().equals(now.masses());
        Optional<String> unweighed = slidWithoutMass(measuredAt, now);
        Double ownMass = ownMass(measuredAt, motorThen, totalMassKg);
        Double massNow = ownMass == null ? null : ownMass + mass(now.masses()) - mass(measuredAt.masses()) + motorHere;

        if (unweighed.isPresent()) {
            return BalancePoint.unknown(massNow, unweighed.get());
        }
        if (sameMotor && sameMasses) {
            String missing =
                    massNow == null ? "The all-up mass is unknown: weigh the model or enter its masses." : null;
            return new BalancePoint(
                    measuredBalanceM, massNow, rise(now, motorNow), BalancePoint.Origin.MEASURED, missing);
        }
        if (ownMass == null || massNow == null) {
            return BalancePoint.unknown(
                    null,
                    sameMotor
                            ? "The balance was measured before a part was changed and the mass of the whole model is"
                                    + " unknown: weigh the model or measure the balance again."
                            : "The balance was measured with another motor and the airframe's mass is unknown:"
                                    + " weigh the model or measure the balance with this motor.");
        }
        if (!(massNow > 0)) {
            return BalancePoint.unknown(null, noMass());
        }
        double ownMoment = (ownMass + motorThen) * measuredBalanceM - moment(motorOnBoard);
        double momentNow = ownMoment + moment(now.masses()) - moment(measuredAt.masses()) + moment(motorNow);
        return new BalancePoint(momentNow / massNow, massNow, rise(now, motorNow), BalancePoint.Origin.CARRIED, null);
    }

    /** The balance of masses and motor alone; the motor hangs in the stick's line. */
    public static BalancePoint computed(List<MassItem> masses, @Nullable MotorPlace motor) {
        double airframe = mass(masses);
        if (!(airframe > 0)) {
            return BalancePoint.unknown(null, noMass());
        }
        double total = airframe + (motor == null ? 0 : motor.massKg());
        double riseMoment =
                masses.stream().mapToDouble(m -> m.massKg() * m.riseM()).sum();
        String missing = motor == null ? "No motor is given: mass and balance are those of the bare airframe." : null;
        return new BalancePoint(
                (moment(masses) + moment(motor)) / total,
                total,
                riseMoment / total,
                BalancePoint.Origin.COMPUTED,
                missing);
    }

    private static @Nullable Double ownMass(Airframe airframe, double motorKg, @Nullable Double totalMassKg) {
        if (totalMassKg != null) {
            double own = totalMassKg - motorKg;
            return own > 0 ? own : null;
        }
        double sum = mass(airframe.masses());
        return sum > 0 ? sum : null;
    }

    private static @Nullable Double rise(Airframe airframe, @Nullable MotorPlace motor) {
        return computed(airframe.masses(), motor).riseM();
    }

    /** A slid surface that carries no mass of its own name would leave the balance where it is without a word. */
    private static Optional<String> slidWithoutMass(Airframe then, Airframe now) {
        for (Surface before : then.surfaces()) {
            for (Surface after : now.surfaces()) {
                double slid = after.edgeAftM() - before.edgeAftM();
                boolean weighed = now.masses().stream().anyMatch(m -> m.name().equals(after.name()));
                if (before.name().equals(after.name()) && Math.abs(slid) > 1e-9 && !weighed) {
                    return Optional.of(String.format(
                            Locale.ROOT,
                            "\"%s\" was moved by %.1f mm since the balance was measured and its mass is unknown:"
                                    + " enter a mass named \"%s\" or measure the balance again.",
                            after.name(),
                            slid * 1000,
                            after.name()));
                }
            }
        }
        return Optional.empty();
    }

    private static String noMass() {
        return "No mass is given: enter the airframe's masses with their places, or a measured balance.";
    }

    private static double mass(List<MassItem> masses) {
        return masses.stream().mapToDouble(MassItem::massKg).sum();
    }

    private static double moment(List<MassItem> masses) {
        return masses.stream().mapToDouble(m -> m.massKg() * m.aftM()).sum();
    }

    private static double moment(@Nullable MotorPlace motor) {
        return motor == null ? 0 : motor.massKg() * motor.aftM();
    }
}
