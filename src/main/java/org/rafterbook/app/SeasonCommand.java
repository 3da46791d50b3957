package org.rafterbook.app;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.Counted;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Book;
import org.rafterbook.work.Progress;
import org.rafterbook.work.Season;
import org.rafterbook.work.SeasonDesk;
import org.rafterbook.work.SeasonDocument;
import org.rafterbook.work.SeasonReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the Season screen shows: models and their versions, sessions, bests. */
@Command(name = "season", description = "Models and versions flown in a season, its sessions, and bests as a diary.")
final class SeasonCommand implements Callable<Integer> {

    private static final QuantityFormat FORMAT = new QuantityFormat(DisplayUnits.METRIC);

    @Mixin
    private final Answer answer = new Answer();

    @Mixin
    private final LogbookChoice logbook = new LogbookChoice();

    @Option(
            names = "--season",
            paramLabel = "YEAR",
            description = "The year in which the season begins, in July; the newest if absent.")
    private @Nullable Integer year;

    @Override
    public Integer call() {
        try (Book book = logbook.open(Mode.READ_ONLY)) {
            SeasonDesk.Seasons seasons = book.season().load(year, Progress.none());
            if (year != null && !year.equals(seasons.year())) {
                throw UserError.badInput("No season in this logbook begins in " + year + ".");
            }
            if (answer.json()) {
                answer.document(SeasonDocument.of(seasons));
            } else if (seasons.year() == null) {
                answer.line("No flights yet.");
            } else {
                text(seasons.year(), seasons.season());
            }
        }
        return 0;
    }

    private void text(int begins, Season season) {
        long lower = season.flights().stream().filter(Season.Flown::atLeast).count();
        answer.line("Season " + begins + " to " + (begins + 1) + ": "
                + Counted.of(season.flights().size(), "flight") + ", " + lower + " of them “at least”; "
                + Counted.of(season.evenings().size(), "session") + "; "
                + Counted.of(season.motors(), "motor") + " flown, " + season.broken() + " broke.");
        for (Season.ModelSeason model : season.byModel()) {
            answer.line("");
            answer.line(model.model() + ": " + Counted.of(model.flights().size(), "flight") + ", "
                    + Counted.of(model.versions(), "version") + ", " + Counted.of(model.sessions(), "session"));
            if (model.modelId() != null) {
                versions(season.versions(model.modelId()));
            }
        }
        answer.line("");
        answer.line("Sessions, the newest first");
        answer.table(
                List.of("day", "venue", "flights", "best", "air", "changes", "aim"),
                season.evenings().stream().map(SeasonCommand::row).toList());
        answer.line("");
        answer.line("Bests of clean flights: a diary; what raised them, flights of one day tell in review.");
        answer.table(
                List.of("model", "version", "time", "day", "margin %", "under", "class"),
                season.bests().stream().map(SeasonCommand::row).toList());
    }

    private void versions(List<Season.VersionSeason> versions) {
        answer.table(
                List.of("version", "first flown", "last flown", "flights", "margin %", "what changed"),
                versions.stream()
                        .map(v -> List.of(
                                v.version(),
                                v.first().toString(),
                                v.last().toString(),
                                String.valueOf(v.flights()),
                                SeasonReport.margin(v.margin(), v.marginBand()),
                                String.join("; ", v.changes())))
                        .toList());
    }

    private static List<String> row(Season.Evening evening) {
        Season.Visit visit = evening.visit();
        return List.of(
                visit.date().toString(),
                visit.venue(),
                String.valueOf(evening.flights()),
                evening.bestS() == null ? "-" : ClockTime.minutesSeconds(evening.bestS()),
                FORMAT.text(Quantity.TEMPERATURE, visit.temperatureK()),
                String.valueOf(evening.changes()),
                visit.goal() == null ? "" : visit.goal());
    }

    private static List<String> row(Season.Best best) {
        Season.Flown flight = best.flight();
        Double seconds = flight.durationS();
        String part = flight.fraction() == 1 ? "" : ", " + QuantityFormat.rounded(flight.fraction(), 2) + " of a motor";
        return List.of(
                flight.model() + part,
                flight.version(),
                seconds == null ? "-" : ClockTime.minutesSeconds(seconds),
                flight.date().toString(),
                SeasonReport.margin(flight.margin(), flight.marginBand()),
                FORMAT.text(Quantity.HEIGHT, best.ceilingM()),
                best.className() == null ? "" : best.className());
    }
}
