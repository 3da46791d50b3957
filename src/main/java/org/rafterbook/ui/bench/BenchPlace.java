package org.rafterbook.ui.bench;

import java.time.ZoneId;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.EmptyBox;
import org.rafterbook.ui.kit.Figure;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Book;
import org.rafterbook.work.Looked;
import org.rafterbook.work.MarginAnswer;
import org.rafterbook.work.Rigged;

/** The Bench: rig strip, airframe to scale, and at the right its settings or a form. */
public final class BenchPlace implements Place {

    private static final double GAP = 12;
    private static final double LEAST_EM = 84;

    private final Book book;
    private final BenchModel model;
    private final BenchContext context;
    private final BenchCommands commands;
    private final Deque<BenchPage> pages = new ArrayDeque<>();
    private final BenchPage settings;
    private final StripPane strip;
    private final AirframePane drawing;
    private final BorderPane bench = new BorderPane();
    private final StackPane middle;
    private final EmptyBox empty;
    private final EmptyBox noGeometry;
    private final VBox emptyPlace;
    private final ReadOnlyObjectWrapper<Keys> keys;
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ObservableList<Node> figures = FXCollections.observableArrayList();
    private final FxBackground.Slot computing = new FxBackground.Slot();
    private @Nullable Subscription listening;

    /**
     * @param units in which lengths and masses are typed in its forms
     */
    public BenchPlace(Tools tools, Book book, DisplayUnits units) {
        this.book = book;
        model = new BenchModel(book, tools.background());
        context = new BenchContext(tools, model, units, this::open, this::back);
        drawing = new AirframePane(new PointerMoves(model));
        commands = new BenchCommands(context, drawing);
        settings = commands.settingsPage();
        keys = new ReadOnlyObjectWrapper<>(settings.keys());
        strip = commands.strip(ZoneId.systemDefault());
        empty = new EmptyBox(
                "No model yet.",
                "Its drawing, margin and rig strip appear here. A model needs only a name to fly.",
                commands.newModel(),
                commands.readSheet());
        noGeometry = new EmptyBox(
                "No geometry yet.",
                "The drawing and the margin begin with span and chord.",
                commands.airframe(),
                commands.readSheet());
        emptyPlace = new VBox(empty, noGeometry);
        emptyPlace.getStyleClass().add("bench-empty");
        emptyPlace.setPickOnBounds(false);
        middle = new StackPane(drawing, emptyPlace);
        middle.setMinSize(0, 0);
        middle.getStyleClass().addAll("sheet", "bench-middle");
        bench.setLeft(strip.node());
        bench.setCenter(middle);
        bench.setRight(settings.node());
        BorderPane.setMargin(middle, new Insets(0, GAP, 0, GAP));
        bench.getStyleClass().add("bench");
        bench.getStylesheets()
                .add(Objects.requireNonNull(BenchPlace.class.getResource("bench.css"))
                        .toExternalForm());
        bench.widthProperty().subscribe(width -> arrange());
        model.bench().subscribe(this::loaded);
        model.preview().subscribe(now -> draw());
        model.beside().subscribe(now -> draw());
    }

    private void open(BenchPage page) {
        pages.push(page);
        show(page);
    }

    private void back() {
        if (!pages.isEmpty()) {
            pages.pop();
        }
        show(pages.isEmpty() ? settings : pages.peek());
    }

    private void show(BenchPage page) {
        // the focus must not stay on what goes out of sight
        bench.requestFocus();
        bench.setRight(page.node());
        arrange();
        keys.set(page.keys());
        BenchDesk.Bench now = model.bench().get();
        if (now != null) {
            page.opened(now);
        } else if (page instanceof EntryForm form) {
            form.form.focusFirst();
        }
    }

    /** A form takes the place of the strip where there is no room for both beside the drawing. */
    private void arrange() {
        double em = drawing.drawing().em();
        boolean narrow = bench.getWidth() > 0 && bench.getWidth() < LEAST_EM * em;
        boolean form = !pages.isEmpty() && !(pages.peek() instanceof AirframePage);
        Lay.show(strip.node(), model.bench().get() != null && !(narrow && form));
    }

    private void loaded(BenchDesk.@Nullable Bench now) {
        boolean any = now != null;
        arrange();
        Lay.show(bench.getRight(), any || !pages.isEmpty());
        Lay.show(empty, !any);
        boolean flat = now != null
                && (now.shown().airframe() == null
                        || now.shown().airframe().surfaces().isEmpty());
        Lay.show(noGeometry, flat);
        if (now == null) {
            subtitle.set("");
            figures.clear();
            drawing.show(AirframeDrawing.Subject.NOTHING);
            return;
        }
        strip.show(now);
        commands.follow(now);
        subtitle.set(subtitle(now));
        BenchPage page = pages.peek();
        if (page != null) {
            page.loaded(now);
        }
        draw();
    }

    private static String subtitle(BenchDesk.Bench now) {
        Rigged shown = BenchModel.shown(now);
        String what = shown.version().sketch() ? "sketch " : "version ";
        String build =
                now.now().model().build() > 1 ? ", build " + shown.version().build() : "";
        return shown.model().name() + ", " + what + shown.name() + build
                + (shown.version().markedGood() ? ", well-behaved" : "")
                + (now.showsNow() ? "" : "; rigged as " + now.now().name());
    }

    private void draw() {
        BenchDesk.Bench now = model.bench().get();
        if (now == null) {
            return;
        }
        Looked preview = model.preview().get();
        Looked looked = preview == null ? now.shown() : preview;
        Looked beside = preview == null ? model.beside().get() : now.shown();
        drawing.show(new AirframeDrawing.Subject(
                looked.airframe(),
                beside == null ? null : beside.airframe(),
                looked.margin(),
                now.now().model().wishedLow(),
                now.now().model().wishedHigh()));
        MarginAnswer margin = looked.margin();
        Double area = margin.areaM2();
        Double band = margin.band();
        boolean several = looked.margin().liftShare().size() > 2;
        figures.setAll(
                new Figure("Ready to fly", BenchWords.grams(margin.massKg()) + " with motor").strong(),
                new Figure(
                                several ? "Area of all wings" : "Wing area",
                                area == null ? "–" : QuantityFormat.rounded(area * 100, 2) + " dm²")
                        .strong(),
                new Figure(
                                "Neutral point by",
                                band == null
                                        ? MarginAnswer.LATTICE
                                        : MarginAnswer.LATTICE + ", ± " + QuantityFormat.rounded(band * 100, 1) + " %")
                        .strong());
    }

    /** The view model, for tests and pictures. */
    BenchModel model() {
        return model;
    }

    @Override
    public Node node() {
        return bench;
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

    @Override
    public void shown() {
        listening = book.onChange(() -> Platform.runLater(model::load));
        model.load();
        context.tools()
                .background()
                .call(book.margins()::computeAll)
                .in(computing)
                .showing(strip.progress())
                .then(versions -> {});
    }

    @Override
    public void hidden() {
        computing.cancel();
        if (listening != null) {
            listening.cancel();
            listening = null;
        }
    }

    /** The actions a form is opened by, for tests and pictures. */
    List<Action> actions() {
        return List.copyOf(keys.get().actions());
    }
}
