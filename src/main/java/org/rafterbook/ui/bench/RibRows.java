package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.rafterbook.airframe.Rib;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;

/** Ribs of one half from the middle outward, a row each: place, leading edge, chord, height and twist. */
final class RibRows {

    private static final String[] HEADS = {"out", "edge", "chord", "height", "twist"};

    private final DisplayUnits units;
    private final Runnable changed;
    private final GridPane grid = new GridPane();
    private final Label message = Words.small("");
    private final List<Amount[]> rows = new ArrayList<>();
    private final VBox node;

    /**
     * @param changed called whenever a rib reads otherwise
     */
    RibRows(Keys keys, DisplayUnits units, Runnable changed) {
        this.units = units;
        this.changed = changed;
        grid.getStyleClass().add("rib-rows");
        message.getStyleClass().add("form-refusal");
        message.setWrapText(true);
        Action more = keys.on("Ctrl+Shift+R", "One more rib", this::more);
        Action less = keys.action("One rib less", this::less);
        Label unit =
                Words.hint("mm, twist in degrees; edge: leading edge aft of the root's; straight lines between ribs");
        unit.setWrapText(true);
        node = Lay.column(4, grid, unit, message, Lay.row(8, Buttons.secondary(more), Buttons.link(less)));
    }

    VBox node() {
        return node;
    }

    void fill(List<Rib> ribs) {
        rows.clear();
        ribs.forEach(rib -> rows.add(row(rib)));
        lay();
    }

    private Amount[] row(Rib rib) {
        Amount[] row = {
            new Amount("", Quantity.LENGTH, units).fill(rib.outM()),
            new Amount("", Quantity.LENGTH, units).fill(rib.edgeAftM()),
            new Amount("", Quantity.LENGTH, units).fill(rib.chordM()),
            new Amount("", Quantity.LENGTH, units).fill(rib.riseM()),
            new Amount("", Quantity.ANGLE, units).fill(rib.twistRad())
        };
        for (Amount cell : row) {
            cell.field().getStyleClass().add("in-row");
            cell.field().unit("");
            cell.field().valueProperty().subscribe((before, now) -> changed());
        }
        return row;
    }

    private void lay() {
        grid.getChildren().clear();
        for (int c = 0; c < HEADS.length; c++) {
            grid.add(Words.hint(HEADS[c]), c, 0);
        }
        for (int r = 0; r < rows.size(); r++) {
            for (int c = 0; c < HEADS.length; c++) {
                rows.get(r)[c].field().input().setAccessibleText("Rib " + (r + 1) + ", " + HEADS[c]);
                grid.add(rows.get(r)[c].field(), c, r + 1);
            }
        }
        Lay.show(message, false);
    }

    private void more() {
        List<Rib> now = read();
        Rib last = now.isEmpty() ? new Rib(-0.05, 0, 0.1, 0, 0) : now.get(now.size() - 1);
        rows.add(row(new Rib(last.outM() + 0.05, last.edgeAftM(), last.chordM(), last.riseM(), last.twistRad())));
        lay();
        rows.get(rows.size() - 1)[0].field().edit();
        changed.run();
    }

    private void less() {
        if (rows.size() > 2) {
            rows.remove(rows.size() - 1);
            lay();
            changed.run();
        }
    }

    private void changed() {
        check();
        changed.run();
    }

    /** Whether every cell can be read; if not, the sentence names rib and column. */
    boolean check() {
        String sentence = "";
        for (int r = 0; r < rows.size(); r++) {
            for (int c = 0; c < HEADS.length; c++) {
                Amount cell = rows.get(r)[c];
                boolean sound = cell.field().check();
                String why = sound && cell.si() == null && c < 3
                        ? "is empty"
                        : cell.field().refusal();
                if (sentence.isEmpty() && !why.isEmpty()) {
                    sentence = "Rib " + (r + 1) + ", " + HEADS[c] + ": " + why;
                }
            }
        }
        message.setText(sentence.isEmpty() ? "" : "× " + sentence);
        Lay.show(message, !sentence.isEmpty());
        return sentence.isEmpty();
    }

    /** What is typed; an empty height or twist is zero. */
    List<Rib> read() {
        List<Rib> ribs = new ArrayList<>();
        for (Amount[] row : rows) {
            ribs.add(new Rib(row[0].si(0), row[1].si(0), row[2].si(0), row[3].si(0), row[4].si(0)));
        }
        return ribs;
    }
}
