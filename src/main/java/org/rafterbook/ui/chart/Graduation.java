package org.rafterbook.ui.chart;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.QuantityFormat;

/** Where a rule or axis has its graduations, as fine as there is room for. */
@FunctionalInterface
public interface Graduation {

    /** The graduations between two values at so many pixels of the design for one unit of the value. */
    List<Tick> ticks(double low, double high, double pxPerUnit);

    /** Plain numbers in steps of 1, 2 or 5 times a power of ten. */
    static Graduation numbers() {
        return (low, high, pxPerUnit) -> {
            double room = Math.max(Math.abs(low), Math.abs(high)) < 1000 ? Steps.LABEL_PX : Steps.LONG_LABEL_PX;
            double step = Steps.nice(room / pxPerUnit);
            int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
            return Steps.regular(
                    low, high, pxPerUnit, step, Steps.parts(step), value -> QuantityFormat.rounded(value, decimals));
        };
    }

    /** Labelled every {@code step}, with {@code parts} graduations to a step where they have room. */
    static Graduation every(double step, int parts, DoubleFunction<String> label) {
        return (low, high, pxPerUnit) -> Steps.regular(low, high, pxPerUnit, step, parts, label);
    }

    /** Names at 0, 1, 2 ... */
    static Graduation names(List<String> names) {
        return (low, high, pxPerUnit) -> {
            List<Tick> ticks = new ArrayList<>();
            for (int i = 0; i < names.size(); i++) {
                ticks.add(new Tick(i, Tick.Level.TEN, names.get(i)));
            }
            return ticks;
        };
    }

    /** Seconds labelled as minutes: 0, 1, 2 ..., or 0:30, 0:45, 1:00 where minutes lie too far apart. */
    static Graduation minutes() {
        return (low, high, pxPerUnit) -> {
            double least = Steps.LABEL_PX / pxPerUnit;
            for (int seconds : new int[] {5, 10, 15, 30}) {
                if (seconds >= least && high - low < 240) {
                    return Steps.regular(
                            low, high, pxPerUnit, seconds, seconds % 15 == 0 ? 3 : 5, ClockTime::minutesSeconds);
                }
            }
            double step = Math.max(1, Steps.nice(least / 60)) * 60;
            return Steps.regular(
                    low, high, pxPerUnit, step, Steps.parts(step / 60), value -> QuantityFormat.rounded(value / 60, 0));
        };
    }

    /** Seconds since the epoch labelled as the time of day in a zone, every 5, 15 or 30 minutes or every hours. */
    static Graduation clock(ZoneId zone) {
        DateTimeFormatter hours = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
        return (low, high, pxPerUnit) -> {
            for (int minutes : new int[] {5, 15, 30, 60, 120, 240}) {
                if (minutes * 60 * pxPerUnit >= Steps.LABEL_PX) {
                    int parts = minutes <= 15 ? minutes : minutes <= 60 ? minutes / 5 : minutes / 30;
                    return Steps.regular(
                            low,
                            high,
                            pxPerUnit,
                            minutes * 60.0,
                            parts,
                            value -> hours.format(
                                    Instant.ofEpochSecond(Math.round(value)).atZone(zone)));
                }
            }
            return List.of();
        };
    }

    /** Epoch days: a graduation a day, longer on Mondays, longest with its name at the first of a month. */
    static Graduation days() {
        DateTimeFormatter month = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);
        DateTimeFormatter monthYear = DateTimeFormatter.ofPattern("MMM uuuu", Locale.ENGLISH);
        return (low, high, pxPerUnit) -> {
            List<Tick> ticks = new ArrayList<>();
            boolean first = true;
            for (long day = (long) Math.ceil(low); day <= high; day++) {
                LocalDate date = LocalDate.ofEpochDay(day);
                if (date.getDayOfMonth() == 1) {
                    boolean year = first || date.getMonthValue() == 1;
                    ticks.add(new Tick(day, Tick.Level.TEN, (year ? monthYear : month).format(date)));
                    first = false;
                } else if (date.getDayOfWeek().getValue() == 1) {
                    ticks.add(new Tick(day, Tick.Level.FIVE, ""));
                } else if (pxPerUnit >= Steps.TICK_PX) {
                    ticks.add(new Tick(day, Tick.Level.ONE, ""));
                }
            }
            return ticks;
        };
    }
}
