package org.rafterbook.ui.review;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.RollingPane;
import org.rafterbook.ui.kit.Words;

/** Running sentences below each other that roll where they are long; the verdict first. */
final class Sentences extends RollingPane {

    private final VBox all = Lay.column(4);

    Sentences() {
        setContent(all);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        setMinSize(0, 0);
    }

    /** Shows these from the top. */
    void show(List<? extends Node> nodes) {
        all.getChildren().setAll(nodes);
        setVvalue(0);
    }

    /** The sentence that counts. */
    static Label verdict(String sentence) {
        return whole(Words.bold(Words.unbroken(sentence)));
    }

    static Label prose(String sentence) {
        return whole(Words.prose(Words.unbroken(sentence)));
    }

    static Label small(String sentence) {
        return whole(Words.small(Words.unbroken(sentence)));
    }

    private static Label whole(Label label) {
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        return label;
    }
}
