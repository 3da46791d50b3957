package org.rafterbook.ui.season;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Segments;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Season;

/** Bests, and of the picked model its versions and flights; one of them in front. */
final class Diary {

    /** What can be in front. */
    enum Page {
        BESTS("Bests"),
        VERSIONS("Versions"),
        FLIGHTS("Flights");

        private final String label;

        Page(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    /** Room for a margin with its band, "−12.3 ± 6". */
    private static final double MARGIN_EM = 5.8;

    private final Table<Season.Best> bests = new Table<>("bests");
    private final Table<Season.VersionSeason> versions = new Table<>("versions");
    private final Table<Season.Flown> flights = new Table<>("flights");
    private final Table<Season.Flown>.Column ofWhichModel;
    private final Segments<Page> pages = new Segments<>("What of the diary", List.of(Page.values()), Page::label);
    private final Sheet sheet = new Sheet();
    private final Sheet.Section section;
    private Page page = Page.BESTS;
    private Season.@Nullable ModelSeason model;
    private String ofEvening = "";

    Diary(QuantityFormat format) {
        bests.text("model", 8.8, b -> SeasonWords.model(b.flight()))
                .styled("strong")
                .grow();
        bests.number("time", "", 4.8, b -> SeasonWords.time(b.flight())).styled("time");
        bests.text("day", 4.6, b -> SeasonWords.shortDay(b.flight().date()));
        bests.node("version", 4.8, b -> marked(b.flight()));
        bests.number(
                "margin",
                "%",
                MARGIN_EM,
                b -> SeasonWords.percent(b.flight().margin(), b.flight().marginBand()));
        bests.number(
                "torque",
                format.unitOf(Quantity.TORQUE),
                4.4,
                b -> format.number(Quantity.TORQUE, b.flight().torqueNm()));
        bests.text("under", 10.4, b -> SeasonWords.under(b, format)).styled("quiet");
        versions.node("version", 4.6, v -> Table.marked(mark(v.number(), false), v.version()));
        versions.text("what changed", 10, v -> String.join("; ", v.changes())).grow();
        versions.text("first", 4.2, v -> SeasonWords.shortDay(v.first()));
        versions.text("last", 4.2, v -> SeasonWords.shortDay(v.last()));
        versions.number("flights", "", 3.8, v -> String.valueOf(v.flights()));
        versions.number("evenings", "", 5, v -> String.valueOf(v.sessions()));
        versions.number("margin", "%", MARGIN_EM, v -> SeasonWords.percent(v.margin(), v.marginBand()));
        flights.text("day", 6.6, f -> SeasonWords.day(f.date()));
        flights.node("version", 4.8, Diary::marked);
        flights.number("time", "", 4.6, SeasonWords::time);
        flights.number("margin", "%", MARGIN_EM, f -> SeasonWords.percent(f.margin(), f.marginBand()));
        flights.number(
                "torque", format.unitOf(Quantity.TORQUE), 4.4, f -> format.number(Quantity.TORQUE, f.torqueNm()));
        ofWhichModel = flights.text("model", 5.5, Season.Flown::model);
        flights.text("notes", 8, f -> f.notes() == null ? "" : f.notes()).grow();
        section = Lay.grow(sheet.section("", "", Lay.grow(new StackPane(bests, versions, flights))));
        section.beside(Lay.styled(pages, "low"));
        section.setMinHeight(0);
        sheet.setMinSize(0, 0);
        pages.onChosen(chosen -> {
            ofModel();
            front(chosen);
        });
        front(Page.BESTS);
    }

    private static Node mark(int number, boolean atLeast) {
        return new MarkView(
                VersionMark.dealt(Math.max(0, number - 1)),
                number == 0 ? MarkStyle.OPEN : atLeast ? MarkStyle.AT_LEAST : MarkStyle.CLEAN);
    }

    private static Node marked(Season.Flown flown) {
        return Table.marked(
                mark(flown.versionNumber(), flown.atLeast()),
                flown.version().isEmpty() ? QuantityFormat.UNKNOWN : flown.version());
    }

    Sheet node() {
        return sheet;
    }

    /** Brings a page to the front. */
    void front(Page now) {
        page = now;
        pages.choose(now);
        Lay.show(bests, now == Page.BESTS);
        Lay.show(versions, now == Page.VERSIONS);
        Lay.show(flights, now == Page.FLIGHTS);
        tell();
    }

    /** Goes into the table in front. */
    void focus() {
        switch (page) {
            case BESTS -> bests.view().requestFocus();
            case VERSIONS -> versions.view().requestFocus();
            case FLIGHTS -> flights.view().requestFocus();
        }
    }

    private void tell() {
        section.caption(
                switch (page) {
                    case BESTS -> "Bests";
                    case VERSIONS -> "Versions of " + modelName();
                    case FLIGHTS -> ofEvening.isEmpty() ? "Flights of " + modelName() : "Flights of " + ofEvening;
                });
        section.aside(
                switch (page) {
                    case BESTS -> "clean flights only; diary, no evidence";
                    case VERSIONS -> versions.rows().size() + " flown";
                    case FLIGHTS -> flights.rows().size() + ", ≥ means at least";
                });
    }

    private String modelName() {
        return model == null ? "" : model.model();
    }

    /** Shows the season with one of its models picked. */
    void show(SeasonShown shown, Season.@Nullable ModelSeason picked) {
        model = picked;
        bests.rows(shown.bests());
        versions.rows(
                picked == null || picked.modelId() == null
                        ? List.of()
                        : shown.season().versions(picked.modelId()));
        ofModel();
        tell();
    }

    private void ofModel() {
        ofEvening = "";
        ofWhichModel.show(false);
        flights.rows(model == null ? List.of() : model.flights());
    }

    /** Shows the flights of one evening, whatever the model. */
    void show(Season season, Season.Evening evening) {
        ofWhichModel.show(true);
        flights.rows(season.flights().stream()
                .filter(f -> f.sessionId().equals(evening.sessionId()))
                .toList());
        ofEvening = SeasonWords.day(evening.visit().date());
        front(Page.FLIGHTS);
    }
}
