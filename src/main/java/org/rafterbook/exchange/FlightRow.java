package org.rafterbook.exchange;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Recovered;

/**
 * One row of a table of flights, in SI; what its cells left empty is null.
 *
 * @param line line of the file
 * @param model empty where the table has flights without a model
 * @param launchedAt local to the session
 * @param settings text of each setting's cell that is not empty, keyed by the setting's name in the table
 * @param asTyped what was typed where it differs from the column's own unit, keyed by heading
 */
public record FlightRow(
        int line,
        String model,
        LocalDate date,
        @Nullable String venue,
        @Nullable Double ceilingM,
        @Nullable LocalDateTime launchedAt,
        @Nullable LocalDateTime landedAt,
        @Nullable Double durationS,
        @Nullable DurationSource durationSource,
        @Nullable Double clockDoubtS,
        @Nullable Ending ending,
        @Nullable CutShort cutShort,
        Air air,
        WindCells wind,
        @Nullable Double turnsLeft,
        @Nullable Double peakLowM,
        @Nullable Double peakHighM,
        @Nullable Integer build,
        @Nullable String version,
        @Nullable String changeReason,
        @Nullable Double partialFraction,
        @Nullable Recovered recovered,
        @Nullable Integer stalls,
        @Nullable LeftOut leftOut,
        @Nullable String notes,
        Map<String, String> settings,
        Map<String, String> asTyped) {

    public FlightRow {
        settings = Map.copyOf(settings);
        asTyped = Map.copyOf(asTyped);
    }

    /** The air at the flight. */
    public record Air(
            @Nullable Double temperatureK,
            @Nullable Double humidity,
            @Nullable Double pressurePa) {

        public boolean isEmpty() {
            return temperatureK == null && humidity == null && pressurePa == null;
        }
    }

    /** The wind flown on. */
    public record WindCells(
            @Nullable String motor,
            @Nullable Integer windNo,
            int launchNo,
            @Nullable LocalDateTime woundAt,
            @Nullable Double turnsWound,
            @Nullable Double turnsBackedOff,
            @Nullable Double maxTorqueNm,
            @Nullable Double launchTorqueNm,
            @Nullable Double winderRatio,
            @Nullable String notes) {

        /** True where nothing at all is known of the wind. */
        public boolean isEmpty() {
            return motor == null
                    && turnsWound == null
                    && turnsBackedOff == null
                    && maxTorqueNm == null
                    && launchTorqueNm == null;
        }
    }

    /** That the flight is flagged to be left out. */
    public record LeftOut(
            String why,
            @Nullable String by,
            @Nullable LocalDateTime at,
            @Nullable Boolean beforeTime) {}
}
