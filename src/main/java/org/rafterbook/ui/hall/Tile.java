package org.rafterbook.ui.hall;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.kit.KeyCap;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;

/** A large key for a cold hand: what it notes, and below it what of that there is already. */
final class Tile extends Button {

    private static final int MANY = 9;

    private final Label second = Words.small("");

    Tile(Action action, String below) {
        this(action, action.label(), below);
    }

    /** With a shorter caption than what the action is called. */
    Tile(Action action, String caption, String below) {
        Label first = Words.bold(caption);
        first.setMinWidth(0);
        first.setWrapText(true);
        second.setText(below);
        second.setMinWidth(0);
        getStyleClass().addAll("secondary", "tile");
        accessibleTextProperty().bind(action.labelProperty());
        disableProperty().bind(action.enabledProperty().not());
        setOnAction(event -> action.run());
        setGraphic(Lay.row(12, new KeyCap(action.key()), Lay.column(0, first, second)));
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setMaxWidth(Double.MAX_VALUE);
        setMinWidth(0);
        action.at(this);
    }

    /** What stands below what it notes. */
    void below(String text) {
        second.setText(text);
    }

    /** A grid of these tiles in columns of equal width: three, or four where there are more than nine. */
    static GridPane grid(List<? extends Tile> tiles) {
        GridPane grid = new GridPane();
        fill(grid, tiles);
        return grid;
    }

    /** Fills a grid anew. */
    static void fill(GridPane grid, List<? extends Tile> tiles) {
        boolean many = tiles.size() > MANY;
        int columns = many ? 4 : 3;
        grid.getStyleClass().setAll("tiles", many ? "many" : "few");
        grid.getChildren().clear();
        grid.getColumnConstraints().clear();
        for (int i = 0; i < columns; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100.0 / columns);
            grid.getColumnConstraints().add(column);
        }
        for (int i = 0; i < tiles.size(); i++) {
            grid.add(tiles.get(i), i % columns, i / columns);
        }
    }
}
