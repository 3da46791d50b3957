package org.rafterbook.ui.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.ui.FxTest;

@FxTest
class MassesFormTest {

    @TempDir
    Path folder;

    private BenchDriver window;

    @BeforeEach
    void open() {
        window = new BenchDriver(folder.resolve("a.rafterbook"));
    }

    @AfterEach
    void close() {
        window.close();
    }

    private void takeBare() {
        window.take("Teasel", new Airframe(BenchDriver.teasel(2).surfaces(), List.of(), null, null));
        window.press(KeyCode.A, KeyCode.P);
    }

    private void type(String name, String grams, String at) {
        window.type(name);
        window.type("Mass", grams);
        window.type("Centre aft", at);
        window.press(KeyCode.ENTER);
    }

    private List<MassItem> masses() {
        return Objects.requireNonNull(window.now().geometry()).masses();
    }

    @Test
    void oneMassAfterTheOtherIsTypedFromTheFirstOnWithoutLeavingTheFields() {
        takeBare();
        assertThat(window.focus()).isEqualTo("Name");
        type("wing", "0.5", "150");
        assertThat(window.focus()).isEqualTo("Name");
        assertThat(window.typed("Name")).isEmpty();
        assertThat(window.typed("Mass")).isEmpty();
        type("stick", "1.3", "170");
        type("noseblock", "0.4", "-3");
        assertThat(masses()).extracting(MassItem::name).containsExactly("wing", "stick", "noseblock");
        assertThat(masses().get(0).aftM()).isCloseTo(0.15, within(1e-12));
    }

    @Test
    void aMotorNeverGivenHasNeitherMassNorPlace() {
        takeBare();
        assertThat(window.cells()).containsExactly("motor", "–", "–", "", "add a mass", "", "", "");
    }

    @Test
    void theTableHasRoomForEveryRowAndNoScrollBar() {
        takeBare();
        for (String name : List.of("wing", "stick", "noseblock", "tail", "wheel")) {
            type(name, "0.5", "150");
            assertThat(window.scrollBars(window.table())).isEmpty();
        }
        assertThat(window.table().getItems()).hasSize(7);
    }

    @Test
    void whatIsTypedStaysWhenTheModelIsLoadedAgain() {
        takeBare();
        type("wing", "0.5", "150");
        window.type("stick");
        window.type("Mass", "1.3");
        window.book.bench().circle(4);
        window.load();
        assertThat(window.typed("Name")).isEqualTo("stick");
        assertThat(window.typed("Mass")).isEqualTo("1.3");
    }

    @Test
    void anExistingMassIsPickedInTheTableAndEnterGoesToItsFields() {
        window.take("Teasel", BenchDriver.teasel(2));
        window.press(KeyCode.A, KeyCode.P);
        assertThat(window.focus()).isEqualTo("masses");
        window.press(KeyCode.DOWN);
        assertThat(window.typed("Name")).isEqualTo("stick");
        assertThat(window.isFramed("stick")).isTrue();
        assertThat(window.isFramed("wing")).isFalse();
        window.press(KeyCode.ENTER);
        assertThat(window.focus()).startsWith("Mass");
        window.type("1.4");
        window.press(KeyCode.ENTER);
        assertThat(masses().get(1).massKg()).isCloseTo(0.0014, within(1e-12));
        assertThat(window.typed("Name")).isEmpty();
    }
}
