package org.rafterbook.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Recovered;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.Unit;
import org.rafterbook.units.Worded;

/**
 * A column of a table of flights that the program knows; its heading is its own name in lower case. Settings have
 * columns of their own, {@code setting.<name>}.
 */
public enum FlightField {
    MODEL("model's name"),
    SESSION_DATE("day of the session"),
    VENUE("where it was flown"),
    CEILING_M("usable height", Quantity.HEIGHT, Unit.M),
    LAUNCHED_AT("when it was launched"),
    DURATION_S("time aloft", Quantity.TIME, Unit.S),
    ENDING("clean, touched, steered, mid-air, hung or aborted"),
    CUT_SHORT("yes, no or cannot say"),
    TURNS_WOUND("turns put in", Quantity.TURNS, Unit.TURNS),
    TURNS_BACKED_OFF("turns taken out before launch", Quantity.TURNS, Unit.TURNS),
    TURNS_LEFT("turns left at landing", Quantity.TURNS, Unit.TURNS),
    LAUNCH_TORQUE_NMM("torque at launch", Quantity.TORQUE, Unit.N_MM),
    PEAK_HEIGHT_M("peak height, one value or a range", Quantity.HEIGHT, Unit.M),
    TEMPERATURE_C("air temperature", Quantity.TEMPERATURE, Unit.CELSIUS),
    HUMIDITY_PERCENT("relative humidity", Quantity.HUMIDITY, Unit.PERCENT),
    PRESSURE_HPA("station pressure", Quantity.PRESSURE, Unit.HPA),
    MOTOR("motor's name"),
    BUILD("build number of the model"),
    PARTIAL_FRACTION("part of a full motor", Quantity.FRACTION, Unit.FRACTION),
    RECOVERED("yes, no or not tried"),
    STALLS("number of stalls"),
    LAUNCH_NO_OF_WIND("1, or 2 for a relaunch on the same wind"),
    NOTES("notes"),

    // What only the program's own export adds, and only where it is needed.
    VERSION("name of the airframe sheet's version"),
    PEAK_LOW_M("peak height at least", Quantity.HEIGHT, Unit.M),
    PEAK_HIGH_M("peak height at most", Quantity.HEIGHT, Unit.M),
    LANDED_AT("when it landed"),
    DURATION_SOURCE("watch, typed or wall-clock"),
    CLOCK_DOUBT_S("watch minus wall clock", Quantity.TIME, Unit.S),
    CHANGE_REASON("why the model was rigged anew before this flight"),
    LEFT_OUT_WHY("why it is left out"),
    LEFT_OUT_BY("who left it out"),
    LEFT_OUT_AT("when it was left out"),
    LEFT_OUT_BEFORE_TIME("whether it was left out before its time was known"),
    WIND_NO("which wind of its motor"),
    WOUND_AT("when the motor was wound"),
    MAX_TORQUE_NMM("highest torque", Quantity.TORQUE, Unit.N_MM),
    WINDER_RATIO("motor turns for one turn of the handle", Quantity.PLAIN, Unit.ONE),
    WIND_NOTES("notes on the wind");

    private final String meaning;
    private final @Nullable Quantity quantity;
    private final @Nullable Unit unit;

    FlightField(String meaning) {
        this(meaning, null, null);
    }

    FlightField(String meaning, @Nullable Quantity quantity, @Nullable Unit unit) {
        this.meaning = meaning;
        this.quantity = quantity;
        this.unit = unit;
    }

    /** The column's own heading, such as {@code duration_s}. */
    public String heading() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What the column holds, in a few words. */
    public String meaning() {
        return meaning;
    }

    /** What its numbers measure, null where it holds none or plain counts. */
    public @Nullable Quantity quantity() {
        return quantity;
    }

    /** The unit its numbers are in where nothing else is said. */
    public @Nullable Unit unit() {
        return unit;
    }

    /** The words its cells can be, none where they are anything else. */
    public List<String> words() {
        return switch (this) {
            case ENDING -> words(Ending.values());
            case CUT_SHORT -> words(CutShort.values());
            case RECOVERED -> words(Recovered.values());
            default -> List.of();
        };
    }

    private static List<String> words(Worded[] constants) {
        return Stream.of(constants).map(Worded::word).toList();
    }

    /** True where a table without this column is no table of flights. */
    public boolean required() {
        return this == MODEL || this == SESSION_DATE || this == DURATION_S;
    }

    /** True for the columns every export has. */
    public boolean standard() {
        return ordinal() <= NOTES.ordinal();
    }

    /** The field with this heading, whatever its case. */
    public static Optional<FlightField> of(String heading) {
        return Stream.of(values())
                .filter(f -> f.heading().equalsIgnoreCase(heading.strip()))
                .findFirst();
    }
}
