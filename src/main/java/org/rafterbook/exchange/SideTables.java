package org.rafterbook.exchange;

import static org.rafterbook.exchange.SideTable.in;
import static org.rafterbook.exchange.SideTable.needed;
import static org.rafterbook.exchange.SideTable.plain;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.SideRows.AirRow;
import org.rafterbook.exchange.SideRows.BatchRow;
import org.rafterbook.exchange.SideRows.EventRow;
import org.rafterbook.exchange.SideRows.LimitRow;
import org.rafterbook.exchange.SideRows.MarkRow;
import org.rafterbook.exchange.SideRows.ModelRow;
import org.rafterbook.exchange.SideRows.MotorRow;
import org.rafterbook.exchange.SideRows.ReadingRow;
import org.rafterbook.exchange.SideRows.SessionRow;
import org.rafterbook.exchange.SideRows.SettingRow;
import org.rafterbook.exchange.SideRows.VenueRow;
import org.rafterbook.exchange.SideRows.WindRow;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.PressureSource;
import org.rafterbook.power.WindEnd;
import org.rafterbook.power.WindPhase;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.Unit;

/** The forms of all tables that stand beside the flights. */
public final class SideTables {

    public static final SideTable<VenueRow> VENUES = new SideTable<>(
            "venues",
            c -> new VenueRow(
                    c.required("venue"),
                    c.number("site_height_m", Quantity.HEIGHT, Unit.M),
                    c.positive("official_height_m", Quantity.HEIGHT, Unit.M),
                    c.positive("usable_height_m", Quantity.HEIGHT, Unit.M),
                    c.text("notes")),
            List.of(
                    needed("venue", VenueRow::venue),
                    in(Unit.M, "site_height_m", VenueRow::siteHeightM),
                    in(Unit.M, "official_height_m", VenueRow::officialHeightM),
                    in(Unit.M, "usable_height_m", VenueRow::usableHeightM),
                    plain("notes", VenueRow::notes)));

    public static final SideTable<MarkRow> MARKS = new SideTable<>(
            "venue_marks",
            c -> new MarkRow(
                    c.required("venue"),
                    c.required("mark"),
                    orZero(c.number("height_m", Quantity.HEIGHT, Unit.M)),
                    Boolean.TRUE.equals(c.yesNo("limit"))),
            List.of(
                    needed("venue", MarkRow::venue),
                    needed("mark", MarkRow::mark),
                    needed("height_m", Unit.M, MarkRow::heightM),
                    plain("limit", MarkRow::limit)));

    public static final SideTable<BatchRow> BATCHES = new SideTable<>(
            "batches",
            c -> new BatchRow(
                    c.required("batch"),
                    c.day("opened_on"),
                    c.positive("width_mm", Quantity.STRIP_WIDTH, Unit.MM),
                    c.positive("turns_constant", Quantity.PLAIN, Unit.ONE),
                    c.text("notes")),
            List.of(
                    needed("batch", BatchRow::batch),
                    plain("opened_on", BatchRow::openedOn),
                    in(Unit.MM, "width_mm", BatchRow::widthM),
                    plain("turns_constant", BatchRow::turnsConstant),
                    plain("notes", BatchRow::notes)));

    public static final SideTable<MotorRow> MOTORS = new SideTable<>(
            "motors",
            c -> new MotorRow(
                    c.required("motor"),
                    c.text("batch"),
                    c.positive("loop_length_mm", Quantity.LENGTH, Unit.MM),
                    c.positive("mass_g", Quantity.MASS, Unit.G),
                    c.text("cut_from"),
                    c.part("fraction"),
                    c.day("made_on"),
                    c.text("fate"),
                    c.text("notes")),
            List.of(
                    needed("motor", MotorRow::motor),
                    plain("batch", MotorRow::batch),
                    in(Unit.MM, "loop_length_mm", MotorRow::loopLengthM),
                    in(Unit.G, "mass_g", MotorRow::massKg),
                    plain("cut_from", MotorRow::cutFrom),
                    plain("fraction", MotorRow::fraction),
                    plain("made_on", MotorRow::madeOn),
                    plain("fate", MotorRow::fate),
                    plain("notes", MotorRow::notes)));

    public static final SideTable<EventRow> EVENTS = new SideTable<>(
            "flight_events",
            c -> {
                LocalDate day = c.day("session_date");
                FlightEventKind kind = c.word("kind", FlightEventKind.class);
                return new EventRow(
                        c.line(),
                        c.text("model"),
                        orEpoch(day),
                        c.text("venue"),
                        c.whole("flight_no", 1),
                        c.moment("launched_at", day),
                        kind == null ? FlightEventKind.NOTE : kind,
                        c.number("at_s", Quantity.TIME, Unit.S),
                        c.number("value", Quantity.PLAIN, Unit.ONE),
                        c.text("mark"),
                        c.text("notes"));
            },
            List.of(
                    plain("model", EventRow::model),
                    needed("session_date", EventRow::date),
                    plain("venue", EventRow::venue),
                    plain("flight_no", EventRow::flightNo),
                    plain("launched_at", EventRow::launchedAt),
                    needed("kind", EventRow::kind),
                    plain("at_s", EventRow::atS),
                    plain("value", EventRow::value),
                    plain("mark", EventRow::mark),
                    plain("notes", EventRow::notes)));

    public static final SideTable<SessionRow> SESSIONS = new SideTable<>(
            "sessions",
            c -> new SessionRow(
                    c.line(),
                    orEpoch(c.day("session_date")),
                    c.text("venue"),
                    c.text("zone"),
                    c.text("goal"),
                    c.text("notes")),
            List.of(
                    needed("session_date", SessionRow::date),
                    plain("venue", SessionRow::venue),
                    plain("zone", SessionRow::zone),
                    plain("goal", SessionRow::goal),
                    plain("notes", SessionRow::notes)));

    public static final SideTable<AirRow> AIR = new SideTable<>(
            "air_readings",
            c -> {
                LocalDate day = c.day("session_date");
                return new AirRow(
                        orEpoch(day),
                        c.text("venue"),
                        c.moment("read_at", day),
                        c.number("temperature_c", Quantity.TEMPERATURE, Unit.CELSIUS),
                        c.number("humidity_percent", Quantity.HUMIDITY, Unit.PERCENT),
                        c.number("pressure_hpa", Quantity.PRESSURE, Unit.HPA),
                        c.word("pressure_source", PressureSource.class));
            },
            List.of(
                    needed("session_date", AirRow::date),
                    plain("venue", AirRow::venue),
                    plain("read_at", AirRow::at),
                    in(Unit.CELSIUS, "temperature_c", AirRow::temperatureK),
                    in(Unit.PERCENT, "humidity_percent", AirRow::humidity),
                    in(Unit.HPA, "pressure_hpa", AirRow::pressurePa),
                    plain("pressure_source", AirRow::source)));

    public static final SideTable<LimitRow> LIMITS = new SideTable<>(
            "session_limits",
            c -> new LimitRow(
                    orEpoch(c.day("session_date")),
                    c.text("venue"),
                    c.required("name"),
                    orZero(c.positive("height_m", Quantity.HEIGHT, Unit.M)),
                    c.text("mark")),
            List.of(
                    needed("session_date", LimitRow::date),
                    plain("venue", LimitRow::venue),
                    needed("name", LimitRow::name),
                    needed("height_m", Unit.M, LimitRow::heightM),
                    plain("mark", LimitRow::mark)));

    public static final SideTable<ModelRow> MODELS = new SideTable<>(
            "models",
            c -> new ModelRow(
                    c.required("model"),
                    c.text("letter"),
                    c.whole("build", 1),
                    c.number("wished_margin_low_percent", Quantity.FRACTION, Unit.PERCENT),
                    c.number("wished_margin_high_percent", Quantity.FRACTION, Unit.PERCENT),
                    c.text("notes")),
            List.of(
                    needed("model", ModelRow::model),
                    plain("letter", ModelRow::letter),
                    plain("build", ModelRow::build),
                    in(Unit.PERCENT, "wished_margin_low_percent", ModelRow::wishedLow),
                    in(Unit.PERCENT, "wished_margin_high_percent", ModelRow::wishedHigh),
                    plain("notes", ModelRow::notes)));

    public static final SideTable<SettingRow> SETTINGS = new SideTable<>(
            "settings",
            c -> new SettingRow(
                    c.line(),
                    c.required("model"),
                    c.required("setting"),
                    c.text("label"),
                    c.text("unit"),
                    c.positive("step", Quantity.PLAIN, Unit.ONE),
                    c.number("tolerance", Quantity.PLAIN, Unit.ONE),
                    c.number("low", Quantity.PLAIN, Unit.ONE),
                    c.number("high", Quantity.PLAIN, Unit.ONE),
                    c.text("key_letter")),
            List.of(
                    needed("model", SettingRow::model),
                    needed("setting", SettingRow::setting),
                    plain("label", SettingRow::label),
                    plain("unit", SettingRow::unit),
                    plain("step", SettingRow::step),
                    plain("tolerance", SettingRow::tolerance),
                    plain("low", SettingRow::low),
                    plain("high", SettingRow::high),
                    plain("key_letter", SettingRow::keyLetter)));

    public static final SideTable<WindRow> WINDS = new SideTable<>(
            "winds",
            c -> {
                LocalDate day = c.day("session_date");
                return new WindRow(
                        c.text("motor"),
                        c.whole("wind_no", 1),
                        day,
                        c.text("venue"),
                        c.moment("wound_at", day),
                        c.turns("turns_wound"),
                        c.turns("turns_backed_off"),
                        c.number("max_torque_nmm", Quantity.TORQUE, Unit.N_MM),
                        c.number("launch_torque_nmm", Quantity.TORQUE, Unit.N_MM),
                        c.positive("winder_ratio", Quantity.PLAIN, Unit.ONE),
                        c.word("end", WindEnd.class),
                        c.text("notes"));
            },
            List.of(
                    plain("motor", WindRow::motor),
                    plain("wind_no", WindRow::windNo),
                    plain("session_date", WindRow::date),
                    plain("venue", WindRow::venue),
                    plain("wound_at", WindRow::woundAt),
                    needed("turns_wound", WindRow::turnsWound),
                    plain("turns_backed_off", WindRow::turnsBackedOff),
                    in(Unit.N_MM, "max_torque_nmm", WindRow::maxTorqueNm),
                    in(Unit.N_MM, "launch_torque_nmm", WindRow::launchTorqueNm),
                    plain("winder_ratio", WindRow::winderRatio),
                    plain("end", WindRow::end),
                    plain("notes", WindRow::notes)));

    public static final SideTable<ReadingRow> READINGS = new SideTable<>(
            "wind_readings",
            c -> {
                WindPhase phase = c.word("phase", WindPhase.class);
                return new ReadingRow(
                        c.line(),
                        c.required("motor"),
                        Objects.requireNonNullElse(c.whole("wind_no", 1), 1),
                        Objects.requireNonNullElse(c.whole("reading_no", 1), 1),
                        phase == null ? WindPhase.WINDING : phase,
                        orZero(c.turns("turns")),
                        c.number("torque_nmm", Quantity.TORQUE, Unit.N_MM),
                        c.moment("read_at", null));
            },
            List.of(
                    needed("motor", ReadingRow::motor),
                    needed("wind_no", ReadingRow::windNo),
                    needed("reading_no", ReadingRow::readingNo),
                    needed("phase", ReadingRow::phase),
                    needed("turns", ReadingRow::turns),
                    in(Unit.N_MM, "torque_nmm", ReadingRow::torqueNm),
                    plain("read_at", ReadingRow::at)));

    /** Every form, in the order in which an import takes them. */
    public static final List<SideTable<?>> ALL =
            List.of(VENUES, MARKS, BATCHES, MOTORS, MODELS, SETTINGS, SESSIONS, AIR, LIMITS, WINDS, EVENTS, READINGS);

    private SideTables() {}

    /**
     * The form of a table: the one its file is named after, else the one all its headings belong to; empty where it is
     * a table of flights or something else.
     */
    public static Optional<SideTable<?>> formOf(CsvTable table) {
        String name = table.file().toLowerCase(Locale.ROOT);
        return ALL.stream()
                .filter(f -> name.equals(f.stem() + ".csv"))
                .findFirst()
                .or(() -> ALL.stream().filter(f -> f.fits(table)).findFirst());
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }

    /** Stands in for a day that could not be read; the row is not taken then. */
    private static LocalDate orEpoch(@Nullable LocalDate day) {
        return day == null ? LocalDate.EPOCH : day;
    }
}
