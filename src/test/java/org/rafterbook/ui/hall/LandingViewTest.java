package org.rafterbook.ui.hall;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
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
import org.rafterbook.ui.NoDialogs;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Press;
import org.rafterbook.ui.look.Look;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.work.Background;
import org.rafterbook.work.MarginText;

@FxTest
class LandingViewTest {

    @TempDir
    Path folder;

    /** Answers of the logbook that are still on their way while {@code slow}. */
    private final Deque<Runnable> onTheWay = new ArrayDeque<>();

    private boolean slow;
    private HallBench hall;
    private Stage stage;
    private Scene scene;

    @BeforeEach
    void open() {
        Errors errors = new Errors();
        FxBackground background = new FxBackground(
                Background.onTheSpot(),
                answer -> {
                    if (slow) {
                        onTheWay.add(answer);
                    } else {
                        answer.run();
                    }
                },
                errors);
        Tools tools = new Tools(errors, new Look(), background, new NoDialogs());
        hall = new HallBench(folder.resolve("hall.rafterbook"), tools, (r, m) -> MarginText.NO_GEOMETRY);
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

    private void arrive() {
        slow = false;
        while (!onTheWay.isEmpty()) {
            onTheWay.remove().run();
        }
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
        slow = true;
        landAfter(300);
        Fx.key(scene, KeyCode.N, "n");
        type("steady");
        arrive();
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
        slow = true;
        landAfter(310);
        assertThat(note().getText()).isEmpty();
        arrive();
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
