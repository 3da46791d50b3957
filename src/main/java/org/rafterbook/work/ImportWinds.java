package org.rafterbook.work;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.exchange.SideRows.ReadingRow;
import org.rafterbook.exchange.SideRows.WindRow;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Writer;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindEnd;
import org.rafterbook.power.WindReading;

/** The winds of an import: one a flight, shared by its relaunches, counted for each motor in the order they were wound. */
final class ImportWinds {

    private record Last(@Nullable Wind wind, int launchNo) {}

    private final Writer w;
    private final ImportTally tally;
    private final ImportBasics basics;
    private final ImportSessions sessions;
    private final MotorWinds counted;

    ImportWinds(Writer writer, ImportTally tally, ImportBasics basics, ImportSessions sessions) {
        this.w = writer;
        this.tally = tally;
        this.basics = basics;
        this.sessions = sessions;
        this.counted = new MotorWinds(writer);
    }

    /** Gives each new flight its wind. */
    void take(ImportPlan plan, ImportFlights flights) {
        for (ImportPlan.Placed<WindRow> placed : plan.winds) {
            String motor = placed.row().motor();
            Integer number = placed.row().windNo();
            if (motor != null && number != null) {
                counted.reserve(motor, number);
            }
        }
        flights.bySession().values().forEach(this::session);
        plan.winds.forEach(p -> unflown(p.row()));
        counted.putInOrder();
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
        tally.add("winds");
        return counted.insert(
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

    private void unflown(WindRow row) {
        Motor motor = row.motor() == null ? null : basics.motor(row.motor(), 1);
        Session session = row.date() == null ? null : sessions.at(row.date(), row.venue());
        Instant woundAt = session == null ? null : ImportSessions.instant(session, row.woundAt());
        List<Wind> known = motor == null ? w.where(Wind.class, "motorId", null) : counted.of(motor);
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
        tally.add("winds");
        counted.insert(
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

    private void reading(ImportPlan.Placed<ReadingRow> placed) {
        ReadingRow row = placed.row();
        Motor motor = basics.motorNamed(row.motor());
        Wind wind = motor == null
                ? null
                : counted.of(motor).stream()
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
