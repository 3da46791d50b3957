package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.rafterbook.airframe.Rib;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedValue;

/** Ribs of one half from the middle outward, a row each: place, leading edge, chord, height and twist. */
final class RibRows {

    private static final String[] HEADS = {"out", "edge", "chord", "height", "twist"};
    private static final int OUT = 0;
    private static final int CHORD = 2;

    private final DisplayUnits units;
    private final Runnable changed;
    private final GridPane grid = new GridPane();
    private final Label readBack = Words.hint("");
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
        for (int c = 0; c < HEADS.length; c++) {
            // what a cell says against itself, in no room of its own, must not widen its column
            ColumnConstraints even = new ColumnConstraints();
            even.setPercentWidth(100.0 / HEADS.length);
            grid.getColumnConstraints().add(even);
        }
        message.getStyleClass().add("form-refusal");
        message.setWrapText(true);
        Action more = keys.on("Ctrl+Shift+R", "One more rib", this::more);
        Action less = keys.action("One rib less", this::less);
        Label unit =
                Words.hint("mm, twist in degrees; edge: leading edge aft of the root's; straight lines between ribs");
        unit.setWrapText(true);
        Lay.show(readBack, false);
        node = Lay.column(4, grid, readBack, unit, message, Lay.row(8, Buttons.secondary(more), Buttons.link(less)));
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
            length(rib.outM()),
            length(rib.edgeAftM()),
            length(rib.chordM()),
            length(rib.riseM()),
            new Amount("", Quantity.ANGLE, units).decimals(2).fill(rib.twistRad())
        };
        for (Amount cell : row) {
            cell.field().getStyleClass().add("in-row");
            cell.field().unit("");
            cell.field().input().textProperty().subscribe((before, now) -> changed(cell));
            // a field that is left reads itself anew and knows nothing of its neighbours
            cell.field().input().focusedProperty().subscribe((before, now) -> check());
        }
        return row;
    }

    /** As many decimals as a cell has room for. */
    private Amount length(double si) {
        return new Amount("", Quantity.LENGTH, units)
                .decimals(units == DisplayUnits.METRIC ? 2 : 3)
                .fill(si);
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
        Lay.show(readBack, false);
        check();
    }

    private void more() {
        List<Rib> now = ribs();
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

    private void changed(Amount cell) {
        readBack(cell);
        check();
        changed.run();
    }

    /** How a length typed in another unit was understood; a cell has no room for it. */
    private void readBack(Amount cell) {
        TypedValue typed = cell.field().value();
        boolean other = typed != null && !typed.bare();
        if (other) {
            readBack.setText(cell.field().input().getAccessibleText() + ": "
                    + cell.field().message());
        }
        Lay.show(readBack, other);
    }

    /** Whether a half can be made of the cells; if not, the sentence names rib and column, and its cell is marked. */
    boolean check() {
        String sentence = "";
        for (int r = 0; r < rows.size(); r++) {
            for (int c = 0; c < HEADS.length; c++) {
                Field<TypedValue> cell = rows.get(r)[c].field();
                String why = cell.check() ? refusal(r, c) : cell.refusal();
                if (cell.refusal().isEmpty() && !why.isEmpty()) {
                    cell.refuse(why);
                }
                if (sentence.isEmpty() && !why.isEmpty()) {
                    sentence = "Rib " + (r + 1) + ", " + HEADS[c] + ": " + why;
                }
            }
        }
        message.setText(sentence.isEmpty() ? "" : "× " + Words.unbroken(sentence));
        Lay.show(message, !sentence.isEmpty());
        return sentence.isEmpty();
    }

    /** What is wrong with a cell beside its neighbours, empty for nothing. */
    private String refusal(int r, int c) {
        Double is = rows.get(r)[c].si();
        if (is == null) {
            return c <= CHORD ? "is empty." : "";
        }
        Double inner = r == 0 || c != OUT ? null : rows.get(r - 1)[OUT].si();
        if (inner != null && is <= inner) {
            return text(is) + " does not lie outside rib " + r + " at " + text(inner) + ".";
        }
        if (c == OUT && is < 0) {
            return text(is) + " lies beyond the middle.";
        }
        if (c == CHORD && (is < 0 || is == 0 && r < rows.size() - 1)) {
            return "a chord is above zero; only the outermost rib may be a point.";
        }
        return "";
    }

    private String text(double si) {
        return new QuantityFormat(units).text(Quantity.LENGTH, si);
    }

    /** What is typed; an empty height or twist is zero. Empty where no half can be made of it. */
    List<Rib> read() {
        return check() ? ribs() : List.of();
    }

    private List<Rib> ribs() {
        List<Rib> ribs = new ArrayList<>();
        for (Amount[] row : rows) {
            ribs.add(new Rib(row[0].si(0), row[1].si(0), row[2].si(0), row[3].si(0), row[4].si(0)));
        }
        return ribs;
    }
}
