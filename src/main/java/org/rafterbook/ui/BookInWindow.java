package org.rafterbook.ui;

import java.util.List;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Press;
import org.rafterbook.ui.bench.BenchPlace;
import org.rafterbook.ui.hall.FirstReading;
import org.rafterbook.ui.hall.HallModel;
import org.rafterbook.ui.hall.HallView;
import org.rafterbook.ui.imports.ImportPlace;
import org.rafterbook.ui.motorbox.MotorBoxPlace;
import org.rafterbook.ui.review.ReviewView;
import org.rafterbook.ui.season.SeasonPlace;
import org.rafterbook.ui.shell.Logbooks;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.ui.shell.Undoing;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.Book;
import org.rafterbook.work.OpenedBook;
import org.rafterbook.work.Watches;

/** The logbook open in a window, and the places that show it. */
final class BookInWindow {

    private final OpenedBook opened;
    private final Tools tools;
    private final Logbooks logbooks;
    private final Subscription undoing;
    private final HallModel hall;
    private @Nullable Subscription beginning;
    private @Nullable ImportPlace tables;
    private @Nullable ReviewView review;
    private boolean fresh;

    /**
     * @param today what its Hall shows first
     * @param tools with the background of this logbook alone
     * @param watches of the window, whichever logbook is open
     */
    BookInWindow(OpenedBook opened, FirstReading today, Tools tools, Logbooks logbooks, Watches watches) {
        this.opened = opened;
        this.tools = tools;
        this.logbooks = logbooks;
        this.fresh = opened.empty();
        this.undoing = Undoing.of(tools, opened.book());
        this.hall = new HallModel(book().hall(), today, tools.background(), tools.errors(), book().clock(), watches);
    }

    OpenedBook opened() {
        return opened;
    }

    Book book() {
        return opened.book();
    }

    FxBackground background() {
        return tools.background();
    }

    /** Whether the Hall still shows the first start. */
    boolean isFresh() {
        return fresh;
    }

    /** The flyer has begun: from now on the Hall shows itself. */
    void begin() {
        fresh = false;
        if (beginning != null) {
            beginning.cancel();
            beginning = null;
        }
    }

    /** Called once, when something was entered in the logbook that was empty. */
    void whenBegun(Runnable then) {
        beginning = book().onChange(() -> {
            boolean begun = !book().isEmpty();
            background().later(() -> {
                if (begun && fresh) {
                    begin();
                    then.run();
                }
            });
        });
    }

    /**
     * Makes the places that take long to make before they are visited, off the JavaFX thread: nothing of them is in a
     * window yet. The taker says whether it takes one.
     */
    void prepare(DisplayUnits units, BiPredicate<PlaceId, Place> taker) {
        for (PlaceId id : List.of(PlaceId.REVIEW, PlaceId.SEASON)) {
            background().call(progress -> make(id, units)).then(place -> {
                if (taker.test(id, place)) {
                    keep(place);
                }
            });
        }
    }

    /** A place of it, to be shown. */
    Place place(PlaceId id, DisplayUnits units) {
        return keep(make(id, units));
    }

    private Place keep(Place place) {
        if (place instanceof ReviewView shown) {
            review = shown;
        }
        return place;
    }

    private Place make(PlaceId id, DisplayUnits units) {
        return switch (id) {
            case HALL -> new HallView(tools, hall, units, book().clock().getZone());
            case BENCH -> new BenchPlace(tools, book(), units);
            case MOTOR_BOX -> new MotorBoxPlace(tools, book(), units);
            case REVIEW -> new ReviewView(book().review(), tools, units);
            case SEASON -> new SeasonPlace(tools, book(), units, logbooks, this::openInReview);
        };
    }

    private void openInReview(String modelId) {
        tools.showing().set(PlaceId.REVIEW);
        if (review != null) {
            review.show(modelId);
        }
    }

    /** The screen on which files are read in; the same one again until its files are in. */
    ImportPlace tables(DisplayUnits units, Runnable leave) {
        ImportPlace screen = tables == null ? new ImportPlace(tools, book(), units, leave) : tables;
        tables = screen;
        return screen;
    }

    /** Starts the watch, as Space does in the Hall. */
    void startTheWatch(Press press) {
        hall.preparing().start(press);
    }

    /** Closes the logbook once everything on its way to it is on disk; then does what follows. */
    void close(FxBackground closing, Runnable then) {
        undoing.cancel();
        background()
                .whenQuiet(() -> closing.call(progress -> {
                            book().close();
                            return true;
                        })
                        .then(closed -> then.run()));
    }
}
