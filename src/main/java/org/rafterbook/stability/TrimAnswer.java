package org.rafterbook.stability;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a version flies by itself. What does not exist or is unknown is null; {@code missing} or, where the linear theory asks
 * for a lift that no wing has, {@code caution} says why.
 *
 * @param margin stability margin, fraction of the mean chord, with the propeller's term where one is given
 * @param propellerShiftM how far the propeller moves the neutral point, m, negative forward; 0 without one
 * @param liftCoefficient lift coefficient at which the model flies hands off, on the wing area; also where it is beyond
 *     stall
 * @param speed that goes with it, m/s
 * @param angleOfAttackRad of the stick, rad
 * @param surfaces lift and angles of each surface at trim, in the sheet's order
 * @param touchiness answer of trim to each surface's incidence, in the sheet's order; empty at zero margin
 * @param inducedDragN induced drag at trim, N
 * @param inducedPowerW induced drag times speed, W
 * @param circle what the circle does to trim; null in straight flight
 * @param slowMode how an upset dies away or grows
 * @param missing why something is null
 * @param caution that there is no steady glide because trim lies beyond stall; null where it does not
 */
public record TrimAnswer(
        double margin,
        double propellerShiftM,
        @Nullable Double liftCoefficient,
        @Nullable Double speed,
        @Nullable Double angleOfAttackRad,
        List<OfSurface> surfaces,
        List<Touchiness> touchiness,
        @Nullable Double inducedDragN,
        @Nullable Double inducedPowerW,
        @Nullable Circle circle,
        @Nullable SlowMode slowMode,
        @Nullable String missing,
        @Nullable String caution) {

    public TrimAnswer {
        surfaces = List.copyOf(surfaces);
        touchiness = List.copyOf(touchiness);
    }

    /**
     * One surface at trim.
     *
     * @param share of the whole lift
     * @param liftCoefficient on its own area
     * @param angleRad between the flow far ahead and its line of zero lift
     * @param effectiveAngleRad the angle at which its section alone carries that lift, liftCoefficient/2 pi: what is left of
     *     {@code angleRad} after all downwash
     */
    public record OfSurface(
            String name, double share, double liftCoefficient, double angleRad, double effectiveAngleRad) {}

    /**
     * What half a degree on one surface does.
     *
     * @param liftChange change of the trimmed lift coefficient for half a degree leading edge up
     * @param speedShare change of speed over speed; null where there is no glide
     */
    public record Touchiness(
            String name, double liftChange, @Nullable Double speedShare) {}

    /**
     * Trim in a circle.
     *
     * @param bankRad angle of bank
     * @param tailAngleRad extra angle at which the tailplane meets the air
     * @param liftChange change of the trimmed lift coefficient, negative is nose down
     */
    public record Circle(double bankRad, double tailAngleRad, double liftChange) {}
}
