package org.rafterbook.airframe;

import org.jspecify.annotations.Nullable;

/**
 * Where the whole model balances with a motor on board, or the sentence that says what is missing.
 *
 * @param aftM balance point aft of the origin, m; null where unknown
 * @param massKg all-up mass, kg; null where unknown
 * @param riseM height of the balance point above the stick's centre line, m; null unless every mass has its place
 * @param origin where the balance point comes from
 * @param missing what is missing for the balance point or the mass; null where both are known
 */
public record BalancePoint(
        @Nullable Double aftM,
        @Nullable Double massKg,
        @Nullable Double riseM,
        Origin origin,
        @Nullable String missing) {

    /** Where a balance point comes from. */
    public enum Origin {
        /** Found on the edge with this very motor and arrangement. */
        MEASURED,
        /** Measured with another motor or arrangement and moved by computation. */
        CARRIED,
        /** From the masses and their places alone. */
        COMPUTED,
        /** Not known. */
        UNKNOWN
    }

    static BalancePoint unknown(@Nullable Double massKg, String missing) {
        return new BalancePoint(null, massKg, null, Origin.UNKNOWN, missing);
    }
}
