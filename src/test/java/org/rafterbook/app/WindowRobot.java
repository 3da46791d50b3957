package org.rafterbook.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.PopupWindow;
import javafx.stage.Stage;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.OnShow;
import org.rafterbook.ui.Window;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.work.Shelf;
import org.testfx.api.FxRobot;
import org.testfx.robot.BaseRobot;
import org.testfx.util.WaitForAsyncUtils;

/** The program's own window on a real logbook, and a robot at its keys: nothing reaches it but key presses and clicks. */
public final class WindowRobot implements AutoCloseable {

    private static final int PATIENCE_S = 40;
    private static final int SETTLE_MS = 200;

    /** A press of the robot's goes through the toolkit's queue several times before the scene hears of it. */
    private static final int HOPS = 6;

    private static final Map<Character, KeyCode> PLAIN = Map.of(
            ' ', KeyCode.SPACE,
            '.', KeyCode.PERIOD,
            ',', KeyCode.COMMA,
            '/', KeyCode.SLASH,
            '-', KeyCode.MINUS);

    private final FxRobot robot = new FxRobot();
    private final BaseRobot base = robot.robotContext().getBaseRobot();
    private final Runnable end;
    private final Stage stage;

    private WindowRobot(Runnable end, Stage stage) {
        this.end = end;
        this.stage = stage;
    }

    /** Takes the keys of a program that somebody else starts and ends. */
    static WindowRobot atTheRunningProgram() {
        return new WindowRobot(() -> {}, stage());
    }

    /** Starts the program on the logbook, as a flyer does, and waits for its first screen. */
    public static WindowRobot open(Path logbook) {
        Fx.start();
        Shelf shelf = new Shelf(logbook, Clock.systemDefaultZone());
        Thread program = new Thread(() -> Window.untilClosed(shelf), "the program");
        program.start();
        WindowRobot opened = new WindowRobot(() -> end(program), stage());
        opened.idle();
        return opened;
    }

    /** The only window there is. */
    private static Stage stage() {
        List<Stage> found = new ArrayList<>();
        until("the window", () -> {
            found.clear();
            Fx.run(() -> javafx.stage.Window.getWindows().stream()
                    .filter(Stage.class::isInstance)
                    .map(Stage.class::cast)
                    .filter(s -> s.isShowing() && s.getTitle() != null)
                    .forEach(found::add));
            return found.size() == 1;
        });
        return found.get(0);
    }

    /** Presses keys one after the other. */
    public WindowRobot press(KeyCode... keys) {
        for (KeyCode key : keys) {
            together(key);
        }
        return this;
    }

    /** Presses keys together, such as Ctrl and Z. */
    public WindowRobot together(KeyCode... keys) {
        strike(keys);
        idle();
        return this;
    }

    private void strike(KeyCode... keys) {
        for (KeyCode key : keys) {
            base.pressKeyboard(key);
        }
        for (int i = keys.length - 1; i >= 0; i--) {
            base.releaseKeyboard(keys[i]);
        }
    }

    /** Types a text as on a keyboard, key by key, where the cursor is. */
    public WindowRobot type(String text) {
        for (char c : text.toCharArray()) {
            KeyCode key = PLAIN.getOrDefault(c, letterOrDigit(c));
            if (c == ':') {
                strike(KeyCode.SHIFT, KeyCode.SEMICOLON);
            } else if (key == null) {
                throw new IllegalArgumentException("no key for " + c);
            } else if (Character.isUpperCase(c)) {
                strike(KeyCode.SHIFT, key);
            } else {
                strike(key);
            }
        }
        idle();
        return this;
    }

    private static KeyCode letterOrDigit(char c) {
        return c < 128 && Character.isLetterOrDigit(c)
                ? KeyCode.getKeyCode(String.valueOf(Character.toUpperCase(c)))
                : null;
    }

    /** Clicks on what shows exactly this text. */
    WindowRobot click(String text) {
        awaitNode("\"" + text + "\"", node -> node instanceof Labeled l && text.equals(l.getText()));
        robot.clickOn(find(node -> node instanceof Labeled l && text.equals(l.getText())), MouseButton.PRIMARY);
        idle();
        return this;
    }

    /** Puts the cursor into the field of this name. */
    WindowRobot into(String field) {
        Predicate<Node> named = node -> node instanceof TextField t
                && t.getAccessibleText() != null
                && t.getAccessibleText().startsWith(field);
        awaitNode("field " + field, named);
        robot.clickOn(find(named), MouseButton.PRIMARY);
        idle();
        return this;
    }

    /** Waits until this text is in sight. */
    public WindowRobot sees(String text) {
        awaitNode(
                "\"" + text + "\"",
                node -> node instanceof Labeled l
                        && l.getText() != null
                        && OnShow.plain(l.getText()).contains(text));
        settle();
        return this;
    }

    /** A person reads before the next press; meanwhile what was loaded together with the text has come too. */
    private void settle() {
        WaitForAsyncUtils.sleep(SETTLE_MS, TimeUnit.MILLISECONDS);
        idle();
    }

    /** The field of this name, to read what stands in it and how large. */
    TextField field(String name) {
        return (TextField) find(node -> node instanceof TextField t
                && t.getAccessibleText() != null
                && t.getAccessibleText().startsWith(name));
    }

    /** The first label in sight that shows exactly this text. */
    Labeled label(String text) {
        return (Labeled) find(node -> node instanceof Labeled l && text.equals(l.getText()));
    }

    /** Waits until a list of choices has opened. */
    WindowRobot opensAList() {
        until(
                "a list of choices",
                () -> Fx.on(() -> javafx.stage.Window.getWindows().stream()
                        .anyMatch(w -> w instanceof PopupWindow && w.isShowing())));
        idle();
        return this;
    }

    public boolean shows(String text) {
        return find(node -> node instanceof Labeled l
                        && l.getText() != null
                        && l.getText().contains(text))
                != null;
    }

    /** Whether the progress of some work is in sight. */
    public boolean showsProgress() {
        return find(ProgressRule.class::isInstance) != null;
    }

    /** All texts in sight, for what stands in a list or a table. */
    public List<String> texts() {
        return Fx.on(() -> {
            List<String> texts = new ArrayList<>();
            walk(stage.getScene().getRoot(), node -> {
                if (node instanceof Labeled l
                        && l.getText() != null
                        && !l.getText().isEmpty()) {
                    texts.add(l.getText());
                }
                return false;
            });
            return texts;
        });
    }

    /** What the node of this accessible text says, such as a drawing. */
    public WindowRobot hears(String beginning) {
        awaitNode(
                beginning,
                node -> node.getAccessibleText() != null
                        && node.getAccessibleText().startsWith(beginning));
        return this;
    }

    private void awaitNode(String what, Predicate<Node> wanted) {
        until(what, () -> find(wanted) != null, this::texts);
    }

    private Node find(Predicate<Node> wanted) {
        return Fx.on(() -> walk(stage.getScene().getRoot(), wanted));
    }

    private static Node walk(Node node, Predicate<Node> wanted) {
        if (!node.isVisible()) {
            return null;
        }
        if (wanted.test(node)) {
            return node;
        }
        if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                Node found = walk(child, wanted);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    /** Something to wait for. */
    interface Condition {
        boolean holds();
    }

    static void until(String what, Condition condition) {
        until(what, condition, () -> "");
    }

    private static void until(String what, Condition condition, Supplier<?> otherwise) {
        try {
            WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, condition::holds);
        } catch (TimeoutException e) {
            throw new AssertionError("waited in vain for " + what + "; there is " + otherwise.get(), e);
        }
    }

    /** Lets a press arrive, and what it has brought on the scene be dressed: a field without its skin takes no text. */
    private void idle() {
        for (int i = 0; i < HOPS; i++) {
            Fx.run(() -> {});
        }
        Fx.run(() -> Fx.layOut(stage.getScene()));
    }

    public Stage window() {
        return stage;
    }

    /** Closes the window, which ends the program. */
    @Override
    public void close() {
        Fx.run(stage::close);
        end.run();
    }

    private static void end(Thread program) {
        try {
            program.join();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
