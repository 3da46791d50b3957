package org.rafterbook.exchange;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Recovered;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.Unit;

/** Reads one row of a table of flights and checks that its cells do not contradict each other. */
final class FlightRowReader {

    private static final double DAY_S = 86400;
    private static final LocalDate NO_DATE = LocalDate.EPOCH;
    private static final int AFTER_MIDNIGHT_H = 36;

    private FlightRowReader() {}

    /** The row; meaningless where it added a problem. */
    static FlightRow read(Cells cells, Map<String, String> settings) {
        LocalDate date = date(cells);
        Ending ending = cells.word(name(FlightField.ENDING), Ending.class);
        FlightRow.WindCells wind = wind(cells, date);
        TypedRange peak = cells.range(name(FlightField.PEAK_HEIGHT_M), Quantity.HEIGHT, Unit.M);
        Double low = number(cells, FlightField.PEAK_LOW_M);
        Double high = number(cells, FlightField.PEAK_HIGH_M);
        boolean both = low == null && high == null && peak != null;
        FlightRow row = new FlightRow(
                cells.line(),
                cells.required(name(FlightField.MODEL)),
                date,
                cells.text(name(FlightField.VENUE)),
                number(cells, FlightField.CEILING_M),
                launched(cells, date),
                cells.moment(name(FlightField.LANDED_AT), date),
                duration(cells, ending),
                cells.word(name(FlightField.DURATION_SOURCE), DurationSource.class),
                number(cells, FlightField.CLOCK_DOUBT_S),
                ending,
                cells.word(name(FlightField.CUT_SHORT), CutShort.class),
                air(cells),
                wind,
                cells.turns(name(FlightField.TURNS_LEFT)),
                both ? Double.valueOf(Objects.requireNonNull(peak).lowSi()) : low,
                both ? Double.valueOf(Objects.requireNonNull(peak).highSi()) : high,
                cells.whole(name(FlightField.BUILD), 1),
                cells.text(name(FlightField.VERSION)),
                cells.text(name(FlightField.CHANGE_REASON)),
                cells.part(name(FlightField.PARTIAL_FRACTION)),
                cells.word(name(FlightField.RECOVERED), Recovered.class),
                cells.whole(name(FlightField.STALLS), 0),
                leftOut(cells, date),
                cells.text(name(FlightField.NOTES)),
                settings,
                cells.asTyped());
        check(cells, row);
        return row;
    }

    private static LocalDate date(Cells cells) {
        String heading = name(FlightField.SESSION_DATE);
        LocalDate date = cells.required(heading).isEmpty() ? null : cells.day(heading);
        return date == null ? NO_DATE : date;
    }

    private static String name(FlightField field) {
        return field.heading();
    }

    private static @Nullable Double number(Cells cells, FlightField field) {
        return cells.number(
                field.heading(), Objects.requireNonNull(field.quantity()), Objects.requireNonNull(field.unit()));
    }

    private static @Nullable LocalDateTime launched(Cells cells, LocalDate date) {
        LocalDateTime at = cells.moment(name(FlightField.LAUNCHED_AT), date);
        if (at != null && !date.equals(NO_DATE)) {
            LocalDateTime begin = date.atStartOfDay();
            if (at.isBefore(begin) || at.isAfter(begin.plusHours(AFTER_MIDNIGHT_H))) {
                cells.problem(name(FlightField.LAUNCHED_AT), at + " is not in the session of " + date + ".");
            }
        }
        return at;
    }

    private static @Nullable Double duration(Cells cells, @Nullable Ending ending) {
        String heading = name(FlightField.DURATION_S);
        if (cells.text(heading) == null) {
            if (ending != Ending.ABORTED) {
                cells.problem(heading, "a flight needs its time; only one that was aborted can be without.");
            }
            return null;
        }
        Double seconds = number(cells, FlightField.DURATION_S);
        if (seconds != null && (seconds <= 0 || seconds >= DAY_S)) {
            cells.problem(heading, "a time aloft is above 0 s and under a day, not " + cells.text(heading) + ".");
        }
        return seconds;
    }

    private static FlightRow.Air air(Cells cells) {
        Double temperature = number(cells, FlightField.TEMPERATURE_C);
        if (temperature != null && (temperature < 230 || temperature > 330)) {
            cells.problem(name(FlightField.TEMPERATURE_C), "air to fly in has between -43 and 56 °C.");
        }
        Double pressure = number(cells, FlightField.PRESSURE_HPA);
        if (pressure != null && (pressure < 30000 || pressure > 120000)) {
            cells.problem(name(FlightField.PRESSURE_HPA), "a station pressure lies between 300 and 1200 hPa.");
        }
        return new FlightRow.Air(temperature, number(cells, FlightField.HUMIDITY_PERCENT), pressure);
    }

    private static FlightRow.WindCells wind(Cells cells, LocalDate date) {
        Integer launchNo = cells.whole(name(FlightField.LAUNCH_NO_OF_WIND), 1);
        Double ratio = number(cells, FlightField.WINDER_RATIO);
        if (ratio != null && ratio <= 0) {
            cells.problem(name(FlightField.WINDER_RATIO), "a winder's ratio is above zero.");
        }
        return new FlightRow.WindCells(
                cells.text(name(FlightField.MOTOR)),
                cells.whole(name(FlightField.WIND_NO), 1),
                launchNo == null ? 1 : launchNo,
                cells.moment(name(FlightField.WOUND_AT), date),
                cells.turns(name(FlightField.TURNS_WOUND)),
                cells.turns(name(FlightField.TURNS_BACKED_OFF)),
                number(cells, FlightField.MAX_TORQUE_NMM),
                number(cells, FlightField.LAUNCH_TORQUE_NMM),
                ratio,
                cells.text(name(FlightField.WIND_NOTES)));
    }

    private static FlightRow.@Nullable LeftOut leftOut(Cells cells, LocalDate date) {
        String why = cells.text(name(FlightField.LEFT_OUT_WHY));
        return why == null
                ? null
                : new FlightRow.LeftOut(
                        why,
                        cells.text(name(FlightField.LEFT_OUT_BY)),
                        cells.moment(name(FlightField.LEFT_OUT_AT), date),
                        cells.yesNo(name(FlightField.LEFT_OUT_BEFORE_TIME)));
    }

    private static void check(Cells cells, FlightRow row) {
        Double wound = row.wind().turnsWound();
        Double backedOff = row.wind().turnsBackedOff();
        Double left = row.turnsLeft();
        if (wound != null && backedOff != null && backedOff > wound) {
            cells.problem(
                    name(FlightField.TURNS_BACKED_OFF),
                    "more turns were backed off (" + cells.text(name(FlightField.TURNS_BACKED_OFF)) + ") than wound ("
                            + cells.text(name(FlightField.TURNS_WOUND)) + ").");
        } else if (wound != null && left != null && left > wound - (backedOff == null ? 0 : backedOff)) {
            cells.problem(
                    name(FlightField.TURNS_LEFT),
                    "more turns are left (" + cells.text(name(FlightField.TURNS_LEFT)) + ") than were on the motor.");
        }
        if (row.ceilingM() != null && row.ceilingM() <= 0) {
            cells.problem(name(FlightField.CEILING_M), "a usable height is above zero.");
        }
        Double low = row.peakLowM();
        Double high = row.peakHighM();
        if (low != null && low < 0 || high != null && high < 0) {
            cells.problem(name(FlightField.PEAK_HEIGHT_M), "a height is not negative.");
        } else if (low != null && high != null && high < low) {
            cells.problem(name(FlightField.PEAK_HIGH_M), "the range of the peak height runs downward.");
        }
    }
}
