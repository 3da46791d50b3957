package org.rafterbook.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.AirframeSheets;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.exchange.FlightsText;
import org.rafterbook.exchange.SideRows.EventRow;
import org.rafterbook.exchange.SideRows.MarkRow;
import org.rafterbook.exchange.SideRows.ReadingRow;
import org.rafterbook.exchange.SideRows.SessionRow;
import org.rafterbook.exchange.SideRows.VenueRow;
import org.rafterbook.exchange.SideRows.WindRow;
import org.rafterbook.exchange.SideTables;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.power.WindEnd;
import org.rafterbook.power.WindPhase;
import org.rafterbook.units.Unit;

/**
 * The demo season: a winter of an invented flyer, made up by a seeded simulation whose true effects are known. Its
 * files lie in {@code sample-data}; run this class to write them anew.
 */
final class DemoSeason {

    static final long SEED = 20251007;
    static final String VENUE = "Saltmarsh Sports Hall";
    static final String LAMPS = "lamps";
    static final String BEAMS = "beams";
    private static final String BOARD = "basketball board, top";
    private static final LocalTime START = LocalTime.of(18, 38);

    private final DemoDice dice = new DemoDice(SEED);
    private final DemoMotors motors = new DemoMotors(dice);
    private final DemoSimulation simulation = new DemoSimulation(dice);
    private final DemoTruth truth = new DemoTruth();
    private final Map<DemoModel, Map<String, String>> rigged = new EnumMap<>(DemoModel.class);
    private final Set<String> settingNames = new LinkedHashSet<>();
    private final List<FlightRow> rows = new ArrayList<>();
    private final List<EventRow> events = new ArrayList<>();
    private final List<WindRow> winds = new ArrayList<>();
    private final List<ReadingRow> readings = new ArrayList<>();
    private final Map<DemoModel, Integer> flightNo = new EnumMap<>(DemoModel.class);
    private int flown;

    private DemoSeason() {
        for (DemoModel model : DemoModel.values()) {
            rigged.put(model, new LinkedHashMap<>(model.asBuilt()));
            settingNames.addAll(model.asBuilt().keySet());
        }
    }

    /** Writes the files into a folder, {@code sample-data} unless another is named. */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args.length > 0 ? args[0] : "sample-data");
        Files.createDirectories(folder);
        for (Map.Entry<String, String> file : files().entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
    }

    /** All files of the season by name. */
    static Map<String, String> files() {
        DemoSeason season = new DemoSeason();
        season.fly();
        return season.written();
    }

    private void fly() {
        LocalDate first = DemoPlan.EVENINGS.get(0).date();
        LocalDate last = DemoPlan.EVENINGS.get(DemoPlan.EVENINGS.size() - 1).date();
        double length = ChronoUnit.DAYS.between(first, last);
        for (DemoPlan.Evening evening : DemoPlan.EVENINGS) {
            evening(evening, simulation.day(ChronoUnit.DAYS.between(first, evening.date()) / length));
        }
    }

    private void evening(DemoPlan.Evening evening, DemoSimulation.Day day) {
        flightNo.clear();
        LocalDateTime clock = evening.date().atTime(START).plusSeconds(Math.round(dice.between(0, 600)));
        int order = 0;
        for (String block : evening.blocks()) {
            DemoBlock todo = DemoBlock.parse(block);
            Map<String, String> settings = rig(todo);
            for (int i = 0; i < todo.flights(); i++) {
                order++;
                clock = clock.plusSeconds(Math.round(dice.between(200, 400)));
                FlightRow.Air air = air(evening, clock);
                DemoMotors.DemoMotor motor = motors.rested(todo.model(), todo.fraction(), evening.date());
                boolean breaks = evening.date().equals(LocalDate.of(2025, 12, 9)) && order == 3;
                if (breaks) {
                    breakWhileWinding(motor, clock);
                    clock = clock.plusMinutes(4);
                    motor = motors.rested(todo.model(), todo.fraction(), evening.date());
                }
                DemoFlight flight = simulation.fly(
                        todo.model(),
                        Map.copyOf(settings),
                        motor,
                        clock,
                        day,
                        Unit.CELSIUS.fromSi(kept(air.temperatureK())),
                        density(air),
                        order,
                        settings.getOrDefault("Wash-in", "").equals("2") && todo.model() == DemoModel.TEASEL);
                clock = special(flight, air, clock);
                keep(flight, air);
                clock = clock.plusSeconds(Math.round(kept(flight.seconds)));
            }
        }
    }

    private Map<String, String> rig(DemoBlock todo) {
        Map<String, String> settings = kept(rigged.get(todo.model()));
        if (!todo.settings().isEmpty()) {
            Map<String, String> before = new LinkedHashMap<>(settings);
            settings.putAll(todo.settings());
            truth.changed(todo.model(), before, settings);
        }
        return settings;
    }

    /** The few things that befall a season: two hung, two mid-air, two aborted at launch and launched again. */
    private LocalDateTime special(DemoFlight flight, FlightRow.Air air, LocalDateTime clock) {
        flown++;
        if (flown == 33 || flown == 124) {
            DemoFlight aborted = new DemoFlight(flight.model, flight.settings, clock, flight.motor);
            aborted.wound = flight.wound;
            aborted.backedOff = flight.backedOff;
            aborted.maxTorque = flight.maxTorque;
            aborted.launchTorque = flight.launchTorque;
            aborted.ending = Ending.ABORTED;
            aborted.seconds = flown == 33 ? null : 7.4;
            aborted.leftOut = "bad launch";
            aborted.note =
                    flown == 33 ? "Launched into the curtain, caught it at once." : "Slipped on launch, caught it.";
            keep(aborted, air);
            flight.launchNo = 2;
            return clock;
        }
        boolean hung = flown == 61 || flown == 150;
        boolean midAir = flown == 88 || flown == 177;
        if ((hung || midAir) && flight.ending == Ending.CLEAN) {
            flight.ending = hung ? Ending.HUNG : Ending.MID_AIR;
            flight.cutShort = hung ? CutShort.YES : CutShort.CANNOT_SAY;
            flight.seconds = DemoDice.rounded(kept(flight.seconds) * (hung ? 0.37 : 0.71), 10);
            flight.left = null;
            flight.recovered = null;
            flight.happenings.clear();
            flight.peakLow = hung ? Double.valueOf(DemoSimulation.LAMPS_M) : flight.peakLow;
            flight.peakHigh = hung ? Double.valueOf(DemoSimulation.BEAMS_M) : flight.peakHigh;
            flight.note = hung
                    ? "Hung on a lamp; came down by itself twenty minutes later, no damage."
                    : "Met another model over the centre circle, both flew on a little lower.";
        }
        return clock;
    }

    private void breakWhileWinding(DemoMotors.DemoMotor motor, LocalDateTime at) {
        motor.broken = true;
        winds.add(new WindRow(
                motor.name,
                motor.winds + 1,
                at.toLocalDate(),
                VENUE,
                at.minusMinutes(2),
                StrictMath.rint(0.975 * motor.breakingTurns() / 10) * 10,
                null,
                Unit.N_MM.toSi(DemoDice.rounded(motor.size.highestTorque() * 0.97, 20)),
                null,
                null,
                WindEnd.BROKE,
                "Broke on the way in, off the model, in the tube."));
    }

    private void keep(DemoFlight f, FlightRow.Air air) {
        int number = flightNo.merge(f.model, 1, Integer::sum);
        boolean whole = f.motor.fraction == 1;
        FlightRow.WindCells wind = new FlightRow.WindCells(
                f.motor.name,
                null,
                f.launchNo,
                null,
                f.wound,
                f.backedOff,
                Unit.N_MM.toSi(f.maxTorque),
                Unit.N_MM.toSi(f.launchTorque),
                null,
                null);
        rows.add(new FlightRow(
                0,
                f.model.title,
                f.launched.toLocalDate(),
                VENUE,
                DemoSimulation.BEAMS_M,
                f.launched,
                null,
                f.seconds,
                null,
                null,
                f.ending,
                f.cutShort,
                air,
                wind,
                f.left,
                f.peakLow,
                f.peakHigh,
                1,
                null,
                null,
                whole ? 1 : f.motor.fraction,
                f.recovered,
                f.stalls,
                f.leftOut == null ? null : new FlightRow.LeftOut(f.leftOut, "R. Aldous", null, true),
                f.note,
                f.settings,
                Map.of()));
        events.addAll(f.events(VENUE, number));
        if (f.motor.winds == 1 && List.of("M1", "M9", "M20").contains(f.motor.name)) {
            readings(f);
        }
    }

    /** Turns and torque as they went in, a little above the curve they come out on, and two while backing off. */
    private void readings(DemoFlight f) {
        int number = 0;
        for (double share : new double[] {0.2, 0.4, 0.6, 0.75, 0.85, 0.92, 0.97, 1}) {
            number++;
            double torque = f.maxTorque * (share == 1 ? 1 : 1.12 * DemoRubber.torque(share));
            readings.add(reading(f, number, WindPhase.WINDING, share * f.wound, Math.min(torque, f.maxTorque)));
        }
        for (double part : new double[] {0.5, 1}) {
            number++;
            double turns = f.wound - part * f.backedOff;
            readings.add(
                    reading(f, number, WindPhase.BACKING_OFF, turns, f.maxTorque * DemoRubber.torque(turns / f.wound)));
        }
    }

    private static ReadingRow reading(DemoFlight f, int number, WindPhase phase, double turns, double torque) {
        return new ReadingRow(
                0,
                f.motor.name,
                f.motor.winds,
                number,
                phase,
                StrictMath.rint(turns),
                Unit.N_MM.toSi(DemoDice.rounded(torque, 20)),
                null);
    }

    /** Read when the hall is entered and twice later: it warms by a degree. */
    private static FlightRow.Air air(DemoPlan.Evening evening, LocalDateTime at) {
        int reading = at.toLocalTime().isBefore(LocalTime.of(20, 5))
                ? 0
                : at.toLocalTime().isBefore(LocalTime.of(21, 10)) ? 1 : 2;
        return new FlightRow.Air(
                Unit.CELSIUS.toSi(DemoDice.rounded(evening.startC() + 0.6 * reading, 10)),
                Unit.PERCENT.toSi(evening.humidity() + reading),
                Unit.HPA.toSi(evening.pressureHpa()));
    }

    /** Density of moist air, kg/m3: ideal gases with a Magnus vapour pressure, enough for a simulation. */
    private static double density(FlightRow.Air air) {
        double kelvin = kept(air.temperatureK());
        double celsius = kelvin - 273.15;
        double vapour = kept(air.humidity()) * 611.2 * StrictMath.exp(17.62 * celsius / (243.12 + celsius));
        return (kept(air.pressurePa()) - vapour) / (287.05 * kelvin) + vapour / (461.5 * kelvin);
    }

    private Map<String, String> written() {
        Map<String, String> files = new LinkedHashMap<>();
        for (DemoModel model : DemoModel.values()) {
            files.put(model.title.toLowerCase(Locale.ROOT) + ".json", AirframeSheets.write(model.sheet()));
        }
        files.put(
                "venues.csv",
                SideTables.VENUES.write(List.of(new VenueRow(VENUE, 14.0, 9.4, 9.4, "lamps hang in four rows"))));
        files.put(
                "venue_marks.csv",
                SideTables.MARKS.write(List.of(
                        new MarkRow(VENUE, BOARD, DemoSimulation.BOARD_M, false),
                        new MarkRow(VENUE, LAMPS, DemoSimulation.LAMPS_M, true),
                        new MarkRow(VENUE, BEAMS, DemoSimulation.BEAMS_M, true))));
        files.put("batches.csv", SideTables.BATCHES.write(motors.batchRows()));
        files.put("motors.csv", SideTables.MOTORS.write(motors.rows()));
        files.put("settings.csv", SideTables.SETTINGS.write(DemoSettings.rows()));
        files.put(
                "sessions.csv",
                SideTables.SESSIONS.write(DemoPlan.EVENINGS.stream()
                        .map(e -> new SessionRow(0, e.date(), VENUE, "Europe/London", e.goal(), null))
                        .toList()));
        files.put("flights.csv", FlightsText.of(rows, List.copyOf(settingNames), true));
        files.put("flight_events.csv", SideTables.EVENTS.write(events));
        files.put("winds.csv", SideTables.WINDS.write(winds));
        files.put("wind_readings.csv", SideTables.READINGS.write(readings));
        files.put("index.txt", String.join("\n", files.keySet()) + "\n");
        files.put("README.md", truth.readme(rows, motors.rows().size()));
        return files;
    }

    private static <T> T kept(@Nullable T value) {
        if (value == null) {
            throw new IllegalStateException("the simulation left something out");
        }
        return value;
    }
}
