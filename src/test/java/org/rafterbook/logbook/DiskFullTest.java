package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.rafterbook.logbook.Samples.list;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.flight.Venue;
import org.rafterbook.units.UserError;

class DiskFullTest {

    private static final String FULL =
            "The disk is full: nothing of this entry was kept. Make room and enter it again.";

    @TempDir
    Path folder;

    @Test
    void anEntryOnAFullDiskLeavesNothingAndLaterOnesWork() {
        Path file = folder.resolve("season.rafterbook");
        Logbook.open(file, Mode.CREATE).close();
        Sql sql = Connections.writer(file);
        try (WriterThread writer = new WriterThread(sql)) {
            // SQLite reports a file at its page limit just as a full disk.
            long pages = writer.entry(s -> s.number("PRAGMA page_count"));
            writer.entry(s -> s.number("PRAGMA max_page_count = " + pages));
            assertThatThrownBy(() -> writer.entry(DiskFullTest::big))
                    .isInstanceOfSatisfying(
                            UserError.class, e -> assertThat(e.kind()).isEqualTo(UserError.Kind.COULD_NOT))
                    .hasMessage(FULL);
            assertThatThrownBy(() -> writer.entry(DiskFullTest::carriesOn)).hasMessage(FULL);

            writer.entry(s -> s.number("PRAGMA max_page_count = 1000000"));
            writer.entry(DiskFullTest::big);
        }
        try (Logbook logbook = Logbook.open(file, Mode.EXISTING)) {
            assertThat(list(logbook, r -> r.all(Venue.class))).hasSize(1);
            assertThat(logbook.check()).isEmpty();
        }
    }

    private static Venue big(Sql sql) {
        Venue venue = Samples.venue("Hall");
        return new RowWriter(sql, new ChangeLog(sql, "Venue", null))
                .insert(new Venue(
                        venue.id(), venue.name(), null, null, null, "a long note ".repeat(100_000), Map.of()));
    }

    /** SQLite has ended the transaction by itself: what follows must not be kept by itself either. */
    private static Venue carriesOn(Sql sql) {
        assertThatThrownBy(() -> big(sql)).isInstanceOf(UserError.class);
        return new RowWriter(sql, new ChangeLog(sql, "Venue", null)).insert(Samples.venue("small"));
    }
}
