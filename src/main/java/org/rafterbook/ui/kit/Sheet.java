package org.rafterbook.ui.kit;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A sheet of paper on the desk: sections under captions, parted by hairlines. */
public final class Sheet extends VBox {

    public Sheet() {
        getStyleClass().add("sheet");
    }

    /** A sheet with one section. */
    public Sheet(String caption, String aside, Node... content) {
        this();
        section(caption, aside, content);
    }

    /** Adds a section with a caption row: bold at the left, a quiet remark at the right. */
    public Section section(String caption, String aside, Node... content) {
        return add(new Section(caption, aside, content));
    }

    /** Adds a section without a caption. */
    public Section section(Node... content) {
        Section section = new Section();
        section.getChildren().addAll(content);
        return add(section);
    }

    /** Adds what brings its own padding, such as setting rows or a table from edge to edge. */
    public <N extends Node> N add(N node) {
        if (!getChildren().isEmpty()) {
            getChildren().add(Lay.hairline());
        }
        getChildren().add(node);
        return node;
    }

    /** A part of a sheet under its caption. */
    public static final class Section extends VBox {

        private final Label caption = Words.caption("");
        private final Label aside = Words.hint("");
        private final HBox head = Lay.baseline(12, caption, Lay.space(), aside);

        private Section() {
            getStyleClass().add("section");
        }

        /** A section of its own, for use outside a sheet. */
        public Section(String caption, String aside, Node... content) {
            this();
            getChildren().add(head);
            caption(caption);
            aside(aside);
            getChildren().addAll(content);
        }

        public void caption(String text) {
            caption.setText(text);
        }

        public void aside(String text) {
            aside.setText(text);
        }

        /** Puts nodes at the right end of the caption row, such as a key cap or a link. */
        public Section beside(Node... nodes) {
            head.getChildren().addAll(nodes);
            return this;
        }
    }
}
