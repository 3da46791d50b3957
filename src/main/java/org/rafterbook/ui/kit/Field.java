package org.rafterbook.ui.kit;

import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.units.UserError;

/**
 * A form field: label and key above, what is typed with its unit at the right end, a message below. It is read when the
 * user leaves it or presses Enter; what cannot be read stays as typed with a sentence beside it.
 *
 * <pre>
 * Field&lt;Double&gt; chord = Field.number("Chord", reader).unit("mm").also(m -&gt; inches(m));
 * chord.key(keys.on("C", "Chord", chord::edit));
 * chord.onKept(model::setChord);
 * </pre>
 */
public final class Field<T> extends VBox {

    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final QuantityReader<? extends T> reader;
    private final TextField text;
    private final Label unit = new Label();
    private final HBox box;
    private final HBox top;
    private final Label message = new Label();
    private final ReadOnlyObjectWrapper<@Nullable T> value = new ReadOnlyObjectWrapper<>(this, "value");
    private Function<? super T, String> also = kept -> "";
    private Consumer<@Nullable T> kept = ignored -> {};
    private String quiet = "";
    private String sentence = "";
    private String lastKept = "";
    private boolean required;

    private Field(String label, QuantityReader<? extends T> reader, TextField text) {
        this.reader = reader;
        this.text = text;
        Label name = Words.small(label);
        name.setLabelFor(text);
        top = Lay.row(8, name, Lay.space());
        unit.getStyleClass().add("unit");
        unit.setMinWidth(USE_PREF_SIZE);
        box = new HBox(Lay.grow(text), unit);
        box.getStyleClass().add("field-box");
        message.getStyleClass().add("message");
        message.setWrapText(true);
        text.setAccessibleText(label);
        getStyleClass().add("field");
        getChildren().addAll(top, box, message);
        text.textProperty().subscribe(this::whileTyping);
        text.focusedProperty().subscribe(focused -> {
            if (!focused) {
                keep();
            }
        });
        text.setOnAction(event -> keep());
        unit.setOnMousePressed(event -> text.requestFocus());
    }

    /** A field for a quantity: letters pass through it to the keys of the place, except those of a unit being typed. */
    public static <T> Field<T> number(String label, QuantityReader<? extends T> reader) {
        return new Field<>(label, reader, new NumberInput());
    }

    /** A field for words. */
    public static Field<String> words(String label) {
        return new Field<>(label, String::strip, new TextField());
    }

    /** The unit a bare number has, shown quietly at the right end. */
    public Field<T> unit(String name) {
        unit.setText(name);
        text.setAccessibleRoleDescription(name.isEmpty() ? null : "in " + name);
        return this;
    }

    /** Units that may be typed without a space before them, so that their first letters belong to the field. */
    public Field<T> units(String... names) {
        if (text instanceof NumberInput input) {
            input.units(names);
        }
        return this;
    }

    /** What stands below a value that was read: the other unit, the whole time, what follows from it. */
    public Field<T> also(Function<? super T, String> tells) {
        also = tells;
        tell();
        return this;
    }

    /** What stands below while there is nothing else to say, such as "was 95 mm". */
    public Field<T> quietly(String hint) {
        quiet = hint;
        tell();
        return this;
    }

    /** Grey text inside the empty field: last time's value, or what may be written. It is never kept by itself. */
    public Field<T> prompt(String grey) {
        text.setPromptText(grey);
        return this;
    }

    /** An empty field is refused with this field's name when it is left or checked. */
    public Field<T> required() {
        required = true;
        return this;
    }

    /** 44 px high, for landing and winding. */
    public Field<T> large() {
        getStyleClass().add("large");
        return this;
    }

    /** Shows the action's key; the action should be {@link #edit}. */
    public Field<T> key(Action action) {
        top.getChildren().add(new KeyCap(action.key()));
        action.at(box);
        return this;
    }

    /** Called with each new value (null for an empty field) that was read, when the field is left or Enter pressed. */
    public Field<T> onKept(Consumer<@Nullable T> taker) {
        kept = taker;
        return this;
    }

    /** Puts the cursor in, with all selected. */
    public void edit() {
        text.requestFocus();
        text.selectAll();
    }

    /** Fills the field without calling {@link #onKept}. */
    public void fill(String typed) {
        lastKept = typed;
        text.setText(typed);
        read();
    }

    /** What is typed. */
    public String typed() {
        return text.getText();
    }

    /** The input itself, for bindings and tests. */
    public TextField input() {
        return text;
    }

    /** The last value that could be read, null when the field is empty. */
    public ReadOnlyObjectProperty<@Nullable T> valueProperty() {
        return value.getReadOnlyProperty();
    }

    public @Nullable T value() {
        return value.get();
    }

    /** Whether what is typed can be kept; if not, the sentence is shown. Call it before a form is kept. */
    public boolean check() {
        read();
        return sentence.isEmpty();
    }

    /** Shows a sentence about the value that only others can know, such as "More than 1980 wound". */
    public void refuse(String why) {
        sentence = why;
        tell();
    }

    /** The sentence shown beside the value, empty if there is none. */
    public String refusal() {
        return sentence;
    }

    private void whileTyping() {
        // while typing a sentence can only go away; a new one waits until the field is left
        try {
            T now = parse();
            value.set(now);
            sentence = "";
        } catch (UserError e) {
            if (sentence.isEmpty()) {
                value.set(null);
            }
        }
        tell();
    }

    private void read() {
        try {
            value.set(parse());
            sentence = required && text.getText().isBlank() ? "This is needed." : "";
        } catch (UserError e) {
            sentence = e.sentence();
        }
        tell();
    }

    private void keep() {
        read();
        if (sentence.isEmpty() && !Objects.equals(lastKept, text.getText())) {
            lastKept = text.getText();
            kept.accept(value.get());
        }
    }

    private @Nullable T parse() throws UserError {
        return text.getText().isBlank() ? null : reader.read(text.getText().strip());
    }

    private void tell() {
        boolean wrong = !sentence.isEmpty();
        T now = value.get();
        String tells = now == null || text.getText().isBlank() ? "" : also.apply(now);
        message.setText(wrong ? "× " + sentence : tells.isEmpty() ? quiet : tells);
        Lay.show(message, !message.getText().isEmpty());
        box.pseudoClassStateChanged(WRONG, wrong);
        message.pseudoClassStateChanged(WRONG, wrong);
        text.setAccessibleHelp(message.getText());
    }
}
