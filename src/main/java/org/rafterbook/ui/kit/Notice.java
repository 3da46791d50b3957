package org.rafterbook.ui.kit;

import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/** A bar with a coloured left edge: what has just been done (accent) or what went wrong (stop). */
public final class Notice extends HBox {

    private final Label lead = Words.body("");
    private final Label rest = Words.aside("");

    private Notice(String kind, Node... atTheEnd) {
        getStyleClass().addAll("notice", kind);
        rest.setWrapText(true);
        lead.setWrapText(true);
        getChildren().addAll(lead, Lay.grow(rest));
        getChildren().addAll(atTheEnd);
        setAccessibleRole(AccessibleRole.TEXT);
    }

    /** Something was done that can be undone. */
    public static Notice done(Node... atTheEnd) {
        return new Notice("done", atTheEnd);
    }

    /** Something went wrong. */
    public static Notice wrong(Node... atTheEnd) {
        Notice notice = new Notice("wrong", atTheEnd);
        notice.getChildren().add(0, Lay.styled(new Label("×"), "bold"));
        notice.lead.getStyleClass().add("bold");
        return notice;
    }

    /** Shows the sentences. */
    public void say(String first, String second) {
        lead.setText(first);
        lead.setMinWidth(second.isEmpty() ? USE_COMPUTED_SIZE : USE_PREF_SIZE);
        rest.setText(second);
        setAccessibleText((first + " " + second).strip());
    }
}
