package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.OneEvening;
import org.rafterbook.flight.MoistAir;
import org.rafterbook.logbook.Mode;
import org.rafterbook.work.Book;
import org.rafterbook.work.ImportChoices;
import org.rafterbook.work.ImportFile;
import org.rafterbook.work.Progress;
import org.rafterbook.work.ReviewChange;

/** A season that comes in as a plain file is reviewed as the engine reviews it: nothing is lost on the way. */
class ImportedSeasonTest {

    private static final double TEMPERATURE_K = 293.15;
    private static final double HUMIDITY = 0.5;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43})
    void anImportedSeasonIsReviewedAsItWasFlown(long seed) {
        SimulatedSeason season = SimulatedSeason.of(Scenario.BASE, seed, SimulatedSeason.threshold(Scenario.BASE));
        ReviewAnswer direct = Effects.of(season.input());
        try (Book book = Book.open(folder.resolve("season.rafterbook"), Mode.CREATE, OneEvening.CLOCK)) {
            ImportFile file = new ImportFile("flights.csv", table(season.input()));
            book.imports().carryOut(book.imports().plan(List.of(file), ImportChoices.none()));
            List<ReviewChange> changes = book.review()
                    .review(book.review().models().get(0).id(), true, Progress.none())
                    .changes();
            assertThat(changes).hasSameSizeAs(direct.changes());
            for (int i = 0; i < changes.size(); i++) {
                ChangeEffect said = direct.changes().get(i);
                ChangeEffect imported = changes.get(i).said();
                assertThat(imported.setting().label()).isEqualTo(said.setting().label());
                assertThat(imported.from().same(said.from()) && imported.to().same(said.to()))
                        .isTrue();
                assertThat(imported.comparison()).isEqualTo(said.comparison());
                assertThat(imported.word()).isEqualTo(said.word());
                Estimate effect = said.effect();
                if (effect == null) {
                    assertThat(imported.effect()).isNull();
                } else {
                    assertThat(imported.effect().mean()).isCloseTo(effect.mean(), within(1e-9));
                    assertThat(imported.effect().high()).isCloseTo(effect.high(), within(1e-9));
                }
            }
        }
    }

    /** Pressure is chosen so that the air has the density simulated. */
    private static String table(ReviewInput input) {
        StringBuilder text =
                new StringBuilder("model,session_date,venue,duration_s,ending,cut_short,turns_wound,turns_left,"
                        + "temperature_c,humidity_percent,pressure_hpa,setting.a0,setting.a1,setting.a2,setting.a3\n");
        for (ReviewFlight f : input.flights()) {
            text.append("simulated,").append(f.sessionDate()).append(",Saltmarsh Sports Hall,");
            text.append(f.durationS()).append(f.isExact() ? ",clean,no," : ",touched,yes,");
            text.append(f.motor().turnsUsed() + 120).append(",120,20,50,").append(pressurePa(f.densityKgM3()) / 100);
            for (int k = 0; k < 4; k++) {
                text.append(',').append(f.settings().get("a" + k).label());
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static double pressurePa(double density) {
        double low = 60_000;
        double high = 115_000;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (MoistAir.densityKgPerM3(TEMPERATURE_K, middle, HUMIDITY) < density) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
