package org.rafterbook.exchange;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.PressureSource;
import org.rafterbook.power.WindEnd;
import org.rafterbook.power.WindPhase;

/** The rows of the tables that stand beside the flights, in SI; records are named by their names, never by ids. */
public final class SideRows {

    private SideRows() {}

    /** A row of venues.csv. */
    public record VenueRow(
            String venue,
            @Nullable Double siteHeightM,
            @Nullable Double officialHeightM,
            @Nullable Double usableHeightM,
            @Nullable String notes) {}

    /** A row of venue_marks.csv. */
    public record MarkRow(String venue, String mark, double heightM, boolean limit) {}

    /** A row of batches.csv. */
    public record BatchRow(
            String batch,
            @Nullable LocalDate openedOn,
            @Nullable Double widthM,
            @Nullable Double turnsConstant,
            @Nullable String notes) {}

    /** A row of motors.csv. */
    public record MotorRow(
            String motor,
            @Nullable String batch,
            @Nullable Double loopLengthM,
            @Nullable Double massKg,
            @Nullable String cutFrom,
            @Nullable Double fraction,
            @Nullable LocalDate madeOn,
            @Nullable String fate,
            @Nullable String notes) {}

    /**
     * A row of flight_events.csv.
     *
     * @param flightNo number of the flight among those of its model in that session
     */
    public record EventRow(
            int line,
            @Nullable String model,
            LocalDate date,
            @Nullable String venue,
            @Nullable Integer flightNo,
            @Nullable LocalDateTime launchedAt,
            FlightEventKind kind,
            @Nullable Double atS,
            @Nullable Double value,
            @Nullable String mark,
            @Nullable String notes) {}

    /** A row of sessions.csv. */
    public record SessionRow(
            int line,
            LocalDate date,
            @Nullable String venue,
            @Nullable String zone,
            @Nullable String goal,
            @Nullable String notes) {}

    /** A row of air_readings.csv. */
    public record AirRow(
            LocalDate date,
            @Nullable String venue,
            @Nullable LocalDateTime at,
            @Nullable Double temperatureK,
            @Nullable Double humidity,
            @Nullable Double pressurePa,
            @Nullable PressureSource source) {}

    /** A row of session_limits.csv: what hung in the way that evening. */
    public record LimitRow(
            LocalDate date,
            @Nullable String venue,
            String name,
            double heightM,
            @Nullable String mark) {}

    /** A row of models.csv. */
    public record ModelRow(
            String model,
            @Nullable String letter,
            @Nullable Integer build,
            @Nullable Double wishedLow,
            @Nullable Double wishedHigh,
            @Nullable String notes) {}

    /**
     * A row of settings.csv: step, tolerance and limits are numbers in the row's unit.
     *
     * @param setting the setting's name in the heading of its column, without {@code setting.}
     */
    public record SettingRow(
            int line,
            String model,
            String setting,
            @Nullable String label,
            @Nullable String unit,
            @Nullable Double step,
            @Nullable Double tolerance,
            @Nullable Double low,
            @Nullable Double high,
            @Nullable String keyLetter) {}

    /** A row of winds.csv: a wind that was not flown. */
    public record WindRow(
            @Nullable String motor,
            @Nullable Integer windNo,
            @Nullable LocalDate date,
            @Nullable String venue,
            @Nullable LocalDateTime woundAt,
            @Nullable Double turnsWound,
            @Nullable Double turnsBackedOff,
            @Nullable Double maxTorqueNm,
            @Nullable Double launchTorqueNm,
            @Nullable Double winderRatio,
            @Nullable WindEnd end,
            @Nullable String notes) {}

    /** A row of wind_readings.csv. */
    public record ReadingRow(
            int line,
            String motor,
            int windNo,
            int readingNo,
            WindPhase phase,
            double turns,
            @Nullable Double torqueNm,
            @Nullable LocalDateTime at) {}
}
