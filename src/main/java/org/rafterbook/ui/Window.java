package org.rafterbook.ui;

import java.time.Clock;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.bench.BenchPlace;
import org.rafterbook.ui.hall.HallModel;
import org.rafterbook.ui.hall.HallView;
import org.rafterbook.ui.look.Look;
import org.rafterbook.ui.look.Theme;
import org.rafterbook.ui.motorbox.MotorBoxPlace;
import org.rafterbook.ui.review.ReviewView;
import org.rafterbook.ui.season.SeasonPlace;
import org.rafterbook.ui.shell.FxDialogs;
import org.rafterbook.ui.shell.MainWindow;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Shell;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.ui.shell.Undoing;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.Background;
import org.rafterbook.work.Book;

/** Puts the window together: the shell, its five places and what the logbook tells it. */
public final class Window {

    private static final String THEME = "theme";

    private Window() {}

    /** Starts the toolkit; false where there is no display. */
    public static boolean start() {
        try {
            Platform.startup(() -> Platform.setImplicitExit(false));
            return true;
        } catch (UnsupportedOperationException e) {
            return false;
        }
    }

    /** Shows the window of a logbook and waits until it is closed. */
    public static void untilClosed(Book book) {
        CountDownLatch closed = new CountDownLatch(1);
        Platform.runLater(() -> {
            Stage stage = new Stage();
            stage.setOnHidden(e -> closed.countDown());
            show(stage, book);
        });
        try {
            closed.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Ends the toolkit. */
    public static void end() {
        Platform.exit();
    }

    private static void show(Stage stage, Book book) {
        MainWindow.prepare();
        Errors errors = new Errors();
        Look look = new Look();
        Background pool = Background.pool(2);
        FxBackground background = FxBackground.on(pool, errors);
        Tools tools = new Tools(errors, look, background, new FxDialogs(() -> stage, look));
        Shell shell = shell(tools, book);
        Undoing.of(tools, book);
        MainWindow.show(stage, shell, tools, String.valueOf(book.file().getFileName()));
        background
                .call(progress -> java.util.Optional.ofNullable(book.preference(THEME)))
                .then(kept -> {
                    kept.ifPresent(name -> look.themeProperty().set(Theme.valueOf(name)));
                    look.themeProperty()
                            .subscribe((before, now) -> background
                                    .call(progress -> {
                                        book.prefer(THEME, now.name());
                                        return now;
                                    })
                                    .then(done -> {}));
                });
    }

    /** The shell with its places, for the window and for pictures of it. */
    public static Shell shell(Tools tools, Book book) {
        Map<PlaceId, Supplier<? extends Place>> makers = new EnumMap<>(PlaceId.class);
        makers.put(PlaceId.HALL, () -> hall(tools, book));
        makers.put(PlaceId.BENCH, () -> new BenchPlace(tools, book));
        makers.put(PlaceId.MOTOR_BOX, () -> new MotorBoxPlace(tools, book));
        makers.put(PlaceId.REVIEW, () -> new ReviewView(book.review(), tools));
        makers.put(PlaceId.SEASON, () -> new SeasonPlace(tools, book));
        return new Shell(tools, makers);
    }

    private static HallView hall(Tools tools, Book book) {
        HallModel model = new HallModel(book.hall(), tools.background(), tools.errors(), Clock.systemDefaultZone());
        return new HallView(tools, model, DisplayUnits.METRIC, ZoneId.systemDefault());
    }
}
