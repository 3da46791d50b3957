package org.rafterbook.ui.kit;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;

/** A choice among two to five things that all stay in sight. */
public final class Segments<T> extends HBox {

    private final ToggleGroup group = new ToggleGroup();
    private Consumer<? super T> taker = choice -> {};

    /** Offers the choices under their names; the label is for those who do not see the caption beside it. */
    public Segments(String label, List<? extends T> choices, Function<? super T, String> name) {
        getStyleClass().add("segments");
        for (T choice : choices) {
            ToggleButton button = new ToggleButton(name.apply(choice));
            button.setAccessibleText(label + ": " + name.apply(choice));
            button.setUserData(choice);
            button.setToggleGroup(group);
            button.setMnemonicParsing(false);
            // a press on the chosen one leaves it chosen
            button.setOnAction(event -> {
                if (button.isSelected()) {
                    taker.accept(choice);
                } else {
                    button.setSelected(true);
                }
            });
            button.addEventHandler(KeyEvent.KEY_PRESSED, this::move);
            getChildren().add(button);
        }
        if (!getChildren().isEmpty()) {
            getChildren().get(0).getStyleClass().add("first");
            getChildren().get(getChildren().size() - 1).getStyleClass().add("last");
        }
    }

    /** Shows a choice as chosen, without telling {@link #onChosen}; null for none. */
    public Segments<T> choose(@Nullable T choice) {
        group.selectToggle(group.getToggles().stream()
                .filter(toggle -> toggle.getUserData().equals(choice))
                .findFirst()
                .orElse(null));
        return this;
    }

    /** Called with what the user chooses. */
    public Segments<T> onChosen(Consumer<? super T> newTaker) {
        taker = newTaker;
        return this;
    }

    @SuppressWarnings("unchecked") // only choices of T were put there
    public @Nullable T chosen() {
        return group.getSelectedToggle() == null
                ? null
                : (T) group.getSelectedToggle().getUserData();
    }

    private void move(KeyEvent event) {
        int step = event.getCode() == KeyCode.RIGHT ? 1 : event.getCode() == KeyCode.LEFT ? -1 : 0;
        int at = getChildren().indexOf(event.getSource());
        if (step != 0 && at + step >= 0 && at + step < getChildren().size()) {
            ToggleButton next = (ToggleButton) getChildren().get(at + step);
            next.requestFocus();
            next.fire();
        }
        if (step != 0) {
            event.consume();
        }
    }
}
