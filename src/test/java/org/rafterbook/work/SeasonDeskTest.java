package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Mode;

class SeasonDeskTest {

    @TempDir
    Path folder;

    @Test
    void theDemoSeasonIsRememberedWholeAndComesInOnce() {
        try (Book book = Book.open(folder.resolve("demo.rafterbook"), Mode.CREATE, OneEvening.CLOCK)) {
            ImportSummary first = DemoFiles.into(book);
            Season season = book.season().load(null, Progress.none()).season();
            assertThat(season.flights()).hasSize(first.flights());
            assertThat(season.byModel())
                    .extracting(Season.ModelSeason::model)
                    .containsExactlyInAnyOrder("Teasel", "Marram", "Quire");
            assertThat(season.evenings()).hasSize(14);
            assertThat(season.evenings())
                    .anySatisfy(e -> assertThat(e.changes()).isPositive());
            assertThat(season.flights()).allSatisfy(f -> assertThat(f.margin()).isNotNull());
            assertThat(DemoFiles.into(book).addsNothing()).isTrue();
            assertThat(book.check()).isEmpty();
            assertThat(book.motors().load().motors()).hasSizeGreaterThan(25);
        }
    }

    @Test
    void aVisitWithoutFlightsBeginsNoSeason() {
        try (Book book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, OneEvening.CLOCK)) {
            book.imports()
                    .carryOut(book.imports()
                            .plan(
                                    List.of(new ImportFile(
                                            "f.csv", "model,session_date,duration_s\nTeasel,2024-11-05,521\n")),
                                    ImportChoices.none()));
            book.logbook()
                    .change(
                            "visit",
                            w -> w.insert(new Session(
                                    Logbook.newId(), null, LocalDate.parse("2026-01-20"), ZoneOffset.UTC, null, null)));
            SeasonDesk.Seasons seasons = book.season().load(null, Progress.none());
            assertThat(seasons.years()).containsExactly(2024);
            assertThat(seasons.season().flights()).hasSize(1);
        }
    }
}
