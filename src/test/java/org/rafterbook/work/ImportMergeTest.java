package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.OneEvening;
import org.rafterbook.airframe.Model;
import org.rafterbook.logbook.Mode;

/** Rows that come in by parts, in any order, end up as if they had come all at once. */
class ImportMergeTest {

    private static final String HEAD = "model,session_date,launched_at,duration_s,motor,turns_wound,setting.pitch\n";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {611, 612, 613, 614, 615, 616})
    void partsInAnyOrderGiveTheSameStripAsTheWhole(long seed) {
        Random random = new Random(seed);
        List<String> rows = rows(random);
        List<String> shuffled = new ArrayList<>(rows);
        Collections.shuffle(shuffled, random);
        try (Book whole = Book.open(folder.resolve("whole"), Mode.CREATE, OneEvening.CLOCK);
                Book parts = Book.open(folder.resolve("parts"), Mode.CREATE, OneEvening.CLOCK)) {
            take(whole, rows);
            for (int from = 0; from < shuffled.size(); ) {
                int to = Math.min(shuffled.size(), from + 1 + random.nextInt(12));
                take(parts, shuffled.subList(from, to));
                from = to;
            }
            assertThat(told(parts)).isEqualTo(told(whole));
            assertThat(parts.logbook().check()).isEmpty();
        }
    }

    private static List<String> rows(Random random) {
        List<String> rows = new ArrayList<>();
        LocalDate day = LocalDate.of(2025, 11, 4);
        int pitch = 480;
        for (int session = 0; session < 5; session++) {
            for (int i = 0; i < 9; i++) {
                pitch = random.nextInt(3) == 0 ? 470 + 10 * random.nextInt(3) : pitch;
                String model = random.nextInt(3) == 0 ? "Quire" : "Teasel";
                rows.add(model + "," + day + "," + day.atTime(19, 0).plusMinutes(10L * i) + "," + (500 + rows.size())
                        + ",M" + random.nextInt(3) + "," + (1500 + rows.size()) + "," + pitch + "\n");
            }
            day = day.plusDays(7);
        }
        return rows;
    }

    private static void take(Book book, List<String> rows) {
        book.imports()
                .carryOut(book.imports()
                        .plan(
                                List.of(new ImportFile("flights.csv", HEAD + String.join("", rows))),
                                ImportChoices.none()));
    }

    /** Flights in flying order, each with its place, the pitch flown, the rigging's place and the wind's number. */
    private static List<String> told(Book book) {
        List<String> told = new ArrayList<>();
        for (Model model : book.riggings().models()) {
            List<Rigged> strip = book.riggings().strip(model.id());
            book.logbook().read(r -> r.flights().ofModel(model.id())).forEach(line -> {
                Rigged rigged = strip.stream()
                        .filter(s -> s.rigging().id().equals(line.rigging().id()))
                        .findFirst()
                        .orElseThrow();
                told.add(model.name() + " " + line.flight().durationS() + " order "
                        + line.flight().ordinal()
                        + " rigging " + rigged.rigging().ordinal() + " of " + strip.size() + " at "
                        + rigged.values().values() + " wind " + line.motor().name() + "/"
                        + line.wind().ordinal());
            });
        }
        return told;
    }
}
