package org.rafterbook.ui.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.units.UserError;

/**
 * A form that stands beside what it is about, never over it: a title, fields below each other in the order of measuring,
 * one main action on Enter and a way out on Esc. What only the whole form can be refused for stands above the actions.
 * Where a field refuses what was typed, the cursor goes there.
 */
public final class FormSheet {

    private final Keys keys;
    private final Sheet sheet = new Sheet();
    private final VBox fields = Lay.column(12);
    private final Label remark = Words.hint("");
    private final Label refusal = Words.small("");
    private final HBox actions = Lay.row(8);
    private boolean built;

    public FormSheet(Keys keys, String title, String aside) {
        this.keys = keys;
        refusal.getStyleClass().add("form-refusal");
        for (Label line : List.of(remark, refusal)) {
            line.setWrapText(true);
            line.setMinHeight(Label.USE_PREF_SIZE);
            Lay.show(line, false);
        }
        fields.getStyleClass().add("form-fields");
        sheet.getStyleClass().add("form");
        sheet.section(title, aside);
    }

    /** Adds fields or whatever else stands between them. */
    public FormSheet add(Node... nodes) {
        fields.getChildren().addAll(nodes);
        return this;
    }

    /** Adds fields beside each other. */
    public FormSheet beside(Node... nodes) {
        return add(Lay.even(12, nodes));
    }

    /** Adds the head of a block of fields. */
    public FormSheet caption(String text) {
        Label head = Words.caption(text);
        head.setWrapText(true);
        head.setMinHeight(Label.USE_PREF_SIZE);
        return add(head);
    }

    /** The main action, on Enter. */
    public Action keep(String label, Runnable what) {
        Action keep = keys.on("Enter", label, () -> {
            refuse("");
            what.run();
            goToRefused();
        });
        actions.getChildren().add(0, Buttons.primary(keep));
        keys.hint("Enter", label.toLowerCase(Locale.ROOT));
        return keep;
    }

    /** The way out, on Esc. */
    public Action leave(Runnable what) {
        Action leave = keys.on("Esc", "Leave it", what);
        actions.getChildren().add(Buttons.secondary(leave));
        keys.hint("Esc", "leave it");
        return leave;
    }

    /** One more thing that can be done here. */
    public FormSheet also(Action action) {
        actions.getChildren().add(Buttons.secondary(action));
        return this;
    }

    /** Says why the whole form is not kept; empty for nothing. */
    public void refuse(String sentence) {
        refusal.setText(sentence.isEmpty() ? "" : "× " + sentence);
        Lay.show(refusal, !sentence.isEmpty());
    }

    /** Says why the form could not be kept. */
    public void refuse(Throwable failure) {
        refuse(failure instanceof UserError error ? error.sentence() : "This could not be kept: " + failure);
    }

    /** Says quietly above the actions what is to be known of all that is typed; empty for nothing. */
    public void remark(String sentence) {
        remark.setText(sentence);
        Lay.show(remark, !sentence.isEmpty());
    }

    /** Whether every field in sight is empty or can be read. */
    public boolean isReadable() {
        return fieldsInSight().stream()
                .allMatch(f -> f.value() != null || f.typed().isBlank());
    }

    /** What is refused may have been rolled out of sight. */
    private void goToRefused() {
        List<Field<?>> refused =
                fieldsInSight().stream().filter(f -> !f.refusal().isEmpty()).toList();
        if (refused.stream().noneMatch(f -> f.input().isFocused())) {
            refused.stream().findFirst().ifPresent(Field::edit);
        }
    }

    private List<Field<?>> fieldsInSight() {
        List<Field<?>> found = new ArrayList<>();
        collect(fields, found);
        return found;
    }

    private static void collect(Node node, List<Field<?>> found) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof Field<?> field) {
            found.add(field);
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, found));
        }
    }

    /** What the form says against itself, empty for nothing. */
    public String refusal() {
        return refusal.getText();
    }

    public Keys keys() {
        return keys;
    }

    /** The form itself. */
    public Node node() {
        if (!built) {
            built = true;
            sheet.add(Lay.rolling(fields));
            actions.getStyleClass().add("form-actions");
            sheet.section(remark, refusal, actions);
        }
        return sheet;
    }

    /** Puts the focus on something in the form. */
    public void focus(Node wanted) {
        // a rolling middle takes its content into the scene only when it is styled
        sheet.applyCss();
        wanted.requestFocus();
    }

    /** Puts the cursor into the first field, or the focus on the first choice where nothing is typed. */
    public void focusFirst() {
        sheet.applyCss();
        Node field = first(fields, TextInputControl.class);
        Node any = field == null ? first(fields, Node.class) : field;
        if (any != null) {
            focus(any);
        }
    }

    private static @Nullable Node first(Node node, Class<? extends Node> kind) {
        if (!node.isVisible() || node.isDisabled()) {
            return null;
        }
        if (kind.isInstance(node) && node.isFocusTraversable()) {
            return node;
        }
        if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                Node found = first(child, kind);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }
}
