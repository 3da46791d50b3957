package org.rafterbook.work;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.Version;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.SessionLimit;
import org.rafterbook.flight.Venue;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Reader;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.units.MachineNumber;

/** Flights of a logbook as rows of the program's own table, in flying order. */
final class ExportFlights {

    private final Map<String, List<AirReading>> air = new HashMap<>();
    private final Map<String, Double> usable = new HashMap<>();
    private final Map<String, List<SettingDef>> defs = new HashMap<>();
    private final Map<String, Map<String, String>> texts = new HashMap<>();
    private final Map<String, Map<String, String>> lastOfModel = new HashMap<>();
    private final Set<String> begun = new HashSet<>();
    private final Set<String> settings = new LinkedHashSet<>();
    private final boolean windNumbers;

    ExportFlights(Reader reader, List<FlightLine> lines, boolean windNumbers) {
        this.windNumbers = windNumbers;
        List<String> sessions =
                lines.stream().map(l -> l.session().id()).distinct().toList();
        reader.flights()
                .airOf(sessions)
                .forEach(r -> air.computeIfAbsent(r.sessionId(), s -> new ArrayList<>())
                        .add(r));
        for (SessionLimit limit : reader.all(SessionLimit.class)) {
            if (limit.name().equals(ImportSessions.USABLE)) {
                usable.put(limit.sessionId(), limit.heightM());
            }
        }
        reader.all(Model.class).stream()
                .sorted(Comparator.comparing(Model::name))
                .forEach(m -> defs.put(m.id(), VersionBook.definitions(reader, m.id())));
        Map<String, SettingDef> byId = new HashMap<>();
        reader.all(Model.class).stream()
                .sorted(Comparator.comparing(Model::name))
                .flatMap(m -> defs.getOrDefault(m.id(), List.of()).stream())
                .forEach(d -> {
                    byId.put(d.id(), d);
                    settings.add(name(d));
                });
        for (SettingValue value : reader.all(SettingValue.class)) {
            SettingDef def = byId.get(value.settingId());
            if (def != null) {
                texts.computeIfAbsent(value.versionId(), v -> new HashMap<>()).put(name(def), text(def, value));
            }
        }
    }

    /** A setting's name in the heading of its column. */
    static String name(SettingDef def) {
        String path = def.path();
        return path == null ? def.label() : path;
    }

    private static String text(SettingDef def, SettingValue value) {
        Double number = value.number();
        return number == null ? String.valueOf(value.word()) : MachineNumber.text(number, ImportSettings.unitOf(def));
    }

    /** Names of all settings in the order of their columns. */
    List<String> settings() {
        return List.copyOf(settings);
    }

    FlightRow row(FlightLine line) {
        Flight f = line.flight();
        Session session = line.session();
        Venue venue = line.venue();
        Model model = line.model();
        AirReading reading = AirAt.of(air.getOrDefault(session.id(), List.of()), f.launchedAt());
        Version version = line.version();
        Rigging rigging = line.rigging();
        boolean begins = rigging != null && begun.add(rigging.id());
        Double ceiling = usable.get(session.id());
        String out = f.leftOutWhy();
        DurationSource source = f.durationSource() == DurationSource.TYPED ? null : f.durationSource();
        return new FlightRow(
                0,
                model == null ? "" : model.name(),
                session.localDate(),
                venue == null ? null : venue.name(),
                ceiling != null ? ceiling : venue == null ? null : venue.usableHeightM(),
                local(session, f.launchedAt()),
                local(session, f.landedAt()),
                f.durationS(),
                source,
                f.clockDoubtS(),
                f.ending(),
                f.cutShort(),
                reading == null
                        ? new FlightRow.Air(null, null, null)
                        : new FlightRow.Air(reading.temperatureK(), reading.humidity(), reading.pressurePa()),
                wind(line),
                f.turnsLeft(),
                f.peakLowM(),
                f.peakHighM(),
                version == null ? null : Integer.valueOf(version.build()),
                line.version() == null || model == null
                        ? null
                        : model.letter() + line.version().number(),
                rigging != null && begins ? rigging.reason() : null,
                f.partialFraction(),
                f.recovered(),
                f.stalls(),
                out == null
                        ? null
                        : new FlightRow.LeftOut(
                                out, f.leftOutBy(), local(session, f.leftOutAt()), f.leftOutBeforeTime()),
                f.notes(),
                settings(line),
                Map.of());
    }

    private FlightRow.WindCells wind(FlightLine line) {
        Wind wind = line.wind();
        Motor motor = line.motor();
        int launchNo = line.flight().launchNoOfWind();
        if (wind == null) {
            return new FlightRow.WindCells(null, null, launchNo, null, null, null, null, null, null, null);
        }
        return new FlightRow.WindCells(
                motor == null ? null : motor.name(),
                windNumbers && motor != null ? wind.ordinal() : null,
                launchNo,
                local(line.session(), wind.woundAt()),
                wind.turnsWound(),
                wind.turnsBackedOff(),
                wind.maxTorqueNm(),
                wind.launchTorqueNm(),
                wind.winderRatio(),
                wind.notes());
    }

    /** Every setting of the version; one that the flight before had and this one has not is said to be missing. */
    private Map<String, String> settings(FlightLine line) {
        Version version = line.version();
        Model model = line.model();
        if (version == null || model == null) {
            return Map.of();
        }
        Map<String, String> now = texts.getOrDefault(version.id(), Map.of());
        Map<String, String> before = lastOfModel.put(model.id(), now);
        if (before == null || now.keySet().containsAll(before.keySet())) {
            return now;
        }
        Map<String, String> said = new HashMap<>(now);
        before.keySet().forEach(name -> said.putIfAbsent(name, ImportSettings.NOT_RECORDED));
        return said;
    }

    static @Nullable LocalDateTime local(Session session, @Nullable Instant at) {
        return at == null ? null : LocalDateTime.ofInstant(at, session.zone());
    }
}
