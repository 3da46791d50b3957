package org.rafterbook.review;

import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The flight that is being prepared.
 *
 * @param settings as they are set
 * @param build the model's build number
 * @param sessionId tonight's session
 * @param date its local date
 * @param motorId the motor, null where not chosen
 * @param turnsUsed turns it will use, of its own motor: wound less backed off less what is usually left; null where not
 *     yet known
 * @param launchTorqueNm torque at launch, N m; null where not known
 * @param partialFraction share of the full motor, 1 for a full one
 * @param densityKgM3 density of tonight's air, kg/m3; null where not known
 */
public record NextFlight(
        Map<String, Level> settings,
        int build,
        String sessionId,
        LocalDate date,
        @Nullable String motorId,
        @Nullable Double turnsUsed,
        @Nullable Double launchTorqueNm,
        double partialFraction,
        @Nullable Double densityKgM3) {

    public NextFlight {
        settings = Map.copyOf(settings);
    }
}
