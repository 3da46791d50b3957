package org.rafterbook.ui.shell;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.action.Problem;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Notice;
import org.rafterbook.ui.kit.OneInFront;

/**
 * What is in the window round the places: the rail at the left; head, error bar, rule, content and key line
 * below each other; help and the caps of the Alt key over all. It makes a place at the first visit. Between places a
 * guest may be shown: a screen that belongs to none of the five.
 */
public final class Shell extends StackPane {

    private final Tools tools;
    private final Keys everywhere;
    private final Map<PlaceId, Supplier<? extends Place>> makers;
    private final Map<PlaceId, Place> made = new EnumMap<>(PlaceId.class);
    private final Rail rail;
    private final Head head = new Head();
    private final OneInFront rule = new OneInFront();
    private final OneInFront content = new OneInFront();
    private final KeyLine keyLine;
    private final HelpSheet help = new HelpSheet(this::closeHelp);
    private final CapsOverlay caps = new CapsOverlay();
    private final ChangeListener<Keys> keysChanged = (observable, before, now) -> showKeys();
    private final Keys noKeys;
    private @Nullable Place current;
    private @Nullable PlaceId currentId;
    private @Nullable Node focusBeforeHelp;

    /**
     * @param makers how to make each place; all five
     */
    public Shell(Tools tools, Map<PlaceId, Supplier<? extends Place>> makers) {
        this.tools = tools;
        this.makers = new EnumMap<>(makers);
        everywhere = tools.keys();
        noKeys = tools.keys();
        Map<PlaceId, Action> go = new EnumMap<>(PlaceId.class);
        for (PlaceId id : PlaceId.values()) {
            go.put(id, everywhere.on(id.key(), id.title(), () -> visit(id)));
        }
        for (PlaceId id : PlaceId.values()) {
            everywhere.on("Ctrl+" + (id.ordinal() + 1), id.title(), () -> visit(id));
        }
        Action theme =
                everywhere.on("Ctrl+Shift+T", "Next theme", () -> tools.look().turn());
        Action textSize = everywhere.on(
                "Ctrl+Shift+S", "Next text size", () -> tools.look().resize());
        everywhere.on("Ctrl+Shift+K", "Keys in buttons, on or off", () -> {
            var caps = tools.look().capsShownProperty();
            caps.set(!caps.get());
        });
        Action undo = everywhere.on("Ctrl+Z", "Undo", () -> tools.kept().undo());
        Action helping = everywhere.on("?", "Help: every key", this::toggleHelp);
        everywhere.on("Esc", "Close help or an error", this::escape);
        everywhere.on("Ctrl+Q", "Quit", this::quit);
        rail = new Rail(go, textSize, theme);
        keyLine = new KeyLine(helping, undo, tools.kept());
        rule.getStyleClass().add("rule-area");
        content.getStyleClass().add("content");
        getStyleClass().add("shell");
        VBox right = new VBox(head, errorBar(), rule, Lay.grow(content), keyLine);
        HBox window = new HBox(rail, Lay.grow(right));
        right.setMinWidth(0);
        content.setMinSize(0, 0);
        getChildren().addAll(window, help, caps);
        tools.showing().subscribe(this::go);
        KeyRouter router = new KeyRouter(
                () -> help.isVisible() ? noKeys : keys(),
                everywhere,
                () -> tools.errors().shownProperty().get() != null,
                caps);
        sceneProperty().subscribe(scene -> {
            if (scene != null) {
                router.listen(scene);
                // neither the rail nor a text field has the focus before the user goes there
                content.requestFocus();
            }
        });
    }

    /** Keys that work in every place; the app adds its own, such as opening another logbook. */
    public Keys everywhere() {
        return everywhere;
    }

    /** Says at the right of the head which logbook is open. */
    public void logbook(List<Node> nodes) {
        head.logbook(nodes);
    }

    /** Makes the place anew: at once if it is on show, else at the next visit. */
    public void remake(PlaceId id) {
        Place before = made.remove(id);
        if (before != null && before == current) {
            go(id);
        }
        if (before != null && before != current) {
            drop(before);
        }
    }

    /** Takes in a place made ahead of its first visit; false where there is one already. */
    public boolean prepare(PlaceId id, Place place) {
        if (made.putIfAbsent(id, place) != null) {
            return false;
        }
        content.prepare(place.node());
        rule.prepare(place.rule());
        return true;
    }

    /** Shows a guest over the place on show, under that place's item in the rail, until another is visited. */
    public void show(Place guest) {
        tools.errors().guard(() -> {
            if (currentId != null && guest != current) {
                enter(currentId, guest);
            }
        });
    }

    /** Goes from a guest back to the place it was shown over. */
    public void back() {
        if (currentId != null) {
            go(currentId);
        }
    }

    /** Leaves the place on show for good, as the window closes. */
    public void close() {
        content.requestFocus();
        leave();
        current = null;
    }

    private void visit(PlaceId id) {
        if (id == currentId) {
            back();
        } else {
            tools.showing().set(id);
        }
    }

    private void go(PlaceId id) {
        tools.errors().guard(() -> {
            try {
                Place next = made.computeIfAbsent(
                        id,
                        key -> Objects.requireNonNull(makers.get(key), key.title())
                                .get());
                if (next != current) {
                    enter(id, next);
                }
            } finally {
                // a place that could not be made leaves the window where it is
                if (currentId != null) {
                    tools.showing().set(currentId);
                }
            }
        });
    }

    private void enter(PlaceId id, Place next) {
        Node itsContent = next.node();
        Node itsRule = next.rule();
        closeHelp();
        leave();
        Place before = current;
        current = next;
        currentId = id;
        rail.here(id);
        head.show(id.title(), next);
        rule.front(itsRule);
        Lay.show(rule, itsRule != null);
        content.front(itsContent);
        if (before != null && !made.containsValue(before)) {
            drop(before); // a guest
        }
        next.keys().addListener(keysChanged);
        showKeys();
        content.requestFocus();
        next.shown();
    }

    private void drop(Place gone) {
        content.drop(gone.node());
        rule.drop(gone.rule());
    }

    private void leave() {
        if (current != null) {
            current.keys().removeListener(keysChanged);
            current.hidden();
        }
    }

    private Keys keys() {
        return current == null ? noKeys : current.keys().getValue();
    }

    private void showKeys() {
        keyLine.show(keys(), current == null ? null : current.footNote());
    }

    private Notice errorBar() {
        Button close =
                Buttons.link(tools.keys().action("Close", () -> tools.errors().clear()));
        Notice bar = Notice.wrong(close);
        tools.errors().shownProperty().subscribe((Problem problem) -> {
            Lay.show(bar, problem != null);
            if (problem != null) {
                bar.say(problem.what(), problem.rest());
            }
        });
        return Lay.styled(bar, "under-head");
    }

    /** The same way as by the window's own button. */
    private void quit() {
        Window window = getScene() == null ? null : getScene().getWindow();
        if (window != null) {
            window.fireEvent(new WindowEvent(window, WindowEvent.WINDOW_CLOSE_REQUEST));
        }
    }

    private void toggleHelp() {
        if (help.isVisible()) {
            closeHelp();
        } else {
            focusBeforeHelp = getScene() == null ? null : getScene().getFocusOwner();
            help.open(title(), keys(), everywhere);
        }
    }

    private String title() {
        ObservableValue<String> own = current == null ? null : current.title();
        return own == null ? tools.showing().get().title() : own.getValue();
    }

    private void closeHelp() {
        if (help.isVisible()) {
            help.close();
            if (focusBeforeHelp != null) {
                focusBeforeHelp.requestFocus();
            }
        }
    }

    private void escape() {
        if (help.isVisible()) {
            closeHelp();
        } else {
            tools.errors().clear();
        }
    }
}
