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
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;

@FxTest
class SurfaceFormTest {

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

    private void takeRibs(Rib... ribs) {
        window.take(
                "Teasel",
                new Airframe(
                        List.of(Surface.symmetric("wing", Role.WING, 0.1, 0.04, 0.0375, 0.04, List.of(ribs))),
                        List.of(),
                        null,
                        null));
        window.press(KeyCode.A, KeyCode.DIGIT1);
    }

    private static Rib rib(double out, double edge, double chord) {
        return new Rib(out, edge, chord, 0, 0);
    }

    private List<Rib> ribs() {
        return Objects.requireNonNull(window.now().geometry()).surfaces().get(0).ribs();
    }

    @Test
    void cellsAndAnglesShowTwoDecimalsButKeepWhatStandsToTheLastDigit() {
        Rib middle = rib(0.12, 0.005701829, 0.0721925);
        takeRibs(rib(0, 0, 0.095), middle, rib(0.18415, 0.00875, 0.06));
        assertThat(window.typed("Rib 2, edge")).isEqualTo("5.7");
        assertThat(window.typed("Rib 2, chord")).isEqualTo("72.19");
        assertThat(window.typed("Rib 3, out")).isEqualTo("184.15");
        assertThat(window.typed("Incidence")).isEqualTo("2.15");
        window.type("Above the stick", "50");
        window.press(KeyCode.ENTER);
        assertThat(ribs().get(1)).isEqualTo(middle);
        window.press(KeyCode.DIGIT1);
        window.type("or posts differ by", "3");
        window.type("posts apart", "80");
        assertThat(window.typed("Incidence")).isEqualTo("2.15");
    }

    @Test
    void aCellReadsBackAnotherUnit() {
        takeRibs(rib(0, 0, 0.095), rib(0.12, 0.005, 0.07), rib(0.18, 0.01, 0.06));
        window.type("Rib 2, chord", "3 in");
        assertThat(window.sees("Rib 2, chord: 3 in = 76.2 mm")).isTrue();
        window.type("Rib 2, chord", "75");
        assertThat(window.sees("Rib 2, chord: ")).isFalse();
    }

    @Test
    void crossedRibsAreRefusedBesideTheirRowsAndTheRibIsMarked() {
        takeRibs(rib(0, 0, 0.095), rib(0.12, 0.005, 0.07), rib(0.18, 0.01, 0.06));
        window.type("Rib 2, out", "190");
        assertThat(window.sees("× Rib 3, out: 180.0 mm does not lie outside rib 2 at 190.0 mm."))
                .isTrue();
        assertThat(window.isMarked("Rib 3, out")).isTrue();
        assertThat(window.widthOf("Rib 3, out")).isCloseTo(window.widthOf("Rib 3, twist"), within(2.0));
        window.type("Rib 3, chord", "0");
        window.press(KeyCode.ENTER);
        assertThat(window.isMarked("Rib 3, out")).isTrue();
        assertThat(ribs().get(1).outM()).isEqualTo(0.12);
        window.type("Rib 2, out", "130");
        assertThat(window.isMarked("Rib 3, out")).isFalse();
        window.press(KeyCode.ENTER);
        assertThat(ribs().get(1).outM()).isEqualTo(0.13);
        assertThat(ribs().get(2).chordM()).isZero();
    }

    @Test
    void theDrawingGoesBackToTheVersionAndSaysSoWhileNothingCanBeDrawnOfWhatIsTyped() {
        takeRibs(rib(0, 0, 0.095), rib(0.12, 0.005, 0.07), rib(0.18, 0.01, 0.06));
        window.type("Leading edge at", "140");
        assertThat(edgeDrawn()).isEqualTo(0.14);
        assertThat(window.sees("still those of t1")).isFalse();
        window.type("Rib 2, out", "190");
        assertThat(edgeDrawn()).isEqualTo(0.1);
        assertThat(window.sees("Not drawn yet. Drawing and figures are still those of t1."))
                .isTrue();
        window.type("Rib 2, out", "110");
        assertThat(edgeDrawn()).isEqualTo(0.14);
        assertThat(window.sees("still those of t1")).isFalse();
        window.type("Leading edge at", "abc");
        assertThat(edgeDrawn()).isEqualTo(0.1);
        window.type("Leading edge at", "140");
        window.type("Tilt", "85");
        assertThat(edgeDrawn()).isEqualTo(0.1);
        assertThat(window.sees("Drawing and figures are still those of t1.")).isTrue();
    }

    private double edgeDrawn() {
        return Objects.requireNonNull(window.drawing().subject().airframe())
                .surfaces()
                .get(0)
                .edgeAftM();
    }

    @Test
    void aNewSurfaceTurnedToAWingIsProposedWithAWingsCamberUnlessItWasTyped() {
        takeRibs(rib(0, 0, 0.095), rib(0.18, 0.01, 0.06));
        window.press(KeyCode.ESCAPE, KeyCode.S);
        assertThat(window.typed("Name")).isEqualTo("tail");
        assertThat(window.typed("Camber")).isEqualTo("0");
        window.click("wing");
        assertThat(window.typed("Name")).isEqualTo("second wing");
        assertThat(window.typed("Camber")).isEqualTo("4");
        window.type("Camber", "3.5");
        window.type("Name", "lower wing");
        window.click("fin");
        assertThat(window.typed("Name")).isEqualTo("lower wing");
        assertThat(window.typed("Camber")).isEqualTo("3.5");
    }

    @Test
    void whatIsRefusedGetsTheCursorAndASentenceAtTheFootIsReadToItsEnd() {
        takeRibs(rib(0, 0, 0.095), rib(0.18, 0.01, 0.06));
        window.type("Moment coefficient", "x");
        window.type("Camber", "3");
        window.press(KeyCode.ENTER);
        assertThat(window.focus()).startsWith("Moment coefficient");
        window.type("Moment coefficient", "");
        window.type("Tilt", "85");
        window.press(KeyCode.ENTER);
        assertThat(window.isWhole("× \"wing\" is tilted by 85 degrees")).isTrue();
        assertThat(window.isWhole("Where both halves are not alike")).isTrue();
    }

    @Test
    void theKeysOfTheFormWorkWhileItsChooserHasTheFocus() {
        takeRibs(rib(0, 0, 0.095), rib(0.12, 0.005, 0.07), rib(0.18, 0.01, 0.06));
        window.chooser("Planform");
        Fx.key(window.scene, KeyCode.R, "", true, true);
        assertThat(window.focus()).isEqualTo("Rib 4, out");
        window.chooser("Planform");
        window.press(KeyCode.ENTER);
        assertThat(ribs()).hasSize(4);
    }
}
