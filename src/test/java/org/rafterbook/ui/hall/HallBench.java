package org.rafterbook.ui.hall;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Mode;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.ui.review.ReviewView;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Shell;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.ui.shell.Undoing;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.Book;
import org.rafterbook.work.HallDesk;
import org.rafterbook.work.MarginText;
import org.rafterbook.work.Watches;

/** A Hall in a shell on a real logbook, with a clock that the test turns. */
final class HallBench implements AutoCloseable {

    final TurnedClock clock = new TurnedClock(Instant.parse("2026-01-20T18:30:00Z"));
    final Watches watches = new Watches();
    final Book book;
    final HallDesk desk;
    final HallModel model;
    final HallView view;
    final Shell shell;
    final Tools tools;
    private final Subscription undoing;

    /** A clock that stands until it is turned. */
    static final class TurnedClock extends Clock {

        Instant now;

        TurnedClock(Instant now) {
            this.now = now;
        }

        void forward(double seconds) {
            now = now.plusMillis(Math.round(seconds * 1000));
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException("the zone stays");
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    /**
     * @param margins how margins are told, null for the logbook's own
     */
    HallBench(Path file, Tools tools, @Nullable MarginText margins) {
        this.tools = tools;
        book = Book.open(file, Mode.CREATE, clock);
        desk = margins == null ? book.hall() : new HallDesk(book, margins);
        model = new HallModel(desk, new FirstReading(desk), tools.background(), tools.errors(), clock, watches);
        view = new HallView(tools, model, DisplayUnits.METRIC, ZoneOffset.UTC);
        Map<PlaceId, Supplier<? extends Place>> makers = new EnumMap<>(PlaceId.class);
        for (PlaceId id : PlaceId.values()) {
            makers.put(id, () -> view);
        }
        makers.put(PlaceId.REVIEW, () -> new ReviewView(book.review(), tools));
        shell = new Shell(tools, makers);
        undoing = Undoing.of(tools, book);
    }

    HallData data() {
        return java.util.Objects.requireNonNull(model.data());
    }

    @Override
    public void close() {
        view.hidden();
        undoing.cancel();
        book.close();
    }
}
