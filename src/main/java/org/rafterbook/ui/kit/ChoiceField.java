package org.rafterbook.ui.kit;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.collections.FXCollections;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;

/** A choice among a few things by name, opened on demand: label and key above, message below. */
public final class ChoiceField<T> extends VBox {

    private final ComboBox<T> box = new ComboBox<>();
    private final HBox top;
    private final Label message = Words.hint("");
    private boolean filling;

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
        getStyleClass().addAll("field", "choice-field");
        getChildren().addAll(top, box, message);
        Lay.show(message, false);
    }

    /** Offers these, one of them chosen (null for none yet). */
    public ChoiceField<T> offer(List<? extends T> choices, @Nullable T chosen) {
        filling = true;
        box.setItems(FXCollections.observableArrayList(choices));
        box.getSelectionModel().select(chosen);
        filling = false;
        return this;
    }

    /** Called with what the user chooses. */
    public ChoiceField<T> onChosen(Consumer<? super T> taker) {
        box.valueProperty().subscribe(choice -> {
            if (!filling && choice != null) {
                taker.accept(choice);
            }
        });
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
