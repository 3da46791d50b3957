package org.rafterbook.ui.season;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.kit.EmptyBox;
import org.rafterbook.ui.kit.Figure;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.shell.Logbooks;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Book;
import org.rafterbook.work.SeasonDesk;

/** The season, read-only: models, evenings and every flight. */
public final class SeasonPlace implements Place {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

    private final Book book;
    private final FxBackground background;
    private final FxBackground.Slot slot = new FxBackground.Slot();
    private final ReadOnlyObjectWrapper<Keys> keys;
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ObservableList<Node> figures = FXCollections.observableArrayList();
    private final Table<SeasonDesk.ModelSeason> models = new Table<>("models");
    private final Table<SeasonDesk.Evening> evenings = new Table<>("evenings");
    private final Table<SeasonDesk.Flown> flights = new Table<>("flights");
    private final StackPane root = new StackPane();
    private final VBox empty;
    private final VBox full;
    private @Nullable Subscription listening;

    public SeasonPlace(Tools tools, Book book, Logbooks logbooks) {
        this.book = book;
        this.background = tools.background();
        Keys own = tools.keys();
        Action demo = own.on("D", "Open the demo season", logbooks::openDemo);
        Action table = own.on("T", "Read in my own table", logbooks::readTables);
        own.hint("↑ ↓", "pick a row");
        own.hint("T", "read in a table");
        keys = new ReadOnlyObjectWrapper<>(own);
        models.text("model", 10, SeasonDesk.ModelSeason::model).grow();
        models.number("flights", "", 5, m -> String.valueOf(m.flights()));
        models.number("versions", "", 6, m -> String.valueOf(m.versions()));
        models.number("evenings", "", 6, m -> String.valueOf(m.sessions()));
        models.number("best, clean", "", 7, m -> time(m.bestS(), false));
        evenings.text("day", 11, e -> DAY.format(e.date()));
        evenings.text("venue", 10, SeasonDesk.Evening::venue).grow();
        evenings.number("flights", "", 5, e -> String.valueOf(e.flights()));
        evenings.number("best", "", 5, e -> time(e.bestS(), false));
        evenings.number("changes", "", 6, e -> String.valueOf(e.changes()));
        flights.text("day", 11, f -> DAY.format(f.date()));
        flights.text("model", 7, SeasonDesk.Flown::model);
        flights.node("version", 6, SeasonPlace::marked);
        flights.number("margin", "%", 5, SeasonPlace::margin);
        flights.number("time", "", 6, f -> time(f.durationS(), f.atLeast()));
        flights.text("notes", 16, f -> f.notes() == null ? "" : f.notes()).grow();
        Sheet left = new Sheet();
        left.section("Models", "clean flights on full motors");
        left.add(models.asHighAsItsRows());
        left.section("Evenings", "newest first");
        left.add(Lay.grow(evenings));
        Sheet right = new Sheet();
        right.section("Every flight of the season", "≥ means at least this long; times are diary, no evidence");
        right.add(Lay.grow(flights));
        left.setMinWidth(0);
        right.setMinWidth(0);
        full = Lay.column(0, Lay.grow(Lay.row(12, Lay.grow(left), Lay.grow(right))));
        empty = Lay.column(
                0,
                new EmptyBox(
                        "No flights yet.",
                        "Every model's flights, versions and evenings appear here. The first flight is made in the Hall;"
                                + " or read in a table, or look round the demo season of about 220 invented flights.",
                        table,
                        demo));
        root.getChildren().addAll(full, empty);
        root.getStyleClass().add("pad-16");
        show(new SeasonDesk.Season(List.of(), List.of(), List.of()));
    }

    private static Node marked(SeasonDesk.Flown flight) {
        if (flight.versionNumber() == 0) {
            return Table.marked(new MarkView(VersionMark.dealt(0), MarkStyle.OPEN), "–");
        }
        MarkView mark = new MarkView(
                VersionMark.dealt(flight.versionNumber() - 1), flight.atLeast() ? MarkStyle.AT_LEAST : MarkStyle.CLEAN);
        return Table.marked(mark, flight.version());
    }

    private static String margin(SeasonDesk.Flown flight) {
        Double margin = flight.margin();
        return margin == null ? QuantityFormat.UNKNOWN : QuantityFormat.rounded(margin * 100, 1);
    }

    private static String time(@Nullable Double seconds, boolean atLeast) {
        if (seconds == null) {
            return QuantityFormat.UNKNOWN;
        }
        return atLeast ? ClockTime.atLeast(seconds) : ClockTime.minutesSeconds(seconds);
    }

    private static String hours(double seconds) {
        long minutes = (long) (seconds / 60);
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    private void show(SeasonDesk.Season season) {
        boolean any = !season.flights().isEmpty();
        Lay.show(full, any);
        Lay.show(empty, !any);
        models.rows(season.models());
        evenings.rows(season.evenings());
        flights.rows(season.flights());
        long lower = season.flights().stream().filter(SeasonDesk.Flown::atLeast).count();
        double aloft = season.flights().stream()
                .filter(f -> f.durationS() != null)
                .mapToDouble(f -> f.durationS() == null ? 0 : f.durationS())
                .sum();
        subtitle.set(any ? season.evenings().size() + " evenings" : "");
        figures.setAll(
                new Figure("Flights", season.flights().size() + ", " + lower + " “at least”").strong(),
                new Figure("In the air", hours(aloft)));
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public ObservableValue<Keys> keys() {
        return keys.getReadOnlyProperty();
    }

    @Override
    public ObservableValue<String> subtitle() {
        return subtitle.getReadOnlyProperty();
    }

    @Override
    public ObservableList<Node> figures() {
        return figures;
    }

    private void load() {
        background.call(progress -> book.season().load()).in(slot).then(this::show);
    }

    @Override
    public void shown() {
        listening = book.onChange(() -> Platform.runLater(this::load));
        load();
    }

    @Override
    public void hidden() {
        slot.cancel();
        if (listening != null) {
            listening.cancel();
            listening = null;
        }
    }
}
