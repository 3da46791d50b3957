package org.rafterbook.airframe;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The geometry and masses of one version: what an airframe sheet holds.
 *
 * @param measuredBalanceM balance point aft of the origin measured with the sheet's motor on board, m; wins over masses
 * @param motor the motor of the sheet, null where unknown
 */
public record Airframe(
        List<Surface> surfaces,
        List<MassItem> masses,
        @Nullable Double measuredBalanceM,
        @Nullable MotorPlace motor) {

    public Airframe {
        surfaces = List.copyOf(surfaces);
        masses = List.copyOf(masses);
    }
}
