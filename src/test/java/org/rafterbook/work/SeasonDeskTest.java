package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
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
}
