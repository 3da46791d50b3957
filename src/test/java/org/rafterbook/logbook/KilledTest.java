package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rafterbook.logbook.Samples.list;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.flight.Flight;

class KilledTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void whatWasReportedAsKeptSurvivesAKill(long seed) throws Exception {
        Path file = folder.resolve("season.rafterbook");
        OtherProgram flying = OtherProgram.start("fly", file.toString());
        List<String> kept = new ArrayList<>();
        int enough = 20 + new Random(seed).nextInt(200);
        while (kept.size() < enough) {
            kept.add(flying.line());
        }
        flying.kill();
        for (String line = flying.line(); line != null; line = flying.line()) {
            // What it had printed before the kill but nobody had read; a line cut off is no id.
            if (line.length() == 36) {
                kept.add(line);
            }
        }

        try (Logbook logbook = Logbook.open(file, Mode.EXISTING)) {
            assertThat(list(logbook, r -> r.all(Flight.class)))
                    .as("seed %d", seed)
                    .extracting(Flight::id)
                    .containsAll(kept);
            assertThat(logbook.check()).isEmpty();
            assertThat(logbook.undo().why()).isEqualTo("Flight");
        }
    }
}
