package org.rafterbook.work;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.exchange.FlightTable;
import org.rafterbook.flight.Session;

/** A flight of an import on its way into the logbook. */
final class ImportedFlight {

    final FlightTable table;
    final FlightRow row;
    final Session session;
    final String id;
    final @Nullable Instant launchedAt;
    int ordinal;

    @Nullable
    String riggingId;

    @Nullable
    String windId;

    double fraction = 1;

    ImportedFlight(FlightTable table, FlightRow row, Session session, String id, @Nullable Instant launchedAt) {
        this.table = table;
        this.row = row;
        this.session = session;
        this.id = id;
        this.launchedAt = launchedAt;
    }

    /** When it flew, as well as it is known. */
    Instant about() {
        return launchedAt != null
                ? launchedAt
                : session.localDate().atStartOfDay(session.zone()).toInstant();
    }
}
