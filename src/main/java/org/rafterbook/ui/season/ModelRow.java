package org.rafterbook.ui.season;

import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.chart.Chart;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Season;

/** One model's season: its name and wings at the left, its flights over the days. */
final class ModelRow extends HBox {

    private static final PseudoClass PICKED = PseudoClass.getPseudoClass("picked");

    private final Season.ModelSeason model;
    private final Chart<String> chart;

    ModelRow(
            SeasonShown.Row row,
            Season season,
            QuantityFormat format,
            Consumer<Season.ModelSeason> pick,
            Consumer<Season.ModelSeason> open) {
        this.model = row.model();
        getStyleClass().add("model-row");
        Season.Flyer flyer = model.modelId() == null ? null : season.models().get(model.modelId());
        Label name = Words.figure(model.model());
        VBox words = Lay.styled(
                Lay.column(
                        0,
                        name,
                        Words.small(model.modelId() == null ? "" : SeasonWords.wings(flyer, format)),
                        Words.small("n = " + model.flights().size() + ", " + model.versions()
                                + (model.versions() == 1 ? " version" : " versions"))),
                "model-words");
        words.setOnMouseClicked(event -> pick.accept(model));
        chart = new Chart<>(model.model() + ", time of each flight over the days, n = "
                + model.flights().size());
        chart.show(row.chart());
        chart.onOpen(flight -> open.accept(model));
        chart.focusedProperty().subscribe(focused -> {
            if (focused) {
                pick.accept(model);
            }
        });
        getChildren().addAll(words, Lay.grow(chart));
    }

    Season.ModelSeason model() {
        return model;
    }

    void picked(boolean picked) {
        pseudoClassStateChanged(PICKED, picked);
    }
}
