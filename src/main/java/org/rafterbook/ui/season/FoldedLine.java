package org.rafterbook.ui.season;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.FittingRow;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;

/** What there is no room for, in one line: each part's name with its key, and what is most worth knowing of it. */
final class FoldedLine {

    private final Map<Action, Button> parts = new LinkedHashMap<>();
    private final FittingRow row = new FittingRow();
    private final Label summary = Words.aside("");
    private final Sheet sheet = new Sheet();

    FoldedLine() {
        row.setAlignment(Pos.CENTER_LEFT);
        row.getChildren().add(summary);
        sheet.add(Lay.styled(row, "season-folded"));
        sheet.setMinHeight(Sheet.USE_PREF_SIZE);
    }

    Node node() {
        return sheet;
    }

    /** Adds a part under a short name; those added later are left out first where even this line is too long. */
    void add(Action unfold, String name) {
        Button button = Lay.styled(Buttons.secondary(unfold), "folded");
        button.textProperty().unbind();
        button.setText(name);
        parts.put(unfold, button);
        row.getChildren().add(parts.size() - 1, button);
    }

    void summary(String words) {
        summary.setText(words);
    }

    /** Shows the part in the line, or takes it out. */
    void show(Action unfold, boolean folded) {
        Button button = parts.get(unfold);
        if (button != null) {
            Lay.show(button, folded);
        }
        Lay.show(sheet, parts.values().stream().anyMatch(Node::isManaged));
    }
}
