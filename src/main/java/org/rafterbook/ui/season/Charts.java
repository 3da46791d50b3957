package org.rafterbook.ui.season;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.Layer;
import org.rafterbook.ui.chart.Rule;
import org.rafterbook.ui.chart.RuleLayers;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.RollingPane;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Season;

/** The models' seasons below each other, under one rule of days whose scale they share. */
final class Charts {

    /** From the window's left to the first day: page, sheet, a model's words, and the chart's own axis. */
    private static final double LEFT_PX = 16 + 1 + 157 + 40;

    private static final double RIGHT_PX = 16 + 1 + 14;

    private final QuantityFormat format;
    private final Consumer<Season.ModelSeason> pick;
    private final Consumer<Season.ModelSeason> open;
    private final Rule rule = new Rule("The days of the season", Graduation.days())
            .labelsBeside()
            .leftSide(LEFT_PX)
            .rightSide(RIGHT_PX);
    private final VBox rows = new VBox();
    private final Sheet sheet = new Sheet();
    private List<ModelRow> shown = List.of();

    Charts(QuantityFormat format, Consumer<Season.ModelSeason> pick, Consumer<Season.ModelSeason> open) {
        this.format = format;
        this.pick = pick;
        this.open = open;
        ScrollPane rolling = new RollingPane(rows);
        rolling.setFitToWidth(true);
        rolling.setFitToHeight(true);
        rolling.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        rolling.setFocusTraversable(false);
        rolling.setMinSize(0, 0);
        sheet.section(
                "Every flight of the season, minutes",
                "a mark is a flight, its shape the version; with a tick: at least this long");
        sheet.add(Lay.grow(rolling));
        sheet.setMinSize(0, 0);
    }

    Sheet node() {
        return sheet;
    }

    Rule rule() {
        return rule;
    }

    /** The models on show, from above. */
    List<Season.ModelSeason> models() {
        return shown.stream().map(ModelRow::model).toList();
    }

    void show(SeasonShown now) {
        List<ModelRow> made = new ArrayList<>();
        List<Node> nodes = new ArrayList<>();
        for (SeasonShown.Row one : now.rows()) {
            ModelRow row = new ModelRow(one, now.season(), format, pick, open);
            if (!made.isEmpty()) {
                nodes.add(Lay.hairline());
            }
            nodes.add(Lay.grow(row));
            made.add(row);
        }
        rows.getChildren().setAll(nodes);
        shown = made;
    }

    /** Shows the days of the season, and its evenings, on the rule. */
    void showDays(SeasonShown now) {
        double today = now.today().toEpochDay();
        DayPlaces places = now.places();
        List<Layer> layers = new ArrayList<>();
        List<Season.Evening> evenings = now.evenings();
        evenings.forEach(e -> layers.add(RuleLayers.peg(e.visit().date().toEpochDay(), Token.INK_2, false)));
        layers.add(RuleLayers.nowAmongLabels(today, "today"));
        rule.unitFirst(evenings.isEmpty() ? "" : evenings.size() + (evenings.size() == 1 ? " evening" : " evenings"));
        rule.show(places.low(), places.high(), layers);
    }

    /** Marks the picked model. */
    void picked(Season.ModelSeason model) {
        shown.forEach(row -> row.picked(row.model() == model));
    }
}
