package org.rafterbook.exchange;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.MachineNumber;
import org.rafterbook.units.Unit;
import org.rafterbook.units.Worded;

/** Writes flights as the program's own table. */
public final class FlightsText {

    private FlightsText() {}

    /**
     * The table as text: the standard columns, one a setting, then those further ones that any flight needs.
     *
     * @param settings names of the settings in the order of their columns
     * @param withModel false leaves the column of models away
     */
    public static String of(List<FlightRow> rows, List<String> settings, boolean withModel) {
        List<FlightField> standard = new ArrayList<>();
        List<FlightField> further = new ArrayList<>();
        for (FlightField field : FlightField.values()) {
            if (field.standard() && (withModel || field != FlightField.MODEL)) {
                standard.add(field);
            } else if (!field.standard()
                    && rows.stream().anyMatch(r -> !text(field, r).isEmpty())) {
                further.add(field);
            }
        }
        List<List<String>> lines = new ArrayList<>();
        List<String> headings = new ArrayList<>();
        standard.forEach(f -> headings.add(f.heading()));
        settings.forEach(s -> headings.add(ColumnRule.SETTING + s));
        further.forEach(f -> headings.add(f.heading()));
        lines.add(headings);
        for (FlightRow row : rows) {
            List<String> line = new ArrayList<>(headings.size());
            standard.forEach(f -> line.add(text(f, row)));
            settings.forEach(s -> line.add(row.settings().getOrDefault(s, "")));
            further.forEach(f -> line.add(text(f, row)));
            lines.add(line);
        }
        return CsvText.of(lines);
    }

    /** One flight as the standard columns name it: numbers in the columns' units, words, null for what is empty. */
    public static Map<String, @Nullable Object> cells(FlightRow row, List<String> settings) {
        Map<String, @Nullable Object> cells = new LinkedHashMap<>();
        for (FlightField field : FlightField.values()) {
            if (field.standard()) {
                Object value = value(field, row);
                Unit unit = field.unit();
                cells.put(
                        field.heading(),
                        value instanceof Double si
                                ? (Object) Double.valueOf(unit == null ? si : unit.fromSi(si))
                                : value instanceof Integer || value == null ? value : text(field, row));
            }
        }
        for (String setting : settings) {
            cells.put(ColumnRule.SETTING + setting, number(row.settings().get(setting)));
        }
        return cells;
    }

    /** A cell as a number where it is one, else as the word it is. */
    private static @Nullable Object number(@Nullable String cell) {
        if (cell == null) {
            return null;
        }
        try {
            return Double.valueOf(cell);
        } catch (NumberFormatException e) {
            return cell;
        }
    }

    private static String text(FlightField field, FlightRow row) {
        Object value = value(field, row);
        if (value == null) {
            return "";
        }
        if (value instanceof Double number) {
            Unit unit = field.unit();
            return unit == null ? MachineNumber.text(number) : MachineNumber.text(number, unit);
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Worded word) {
            return word.word();
        }
        return value instanceof LocalDateTime at ? Moments.text(at) : value.toString();
    }

    private static @Nullable Object value(FlightField field, FlightRow row) {
        FlightRow.WindCells wind = row.wind();
        FlightRow.LeftOut out = row.leftOut();
        return switch (field) {
            case MODEL -> row.model();
            case SESSION_DATE -> row.date();
            case VENUE -> row.venue();
            case CEILING_M -> row.ceilingM();
            case LAUNCHED_AT -> row.launchedAt();
            case DURATION_S -> row.durationS();
            case ENDING -> row.ending();
            case CUT_SHORT -> row.cutShort();
            case TURNS_WOUND -> wind.turnsWound();
            case TURNS_BACKED_OFF -> wind.turnsBackedOff();
            case TURNS_LEFT -> row.turnsLeft();
            case LAUNCH_TORQUE_NMM -> wind.launchTorqueNm();
            case PEAK_HEIGHT_M -> peak(row);
            case TEMPERATURE_C -> row.air().temperatureK();
            case HUMIDITY_PERCENT -> row.air().humidity();
            case PRESSURE_HPA -> row.air().pressurePa();
            case MOTOR -> wind.motor();
            case BUILD -> row.build();
            case PARTIAL_FRACTION -> row.partialFraction();
            case RECOVERED -> row.recovered();
            case STALLS -> row.stalls();
            case LAUNCH_NO_OF_WIND -> wind.launchNo();
            case NOTES -> row.notes();
            case VERSION -> row.version();
            case PEAK_LOW_M -> isRange(row) ? row.peakLowM() : null;
            case PEAK_HIGH_M -> isRange(row) ? row.peakHighM() : null;
            case LANDED_AT -> row.landedAt();
            case DURATION_SOURCE -> row.durationSource();
            case CLOCK_DOUBT_S -> row.clockDoubtS();
            case CHANGE_REASON -> row.changeReason();
            case LEFT_OUT_WHY -> out == null ? null : out.why();
            case LEFT_OUT_BY -> out == null ? null : out.by();
            case LEFT_OUT_AT -> out == null ? null : out.at();
            case LEFT_OUT_BEFORE_TIME -> out == null ? null : out.beforeTime();
            case WIND_NO -> wind.windNo();
            case WOUND_AT -> wind.woundAt();
            case MAX_TORQUE_NMM -> wind.maxTorqueNm();
            case WINDER_RATIO -> wind.winderRatio();
            case WIND_NOTES -> wind.notes();
        };
    }

    private static boolean isRange(FlightRow row) {
        return !Objects.equals(row.peakLowM(), row.peakHighM());
    }

    /** One figure for a range: its middle where both ends are known, else the end that is. */
    private static @Nullable Double peak(FlightRow row) {
        Double low = row.peakLowM();
        Double high = row.peakHighM();
        if (low == null || high == null) {
            return low == null ? high : low;
        }
        return low.equals(high) ? low : Double.valueOf((low + high) / 2);
    }
}
