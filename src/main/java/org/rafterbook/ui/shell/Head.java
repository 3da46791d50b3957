package org.rafterbook.ui.shell;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;

/** The head of a place: its name, what it shows, its figures; first among them which logbook is open. */
final class Head extends HBox {

    private final Label title = Words.head("");
    private final Label subtitle = Words.aside("");
    private final HBox logbook = new HBox();
    private final HBox figures = new HBox();
    private @Nullable ObservableList<Node> bound;

    Head() {
        getStyleClass().add("head-bar");
        for (HBox side : new HBox[] {logbook, figures}) {
            side.getStyleClass().add("figures");
            side.setMinWidth(USE_PREF_SIZE);
        }
        title.setMinWidth(USE_PREF_SIZE);
        HBox names = Lay.baseline(12, title, subtitle);
        names.setMinWidth(0);
        names.setAlignment(Pos.BASELINE_LEFT);
        HBox.setHgrow(names, Priority.ALWAYS);
        setAlignment(Pos.CENTER_LEFT);
        setFillHeight(false);
        getChildren().addAll(names, logbook, figures);
        Lay.show(logbook, false);
    }

    void logbook(Node... nodes) {
        logbook.getChildren().setAll(nodes);
        Lay.show(logbook, nodes.length > 0);
    }

    void show(String name, Place place) {
        ObservableValue<String> own = place.title();
        title.textProperty().unbind();
        if (own == null) {
            title.setText(name);
        } else {
            title.textProperty().bind(own);
        }
        subtitle.textProperty().bind(place.subtitle());
        if (bound != null) {
            Bindings.unbindContent(figures.getChildren(), bound);
        }
        bound = place.figures();
        Bindings.bindContent(figures.getChildren(), bound);
    }
}
