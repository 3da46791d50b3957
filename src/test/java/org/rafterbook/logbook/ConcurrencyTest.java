package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rafterbook.logbook.Samples.list;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;

class ConcurrencyTest {

    private static final int THREADS = 4;
    private static final int ENTRIES = 25;

    @TempDir
    Path folder;

    @Test
    void manyThreadsEnterAndReadAtOnce() throws Exception {
        ExecutorService executor = Executors.newFixedThreadPool(2 * THREADS);
        AtomicBoolean done = new AtomicBoolean();
        try (Logbook logbook = Logbook.open(folder.resolve("season.rafterbook"), Mode.CREATE)) {
            List<Future<?>> writers = new ArrayList<>();
            List<Future<?>> readers = new ArrayList<>();
            for (int i = 0; i < THREADS; i++) {
                writers.add(executor.submit(() -> enterPairs(logbook)));
                readers.add(executor.submit(() -> {
                    while (!done.get()) {
                        onlyWholeEntries(logbook);
                    }
                }));
            }
            for (Future<?> writer : writers) {
                writer.get();
            }
            done.set(true);
            for (Future<?> reader : readers) {
                reader.get();
            }
            assertThat(list(logbook, r -> r.all(Flight.class))).hasSize(2 * THREADS * ENTRIES);
            assertThat(logbook.check()).isEmpty();
        } finally {
            done.set(true);
            executor.shutdownNow();
        }
    }

    @Test
    void anInterruptedCallerStillLearnsThatItsEntryWasKept() throws Exception {
        try (Logbook logbook = Logbook.open(folder.resolve("season.rafterbook"), Mode.CREATE)) {
            Thread.currentThread().interrupt();
            Session session = logbook.enter("Session", w -> w.insert(Samples.session(null, Samples.DAY)));
            assertThat(Thread.interrupted()).isTrue();
            assertThat(list(logbook, r -> r.all(Session.class))).containsExactly(session);
        }
    }

    private static void enterPairs(Logbook logbook) {
        Session session = logbook.enter("Session", w -> w.insert(Samples.session(null, Samples.DAY)));
        for (int i = 0; i < ENTRIES; i++) {
            int ordinal = 2 * i + 1;
            logbook.change("Two flights", w -> {
                w.insert(Samples.flight(session, ordinal, 600.0));
                w.insert(Samples.flight(session, ordinal + 1, 610.0));
            });
        }
    }

    private static void onlyWholeEntries(Logbook logbook) {
        List<Integer> counts = list(
                logbook,
                r -> List.of(r.all(Flight.class).size(), r.all(Flight.class).size()));
        assertThat(counts.get(0) % 2).isZero();
        assertThat(counts.get(1)).isEqualTo(counts.get(0));
    }
}
