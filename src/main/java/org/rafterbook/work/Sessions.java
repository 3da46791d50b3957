package org.rafterbook.work;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;

/** Today's visit: found, or begun together with the first thing that is entered in it. */
final class Sessions {

    /** An evening that passes midnight goes on as long as the last flight is no longer ago than this. */
    private static final Duration SAME_VISIT = Duration.ofHours(6);

    private Sessions() {}

    static @Nullable Session today(Reader reader, Clock clock) {
        LocalDate today = LocalDate.now(clock);
        Session begun = newest(reader, today);
        if (begun != null) {
            return begun;
        }
        Session yesterday = newest(reader, today.minusDays(1));
        return yesterday != null && stillOn(reader, yesterday, clock.instant().minus(SAME_VISIT)) ? yesterday : null;
    }

    static Session todayOrBegin(Writer writer, Clock clock) {
        Session session = today(writer, clock);
        return session != null
                ? session
                : writer.insert(new Session(Logbook.newId(), null, LocalDate.now(clock), clock.getZone(), null, null));
    }

    private static @Nullable Session newest(Reader reader, LocalDate date) {
        List<Session> ofDate = reader.where(Session.class, "localDate", date);
        return ofDate.isEmpty() ? null : ofDate.get(ofDate.size() - 1);
    }

    private static boolean stillOn(Reader reader, Session session, Instant since) {
        for (FlightLine line : reader.flights().ofSession(session.id())) {
            Instant launched = line.flight().launchedAt();
            if (launched != null && launched.isAfter(since)) {
                return true;
            }
        }
        return false;
    }
}
