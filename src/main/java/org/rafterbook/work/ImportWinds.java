package org.rafterbook.work;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.exchange.SideRows.ReadingRow;
import org.rafterbook.exchange.SideRows.WindRow;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Writer;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindDraft;
import org.rafterbook.power.WindEnd;
import org.rafterbook.power.WindReading;

/** The winds of an import: one a flight, shared by its relaunches, counted for each motor in the order they were wound. */
final class ImportWinds {

    private record Last(@Nullable Wind wind, int launchNo) {}

    private final Writer w;
    private final ImportTally tally;
    private final ImportBasics basics;
    private final ImportSessions sessions;
    private final Map<String, List<Wind>> ofMotor = new HashMap<>();
    private final Map<String, Set<Integer>> reserved = new HashMap<>();
    private final Set<String> outOfOrder = new TreeSet<>();
    private final Map<String, Instant> when = new HashMap<>();

    ImportWinds(Writer writer, ImportTally tally, ImportBasics basics, ImportSessions sessions) {
        this.w = writer;
        this.tally = tally;
        this.basics = basics;
        this.sessions = sessions;
    }

    /** Gives each new flight its wind. */
    void take(ImportPlan plan, ImportFlights flights) {
        for (ImportPlan.Placed<WindRow> placed : plan.winds) {
            String motor = placed.row().motor();
            Integer number = placed.row().windNo();
            if (motor != null && number != null) {
                reserved.computeIfAbsent(ImportBasics.key(motor), m -> new HashSet<>())
                        .add(number);
            }
        }
        flights.bySession().values().forEach(this::session);
        plan.winds.forEach(p -> unflown(p.row()));
        outOfOrder.forEach(this::countAnew);
        plan.readings.forEach(this::reading);
    }

    private void session(List<ImportFlights.Item> items) {
        Map<String, Last> last = new HashMap<>();
        for (ImportFlights.Item item : items) {
            ImportedFlight f = item.imported();
            FlightLine line = item.line();
            if (f != null) {
                FlightRow.WindCells cells = f.row.wind();
                String motor = cells.motor() == null ? "|" + f.row.model() : ImportBasics.key(cells.motor());
                Wind wind = relaunch(cells, last.get(motor));
                if (wind == null && !cells.isEmpty()) {
                    wind = insert(f, cells);
                }
                f.windId = wind == null ? null : wind.id();
                f.fraction = fraction(f);
                last.put(motor, new Last(wind, cells.launchNo()));
            } else if (line != null) {
                String model = line.model() == null ? "" : line.model().name();
                String motor = line.motor() == null
                        ? "|" + model
                        : ImportBasics.key(line.motor().name());
                last.put(motor, new Last(line.wind(), line.flight().launchNoOfWind()));
            }
        }
    }

    private double fraction(ImportedFlight f) {
        Double typed = f.row.partialFraction();
        String motor = f.row.wind().motor();
        Motor known = motor == null ? null : basics.motorNamed(motor);
        return typed != null ? typed : known == null ? 1 : known.fraction();
    }

    /** The wind of the launch before where this one is a relaunch on it. */
    private static @Nullable Wind relaunch(FlightRow.WindCells cells, @Nullable Last last) {
        Wind wind = last == null ? null : last.wind();
        if (last == null || wind == null || cells.launchNo() != last.launchNo() + 1) {
            return null;
        }
        boolean same = (cells.turnsWound() == null || cells.turnsWound().equals(wind.turnsWound()))
                && (cells.turnsBackedOff() == null || cells.turnsBackedOff().equals(wind.turnsBackedOff()));
        return same ? wind : null;
    }

    private Wind insert(ImportedFlight f, FlightRow.WindCells cells) {
        Double part = f.row.partialFraction();
        Motor motor = cells.motor() == null ? null : basics.motor(cells.motor(), part == null ? 1 : part);
        Map<String, String> asTyped = new HashMap<>();
        ImportRun.typed(f.row, asTyped, "turns_wound", "turnsWound");
        ImportRun.typed(f.row, asTyped, "turns_backed_off", "turnsBackedOff");
        ImportRun.typed(f.row, asTyped, "launch_torque_nmm", "launchTorqueNm");
        ImportRun.typed(f.row, asTyped, "max_torque_nmm", "maxTorqueNm");
        return insert(
                motor,
                cells.windNo(),
                f.about(),
                new Wind(
                        Logbook.newId(),
                        motor == null ? null : motor.id(),
                        f.session.id(),
                        1,
                        ImportSessions.instant(f.session, cells.woundAt()),
                        cells.turnsWound(),
                        cells.turnsBackedOff(),
                        cells.maxTorqueNm(),
                        cells.launchTorqueNm(),
                        cells.winderRatio(),
                        WindEnd.FLOWN,
                        cells.notes(),
                        asTyped));
    }

    private Wind insert(@Nullable Motor motor, @Nullable Integer number, Instant at, Wind wind) {
        tally.add("winds");
        if (motor == null) {
            return w.insert(wind);
        }
        List<Wind> winds = winds(motor);
        Set<Integer> taken = new HashSet<>();
        winds.forEach(x -> taken.add(x.ordinal()));
        int ordinal;
        if (number != null && !taken.contains(number)) {
            ordinal = number;
        } else {
            ordinal = winds.isEmpty() ? 1 : winds.get(winds.size() - 1).ordinal() + 1;
            Set<Integer> kept =
                    number == null ? reserved.getOrDefault(ImportBasics.key(motor.name()), Set.of()) : Set.of();
            while (kept.contains(ordinal) || taken.contains(ordinal)) {
                ordinal++;
            }
            if (!winds.isEmpty() && at.isBefore(when(winds.get(winds.size() - 1)))) {
                outOfOrder.add(motor.id());
            }
        }
        Wind made = w.insert(WindDraft.of(wind).ordinal(ordinal).done());
        when.put(made.id(), at);
        winds.add(made);
        winds.sort(Comparator.comparingInt(Wind::ordinal));
        return made;
    }

    private List<Wind> winds(Motor motor) {
        return ofMotor.computeIfAbsent(
                motor.id(), id -> new ArrayList<>(w.flights().windsOfMotor(id)));
    }

    /** When a wind was wound: as written down, else when it was first flown, else its session's day. */
    private Instant when(Wind wind) {
        return when.computeIfAbsent(wind.id(), id -> {
            if (wind.woundAt() != null) {
                return wind.woundAt();
            }
            for (Flight flight : w.where(Flight.class, "windId", id)) {
                if (flight.launchedAt() != null) {
                    return flight.launchedAt();
                }
            }
            String sessionId = wind.sessionId();
            Session session = sessionId == null ? null : w.find(Session.class, sessionId);
            return session == null
                    ? Instant.EPOCH
                    : session.localDate().atStartOfDay(session.zone()).toInstant();
        });
    }

    private void unflown(WindRow row) {
        Motor motor = row.motor() == null ? null : basics.motor(row.motor(), 1);
        Session session = row.date() == null ? null : sessions.at(row.date(), row.venue());
        Instant woundAt = session == null ? null : ImportSessions.instant(session, row.woundAt());
        List<Wind> known = motor == null ? w.where(Wind.class, "motorId", null) : winds(motor);
        boolean there = known.stream()
                .anyMatch(x -> Objects.equals(x.turnsWound(), row.turnsWound())
                        && Objects.equals(x.woundAt(), woundAt)
                        && x.end() == row.end()
                        && (row.windNo() == null || x.ordinal() == row.windNo()));
        if (there) {
            return;
        }
        Instant at = woundAt != null
                ? woundAt
                : session == null
                        ? Instant.EPOCH
                        : session.localDate().atStartOfDay(session.zone()).toInstant();
        insert(
                motor,
                row.windNo(),
                at,
                new Wind(
                        Logbook.newId(),
                        motor == null ? null : motor.id(),
                        session == null ? null : session.id(),
                        1,
                        woundAt,
                        row.turnsWound(),
                        row.turnsBackedOff(),
                        row.maxTorqueNm(),
                        row.launchTorqueNm(),
                        row.winderRatio(),
                        row.end(),
                        row.notes(),
                        Map.of()));
    }

    /** Counts a motor's winds in the order they were wound: an import may bring older ones than those that are there. */
    private void countAnew(String motorId) {
        List<Wind> winds = new ArrayList<>(Objects.requireNonNull(ofMotor.get(motorId)));
        winds.sort(Comparator.comparing(this::when).thenComparingInt(Wind::ordinal));
        List<Wind> counted = new ArrayList<>();
        for (Wind wind : winds) {
            int ordinal = counted.size() + 1;
            counted.add(
                    wind.ordinal() == ordinal
                            ? wind
                            : w.update(WindDraft.of(wind).ordinal(ordinal).done()));
        }
        ofMotor.put(motorId, counted);
    }

    private void reading(ImportPlan.Placed<ReadingRow> placed) {
        ReadingRow row = placed.row();
        Motor motor = basics.motorNamed(row.motor());
        Wind wind = motor == null
                ? null
                : winds(motor).stream()
                        .filter(x -> x.ordinal() == row.windNo())
                        .findFirst()
                        .orElse(null);
        if (wind == null) {
            tally.problem(
                    placed.file(),
                    row.line(),
                    "wind_no",
                    "there is no wind " + row.windNo() + " of " + row.motor() + ".");
            return;
        }
        boolean there =
                w.where(WindReading.class, "windId", wind.id()).stream().anyMatch(r -> r.ordinal() == row.readingNo());
        if (!there) {
            String sessionId = wind.sessionId();
            Session session = sessionId == null ? null : w.get(Session.class, sessionId);
            w.insert(new WindReading(
                    Logbook.newId(),
                    wind.id(),
                    row.readingNo(),
                    row.phase(),
                    row.turns(),
                    row.torqueNm(),
                    session == null ? null : ImportSessions.instant(session, row.at()),
                    Map.of()));
            tally.add("wind readings");
        }
    }
}
