package org.rafterbook.ui.kit;

import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/** A bar with a coloured left edge that says what went wrong. */
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

    /** Something went wrong. */
    public static Notice wrong(Node... atTheEnd) {
        Notice notice = new Notice("wrong", atTheEnd);
        notice.getChildren().add(0, Lay.styled(new Label("×"), "bold"));
        notice.lead.getStyleClass().add("bold");
        return notice;
    }

    /** Never lower than its sentences. */
    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    /** Shows the sentences. */
    public void say(String first, String second) {
        lead.setText(first);
        lead.setMinWidth(second.isEmpty() ? USE_COMPUTED_SIZE : USE_PREF_SIZE);
        rest.setText(second);
        setAccessibleText((first + " " + second).strip());
    }
}
