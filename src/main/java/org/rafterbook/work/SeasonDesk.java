package org.rafterbook.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindEnd;
import org.rafterbook.review.Outcome;
import org.rafterbook.rules.ClassSheet;

/** The season's memory, read-only: every model's flights, versions and sessions. */
public final class SeasonDesk {

    private static final int STEP = 50;

    private final Logbook logbook;
    private final Margins margins;
    private final Riggings riggings;

    SeasonDesk(Logbook logbook, Margins margins, Riggings riggings) {
        this.logbook = logbook;
        this.margins = margins;
        this.riggings = riggings;
    }

    /** All that is needed to tell flights, as read at one moment. */
    private record Read(
            List<FlightLine> lines,
            FlightOutcomes outcomes,
            Map<String, Season.Visit> visits,
            Map<String, Season.Flyer> models) {}

    /** A margin depends on these three alone. */
    private record MarginKey(String versionId, @Nullable String motorId, double fraction) {}

    /**
     * One of the seasons there are.
     *
     * @param years the years in which a season begins, the newest first
     * @param year the one of this season, null where nothing was flown
     */
    public record Seasons(List<Integer> years, @Nullable Integer year, Season season) {}

    /** The season that begins in July of a year; the newest where there is none of that year, or null is asked for. */
    public Seasons load(@Nullable Integer wanted, Progress progress) {
        Map<Integer, List<Session>> sessions = new TreeMap<>(Comparator.reverseOrder());
        Set<String> flown = new HashSet<>();
        logbook.read(r -> r.all(Flight.class)).forEach(f -> flown.add(f.sessionId()));
        logbook.read(r -> r.all(Session.class)).stream()
                .filter(s -> flown.contains(s.id()))
                .sorted(Comparator.comparing(Session::localDate).thenComparing(Session::id))
                .forEach(s -> sessions.computeIfAbsent(Season.year(s.localDate()), y -> new ArrayList<>())
                        .add(s));
        List<Integer> years = List.copyOf(sessions.keySet());
        Integer year = wanted != null && sessions.containsKey(wanted) ? wanted : years.isEmpty() ? null : years.get(0);
        return new Seasons(
                years, year, season(year == null ? List.of() : Objects.requireNonNull(sessions.get(year)), progress));
    }

    private Season season(List<Session> sessions, Progress progress) {
        Read read = logbook.read(r -> read(r, sessions));
        Map<String, ReviewRigging> turns = new HashMap<>();
        read.models()
                .keySet()
                .forEach(model -> ReviewReading.history(riggings.strip(model))
                        .forEach(rigging -> turns.put(rigging.id(), rigging)));
        Map<MarginKey, MarginAnswer> known = new HashMap<>();
        Map<String, Integer> standing = new HashMap<>();
        List<Season.Flown> flown = new ArrayList<>();
        for (FlightLine line : read.lines()) {
            if (flown.size() % STEP == 0) {
                progress.step(flown.size(), read.lines().size(), "flights");
            }
            flown.add(flown(line, read, turn(line, turns, standing), margin(line, known)));
        }
        return new Season(flown, read.visits(), read.models());
    }

    private Read read(Reader reader, List<Session> of) {
        List<FlightLine> lines = new ArrayList<>();
        of.forEach(session -> lines.addAll(reader.flights().ofSession(session.id())));
        Map<String, Session> sessions = new HashMap<>();
        Map<String, @Nullable Venue> venues = new HashMap<>();
        Map<String, FlightLine> newest = new HashMap<>();
        for (FlightLine line : lines) {
            sessions.put(line.session().id(), line.session());
            venues.put(line.session().id(), line.venue());
            if (line.model() != null) {
                newest.put(line.model().id(), line);
            }
        }
        Map<String, Season.Flyer> models = new HashMap<>();
        newest.forEach(
                (id, line) -> models.put(id, flyer(reader, Objects.requireNonNull(line.model()), line.version())));
        return new Read(lines, FlightOutcomes.of(reader, lines), visits(reader, sessions, venues), models);
    }

    private static Map<String, Season.Visit> visits(
            Reader reader, Map<String, Session> sessions, Map<String, @Nullable Venue> venues) {
        Map<String, Double> warmth = new HashMap<>();
        for (AirReading air : reader.flights().airOf(sessions.keySet())) {
            if (air.temperatureK() != null) {
                warmth.putIfAbsent(air.sessionId(), air.temperatureK());
            }
        }
        Map<String, Integer> broken = new HashMap<>();
        for (Wind wind : reader.whereIn(Wind.class, "sessionId", sessions.keySet())) {
            if (wind.end() == WindEnd.BROKE && wind.sessionId() != null) {
                broken.merge(wind.sessionId(), 1, Integer::sum);
            }
        }
        Map<String, Season.Visit> visits = new HashMap<>();
        sessions.forEach((id, session) -> {
            Venue venue = venues.get(id);
            visits.put(
                    id,
                    new Season.Visit(
                            session.localDate(),
                            venue == null ? "" : venue.name(),
                            venue == null
                                    ? null
                                    : venue.officialHeightM() == null ? venue.usableHeightM() : venue.officialHeightM(),
                            warmth.get(id),
                            session.goal(),
                            broken.getOrDefault(id, 0)));
        });
        return visits;
    }

    private static Season.Flyer flyer(Reader reader, Model model, @Nullable Version version) {
        Airframe geometry = version == null ? null : Geometry.of(version);
        List<Season.Wing> wings = geometry == null
                ? List.of()
                : geometry.surfaces().stream()
                        .filter(s -> s.role() == Role.WING)
                        .sorted(Comparator.comparingDouble(Surface::riseM).reversed())
                        .map(SeasonDesk::wing)
                        .toList();
        ClassSheet sheet = model.classSheetId() == null ? null : reader.find(ClassSheet.class, model.classSheetId());
        return new Season.Flyer(model.name(), wings, sheet == null ? null : sheet.name());
    }

    private static Season.Wing wing(Surface surface) {
        double right = surface.ribs().get(surface.ribs().size() - 1).outM();
        List<Rib> left = surface.leftRibs();
        double chord = surface.ribs().stream().mapToDouble(Rib::chordM).max().orElse(0);
        return new Season.Wing(right + left.get(left.size() - 1).outM(), chord);
    }

    /** How the model was changed before this flight, null where it flies as its flight before. */
    private static Season.@Nullable Turn turn(
            FlightLine line, Map<String, ReviewRigging> turns, Map<String, Integer> standing) {
        Model model = line.model();
        Version version = line.version();
        if (model == null || version == null) {
            return null;
        }
        Integer before = standing.put(model.id(), version.number());
        if (before != null && before == version.number()) {
            return null;
        }
        ReviewRigging rigging =
                line.rigging() == null ? null : turns.get(line.rigging().id());
        return rigging == null
                ? new Season.Turn(List.of(), false, false)
                : new Season.Turn(before == null ? List.of() : rigging.changes(), rigging.back(), rigging.trial());
    }

    private @Nullable MarginAnswer margin(FlightLine line, Map<MarginKey, MarginAnswer> known) {
        Version version = line.version();
        if (version == null) {
            return null;
        }
        Motor motor = line.motor();
        MarginKey key = new MarginKey(
                version.id(), motor == null ? null : motor.id(), line.flight().partialFraction());
        if (!known.containsKey(key)) {
            MarginAnswer answer = margins.ofFlight(line);
            known.put(key, answer == null ? MarginAnswer.unknown("") : answer);
        }
        return known.get(key);
    }

    private static Season.Flown flown(
            FlightLine line, Read read, Season.@Nullable Turn turn, @Nullable MarginAnswer margin) {
        Flight flight = line.flight();
        Model model = line.model();
        Version version = line.version();
        Venue venue = line.venue();
        Outcome outcome = read.outcomes().of(line);
        return new Season.Flown(
                flight.id(),
                line.session().id(),
                line.session().localDate(),
                venue == null ? "" : venue.name(),
                model == null ? null : model.id(),
                model == null ? "no model" : model.name(),
                model == null || version == null ? "" : model.letter() + version.number(),
                version == null ? 0 : version.number(),
                turn,
                flight.durationS(),
                outcome.kind() == Outcome.Kind.AT_LEAST,
                outcome.kind() != Outcome.Kind.LEFT_OUT,
                margin == null ? null : margin.margin(),
                margin == null ? null : margin.band(),
                line.wind() == null ? null : line.wind().launchTorqueNm(),
                line.motor() == null ? null : line.motor().id(),
                flight.partialFraction(),
                flight.notes());
    }
}
