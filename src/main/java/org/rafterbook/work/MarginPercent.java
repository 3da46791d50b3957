package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Version;

/** Stability margins as flown; how they are computed is somebody else's. */
@FunctionalInterface
public interface MarginPercent {

    /** No margin is known of any version. */
    MarginPercent NONE = (versionId, motorId, fraction) -> null;

    /**
     * The margin in per cent of the mean chord; null where the version has no geometry or its balance is unknown.
     *
     * @param motorId the motor on board, null where it was not noted
     * @param fraction share of the full motor, whose spacer keeps the full motor's mass
     */
    @Nullable
    Double percent(String versionId, @Nullable String motorId, double fraction);

    /** True where it is told at once: nothing has to be computed or looked up for this version's shape. */
    default boolean isQuick(Version version) {
        return true;
    }
}
