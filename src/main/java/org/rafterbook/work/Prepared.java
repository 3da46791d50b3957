package org.rafterbook.work;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Trial;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;

/**
 * The next flight, prepared from the last. What was measured last time is here as a hint only.
 *
 * @param ordinal number it will have in the session
 * @param rigged model and settings it flies on, null to just time a flight
 * @param margin null without a model
 * @param before how the model flew last, null where it has not flown
 * @param marginBefore margin then
 * @param good the newest other version the flyer marked as well-behaved, null where there is none
 * @param marginGood its margin
 * @param last the model's last flight, null where it has not flown
 * @param wind on the motor now, wound and not flown
 * @param motor of that wind
 * @param proposed a rested motor of the size flown last, where there is one
 * @param again the last flight's wind, for a relaunch without winding again
 * @param flown versions the model has flown, the newest first
 * @param lastSetting id of the version set before the present one, null where there is none
 * @param trial the model's open trial
 * @param judged the model's trial judged on this evening and not followed by another, null where there is none
 */
public record Prepared(
        int ordinal,
        @Nullable Rigged rigged,
        MarginText.@Nullable Answer margin,
        @Nullable Rigged before,
        MarginText.@Nullable Answer marginBefore,
        @Nullable Rigged good,
        MarginText.@Nullable Answer marginGood,
        @Nullable FlightLine last,
        @Nullable Wind wind,
        @Nullable Motor motor,
        @Nullable Motor proposed,
        @Nullable Wind again,
        List<Version> flown,
        @Nullable String lastSetting,
        @Nullable TrialNow trial,
        @Nullable Trial judged) {

    /** A flight without a model. */
    static Prepared justTimed(int ordinal, @Nullable Wind wind, @Nullable Motor motor, @Nullable Wind again) {
        return new Prepared(
                ordinal, null, null, null, null, null, null, null, wind, motor, null, again, List.of(), null, null,
                null);
    }
}
