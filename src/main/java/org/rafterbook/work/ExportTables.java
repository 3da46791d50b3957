package org.rafterbook.work;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.SettingDef;
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
import org.rafterbook.exchange.SideTable;
import org.rafterbook.exchange.SideTables;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.SessionLimit;
import org.rafterbook.flight.Venue;
import org.rafterbook.flight.VenueMark;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Reader;
import org.rafterbook.power.Motor;
import org.rafterbook.power.RubberBatch;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindReading;
import org.rafterbook.units.Unit;

/** The tables beside the flights; those that a flyer's import knows are always there, the others where they hold rows. */
final class ExportTables {

    private static final Set<SideTable<?>> ALWAYS =
            Set.of(SideTables.VENUES, SideTables.MARKS, SideTables.BATCHES, SideTables.MOTORS, SideTables.EVENTS);

    private final Reader reader;
    private final List<FlightLine> lines;
    private final Map<String, Venue> venues = new HashMap<>();
    private final Map<String, VenueMark> marks = new HashMap<>();
    private final Map<String, Motor> motors = new HashMap<>();
    private final Map<String, Session> sessions = new LinkedHashMap<>();
    private final Map<String, Wind> winds = new LinkedHashMap<>();
    private final Set<String> flown = new HashSet<>();
    private final Map<SideTable<?>, String> written = new LinkedHashMap<>();

    ExportTables(Reader reader, List<FlightLine> lines) {
        this.reader = reader;
        this.lines = lines;
        reader.all(Venue.class).forEach(v -> venues.put(v.id(), v));
        reader.all(VenueMark.class).forEach(m -> marks.put(m.id(), m));
        reader.all(Motor.class).forEach(m -> motors.put(m.id(), m));
        reader.all(Session.class).stream()
                .sorted(Comparator.comparing(Session::localDate).thenComparing(Session::id))
                .forEach(s -> sessions.put(s.id(), s));
        reader.all(Wind.class).forEach(x -> winds.put(x.id(), x));
        lines.forEach(l -> {
            if (l.wind() != null) {
                flown.add(l.wind().id());
            }
        });
    }

    /** True where a wind must be told by its number: one was not flown, or was read as it went. */
    boolean numbersWinds() {
        return winds.values().stream().anyMatch(x -> !flown.contains(x.id()))
                || !reader.all(WindReading.class).isEmpty();
    }

    Map<SideTable<?>, String> all() {
        venues();
        rubber();
        models();
        days();
        winds();
        events();
        return written;
    }

    private <R> void put(SideTable<R> form, List<R> rows) {
        if (!rows.isEmpty() || ALWAYS.contains(form)) {
            written.put(form, form.write(rows));
        }
    }

    private static <T> @Nullable String name(Map<String, T> all, @Nullable String id, Function<T, String> name) {
        T found = id == null ? null : all.get(id);
        return found == null ? null : name.apply(found);
    }

    private void venues() {
        put(
                SideTables.VENUES,
                venues.values().stream()
                        .sorted(Comparator.comparing(Venue::name))
                        .map(v -> new VenueRow(
                                v.name(), v.siteHeightM(), v.officialHeightM(), v.usableHeightM(), v.notes()))
                        .toList());
        List<MarkRow> rows = new ArrayList<>();
        for (VenueMark mark : marks.values()) {
            String venue = name(venues, mark.venueId(), Venue::name);
            if (venue != null) {
                rows.add(new MarkRow(venue, mark.name(), mark.heightM(), mark.limit()));
            }
        }
        rows.sort(Comparator.comparing(MarkRow::venue).thenComparingDouble(MarkRow::heightM));
        put(SideTables.MARKS, rows);
    }

    private void rubber() {
        Map<String, RubberBatch> batches = new LinkedHashMap<>();
        reader.all(RubberBatch.class).forEach(b -> batches.put(b.id(), b));
        put(
                SideTables.BATCHES,
                batches.values().stream()
                        .map(b -> new BatchRow(b.name(), b.openedOn(), b.widthM(), b.turnsConstant(), b.notes()))
                        .toList());
        put(
                SideTables.MOTORS,
                reader.all(Motor.class).stream()
                        .map(m -> new MotorRow(
                                m.name(),
                                name(batches, m.batchId(), RubberBatch::name),
                                m.loopLengthM(),
                                m.massKg(),
                                name(motors, m.cutFrom(), Motor::name),
                                m.fraction(),
                                m.madeOn(),
                                m.fate(),
                                m.notes()))
                        .toList());
    }

    private void models() {
        List<Model> models = new ArrayList<>(reader.all(Model.class));
        models.sort(Comparator.comparing(Model::name));
        put(
                SideTables.MODELS,
                models.stream()
                        .map(m ->
                                new ModelRow(m.name(), m.letter(), m.build(), m.wishedLow(), m.wishedHigh(), m.notes()))
                        .toList());
        List<SettingRow> rows = new ArrayList<>();
        for (Model model : models) {
            for (SettingDef def : VersionBook.definitions(reader, model.id())) {
                rows.add(setting(model, def));
            }
        }
        put(SideTables.SETTINGS, rows);
    }

    private static SettingRow setting(Model model, SettingDef def) {
        Unit unit = ImportSettings.unitOf(def);
        boolean word = def.quantity().equals(ImportSettings.TEXT);
        return new SettingRow(
                0,
                model.name(),
                ExportFlights.name(def),
                def.label(),
                word ? ImportSettings.WORD : def.unit().isEmpty() ? null : def.unit(),
                width(unit, def.step()),
                width(unit, def.tolerance()),
                def.low() == null ? null : Double.valueOf(unit.fromSi(def.low())),
                def.high() == null ? null : Double.valueOf(unit.fromSi(def.high())),
                def.keyLetter());
    }

    /** A difference in the unit, also where its zero is not the SI one. */
    private static @Nullable Double width(Unit unit, @Nullable Double si) {
        return si == null ? null : Double.valueOf(unit.fromSi(unit.toSi(0.0) + si));
    }

    private void days() {
        List<SessionRow> rows = new ArrayList<>();
        List<LimitRow> limits = new ArrayList<>();
        for (Session s : sessions.values()) {
            rows.add(new SessionRow(
                    0,
                    s.localDate(),
                    name(venues, s.venueId(), Venue::name),
                    s.zone().getId(),
                    s.goal(),
                    s.notes()));
        }
        put(SideTables.SESSIONS, rows);
        List<AirRow> air = new ArrayList<>();
        for (AirReading r : reader.flights().airOf(sessions.keySet())) {
            Session s = sessions.get(r.sessionId());
            if (s != null) {
                air.add(new AirRow(
                        s.localDate(),
                        name(venues, s.venueId(), Venue::name),
                        ExportFlights.local(s, r.at()),
                        r.temperatureK(),
                        r.humidity(),
                        r.pressurePa(),
                        r.pressureSource()));
            }
        }
        air.sort(Comparator.comparing(AirRow::date));
        put(SideTables.AIR, air);
        for (SessionLimit limit : reader.all(SessionLimit.class)) {
            Session s = sessions.get(limit.sessionId());
            if (s != null) {
                limits.add(new LimitRow(
                        s.localDate(),
                        name(venues, s.venueId(), Venue::name),
                        limit.name(),
                        limit.heightM(),
                        name(marks, limit.markId(), VenueMark::name)));
            }
        }
        put(SideTables.LIMITS, limits);
    }

    private void winds() {
        List<WindRow> unflown = new ArrayList<>();
        for (Wind x : winds.values()) {
            Session s = x.sessionId() == null ? null : sessions.get(x.sessionId());
            if (!flown.contains(x.id()) && x.turnsWound() != null) {
                unflown.add(new WindRow(
                        name(motors, x.motorId(), Motor::name),
                        x.motorId() == null ? null : x.ordinal(),
                        s == null ? null : s.localDate(),
                        s == null ? null : name(venues, s.venueId(), Venue::name),
                        s == null ? null : ExportFlights.local(s, x.woundAt()),
                        x.turnsWound(),
                        x.turnsBackedOff(),
                        x.maxTorqueNm(),
                        x.launchTorqueNm(),
                        x.winderRatio(),
                        x.end(),
                        x.notes()));
            }
        }
        put(SideTables.WINDS, unflown);
        List<ReadingRow> readings = new ArrayList<>();
        for (WindReading r : reader.all(WindReading.class)) {
            Wind x = winds.get(r.windId());
            String motor = x == null ? null : name(motors, x.motorId(), Motor::name);
            if (x != null && motor != null) {
                Session s = x.sessionId() == null ? null : sessions.get(x.sessionId());
                LocalDateTime at = s == null ? null : ExportFlights.local(s, r.at());
                readings.add(
                        new ReadingRow(0, motor, x.ordinal(), r.ordinal(), r.phase(), r.turns(), r.torqueNm(), at));
            }
        }
        put(SideTables.READINGS, readings);
    }

    private void events() {
        Map<String, FlightLine> byId = new LinkedHashMap<>();
        Map<String, Integer> numbers = new HashMap<>();
        Map<String, Integer> count = new HashMap<>();
        for (FlightLine line : lines) {
            byId.put(line.flight().id(), line);
            String model = line.model() == null ? "" : line.model().id();
            numbers.put(line.flight().id(), count.merge(line.session().id() + model, 1, Integer::sum));
        }
        Map<String, List<FlightEvent>> events = new HashMap<>();
        reader.all(FlightEvent.class)
                .forEach(e -> events.computeIfAbsent(e.flightId(), f -> new ArrayList<>())
                        .add(e));
        List<EventRow> rows = new ArrayList<>();
        byId.forEach((id, line) -> events.getOrDefault(id, List.of())
                .forEach(e -> rows.add(new EventRow(
                        0,
                        line.model() == null ? null : line.model().name(),
                        line.session().localDate(),
                        line.venue() == null ? null : line.venue().name(),
                        numbers.get(id),
                        ExportFlights.local(line.session(), line.flight().launchedAt()),
                        e.kind(),
                        e.atS(),
                        e.value(),
                        name(marks, e.markId(), VenueMark::name),
                        e.notes()))));
        put(SideTables.EVENTS, rows);
    }
}
