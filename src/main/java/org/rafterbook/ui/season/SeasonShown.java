package org.rafterbook.ui.season;

import java.time.LocalDate;
import java.util.List;
import org.rafterbook.ui.chart.Chart;
import org.rafterbook.work.Season;

/** A season made ready to be shown, off the JavaFX thread: counted, sorted, its marks placed along its days. */
final class SeasonShown {

    /** One model's season and its chart. */
    record Row(Season.ModelSeason model, Chart.Content<String> chart) {}

    private final Season season;
    private final LocalDate today;
    private final DayPlaces places;
    private final List<Row> rows;
    private final List<Season.Evening> evenings;
    private final List<Season.Best> bests;

    SeasonShown(Season season, LocalDate today) {
        this.season = season;
        this.today = today;
        DayPlaces days = DayPlaces.of(season, today);
        places = days;
        rows = season.byModel().stream()
                .map(m -> new Row(m, new ModelChart(m, days, today.toEpochDay()).content()))
                .toList();
        evenings = season.evenings();
        bests = season.bests();
    }

    Season season() {
        return season;
    }

    LocalDate today() {
        return today;
    }

    DayPlaces places() {
        return places;
    }

    /** The models, the one flown most first. */
    List<Row> rows() {
        return rows;
    }

    /** The evenings, the newest first. */
    List<Season.Evening> evenings() {
        return evenings;
    }

    /** The bests by model, part of a motor and ceiling. */
    List<Season.Best> bests() {
        return bests;
    }
}
