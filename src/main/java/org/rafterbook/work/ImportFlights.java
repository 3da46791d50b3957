package org.rafterbook.work;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.exchange.FlightTable;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightDraft;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Writer;

/** Finds out which flights of an import are new and where in their sessions they belong. */
final class ImportFlights {

    /** A row is there already where model, day, venue and time agree, and the moment of launch or the rank. */
    private record Same(String model, @Nullable Double durationS) {}

    /** A flight of a session, there or new. */
    record Item(@Nullable FlightLine line, @Nullable ImportedFlight imported) {

        @Nullable
        Instant launchedAt() {
            return line != null ? line.flight().launchedAt() : Objects.requireNonNull(imported).launchedAt;
        }
    }

    private record Row(FlightTable table, FlightRow row) {}

    private record Day(LocalDate date, String venue) {}

    private final Writer w;
    private final ImportTally tally;
    private final ImportSessions sessions;
    private final Map<String, List<Item>> bySession = new LinkedHashMap<>();

    ImportFlights(Writer writer, ImportTally tally, ImportSessions sessions) {
        this.w = writer;
        this.tally = tally;
        this.sessions = sessions;
    }

    /**
     * Sorts all rows into their sessions; old flights behind a new one count on. Sessions of one day come in the order of
     * their first launches, else of their rows.
     */
    void place(List<FlightTable> tables) {
        Map<Day, List<Row>> days = new LinkedHashMap<>();
        for (FlightTable table : tables) {
            for (FlightRow row : table.rows()) {
                String venue = row.venue() == null ? "" : ImportBasics.key(row.venue());
                days.computeIfAbsent(new Day(row.date(), venue), d -> new ArrayList<>())
                        .add(new Row(table, row));
            }
        }
        days.entrySet().stream()
                .sorted(Map.Entry.<Day, List<Row>>comparingByKey(Comparator.comparing(Day::date))
                        .thenComparing(day -> firstLaunch(day.getValue())))
                .forEach(day -> place(day.getValue()));
    }

    private static LocalDateTime firstLaunch(List<Row> rows) {
        return rows.stream()
                .map(row -> row.row().launchedAt())
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder())
                .orElse(rows.get(0).row().date().atStartOfDay());
    }

    private void place(Iterable<Row> rows) {
        Row first = rows.iterator().next();
        Session known = sessions.find(first.row().date(), first.row().venue());
        List<FlightLine> there = known == null ? List.of() : w.flights().ofSession(known.id());
        Map<Same, List<FlightLine>> unmatched = new HashMap<>();
        for (FlightLine line : there) {
            unmatched.computeIfAbsent(same(line), s -> new ArrayList<>()).add(line);
        }
        List<Row> fresh = new ArrayList<>();
        for (Row row : rows) {
            if (!isThere(row.row(), known, unmatched)) {
                fresh.add(row);
            }
        }
        List<Item> items = new ArrayList<>();
        there.forEach(line -> items.add(new Item(line, null)));
        if (!fresh.isEmpty()) {
            Session session = sessions.at(first.row().date(), first.row().venue());
            int last = -1;
            for (Row row : fresh) {
                Instant at = ImportSessions.instant(session, row.row().launchedAt());
                last = place(items, last, at);
                items.add(
                        last, new Item(null, new ImportedFlight(row.table(), row.row(), session, Logbook.newId(), at)));
            }
            bySession.put(session.id(), number(items));
        } else if (known != null) {
            bySession.put(known.id(), items);
        }
    }

    private static Same same(FlightLine line) {
        String model = line.model() == null ? "" : ImportBasics.key(line.model().name());
        return new Same(model, tidy(line.flight().durationS()));
    }

    private static @Nullable Double tidy(@Nullable Double seconds) {
        return seconds == null ? null : Double.valueOf(Math.rint(seconds * 1000) / 1000);
    }

    /** Takes the flight that is the row's own off the list of those not yet met with. */
    private boolean isThere(FlightRow row, @Nullable Session session, Map<Same, List<FlightLine>> unmatched) {
        List<FlightLine> alike = unmatched.get(new Same(ImportBasics.key(row.model()), tidy(row.durationS())));
        if (alike == null || session == null) {
            return false;
        }
        Instant at = ImportSessions.instant(session, row.launchedAt());
        for (FlightLine line : alike) {
            Instant then = line.flight().launchedAt();
            boolean same = at == null || then != null && at.equals(then.truncatedTo(ChronoUnit.MILLIS));
            if (same) {
                alike.remove(line);
                tally.alreadyThere++;
                return true;
            }
        }
        return false;
    }

    /** Where a flight belongs: by its moment of launch, else after the row before it. */
    private static int place(List<Item> items, int before, @Nullable Instant at) {
        if (at == null) {
            return before < 0 ? items.size() : before + 1;
        }
        int place = items.size();
        while (place > 0) {
            Instant then = items.get(place - 1).launchedAt();
            if (then != null && !then.isAfter(at)) {
                break;
            }
            place--;
        }
        while (place < items.size() && items.get(place).launchedAt() == null) {
            place++;
        }
        return place;
    }

    private List<Item> number(List<Item> items) {
        List<Item> numbered = new ArrayList<>();
        int ordinal = 0;
        for (Item item : items) {
            FlightLine line = item.line();
            if (line == null) {
                ordinal++;
                Objects.requireNonNull(item.imported()).ordinal = ordinal;
                numbered.add(item);
                continue;
            }
            Flight flight = line.flight();
            ordinal = Math.max(ordinal + 1, flight.ordinal());
            Flight moved = flight.ordinal() == ordinal
                    ? flight
                    : w.update(FlightDraft.of(flight).ordinal(ordinal).done());
            numbered.add(new Item(
                    new FlightLine(
                            moved,
                            line.session(),
                            line.rigging(),
                            line.version(),
                            line.model(),
                            line.wind(),
                            line.motor(),
                            line.venue()),
                    null));
        }
        return numbered;
    }

    /** The sessions the import has flights of, each with all its flights in order, keyed by id. */
    Map<String, List<Item>> bySession() {
        return bySession;
    }

    /** All new flights, session by session. */
    List<ImportedFlight> fresh() {
        List<ImportedFlight> fresh = new ArrayList<>();
        bySession
                .values()
                .forEach(items -> items.forEach(item -> {
                    if (item.imported() != null) {
                        fresh.add(item.imported());
                    }
                }));
        return fresh;
    }
}
