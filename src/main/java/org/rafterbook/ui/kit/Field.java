package org.rafterbook.ui.kit;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.units.Dimension;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Parsed;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.Unit;
import org.rafterbook.units.UserError;

/**
 * A form field: label and key above, what is typed with its unit at the right end, a message below. It is read while
 * typing, kept when the user leaves it or presses Enter; what cannot be read stays as typed with a sentence beside it,
 * and nothing is kept.
 *
 * <pre>
 * Field&lt;TypedValue&gt; chord = Field.quantity("Chord", Quantity.LENGTH, units).onKept(model::setChord);
 * chord.key(keys.on("C", "Chord", chord::edit));
 * </pre>
 */
public final class Field<T> extends VBox {

    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final FieldReader<T> reader;
    private final TextField text;
    private final String label;
    private final Label unit = new Label();
    private final HBox box;
    private final HBox top;
    private final Label message = new Label();
    private final ReadOnlyObjectWrapper<@Nullable T> value = new ReadOnlyObjectWrapper<>(this, "value");
    private Function<? super T, Optional<String>> limit = read -> Optional.empty();
    private Function<? super T, String> also = read -> "";
    private Consumer<@Nullable T> kept = ignored -> {};
    private String quiet = "";
    private String sentence = "";
    private String lastKept = "";
    private boolean required;
    private boolean refused;

    private Field(String label, FieldReader<T> reader, TextField text) {
        this.label = label;
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
        message.setMinHeight(USE_PREF_SIZE);
        text.setAccessibleText(label);
        top.getStyleClass().add("field-top");
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

    /** A field for anything like a number: letters pass through it to the keys of the place, unless it is a unit's. */
    public static <T> Field<T> number(String label, FieldReader<T> reader) {
        return new Field<>(label, reader, new NumberInput());
    }

    /** A field for words. */
    public static Field<String> words(String label) {
        return text(label, typed -> Parsed.accepted(typed.strip()));
    }

    /** A field for words that not all texts are. */
    public static <T> Field<T> text(String label, FieldReader<T> reader) {
        return new Field<>(label, reader, new TextField());
    }

    /**
     * A field for a quantity in the flyer's unit; any other unit may be typed, and what was understood stands below (a
     * time large).
     */
    public static Field<TypedValue> quantity(String label, Quantity quantity, DisplayUnits units) {
        QuantityFormat format = new QuantityFormat(units);
        Field<TypedValue> field =
                number(label, QuantityParser.typed(quantity, units)::read).in(quantity, units);
        return field.also(read -> read.bare() && quantity.dimension() != Dimension.TIME
                ? format.otherUnit(quantity, read.si()).orElse("")
                : read.readBack());
    }

    /** A field for a quantity known as a value or a range, such as {@code 7.9 to 9.4}. */
    public static Field<TypedRange> range(String label, Quantity quantity, DisplayUnits units) {
        Field<TypedRange> field =
                number(label, QuantityParser.typed(quantity, units)::readRange).in(quantity, units);
        return field.also(TypedRange::readBack);
    }

    private Field<T> in(Quantity quantity, DisplayUnits units) {
        if (quantity.dimension() == Dimension.TIME) {
            message.getStyleClass().add("read-back");
        }
        if (quantity.dimension() != Dimension.TURNS && text instanceof NumberInput input) {
            input.units(Unit.of(quantity.dimension()).stream().map(Unit::symbol).toList());
        }
        return unit(quantity.unit(units).symbol());
    }

    /** The unit a bare number has, shown quietly at the right end. */
    public Field<T> unit(String symbol) {
        unit.setText(symbol);
        text.setAccessibleText(symbol.isEmpty() ? label : label + ", in " + symbol);
        return this;
    }

    /** Refuses values of which the predicate is true, with a sentence that names the limit. */
    public Field<T> refuseIf(Predicate<? super T> wrong, Function<? super T, String> why) {
        Function<? super T, Optional<String>> before = limit;
        limit = read -> before.apply(read).or(() -> wrong.test(read) ? Optional.of(why.apply(read)) : Optional.empty());
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

    /** An empty field is refused when it is checked. */
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

    /** Called with each new value (null for an emptied field) when the field is left or Enter pressed. */
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
        refused = false;
        lastKept = typed;
        text.setText(typed);
        sentence = readNow();
        tell();
    }

    /** What is typed. */
    public String typed() {
        return text.getText();
    }

    /** The input itself, for bindings and tests. */
    public TextField input() {
        return text;
    }

    /** The value of what is typed, null while it is empty or cannot be read. */
    public ReadOnlyObjectProperty<@Nullable T> valueProperty() {
        return value.getReadOnlyProperty();
    }

    public @Nullable T value() {
        return value.get();
    }

    /** Whether what is typed can be kept; if not, the sentence is shown. Call it before a form is kept. */
    public boolean check() {
        sentence = readNow();
        if (required && text.getText().isBlank()) {
            sentence = "This is needed.";
        }
        tell();
        return sentence.isEmpty();
    }

    /**
     * Shows a sentence about the value that only others can know; it goes with the next key typed. What was refused is not
     * kept, so Enter tries it again.
     */
    public void refuse(String why) {
        refused = true;
        sentence = why;
        tell();
    }

    /** Shows why what was typed could not be kept. */
    public void refuse(Throwable failure) {
        refuse(failure instanceof UserError error ? error.sentence() : "This could not be kept: " + failure);
    }

    /** The sentence shown beside the value, empty if there is none. */
    public String refusal() {
        return sentence;
    }

    /** What stands below the field now. */
    public String message() {
        return message.getText();
    }

    private void whileTyping() {
        // a sentence goes away as soon as it no longer holds; a new one waits until the field is left
        String now = readNow();
        if (now.isEmpty() || !sentence.isEmpty()) {
            sentence = now;
        }
        tell();
    }

    private void keep() {
        sentence = readNow();
        tell();
        if (sentence.isEmpty() && (refused || !Objects.equals(lastKept, text.getText()))) {
            refused = false;
            lastKept = text.getText();
            kept.accept(value.get());
        }
    }

    /** Sets the value and gives the sentence, empty if there is nothing wrong. */
    private String readNow() {
        if (text.getText().isBlank()) {
            value.set(null);
            return "";
        }
        Parsed<T> parsed = reader.read(text.getText().strip());
        T read = parsed.toOptional().orElse(null);
        String wrong =
                read == null ? parsed.refusal().orElse("") : limit.apply(read).orElse("");
        value.set(wrong.isEmpty() ? read : null);
        return wrong;
    }

    private void tell() {
        boolean wrong = !sentence.isEmpty();
        T now = value.get();
        String tells = now == null ? "" : also.apply(now);
        message.setText(wrong ? "× " + sentence : tells.isEmpty() ? quiet : tells);
        Lay.show(message, !message.getText().isEmpty());
        box.pseudoClassStateChanged(WRONG, wrong);
        message.pseudoClassStateChanged(WRONG, wrong);
        text.setAccessibleHelp(message.getText());
    }
}
