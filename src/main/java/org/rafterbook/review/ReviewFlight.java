package org.rafterbook.review;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Ending;

/**
 * One flight as the estimates need it. Settings the flight does not carry were not recorded for it.
 *
 * @param id the flight
 * @param riggingId the rigging it flew with
 * @param sessionId the session, one day at one venue
 * @param sessionDate the session's local date
 * @param orderInSession 1 for this model's first flight of the session
 * @param durationS recorded time, s
 * @param outcome how the time is taken
 * @param motor the motor and what was put into it
 * @param densityKgM3 density of the moist air, kg/m3
 * @param humidityAssumed true where the density rests on an assumed humidity
 * @param build the model's build number
 * @param settings setting key to the value flown
 * @param marginPercent stability margin, per cent of the mean chord
 * @param peak how high it came
 * @param handling how it behaved
 * @param notes the flyer's notes, empty where none
 */
public record ReviewFlight(
        String id,
        String riggingId,
        String sessionId,
        LocalDate sessionDate,
        int orderInSession,
        double durationS,
        Outcome outcome,
        MotorUse motor,
        @Nullable Double densityKgM3,
        boolean humidityAssumed,
        int build,
        Map<String, Level> settings,
        @Nullable Double marginPercent,
        Peak peak,
        Handling handling,
        String notes) {

    public ReviewFlight {
        settings = Collections.unmodifiableMap(new TreeMap<>(settings));
    }

    /** A flight of which only time, day and settings are known. */
    public static ReviewFlight of(
            String id, String sessionId, LocalDate date, int order, Outcome outcome, Map<String, Level> settings) {
        return new ReviewFlight(
                id,
                "",
                sessionId,
                date,
                order,
                outcome.countsS(),
                outcome,
                MotorUse.UNKNOWN,
                null,
                false,
                1,
                settings,
                null,
                Peak.UNKNOWN,
                Handling.UNKNOWN,
                "");
    }

    /** The same flight with this motor and air. */
    public ReviewFlight with(MotorUse motorUse, @Nullable Double density) {
        return new ReviewFlight(
                id,
                riggingId,
                sessionId,
                sessionDate,
                orderInSession,
                durationS,
                outcome,
                motorUse,
                density,
                humidityAssumed,
                build,
                settings,
                marginPercent,
                peak,
                handling,
                notes);
    }

    /** The same flight of this build. */
    public ReviewFlight withBuild(int number) {
        return new ReviewFlight(
                id,
                riggingId,
                sessionId,
                sessionDate,
                orderInSession,
                durationS,
                outcome,
                motor,
                densityKgM3,
                humidityAssumed,
                number,
                settings,
                marginPercent,
                peak,
                handling,
                notes);
    }

    public boolean isExact() {
        return outcome.kind() == Outcome.Kind.EXACT;
    }

    /** True where the time enters the estimates, exactly or as a lower bound. */
    public boolean counts() {
        return outcome.kind() != Outcome.Kind.LEFT_OUT;
    }

    /** True where a touch cut it short, or may have. */
    boolean isCutShortByTouch() {
        return outcome.kind() == Outcome.Kind.AT_LEAST && outcome.ending() == Ending.TOUCHED;
    }

    /** The time that counts, scaled to the full motor, s. */
    public double fullDurationS() {
        return outcome.countsS() / motor.partialFraction();
    }
}
