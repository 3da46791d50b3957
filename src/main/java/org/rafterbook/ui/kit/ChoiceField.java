package org.rafterbook.ui.kit;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;

/**
 * A choice among a few things by name, opened by its key or Space: label and key above, message below. While the list is open the
 * arrows only move in it; Enter or a click chooses, and whatever else closes it leaves what was chosen before.
 */
public final class ChoiceField<T> extends VBox {

    private final ComboBox<T> box = new ComboBox<>();
    private final HBox top;
    private final Label message = Words.hint("");
    private Consumer<? super T> taker = ignored -> {};
    private @Nullable T before;
    private boolean filling;
    private boolean decided;
    private String searched = "";

    /** What was offered while the list was open. */
    private @Nullable Runnable waiting;

    public ChoiceField(String label, Function<? super T, String> name) {
        Label over = Words.small(label);
        over.setLabelFor(box);
        top = Lay.row(8, over, Lay.space());
        top.getStyleClass().add("field-top");
        box.setAccessibleText(label);
        box.setMaxWidth(Double.MAX_VALUE);
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(@Nullable T choice) {
                return choice == null ? "" : name.apply(choice);
            }

            @Override
            public T fromString(String text) {
                throw new UnsupportedOperationException("choices are not typed");
            }
        });
        box.valueProperty().subscribe(choice -> {
            if (!filling && !box.isShowing()) {
                take(choice);
            }
        });
        box.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.SPACE && !box.isShowing()) {
                open();
                event.consume();
            }
        });
        box.addEventHandler(KeyEvent.KEY_TYPED, event -> search(event.getCharacter()));
        box.showingProperty().subscribe(this::turn);
        box.skinProperty().subscribe(skin -> {
            if (skin instanceof ComboBoxListViewSkin<?> shown) {
                decideIn(shown.getPopupContent());
                beginAtTheTop();
            }
        });
        getStyleClass().addAll("field", "choice-field");
        getChildren().addAll(top, box, message);
        Lay.show(message, false);
    }

    /** While the list is open letters go to the first choice that begins with them. */
    private void search(String letter) {
        if (box.isShowing() && !letter.isBlank() && !Character.isISOControl(letter.charAt(0))) {
            int found = find(searched + letter);
            searched = found < 0 ? letter : searched + letter;
            int at = found < 0 ? find(letter) : found;
            if (at >= 0) {
                box.getSelectionModel().select(at);
            }
        }
    }

    private int find(String beginning) {
        for (int i = 0; i < box.getItems().size(); i++) {
            String name = box.getConverter().toString(box.getItems().get(i));
            if (name.regionMatches(true, 0, beginning, 0, beginning.length())) {
                return i;
            }
        }
        return -1;
    }

    private void decideIn(Node list) {
        list.addEventFilter(KeyEvent.KEY_PRESSED, event -> decided = event.getCode() == KeyCode.ENTER);
        list.addEventFilter(MouseEvent.MOUSE_PRESSED, event -> decided = isOnChoice(event.getTarget()));
    }

    /** With nothing chosen yet the first arrow goes to the first choice. */
    private void beginAtTheTop() {
        if (box.isShowing()
                && box.getValue() == null
                && box.getSkin() instanceof ComboBoxListViewSkin<?> shown
                && shown.getPopupContent() instanceof ListView<?> list) {
            list.getFocusModel().focus(-1);
        }
    }

    /** False on the list's scroll bar. */
    private static boolean isOnChoice(Object target) {
        Node node = target instanceof Node pressed ? pressed : null;
        while (node != null && !(node instanceof ListCell)) {
            node = node.getParent();
        }
        return node != null;
    }

    private void turn(boolean open) {
        if (open) {
            decided = false;
            searched = "";
            before = box.getValue();
            beginAtTheTop();
        } else if (decided) {
            decided = false;
            take(box.getValue());
        } else {
            filling = true;
            box.getSelectionModel().select(before);
            filling = false;
        }
        Runnable late = waiting;
        waiting = null;
        if (!open && late != null) {
            late.run();
        }
    }

    private void take(@Nullable T choice) {
        if (choice != null) {
            taker.accept(choice);
        }
    }

    /** Offers these, one of them chosen (null for none yet). */
    public ChoiceField<T> offer(List<? extends T> choices, @Nullable T chosen) {
        if (box.isShowing()) {
            waiting = () -> fill(choices, chosen); // the user is choosing
        } else {
            fill(choices, chosen);
        }
        return this;
    }

    private void fill(List<? extends T> choices, @Nullable T chosen) {
        filling = true;
        box.setItems(FXCollections.observableArrayList(choices));
        box.getSelectionModel().select(chosen);
        filling = false;
    }

    /** Called with what the user chooses. */
    public ChoiceField<T> onChosen(Consumer<? super T> takes) {
        taker = takes;
        return this;
    }

    /** What stands below. */
    public ChoiceField<T> quietly(String hint) {
        message.setText(hint);
        Lay.show(message, !hint.isEmpty());
        return this;
    }

    /** Shows the action's key; the action should be {@link #open}. */
    public ChoiceField<T> key(Action action) {
        top.getChildren().add(new KeyCap(action.key()));
        action.at(box);
        return this;
    }

    /** Opens the list. */
    public void open() {
        if (box.getSkin() == null && getScene() != null) {
            // one that was only just made has neither a list nor a place yet
            getScene().getRoot().applyCss();
            getScene().getRoot().layout();
        }
        box.requestFocus();
        box.show();
    }

    public @Nullable T chosen() {
        return box.getValue();
    }

    /** The control itself, for bindings and tests. */
    public ComboBox<T> box() {
        return box;
    }
}
