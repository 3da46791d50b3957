package org.rafterbook.ui.season;

import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Season;

/** The evenings of the season, the newest first. */
final class Evenings {

    private final Table<Season.Evening> table = new Table<>("evenings");
    private final Sheet sheet = new Sheet();
    private final Sheet.Section section;

    Evenings(QuantityFormat format) {
        table.text("day", 6.8, e -> SeasonWords.day(e.visit().date())).styled("strong");
        table.number("flights", "", 4, e -> String.valueOf(e.flights()));
        table.number("best", "", 4.6, e -> SeasonWords.time(e.bestS(), false)).styled("time");
        table.number(
                "air",
                format.unitOf(Quantity.TEMPERATURE),
                3.6,
                e -> format.number(Quantity.TEMPERATURE, e.visit().temperatureK()));
        table.number("changes", "", 4.6, e -> String.valueOf(e.changes()));
        table.text("aim", 8, Evenings::aim).grow();
        section = Lay.grow(sheet.section("Evenings", "", Lay.grow(table)));
        section.setMinHeight(0);
        sheet.setMinSize(0, 0);
    }

    /** What the evening was for; where nobody said, where it was. */
    private static String aim(Season.Evening evening) {
        String goal = evening.visit().goal();
        return goal == null ? evening.visit().venue() : goal;
    }

    Sheet node() {
        return sheet;
    }

    void show(SeasonShown season) {
        table.rows(season.evenings());
        section.aside(season.evenings().size() + ", newest first");
    }

    void focus() {
        table.view().requestFocus();
        if (table.selected() == null && !table.rows().isEmpty()) {
            table.view().getSelectionModel().select(0);
        }
    }

    /** The evening picked while the table has the focus, null else. */
    Season.@Nullable Evening here() {
        return table.view().isFocused() ? table.selected() : null;
    }
}
