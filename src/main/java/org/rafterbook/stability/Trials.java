package org.rafterbook.stability;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeProblem;
import org.rafterbook.airframe.AirframeProblems;
import org.rafterbook.airframe.Balance;
import org.rafterbook.airframe.BalancePoint;
import org.rafterbook.airframe.MotorPlace;

/** Changed copies of an airframe, with the balance and the margin that each change leads to. */
final class Trials {

    private final Airframe airframe;
    private final @Nullable MotorPlace motor;

    /**
     * @param motor the motor flown; null for the sheet's own
     */
    Trials(Airframe airframe, @Nullable MotorPlace motor) {
        this.airframe = airframe;
        this.motor = motor == null ? airframe.motor() : motor;
    }

    Airframe airframe() {
        return airframe;
    }

    double motorKg() {
        return motor == null ? 0 : motor.massKg();
    }

    /** What hides the neutral point of the airframe as it is; null where nothing does. */
    @Nullable
    String problem() {
        return problem(airframe);
    }

    static @Nullable String problem(Airframe airframe) {
        return AirframeProblems.ofGeometry(airframe).stream()
                .filter(p -> p.kind().hidesNeutralPoint())
                .map(AirframeProblem::sentence)
                .findFirst()
                .orElse(null);
    }

    /** A measured balance is carried over to the change and the motor flown. */
    BalancePoint balance(Airframe changed) {
        Double measured = airframe.measuredBalanceM();
        return measured == null
                ? Balance.computed(changed.masses(), motor)
                : Balance.carried(airframe, measured, airframe.motor(), null, changed, motor);
    }

    static String unknown(BalancePoint balance) {
        return balance.missing() == null ? "The balance point is unknown." : balance.missing();
    }

    /** The changed airframe as a sheet of its own, with the balance that the change leads to. */
    Airframe put(Airframe changed) {
        return new Airframe(
                changed.surfaces(),
                changed.masses(),
                airframe.measuredBalanceM() == null ? null : balance(changed).aftM(),
                motor);
    }

    /** Margin of a changed airframe, fraction of the mean chord; null where it is unknown. */
    @Nullable
    Double margin(Airframe changed, LatticeSettings settings) {
        Airframe put = put(changed);
        Double balance = Balance.of(put, null).aftM();
        if (balance == null || problem(put) != null) {
            return null;
        }
        GeometrySolution solution = GeometrySolution.of(put, settings);
        return (solution.neutralPointM() - balance) / solution.wings().meanChordM();
    }

    /** Why a changed airframe has no margin: its geometry, else the balance that cannot be carried to it. */
    String missing(Airframe changed) {
        String problem = problem(changed);
        return problem == null ? unknown(balance(changed)) : problem;
    }

    PlacementAnswer answer(double value, Airframe changed) {
        return new PlacementAnswer(value, put(changed), margin(changed, LatticeSettings.DEFAULT), null);
    }
}
