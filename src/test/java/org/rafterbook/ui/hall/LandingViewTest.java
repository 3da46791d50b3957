package org.rafterbook.ui.hall;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.action.Press;
import org.rafterbook.work.MarginText;

@FxTest
class LandingViewTest {

    @TempDir
    Path folder;

    private final LateAnswers answers = new LateAnswers();
    private HallBench hall;
    private Stage stage;
    private Scene scene;

    @BeforeEach
    void open() {
        hall = new HallBench(folder.resolve("hall.rafterbook"), answers.tools(), (r, m) -> MarginText.NO_GEOMETRY);
        stage = Fx.window(hall.shell);
        scene = stage.getScene();
        hall.desk.addModel("Teasel");
        hall.model.load();
        Fx.layOut(scene);
        hall.shell.requestFocus();
    }

    @AfterEach
    void close() {
        stage.close();
        hall.close();
    }

    private TextField note() {
        return (TextField) scene.getRoot().lookupAll(".text-field").stream()
                .filter(node -> "Note".equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow();
    }

    private void type(String text) {
        text.chars().forEach(c -> Fx.key(scene, KeyCode.UNDEFINED, String.valueOf((char) c)));
    }

    private void landAfter(double seconds) {
        Press start = new Press(1, hall.clock.instant());
        hall.model.preparing().start(start);
        hall.model
                .air()
                .stop(new Press(1 + Math.round(seconds * 1e9), start.at().plusMillis(Math.round(seconds * 1000))));
        Fx.layOut(scene);
    }

    @Test
    void whatIsTypedWhileTheLandingIsStillBeingKeptStays() {
        answers.slow();
        landAfter(300);
        Fx.key(scene, KeyCode.N, "n");
        type("steady");
        answers.arrive();
        assertThat(note().getText()).isEqualTo("steady");
        Fx.key(scene, KeyCode.ENTER, "\r");
        assertThat(hall.data().evening().flights().get(0).flight().notes()).isEqualTo("steady");
    }

    @Test
    void theNextFlightBeginsWithEmptyFields() {
        landAfter(300);
        Fx.key(scene, KeyCode.N, "n");
        type("steady");
        Fx.key(scene, KeyCode.ENTER, "\r");
        answers.slow();
        landAfter(310);
        assertThat(note().getText()).isEmpty();
        answers.arrive();
        assertThat(note().getText()).isEmpty();
    }

    @Test
    void aNoteTakenBackIsGoneFromItsField() {
        landAfter(300);
        Fx.key(scene, KeyCode.N, "n");
        type("steady");
        hall.shell.requestFocus();
        Fx.key(scene, KeyCode.Z, "", true, false);
        assertThat(note().getText()).isEmpty();
        assertThat(hall.data().evening().flights().get(0).flight().notes()).isNull();
    }
}
