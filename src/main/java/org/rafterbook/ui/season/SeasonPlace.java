package org.rafterbook.ui.season;

import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.ObservableList;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.action.Parts;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.EmptyBox;
import org.rafterbook.ui.kit.FittingFrame;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.ui.kit.Sheet;
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

    private static final PseudoClass ALONE = PseudoClass.getPseudoClass("alone");

    /** Narrower than this, the evenings take turns with the diary; lower, the diary with the charts. */
    private static final double NARROW_EM = 80;

    private static final double LOW_EM = 44;

    private final Dialogs dialogs;
    private final DisplayUnits units;
    private final SeasonModel model;
    private final Consumer<String> openInReview;
    private final ReadOnlyObjectWrapper<Keys> keys;
    private final SeasonHead head;
    private final Charts charts;
    private final Diary diary;
    private final Evenings evenings;
    private final FittingFrame frame =
            new FittingFrame((widthEm, heightEm, emPx) -> fit(widthEm < NARROW_EM, heightEm < LOW_EM));
    private final FoldedLine folded = new FoldedLine();
    private final List<Action> toDiary;
    private final Action toEvenings;
    private final Action toCharts;
    private final Action table;
    private final HBox below;
    private final VBox full;
    private final VBox empty;
    private final Action report;
    private boolean eveningsInFront;
    private boolean belowInFront;
    private boolean narrow;
    private boolean low;

    /**
     * @param openInReview shows a model, by its id, in Review
     */
    public SeasonPlace(Tools tools, Book book, DisplayUnits units, Logbooks logbooks, Consumer<String> openInReview) {
        this.dialogs = tools.dialogs();
        this.units = units;
        this.openInReview = openInReview;
        ProgressRule progress = new ProgressRule();
        QuantityFormat format = new QuantityFormat(units);
        model = new SeasonModel(book, tools, progress);
        diary = new Diary(format);
        evenings = new Evenings(format);
        charts = new Charts(format, m -> model.pickedProperty().set(m.model()), this::inReview);
        Keys own = tools.keys();
        own.on("↑", "Pick the model above", () -> pick(-1));
        own.on("↓", "Pick the model below", () -> pick(1));
        own.on("Enter", "Open the picked model in Review, the picked evening here", this::open);
        report = own.on("R", "Season report", this::report);
        own.on("Ctrl+E", "Export everything to plain files", this::export);
        toDiary = List.of(
                own.on("B", "Bests", () -> front(Diary.Page.BESTS)),
                own.on("V", "Versions of the picked model", () -> front(Diary.Page.VERSIONS)),
                own.on("L", "Flights of the picked model", () -> front(Diary.Page.FLIGHTS)));
        toEvenings = own.on("E", "Evenings", this::toEvenings);
        toCharts = own.on("C", "Charts", this::toCharts);
        ChoiceField<Integer> seasons = new ChoiceField<>("Season", SeasonWords::season);
        seasons.key(own.on("Y", "Another season", seasons::open)).onChosen(model::turnTo);
        table = own.on("T", "Read a table", logbooks::readTables);
        Action demo = own.on("D", "Demo", logbooks::openDemo);
        head = new SeasonHead(
                seasons, progress, List.of(Buttons.secondary(table), Buttons.secondary(demo)), Buttons.primary(report));
        own.hint("↑ ↓", "pick a model");
        own.hint("Enter", "open it in Review");
        own.hint("B V L E", "bests, versions, flights, evenings");
        own.hint("R", "report");
        own.hint("Ctrl+E", "export");
        keys = new ReadOnlyObjectWrapper<>(own);
        below = below();
        folded.add(toCharts, "Charts");
        for (Diary.Page page : Diary.Page.values()) {
            folded.add(toDiary.get(page.ordinal()), page.label());
        }
        folded.add(toEvenings, "Evenings");
        folded.add(table, table.label());
        full = Lay.styled(Lay.column(12, Lay.grow(charts.node()), below, folded.node()), "page");
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
        frame.show(new StackPane(full, empty));
        Parts parts = new Parts(tools.background());
        parts.add(() -> charts.showDays(model.shownProperty().get()), model.shownProperty());
        parts.add(this::show, model.shownProperty());
        parts.add(() -> head.show(model.shownProperty().get().season(), model), model.shownProperty());
        parts.add(this::showPicked, model.shownProperty(), model.pickedProperty());
        parts.add(() -> evenings.show(model.shownProperty().get()), model.shownProperty());
    }

    private HBox below() {
        HBox row = Lay.styled(Lay.row(12, Lay.grow(diary.node()), Lay.grow(evenings.node())), "season-below");
        row.setFillHeight(true);
        for (Sheet sheet : new Sheet[] {diary.node(), evenings.node()}) {
            sheet.setMaxHeight(Double.MAX_VALUE);
            sheet.setPrefWidth(1);
        }
        return row;
    }

    private void show() {
        SeasonShown now = model.shownProperty().get();
        Season season = now.season();
        boolean any = !season.flights().isEmpty();
        Lay.show(full, any);
        Lay.show(empty, !any && model.isLoaded());
        report.enabledProperty().set(any);
        charts.show(now);
        folded.summary(SeasonWords.summary(now));
    }

    private Season.@Nullable ModelSeason pickedModel() {
        List<Season.ModelSeason> models = charts.models();
        String name = model.pickedProperty().get();
        return models.stream()
                .filter(m -> m.model().equals(name))
                .findFirst()
                .orElse(models.isEmpty() ? null : models.get(0));
    }

    private void showPicked() {
        Season.ModelSeason now = pickedModel();
        if (now != null) {
            charts.picked(now);
        }
        diary.show(model.shownProperty().get(), now);
    }

    private void pick(int by) {
        List<Season.ModelSeason> models = charts.models();
        Season.ModelSeason now = pickedModel();
        if (now != null) {
            int next = Math.max(0, Math.min(models.size() - 1, models.indexOf(now) + by));
            model.pickedProperty().set(models.get(next).model());
        }
    }

    private void open() {
        Season.Evening evening = evenings.here();
        Season.ModelSeason now = pickedModel();
        if (evening != null) {
            diary.show(model.shownProperty().get().season(), evening);
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
        boolean isBelow = !low || belowInFront;
        boolean isDiary = !narrow || !eveningsInFront;
        boolean isEvenings = !narrow || eveningsInFront;
        Lay.show(diary.node(), isDiary);
        Lay.show(evenings.node(), isEvenings);
        Lay.show(charts.node(), !low || !belowInFront);
        Lay.show(below, isBelow);
        below.pseudoClassStateChanged(ALONE, low);
        folded.show(toCharts, low && belowInFront);
        toDiary.forEach(to -> folded.show(to, !isBelow || !isDiary));
        folded.show(toEvenings, !isBelow || !isEvenings);
        folded.show(table, narrow); // the head has no room for it
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
        return charts.rule();
    }

    @Override
    public ObservableValue<Keys> keys() {
        return keys.getReadOnlyProperty();
    }

    @Override
    public ObservableValue<String> subtitle() {
        return head.subtitle();
    }

    @Override
    public ObservableList<Node> figures() {
        return head.figures();
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
