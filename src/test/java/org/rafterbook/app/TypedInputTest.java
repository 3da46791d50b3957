package org.rafterbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.logbook.Mode;
import org.rafterbook.work.Book;

/** What a flyer types into the fields of the Hall, key by key: letters of units among the letters that are keys. */
class TypedInputTest {

    @TempDir
    Path folder;

    private Path logbook() {
        return folder.resolve("a.rafterbook");
    }

    private WindowRobot open() {
        try (Book book = Book.open(logbook(), Mode.CREATE, OneEvening.CLOCK)) {
            book.riggings().addModel("Teasel");
        }
        WindowRobot window = WindowRobot.open(logbook());
        window.sees("Teasel t1");
        return window;
    }

    private JsonNode flights() {
        return CommandRun.of("flights", "--logbook", logbook(), "--json").json().get("flights");
    }

    @Test
    void timesAreShownInFullAndLargeBeforeTheyAreKept() {
        Map<String, String> times = new TreeMap<>(Map.of(
                "10:50", "10:50",
                "10.50 min", "10:30",
                "650 s", "10:50",
                "1050", "17:30",
                "10,5min", "10:30"));
        try (WindowRobot window = open()) {
            times.forEach((typed, shown) -> {
                window.press(KeyCode.ESCAPE, KeyCode.E).type(typed);
                assertThat(window.field("Another watch").getText()).isEqualTo(typed);
                Labeled large = window.label(shown);
                assertThat(large).as(typed + " shown as " + shown).isNotNull();
                assertThat(large.getFont().getSize())
                        .isGreaterThan(
                                2 * window.label("This evening").getFont().getSize());
            });
            assertThat(flights()).isEmpty();
            window.press(KeyCode.ENTER).sees("How did it end?");
        }
        assertThat(flights())
                .singleElement()
                .satisfies(f -> assertThat(f.get("duration_s").asDouble()).isEqualTo(650));
    }

    @Test
    void whatCannotBeReadIsRefusedBesideItsFieldAndStays() {
        try (WindowRobot window = open()) {
            for (String unreadable : new String[] {"10:75", "10 mm", "1.050,5.2"}) {
                window.press(KeyCode.ESCAPE, KeyCode.E)
                        .type(unreadable)
                        .press(KeyCode.ENTER)
                        .sees("×");
                assertThat(window.field("Another watch").getText()).isEqualTo(unreadable);
            }
            window.press(KeyCode.ESCAPE, KeyCode.N)
                    .into("Loop")
                    .type("14 apples")
                    .press(KeyCode.TAB);
            window.sees("× ");
            assertThat(window.field("Loop").getText()).isEqualTo("14 apples");
        }
        assertThat(flights()).isEmpty();
    }

    @Test
    void lengthsAndTorquesAreReadInAnyUnit() {
        try (WindowRobot window = open()) {
            window.press(KeyCode.N);
            Map.of("14.5 in", "368.3 mm", "14 1/2 in", "368.3 mm", "31 mm", "31 mm", "3/32 in", "2.3813 mm")
                    .forEach((typed, shown) -> {
                        window.press(KeyCode.A).into("Loop");
                        window.together(KeyCode.CONTROL, KeyCode.A).type(typed).sees(shown);
                        assertThat(window.field("Loop").getText()).isEqualTo(typed);
                    });
            window.press(KeyCode.ESCAPE, KeyCode.N, KeyCode.L)
                    .type("0,25 in-oz")
                    .sees("0.25 in-oz = 1.7654 N·mm");
            window.press(KeyCode.ENTER).sees("1.8 N·mm launch torque");
        }
    }
}
