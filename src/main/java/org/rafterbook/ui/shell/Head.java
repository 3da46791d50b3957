package org.rafterbook.ui.shell;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.kit.FittingRow;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;

/** The head of a place: its name, what it shows, its figures; first among them which logbook is open. */
final class Head extends HBox {

    private static final double LEAST_EM = 9;

    private final Label title = Words.head("");
    private final Label subtitle = Words.aside("");
    private final HBox logbook = new HBox();
    private final FittingRow figures = new FittingRow();
    private @Nullable ObservableList<Node> bound;

    Head() {
        getStyleClass().add("head-bar");
        logbook.getStyleClass().add("figures");
        logbook.setMinWidth(USE_PREF_SIZE);
        figures.getStyleClass().add("figures");
        title.setMinWidth(USE_PREF_SIZE);
        HBox names = Lay.styled(new Names(), "gap-12");
        // what stands beside the name gives way first, then the figures, never the name
        names.minWidthProperty().bind(title.widthProperty());
        names.prefWidthProperty().bind(title.widthProperty());
        HBox.setHgrow(names, Priority.ALWAYS);
        setAlignment(Pos.CENTER_LEFT);
        setFillHeight(false);
        getChildren().addAll(names, logbook, figures);
        Lay.show(logbook, false);
    }

    /** The name, and what is shown: whole or with an end that still tells something, else not at all. */
    private final class Names extends HBox {

        private Names() {
            super(title, subtitle);
            setAlignment(Pos.BASELINE_LEFT);
        }

        @Override
        protected void layoutChildren() {
            double room = getWidth() - title.prefWidth(-1) - getSpacing();
            double least = LEAST_EM * subtitle.getFont().getSize();
            subtitle.setVisible(room >= Math.min(least, subtitle.prefWidth(-1)));
            super.layoutChildren();
        }
    }

    void logbook(List<Node> nodes) {
        logbook.getChildren().setAll(nodes);
        Lay.show(logbook, !nodes.isEmpty());
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
