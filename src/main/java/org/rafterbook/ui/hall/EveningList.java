package org.rafterbook.ui.hall;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.input.MouseEvent;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;

/**
 * The rows of the evening, drawn: a landing shows them all again, and the window's first frame holds them, so they are
 * not some hundreds of labels. A click opens the flight.
 */
final class EveningList extends Drawing {

    private static final List<String> HEADS = List.of("", "version", "torque", "margin", "time", "turns left");
    private static final int VERSION = 1;
    private static final int TIME = 4;
    private static final int LEFT = 5;
    private static final double HEAD_EM = 2.7;
    private static final double ROW_EM = 2.24;
    private static final double APART_EM = 3.3;
    private static final double PAD = 6;
    private static final double MARK = 9;

    private final List<String> units;
    private final Consumer<EveningRow> open;
    private List<EveningRow> rows = List.of();
    private int pointed = -1;

    EveningList(QuantityFormat format, Consumer<EveningRow> open) {
        this.units = List.of("", "", format.unitOf(Quantity.TORQUE), "%", "", "");
        this.open = open;
        layered();
        getStyleClass().add("evening-list");
        setAccessibleRole(AccessibleRole.LIST_VIEW);
        setOnMouseMoved(event -> point(rowAt(event)));
        setOnMouseExited(event -> point(-1));
        setOnMouseClicked(event -> {
            int at = rowAt(event);
            if (at >= 0) {
                open.accept(rows.get(at));
            }
        });
    }

    void show(List<EveningRow> evening) {
        rows = List.copyOf(evening);
        pointed = -1;
        setAccessibleText(rows.stream().map(EveningRow::words).collect(Collectors.joining("; ")));
        wish(-1, heightEm(rows.size()));
        repaint();
    }

    /** Height of the head and so many rows, em. */
    double heightEm(int count) {
        return HEAD_EM
                + rows.stream().limit(count).mapToDouble(EveningList::rowEm).sum();
    }

    private static double rowEm(EveningRow row) {
        return row.apart().isEmpty() ? ROW_EM : APART_EM;
    }

    private int rowAt(MouseEvent event) {
        for (int i = 0; i < rows.size(); i++) {
            if (event.getY() >= em() * heightEm(i) && event.getY() < em() * heightEm(i + 1)) {
                return i;
            }
        }
        return -1;
    }

    private void point(int row) {
        if (row != pointed) {
            pointed = row;
            repaintOver();
        }
    }

    @Override
    protected void paint(Pen pen) {
        double[] rights = rights(pen);
        double base = em() * HEAD_EM;
        for (int i = 0; i < HEADS.size(); i++) {
            HPos side = i == VERSION ? HPos.LEFT : HPos.RIGHT;
            double x = i == VERSION ? rights[0] + pen.px(PAD) : rights[i] - pen.px(PAD);
            double bottom = base - pen.px(4);
            if (!units.get(i).isEmpty()) {
                pen.text(units.get(i), x, bottom, TextRole.SMALL, Token.INK_3, side, VPos.BOTTOM);
                bottom -= em() * TextRole.SMALL.sizeEm() * 1.25;
            }
            pen.text(HEADS.get(i), x, bottom, TextRole.SMALL, Token.INK_3, side, VPos.BOTTOM);
        }
        for (int i = 0; i < rows.size(); i++) {
            row(pen, rows.get(i), em() * heightEm(i), em() * heightEm(i + 1), rights);
        }
    }

    private void row(Pen pen, EveningRow row, double top, double bottom, double[] rights) {
        double middle = top + em() * ROW_EM / 2;
        pen.stroke(Token.LINE, 1).line(0, bottom - 1, pen.width(), bottom - 1);
        pen.text(row.number(), rights[0] - pen.px(PAD), middle, TextRole.BODY, Token.INK_2, HPos.RIGHT, VPos.CENTER);
        double x = rights[0] + pen.px(PAD);
        if (row.mark() != null) {
            pen.mark(row.mark(), row.style(), x + pen.px(MARK / 2 + 2), middle + pen.px(row.atLeast() ? 4 : 0), MARK);
            x += pen.px(MARK + 8);
        }
        Token version = row.asks() == EveningRow.Asks.MODEL ? Token.ACCENT : Token.INK;
        pen.text(row.version(), x, middle, TextRole.BODY, version, HPos.LEFT, VPos.CENTER);
        List<String> cells = row.cells();
        for (int i = VERSION + 1; i < cells.size(); i++) {
            Token token = i == LEFT && row.asks() == EveningRow.Asks.TURNS_LEFT ? Token.ACCENT : Token.INK;
            pen.text(cells.get(i), rights[i] - pen.px(PAD), middle, role(i), token, HPos.RIGHT, VPos.CENTER);
        }
        if (!row.apart().isEmpty()) {
            double below = bottom - pen.px(6);
            pen.text(
                    "× " + row.apart(),
                    rights[TIME] - pen.px(PAD),
                    below,
                    TextRole.SMALL,
                    Token.INK_2,
                    HPos.RIGHT,
                    VPos.BOTTOM);
        }
    }

    private static TextRole role(int column) {
        return column == TIME ? TextRole.FIGURE : TextRole.BODY;
    }

    /** Right ends of the columns, px: each as wide as its widest word, the version's takes what is left. */
    private double[] rights(Pen pen) {
        double[] rights = new double[HEADS.size()];
        double right = pen.width();
        for (int i = HEADS.size() - 1; i > VERSION; i--) {
            rights[i] = right;
            right -= width(pen, i);
        }
        rights[VERSION] = right;
        rights[0] = width(pen, 0);
        return rights;
    }

    private double width(Pen pen, int column) {
        double widest = Math.max(
                pen.textWidth(HEADS.get(column), TextRole.SMALL), pen.textWidth(units.get(column), TextRole.SMALL));
        for (EveningRow row : rows) {
            widest = Math.max(widest, pen.textWidth(row.cells().get(column), role(column)));
            if (column == TIME && !row.apart().isEmpty()) {
                widest = Math.max(widest, pen.textWidth("× " + row.apart(), TextRole.SMALL));
            }
        }
        return widest + 2 * pen.px(PAD);
    }

    @Override
    protected void paintOver(Pen pen) {
        if (pointed >= 0) {
            double top = em() * heightEm(pointed);
            pen.area(0, top, pen.width(), em() * rowEm(rows.get(pointed)) - 1, pen.colour(Token.ACCENT, 0.12));
        }
    }
}
