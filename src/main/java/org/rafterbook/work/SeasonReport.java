package org.rafterbook.work;

import static org.rafterbook.exchange.PrintPage.Column.number;
import static org.rafterbook.exchange.PrintPage.Column.text;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.PrintPage;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.Counted;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;

/**
 * A season as a page for print: bests, each model's versions, evenings and every flight.
 *
 * @param name which season, such as "2025 to 2026"
 * @param flyer empty where the flyer gave no name
 */
public record SeasonReport(Season season, String name, String flyer, DisplayUnits units) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    /** The whole page. */
    public String html() {
        PrintPage page = new PrintPage("Season " + name)
                .paragraph(head())
                .paragraph(
                        "≥ stands before a time that was cut short: the model would have flown at least so long. Times"
                                + " and bests are a diary; whether a trim change raised them, flights of one day tell in"
                                + " Review. A margin stands with what it is uncertain by on its own; differences"
                                + " between versions of one model are far surer.");
        bests(page);
        season.byModel().forEach(model -> versions(page, model));
        evenings(page);
        flights(page);
        return page.html();
    }

    private String head() {
        long lower = season.flights().stream().filter(Season.Flown::atLeast).count();
        String where = String.join(", ", season.venues());
        return (flyer.isEmpty() ? "" : flyer + ". ")
                + Counted.of(season.flights().size(), "flight") + ", " + lower + " of them “at least”, on "
                + Counted.of(season.evenings().size(), "evening") + (where.isEmpty() ? "" : " in " + where) + "; "
                + (long) (season.aloftS() / 60) + " min in the air; " + Counted.of(season.motors(), "motor")
                + " flown, "
                + season.broken() + " broke.";
    }

    private void bests(PrintPage page) {
        QuantityFormat format = new QuantityFormat(units);
        List<List<String>> rows = new ArrayList<>();
        for (Season.Best best : season.bests()) {
            Season.Flown f = best.flight();
            rows.add(List.of(
                    model(f),
                    time(f),
                    day(f.date()),
                    f.version(),
                    margin(f.margin(), f.marginBand()),
                    format.text(Quantity.HEIGHT, best.ceilingM()),
                    best.className() == null ? "" : best.className()));
        }
        page.table(
                "Bests, clean flights only",
                List.of(
                        text("model"),
                        number("time"),
                        text("day"),
                        text("version"),
                        number("margin, %"),
                        number("under"),
                        text("class")),
                rows);
    }

    private void versions(PrintPage page, Season.ModelSeason model) {
        if (model.modelId() == null) {
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        for (Season.VersionSeason v : season.versions(model.modelId())) {
            rows.add(
                    0,
                    List.of(
                            v.version(),
                            String.join("; ", v.changes()),
                            day(v.first()),
                            day(v.last()),
                            String.valueOf(v.flights()),
                            margin(v.margin(), v.marginBand())));
        }
        page.table(
                model.model() + ", " + Counted.of(model.flights().size(), "flight") + " on "
                        + Counted.of(model.sessions(), "evening"),
                List.of(
                        text("version"),
                        text("what changed"),
                        text("first flown"),
                        text("last flown"),
                        number("flights"),
                        number("margin, %")),
                rows);
    }

    private void evenings(PrintPage page) {
        QuantityFormat format = new QuantityFormat(units);
        List<List<String>> rows = new ArrayList<>();
        for (Season.Evening e : season.evenings()) {
            rows.add(
                    0,
                    List.of(
                            day(e.visit().date()),
                            e.visit().venue(),
                            String.valueOf(e.flights()),
                            e.bestS() == null ? QuantityFormat.UNKNOWN : ClockTime.minutesSeconds(e.bestS()),
                            format.text(Quantity.TEMPERATURE, e.visit().temperatureK()),
                            String.valueOf(e.changes()),
                            e.visit().goal() == null ? "" : e.visit().goal()));
        }
        page.table(
                "Evenings",
                List.of(
                        text("day"),
                        text("venue"),
                        number("flights"),
                        number("best"),
                        number("air"),
                        number("changes"),
                        text("aim")),
                rows);
    }

    private void flights(PrintPage page) {
        QuantityFormat format = new QuantityFormat(units);
        List<List<String>> rows = new ArrayList<>();
        for (Season.Flown f : season.flights()) {
            rows.add(List.of(
                    day(f.date()),
                    model(f),
                    f.version(),
                    time(f),
                    margin(f.margin(), f.marginBand()),
                    format.text(Quantity.TORQUE, f.torqueNm()),
                    f.notes() == null ? "" : f.notes()));
        }
        page.table(
                "Every flight",
                List.of(
                        text("day"),
                        text("model"),
                        text("version"),
                        number("time"),
                        number("margin, %"),
                        number("torque"),
                        text("notes")),
                rows);
    }

    private static String day(LocalDate date) {
        return DAY.format(date);
    }

    private static String model(Season.Flown f) {
        return f.fraction() == 1
                ? f.model()
                : f.model() + ", " + QuantityFormat.rounded(f.fraction(), 2) + " of a motor";
    }

    private static String time(Season.Flown f) {
        Double seconds = f.durationS();
        if (seconds == null) {
            return QuantityFormat.UNKNOWN;
        }
        return f.atLeast() ? ClockTime.atLeast(seconds) : ClockTime.minutesSeconds(seconds);
    }

    /** A margin in per cent with what it is uncertain by on its own, such as "5.5 ± 8". */
    public static String margin(@Nullable Double fraction, @Nullable Double band) {
        return fraction == null
                ? QuantityFormat.UNKNOWN
                : QuantityFormat.rounded(fraction * 100, 1)
                        + (band == null ? "" : " ± " + QuantityFormat.rounded(band * 100, 0));
    }
}
