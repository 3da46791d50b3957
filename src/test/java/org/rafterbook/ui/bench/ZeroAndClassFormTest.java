package org.rafterbook.ui.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import javafx.scene.input.KeyCode;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.rules.ClassSheet;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.work.Rigged;

@FxTest
class ZeroAndClassFormTest {

    @TempDir
    Path folder;

    private BenchDriver window;
    private Rigged first;

    @BeforeEach
    void open() {
        window = new BenchDriver(folder.resolve("a.rafterbook"));
        first = window.take("Teasel", BenchDriver.teasel(2));
    }

    @AfterEach
    void close() {
        window.close();
    }

    private void knowNeutral() {
        window.press(KeyCode.A, KeyCode.Z);
        window.type("This version's margin was", "0");
        window.type("How it is known", "held every speed");
        window.press(KeyCode.ENTER);
    }

    @Test
    void onAnotherVersionTheFormTellsTheZeroAndItsVersionAndAnEmptyFieldTakesNothingBack() {
        knowNeutral();
        window.press(KeyCode.ESCAPE, KeyCode.F1, KeyCode.SPACE, KeyCode.SPACE, KeyCode.ENTER);
        window.press(KeyCode.F2, KeyCode.W, KeyCode.RIGHT, KeyCode.ENTER, KeyCode.A, KeyCode.Z);
        assertThat(window.now().name()).isEqualTo("t2");
        assertThat(window.sees("The zero is set by t1: neutral point moved by "))
                .isTrue();
        assertThat(window.sees("held every speed.")).isTrue();
        window.press(KeyCode.ENTER);
        assertThat(window.sees("× This is needed; the zero is taken back by its own button."))
                .isTrue();
        assertThat(zeroOf(first)).isNotNull();
        window.click("Take the zero back");
        assertThat(zeroOf(first)).isNull();
        window.press(KeyCode.Z);
        assertThat(window.sees("The zero is set by")).isFalse();
        assertThat(window.sees("Take the zero back")).isFalse();
    }

    @Test
    void theVersionThatSetTheZeroShowsItAndTakesItBackByItsKey() {
        knowNeutral();
        window.press(KeyCode.Z);
        assertThat(window.typed("This version's margin was")).isEqualTo("0");
        assertThat(window.typed("How it is known")).isEqualTo("held every speed");
        window.type("This version's margin was", "");
        window.press(KeyCode.ENTER);
        assertThat(zeroOf(first)).isNotNull();
        Fx.key(window.scene, KeyCode.DELETE, "", true, false);
        assertThat(zeroOf(first)).isNull();
    }

    private @Nullable Double zeroOf(Rigged version) {
        return window.book.riggings().version(version.version().id()).version().zeroShiftM();
    }

    @Test
    void theClassFormBeginsOnItsChooserAndEnterGoesOnToANewSheet() {
        window.press(KeyCode.A, KeyCode.L);
        assertThat(window.focus()).isEqualTo("Flies in");
        window.press(KeyCode.DOWN, KeyCode.ENTER);
        assertThat(window.focus()).isEqualTo("Class");
        window.type("Hall");
        window.type("Year", "2026");
        window.press(KeyCode.ENTER, KeyCode.L);
        assertThat(window.focus()).isEqualTo("Flies in");
        assertThat(((ClassSheet) Objects.requireNonNull(
                                window.chooser("Flies in").getValue()))
                        .name())
                .isEqualTo("Hall");
        window.press(KeyCode.UP, KeyCode.ENTER);
        assertThat(window.sees("none")).isTrue();
    }
}
