package org.rafterbook.ui.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.Layer;
import org.rafterbook.ui.chart.Rule;
import org.rafterbook.ui.chart.RuleLayers;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.EmptyBox;
import org.rafterbook.ui.kit.Figure;
import org.rafterbook.ui.kit.FittingFrame;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.look.Token;
import org.rafterbook.ui.shell.Dialogs;
import org.rafterbook.ui.shell.Logbooks;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Book;
import org.rafterbook.work.Season;

/** The season, read-only: every model's flights over the days, bests, versions, evenings; report and export. */
public final class SeasonPlace implements Place {

    private static final Dialogs.FileKind PAGE = new Dialogs.FileKind("Page for print", List.of("*.html"));

    /** From the window's left to the first day: page, sheet, a model's words, and the chart's own axis. */
    private static final double LEFT_PX = 16 + 1 + 157 + 40;

    private static final double RIGHT_PX = 16 + 1 + 14;

    /** Narrower than this, the evenings take turns with the diary; lower, the diary with the charts. */
    private static final double NARROW_EM = 80;

    private static final double LOW_EM = 44;

    private final Dialogs dialogs;
    private final DisplayUnits units;
    private final QuantityFormat format;
    private final SeasonModel model;
    private final Consumer<String> openInReview;
    private final ReadOnlyObjectWrapper<Keys> keys;
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ObservableList<Node> figures = FXCollections.observableArrayList();
    private final Rule rule = new Rule("The days of the season", Graduation.days())
            .labelsBeside()
            .leftSide(LEFT_PX)
            .rightSide(RIGHT_PX);
    private final VBox rows = new VBox();
    private final Diary diary;
    private final Evenings evenings;
    private final ChoiceField<Integer> seasons = new ChoiceField<>("Season", SeasonWords::season);
    private final FittingFrame frame;
    private final Sheet charts = new Sheet();
    private final HBox below;
    private final VBox full;
    private final VBox empty;
    private final ProgressRule progress = new ProgressRule();
    private final Action report;
    private List<ModelRow> shownRows = List.of();
    private boolean eveningsInFront;
    private boolean narrow;
    private boolean low;
    private boolean belowInFront;

    /**
     * @param openInReview shows a model, by its id, in Review
     */
    public SeasonPlace(Tools tools, Book book, DisplayUnits units, Logbooks logbooks, Consumer<String> openInReview) {
        this.dialogs = tools.dialogs();
        this.units = units;
        this.format = new QuantityFormat(units);
        this.openInReview = openInReview;
        this.model = new SeasonModel(book, tools, progress);
        this.diary = new Diary(format);
        this.evenings = new Evenings(format);
        Keys own = tools.keys();
        own.on("↑", "Pick the model above", () -> pick(-1));
        own.on("↓", "Pick the model below", () -> pick(1));
        own.on("Enter", "Open the picked model in Review, the picked evening here", this::open);
        report = own.on("R", "Season report", this::report);
        own.on("Ctrl+E", "Export everything to plain files", this::export);
        own.on("B", "Bests", () -> front(Diary.Page.BESTS));
        own.on("V", "Versions of the picked model", () -> front(Diary.Page.VERSIONS));
        own.on("L", "Flights of the picked model", () -> front(Diary.Page.FLIGHTS));
        own.on("E", "Evenings", this::toEvenings);
        own.on("C", "Charts", this::toCharts);
        seasons.key(own.on("Y", "Another season", seasons::open)).onChosen(model::turnTo);
        Action table = own.on("T", "Read in my own table", logbooks::readTables);
        Action demo = own.on("D", "Open the demo season", logbooks::openDemo);
        own.hint("↑ ↓", "pick a model");
        own.hint("Enter", "open it in Review");
        own.hint("B V L E", "bests, versions, flights, evenings");
        own.hint("R", "report");
        own.hint("Ctrl+E", "export");
        own.hint("T", "read in a table");
        keys = new ReadOnlyObjectWrapper<>(own);
        below = Lay.row(12, Lay.grow(diary.node()), Lay.grow(evenings.node()));
        full = page();
        empty = Lay.styled(
                Lay.column(
                        0,
                        new EmptyBox(
                                "No flights yet.",
                                "Every model's flights, versions and evenings appear here. The first flight is made in"
                                        + " the Hall; or read in a table, or look round the demo season of about 220"
                                        + " invented flights, which has a logbook of its own.",
                                table,
                                demo)),
                "page");
        frame = new FittingFrame((widthEm, heightEm, emPx) -> fit(widthEm < NARROW_EM, heightEm < LOW_EM));
        frame.show(new StackPane(full, empty));
        model.shownProperty().subscribe(this::show);
        model.pickedProperty().subscribe(this::showPicked);
    }

    private VBox page() {
        ScrollPane rolling = new ScrollPane(rows);
        rolling.setFitToWidth(true);
        rolling.setFitToHeight(true);
        rolling.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        rolling.setFocusTraversable(false);
        rolling.setMinSize(0, 0);
        charts.section(
                "Every flight of the season, minutes",
                "a mark is a flight, its shape the version; with a tick: at least this long");
        charts.add(Lay.grow(rolling));
        charts.setMinSize(0, 0);
        below.setFillHeight(true);
        for (Sheet sheet : new Sheet[] {diary.node(), evenings.node()}) {
            sheet.setMaxHeight(Double.MAX_VALUE);
            sheet.setPrefWidth(1);
        }
        VBox page = Lay.styled(Lay.column(12, Lay.grow(charts), below), "page");
        below.getStyleClass().add("season-below");
        return page;
    }

    private void show(Season season) {
        boolean any = !season.flights().isEmpty();
        Lay.show(full, any);
        Lay.show(empty, !any);
        report.enabledProperty().set(any);
        DayPlaces places = DayPlaces.of(season, LocalDate.now());
        double today = LocalDate.now().toEpochDay();
        List<ModelRow> made = new ArrayList<>();
        rows.getChildren().clear();
        for (Season.ModelSeason one : season.byModel()) {
            ModelRow row = new ModelRow(
                    one,
                    season,
                    places,
                    today,
                    format,
                    m -> model.pickedProperty().set(m.model()),
                    this::inReview);
            if (!made.isEmpty()) {
                rows.getChildren().add(Lay.hairline());
            }
            rows.getChildren().add(Lay.grow(row));
            made.add(row);
        }
        shownRows = made;
        evenings.show(season);
        showRule(season, places, today);
        showHead(season);
        showPicked();
    }

    private void showRule(Season season, DayPlaces places, double today) {
        List<Layer> layers = new ArrayList<>();
        season.evenings()
                .forEach(e -> layers.add(RuleLayers.peg(e.visit().date().toEpochDay(), Token.INK_2, false)));
        layers.add(RuleLayers.nowAmongLabels(today, "today"));
        int evenings = season.evenings().size();
        rule.unitFirst(evenings == 0 ? "" : evenings + (evenings == 1 ? " evening" : " evenings"));
        rule.show(places.low(), places.high(), layers);
    }

    private void showHead(Season season) {
        Integer year = model.year();
        List<Integer> years = model.years();
        StringBuilder words = new StringBuilder();
        if (year != null) {
            words.append(SeasonWords.season(year));
            season.venues().stream()
                    .findFirst()
                    .ifPresent(venue -> words.append(", ").append(venue));
            if (!model.flyer().isEmpty()) {
                words.append(", ").append(model.flyer());
            }
        }
        subtitle.set(words.toString());
        seasons.offer(years, year);
        figures.clear();
        if (season.flights().isEmpty()) {
            return;
        }
        long lower = season.flights().stream().filter(Season.Flown::atLeast).count();
        figures.add(progress);
        if (years.size() > 1) {
            figures.add(Lay.styled(seasons, "season-choice"));
        }
        figures.add(new Figure("Flights", season.flights().size() + ", " + lower + " “at least”").strong());
        figures.add(new Figure("In the air", SeasonWords.hours(season.aloftS())));
        figures.add(new Figure("Motors", season.motors() + ", " + season.broken() + " broke"));
        figures.add(Buttons.primary(report));
    }

    private Season.@Nullable ModelSeason pickedModel() {
        String name = model.pickedProperty().get();
        return shownRows.stream()
                .map(ModelRow::model)
                .filter(m -> m.model().equals(name))
                .findFirst()
                .orElse(shownRows.isEmpty() ? null : shownRows.get(0).model());
    }

    private void showPicked() {
        Season.ModelSeason now = pickedModel();
        shownRows.forEach(row -> row.picked(row.model() == now));
        diary.show(model.shownProperty().get(), now);
    }

    private void pick(int by) {
        Season.ModelSeason now = pickedModel();
        for (int i = 0; i < shownRows.size(); i++) {
            if (shownRows.get(i).model() == now) {
                int next = Math.max(0, Math.min(shownRows.size() - 1, i + by));
                model.pickedProperty().set(shownRows.get(next).model().model());
                return;
            }
        }
    }

    private void open() {
        Season.Evening evening = evenings.here();
        Season.ModelSeason now = pickedModel();
        if (evening != null) {
            diary.show(model.shownProperty().get(), evening);
            eveningsInFront = false;
            showFront();
            diary.focus();
        } else if (now != null) {
            inReview(now);
        }
    }

    private void inReview(Season.ModelSeason one) {
        if (one.modelId() != null) {
            openInReview.accept(one.modelId());
        }
    }

    private void front(Diary.Page page) {
        eveningsInFront = false;
        belowInFront = true;
        diary.front(page);
        showFront();
        diary.focus();
    }

    private void toEvenings() {
        eveningsInFront = true;
        belowInFront = true;
        showFront();
        evenings.focus();
    }

    private void toCharts() {
        belowInFront = false;
        showFront();
        frame.requestFocus();
    }

    private void fit(boolean nowNarrow, boolean nowLow) {
        narrow = nowNarrow;
        low = nowLow;
        showFront();
    }

    private void showFront() {
        Lay.show(diary.node(), !narrow || !eveningsInFront);
        Lay.show(evenings.node(), !narrow || eveningsInFront);
        Lay.show(charts, !low || !belowInFront);
        Lay.show(below, !low || belowInFront);
    }

    private void report() {
        Integer year = model.year();
        if (year != null) {
            dialogs.save("Write the season's report", "season-" + year + "-" + (year + 1) + ".html", PAGE)
                    .ifPresent(file -> model.report(file, units));
        }
    }

    private void export() {
        dialogs.folder("Export everything into a folder")
                .ifPresent(folder -> model.export(folder, () -> dialogs.mayOverwrite(folder)));
    }

    @Override
    public Node node() {
        return frame;
    }

    @Override
    public Node rule() {
        return rule;
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
        model.attach();
    }

    @Override
    public void hidden() {
        model.detach();
    }
}
