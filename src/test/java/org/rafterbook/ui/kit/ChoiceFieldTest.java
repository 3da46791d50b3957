package org.rafterbook.ui.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.ListCell;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.rafterbook.ui.Fx;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

class ChoiceFieldTest {

    private final FxRobot robot = new FxRobot();
    private final List<String> chosen = new ArrayList<>();
    private ChoiceField<String> field;
    private Stage stage;

    @BeforeEach
    void open() {
        Fx.run(() -> {
            field = new ChoiceField<String>("Model", s -> s).onChosen(chosen::add);
            field.offer(List.of("Marram", "Quire", "Teasel"), null);
            stage = Fx.window(new VBox(field));
            field.open();
        });
        waitFor(() -> field.box().isShowing());
    }

    @AfterEach
    void close() {
        Fx.run(stage::close);
    }

    private static void waitFor(Callable<Boolean> condition) {
        try {
            WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, condition);
        } catch (TimeoutException e) {
            throw new AssertionError(e);
        }
        WaitForAsyncUtils.waitForFxEvents(1);
    }

    private String shown() {
        return Fx.on(field::chosen);
    }

    @Test
    void arrowsOnlyMoveInTheOpenListAndEnterChooses() {
        robot.type(KeyCode.DOWN, KeyCode.DOWN, KeyCode.DOWN, KeyCode.UP);
        waitFor(() -> "Quire".equals(shown()));
        assertThat(chosen).isEmpty();
        robot.type(KeyCode.ENTER);
        waitFor(() -> !field.box().isShowing());
        assertThat(chosen).containsExactly("Quire");
        assertThat(shown()).isEqualTo("Quire");
    }

    @Test
    void lettersGoToTheFirstChoiceThatBeginsWithThem() {
        robot.type(KeyCode.T);
        waitFor(() -> "Teasel".equals(shown()));
        assertThat(chosen).isEmpty();
        robot.type(KeyCode.M, KeyCode.A);
        waitFor(() -> "Marram".equals(shown()));
        robot.type(KeyCode.ENTER);
        waitFor(() -> !field.box().isShowing());
        assertThat(chosen).containsExactly("Marram");
    }

    @Test
    void escapeLeavesWhatWasChosenBefore() {
        robot.type(KeyCode.DOWN, KeyCode.ENTER);
        waitFor(() -> !field.box().isShowing());
        Fx.run(field::open);
        robot.type(KeyCode.DOWN, KeyCode.ESCAPE);
        waitFor(() -> !field.box().isShowing());
        assertThat(chosen).containsExactly("Marram");
        assertThat(shown()).isEqualTo("Marram");
    }

    @Test
    void spaceOpensTheListAndChoosesNothing() {
        robot.type(KeyCode.DOWN, KeyCode.ENTER);
        waitFor(() -> !field.box().isShowing());
        robot.type(KeyCode.SPACE);
        waitFor(() -> field.box().isShowing());
        robot.type(KeyCode.DOWN, KeyCode.ENTER);
        waitFor(() -> !field.box().isShowing());
        assertThat(chosen).containsExactly("Marram", "Quire");
    }

    @Test
    void anOfferMadeWhileTheListIsOpenWaitsUntilItIsClosed() {
        robot.type(KeyCode.DOWN, KeyCode.DOWN);
        waitFor(() -> "Quire".equals(shown()));
        Fx.run(() -> field.offer(List.of("Marram", "Quire", "Teasel", "Sedge"), null));
        robot.type(KeyCode.ENTER);
        waitFor(() -> !field.box().isShowing());
        assertThat(chosen).containsExactly("Quire");
        assertThat(Fx.on(() -> List.copyOf(field.box().getItems()))).contains("Sedge");
    }

    @Test
    void aClickChooses() {
        Node third = Fx.on(() -> {
            Set<Node> cells = Window.getWindows().stream()
                    .filter(w -> w != stage)
                    .findFirst()
                    .orElseThrow()
                    .getScene()
                    .getRoot()
                    .lookupAll(".list-cell");
            return cells.stream()
                    .filter(c -> "Teasel".equals(((ListCell<?>) c).getText()))
                    .findFirst()
                    .orElseThrow();
        });
        robot.clickOn(third);
        waitFor(() -> !field.box().isShowing());
        assertThat(chosen).containsExactly("Teasel");
    }

    @Test
    void oneThatWasOnlyJustMadeOpensToo() {
        Fx.run(stage::close);
        Fx.run(() -> {
            VBox page = new VBox();
            stage = Fx.window(page);
            field = new ChoiceField<String>("Back to", s -> s).onChosen(chosen::add);
            field.offer(List.of("t1", "t2", "t3"), "t2");
            page.getChildren().add(field);
            field.open();
        });
        waitFor(() -> field.box().isShowing());
        robot.type(KeyCode.UP, KeyCode.ENTER);
        waitFor(() -> !field.box().isShowing());
        assertThat(chosen).containsExactly("t1");
    }
}
