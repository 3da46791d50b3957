package org.rafterbook.logbook;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.PressureSource;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.power.Motor;
import org.rafterbook.power.RubberBatch;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindEnd;
import org.rafterbook.power.WindPhase;
import org.rafterbook.power.WindReading;

/**
 * Makes a logbook of many flights for benchmarks: {@code PerformanceLogbook FILE FLIGHTS [LAST-DAY]}. Sessions of twenty
 * flights go back from the last day, two a week in winter; five models at a time fly five seasons, about a thousand
 * flights each, with a new rigging every five flights. The same numbers give the same flights. Run by {@code mvn -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=org.rafterbook.logbook.PerformanceLogbook -Dexec.args="FILE FLIGHTS"}.
 */
public final class PerformanceLogbook {

    private static final int A_SESSION = 20;
    private static final int SESSIONS_A_SEASON = 50;
    private static final int MODELS = 5;
    private static final int SEASONS_OF_A_MODEL = 5;
    private static final int VERSIONS_OF_A_MODEL = 12;
    private static final int FLIGHTS_OF_A_RIGGING = 5;
    private static final int MOTORS_A_SEASON = 40;
    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final List<String> NOTES = List.of(
            "flat circles, a little tight at the top",
            "mushed for the first two laps, then settled",
            "brushed the lamp and carried on",
            "nose high near the end, slow cruise",
            "very steady, came down dead centre",
            "drifted towards the gallery");

    private final Random random;
    private final Writer w;
    private final Venue hall;
    private final List<Motor> motors = new ArrayList<>();
    private final List<Fleet> fleet;

    /** A model with its versions and the rigging it is set to. */
    private static final class Fleet {
        private final Model model;
        private final List<Version> versions = new ArrayList<>();
        private @Nullable Rigging rigging;
        private int riggings;
        private int flights;

        Fleet(Model model) {
            this.model = model;
        }
    }

    private PerformanceLogbook(Writer w, Random random, Venue hall, List<Fleet> fleet) {
        this.fleet = fleet;
        this.w = w;
        this.random = random;
        this.hall = hall;
    }

    public static void main(String[] arguments) {
        Path file = Path.of(arguments[0]);
        int flights = Integer.parseInt(arguments[1]);
        LocalDate last = arguments.length > 2 ? LocalDate.parse(arguments[2]) : LocalDate.of(2026, 3, 31);
        make(file, flights, last);
        System.out.println(file + ": " + flights + " flights");
    }

    /** Makes the logbook; the last session lies on the given day. */
    public static void make(Path file, int flights, LocalDate last) {
        int sessions = (flights + A_SESSION - 1) / A_SESSION;
        Random random = new Random(20_260_120);
        List<Fleet> fleet = new ArrayList<>();
        try (Logbook logbook = Logbook.open(file, Mode.CREATE)) {
            Venue hall = logbook.enter(
                    "Venue",
                    w -> w.insert(new Venue(Logbook.newId(), "Saltmarsh Sports Hall", 12.0, 9.4, 7.9, null, Map.of())));
            for (int from = 0; from < sessions; from += SESSIONS_A_SEASON) {
                int first = from;
                int until = Math.min(sessions, from + SESSIONS_A_SEASON);
                logbook.change("Season of sessions " + (first + 1) + " to " + until, w -> {
                    PerformanceLogbook season = new PerformanceLogbook(w, random, hall, fleet);
                    season.equip(first / SESSIONS_A_SEASON);
                    for (int i = first; i < until; i++) {
                        season.session(day(last, sessions - 1 - i), Math.min(A_SESSION, flights - i * A_SESSION));
                    }
                });
            }
        }
    }

    private static LocalDate day(LocalDate last, int sessionsBefore) {
        int seasons = sessionsBefore / SESSIONS_A_SEASON;
        return last.minusYears(seasons).minusDays(sessionsBefore % SESSIONS_A_SEASON * 7L / 2);
    }

    private void equip(int season) {
        RubberBatch batch = w.insert(new RubberBatch(
                Logbook.newId(), "Batch " + season, null, 0.0024, 1.1, null, Map.of("widthM", "3/32 in")));
        for (int i = 1; i <= MOTORS_A_SEASON; i++) {
            motors.add(w.insert(new Motor(
                    Logbook.newId(),
                    "M" + season + "-" + i,
                    batch.id(),
                    0.4 + 0.2 * random.nextDouble(),
                    0.0014 + 0.0004 * random.nextDouble(),
                    null,
                    1,
                    null,
                    null,
                    null,
                    Map.of())));
        }
        if (season % SEASONS_OF_A_MODEL == 0) {
            build(season);
        }
    }

    private void build(int season) {
        fleet.clear();
        for (int i = 1; i <= MODELS; i++) {
            Fleet flown = new Fleet(w.insert(new Model(
                    Logbook.newId(), "Model " + season + "-" + i, "" + (char) ('a' + i), 1, 0.05, 0.25, null, null)));
            SettingDef incidence = setting(flown.model, "wing incidence", "wing.incidence_deg", 1);
            SettingDef edge = setting(flown.model, "wing edge", "wing.edge_aft_mm", 2);
            for (int v = 1; v <= VERSIONS_OF_A_MODEL; v++) {
                Version version = w.insert(new Version(
                        Logbook.newId(),
                        flown.model.id(),
                        1,
                        v,
                        flown.model.id() + v,
                        sheet(flown.model.name(), 400 + 10 * i, 30 + v / 4 * 5, 2 + v % 4 * 0.5),
                        v == 2,
                        null,
                        null,
                        null,
                        false,
                        Samples.EVENING));
                flown.versions.add(version);
                value(version, incidence, Math.toRadians(2 + v % 4 * 0.5));
                value(version, edge, 0.030 + v / 4 * 0.005);
            }
            fleet.add(flown);
        }
    }

    /** A monoplane whose lift the lattice has to work out once for each place of the wing. */
    private static String sheet(String model, int spanMm, int edgeMm, double incidenceDeg) {
        return String.format(Locale.ROOT, """
                {"rafterbook": "airframe sheet", "edition": 1, "model": "%s", "version": "",
                 "surfaces": [
                  {"name": "wing", "role": "wing", "edge_aft_mm": %d, "rise_mm": 20, "incidence_deg": %s,
                   "camber_percent": 4, "span_mm": %d, "chord_mm": 110},
                  {"name": "tail", "role": "tailplane", "edge_aft_mm": 340, "rise_mm": 25, "incidence_deg": 0,
                   "span_mm": 270, "chord_mm": 80}],
                 "masses": [{"name": "wing", "mass_g": 0.5, "aft_mm": %d, "rise_mm": 20},
                            {"name": "the rest", "mass_g": 0.9, "aft_mm": 110, "rise_mm": 0}],
                 "motor": {"mass_g": 1.6, "aft_mm": 120}}
                """, model, edgeMm, incidenceDeg, spanMm, edgeMm + 50);
    }

    private SettingDef setting(Model model, String label, String path, int ordinal) {
        return w.insert(new SettingDef(
                Logbook.newId(),
                model.id(),
                label,
                ordinal == 1 ? "ANGLE" : "LENGTH",
                ordinal == 1 ? "deg" : "mm",
                null,
                null,
                null,
                null,
                ordinal == 1 ? "W" : "E",
                path,
                ordinal));
    }

    private void value(Version version, SettingDef setting, double number) {
        w.insert(new SettingValue(Logbook.newId(), version.id(), setting.id(), number, null, null));
    }

    private void session(LocalDate day, int flights) {
        Session session = w.insert(new Session(Logbook.newId(), hall.id(), day, ZONE, null, null));
        Instant start = day.atTime(LocalTime.of(18, 0)).atZone(ZONE).toInstant();
        for (int hour = 0; hour < 3; hour++) {
            w.insert(new AirReading(
                    Logbook.newId(),
                    session.id(),
                    start.plus(Duration.ofHours(hour)),
                    290 + random.nextDouble() * 4,
                    0.4 + random.nextDouble() * 0.2,
                    100_800.0 + random.nextInt(1000),
                    PressureSource.MEASURED,
                    Map.of()));
        }
        for (int i = 1; i <= flights; i++) {
            flight(session, i, start.plus(Duration.ofMinutes(12L * i)));
        }
    }

    private void flight(Session session, int ordinal, Instant launchedAt) {
        Fleet flown = fleet.get(ordinal % 2 + (int) Math.floorMod(launchedAt.getEpochSecond() / 86_400, MODELS - 1L));
        Rigging rigging = rigging(flown, launchedAt);
        double wound = 1400 + random.nextInt(200);
        Motor motor = motors.get(random.nextInt(motors.size()));
        Wind wind = w.insert(new Wind(
                Logbook.newId(),
                motor.id(),
                session.id(),
                ordinal,
                launchedAt.minusSeconds(120),
                wound,
                60.0,
                0.004 + 0.001 * random.nextDouble(),
                0.003 + 0.001 * random.nextDouble(),
                15.0,
                WindEnd.FLOWN,
                null,
                Map.of()));
        for (int i = 1; i <= 3; i++) {
            w.insert(new WindReading(
                    Logbook.newId(), wind.id(), i, WindPhase.WINDING, wound * i / 3, 0.0015 * i, null, Map.of()));
        }
        double durationS = Math.round(10 * (600 + 40 * random.nextGaussian())) / 10.0;
        boolean touched = random.nextInt(8) == 0;
        Flight flight = w.insert(new Flight(
                Logbook.newId(),
                session.id(),
                rigging.id(),
                wind.id(),
                ordinal,
                1,
                launchedAt,
                launchedAt.plusMillis((long) (durationS * 1000)),
                durationS,
                DurationSource.WATCH,
                null,
                touched ? Ending.TOUCHED : Ending.CLEAN,
                touched ? CutShort.CANNOT_SAY : CutShort.NO,
                6.0,
                7.0,
                (double) (300 + random.nextInt(200)),
                1,
                null,
                null,
                null,
                null,
                null,
                null,
                random.nextInt(3) == 0 ? NOTES.get(random.nextInt(NOTES.size())) : null,
                Map.of()));
        if (touched) {
            w.insert(new FlightEvent(
                    Logbook.newId(), flight.id(), FlightEventKind.TOUCHED, durationS / 2, null, null, null));
        }
    }

    private Rigging rigging(Fleet flown, Instant at) {
        Rigging now = flown.rigging;
        if (now == null || flown.flights++ % FLIGHTS_OF_A_RIGGING == 0) {
            Version version = flown.versions.get(random.nextInt(flown.versions.size()));
            now = w.insert(new Rigging(
                    Logbook.newId(),
                    flown.model.id(),
                    ++flown.riggings,
                    version.id(),
                    now == null ? null : now.id(),
                    at,
                    null,
                    null));
            flown.rigging = now;
        }
        return now;
    }
}
