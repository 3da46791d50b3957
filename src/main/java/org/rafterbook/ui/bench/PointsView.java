package org.rafterbook.ui.bench;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.chart.Scale;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.Symbols;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.MarginAnswer;
import org.rafterbook.work.MarginWords;

/** Paints balance point, neutral point with its band, the margin between them and the wished range. */
final class PointsView {

    private final Pen pen;
    private final Scale x;
    private final AirframeFit fit;
    private final MarginAnswer margin;

    PointsView(Pen pen, Scale x, AirframeFit fit, MarginAnswer margin) {
        this.pen = pen;
        this.x = x;
        this.fit = fit;
        this.margin = margin;
    }

    private double x(double aftM) {
        return x.at(aftM * 1000);
    }

    void paint(@Nullable Double wishedLow, @Nullable Double wishedHigh) {
        Double balance = margin.balanceM();
        Double neutral = margin.neutralPointM();
        Double chord = margin.meanChordM();
        if (neutral != null && chord != null && wishedLow != null && wishedHigh != null) {
            wished(neutral - wishedHigh * chord, neutral - wishedLow * chord);
        }
        if (balance != null) {
            pen.stroke(Token.INK, 1).dashed(8, 3, 2, 3);
            pen.line(x(balance), fit.middlePx() - pen.px(60), x(balance), fit.stickPx() + pen.px(24));
        }
        if (neutral != null) {
            pen.stroke(Token.INK, 1).dashed(3, 3);
            pen.line(x(neutral), fit.middlePx() - pen.px(60), x(neutral), fit.stickPx() - pen.px(16));
            neutral(neutral, chord, balance != null && neutral < balance);
        }
        if (balance != null) {
            balance(balance);
        }
        if (balance != null && neutral != null && chord != null) {
            dimension(balance, neutral, chord);
        }
    }

    private void wished(double from, double to) {
        double y = fit.stickPx() + pen.px(30);
        double up = pen.px(6);
        pen.stroke(Token.ACCENT, 1.6).dashed();
        pen.line(x(from), y, x(to), y);
        pen.line(x(from), y - up, x(from), y);
        pen.line(x(to), y - up, x(to), y);
        pen.textOn(
                Token.SHEET,
                "balance for the wished margin",
                x(to) + pen.px(8),
                y,
                TextRole.SMALL,
                Token.ACCENT,
                HPos.LEFT,
                VPos.CENTER);
    }

    private void balance(double balance) {
        Symbols.balanceFromSide(pen, x(balance), fit.stickPx() + 2);
        Symbols.balanceFromAbove(pen, x(balance), fit.middlePx());
        pen.textOn(
                Token.SHEET,
                "balance " + QuantityFormat.rounded(balance * 1000, 1),
                x(balance) - pen.px(14),
                fit.stickPx() + pen.px(18),
                TextRole.SMALL_BOLD,
                Token.INK,
                HPos.RIGHT,
                VPos.CENTER);
    }

    private void neutral(double neutral, @Nullable Double chord, boolean unstable) {
        Double band = margin.band();
        Double share = band == null || band < MarginWords.LEAST ? null : band;
        double side = fit.stickPx() - pen.px(34);
        if (share != null && chord != null) {
            double half = share * chord;
            Symbols.neutralBand(pen, x(neutral - half), x(neutral + half), side - pen.px(12), side + pen.px(12));
            Symbols.neutralBand(
                    pen,
                    x(neutral - half),
                    x(neutral + half),
                    fit.middlePx() - pen.px(20),
                    fit.middlePx() + pen.px(20));
        }
        Symbols.neutralFromSide(pen, x(neutral), side);
        Symbols.neutralFromAbove(pen, x(neutral), fit.middlePx());
        double text = x(neutral)
                + pen.px(14)
                + (share == null || chord == null
                        ? 0
                        : Math.max(0, x(neutral + share * chord) - x(neutral) - pen.px(8)));
        pen.textOn(
                Token.SHEET,
                "neutral " + QuantityFormat.rounded(neutral * 1000, 1),
                text,
                side - pen.px(6),
                TextRole.SMALL_BOLD,
                unstable ? Token.STOP : Token.INK,
                HPos.LEFT,
                VPos.CENTER);
        if (share != null && chord != null) {
            pen.textOn(
                    Token.SHEET,
                    "± " + QuantityFormat.rounded(share * chord * 1000, 1),
                    text,
                    side + pen.px(8),
                    TextRole.SMALL,
                    Token.ACCENT,
                    HPos.LEFT,
                    VPos.CENTER);
        }
    }

    /** An ordinary outside dimension; behind the balance point's place it says by how much the model is unstable. */
    private void dimension(double balance, double neutral, double chord) {
        double share = (neutral - balance) / chord;
        boolean unstable = share < 0;
        String text = (unstable ? "unstable by " : "margin ")
                + QuantityFormat.rounded(Math.abs(neutral - balance) * 1000, 1) + " mm = "
                + QuantityFormat.rounded(Math.abs(share) * 100, 1) + " %";
        Token ink = unstable ? Token.STOP : Token.INK;
        if (!fit.isRoomy(pen.px(1))) {
            pen.textOn(
                    Token.SHEET,
                    text,
                    pen.px(13),
                    pen.height() - pen.px(12),
                    TextRole.SMALL_BOLD,
                    ink,
                    HPos.LEFT,
                    VPos.CENTER);
            return;
        }
        // beside the view's caption where there is room, else below it
        double caption = pen.px(24) + pen.textWidth("From the left side", TextRole.CAPTION);
        double y = fit.sideTopPx() + pen.px(Math.min(x(balance), x(neutral)) - pen.px(24) > caption ? 12 : 30);
        if (unstable) {
            pen.hatch(x(neutral), y - pen.px(6), x(balance) - x(neutral), pen.px(12), Token.STOP);
        }
        Dimensions.level(pen, x(balance), x(neutral), y, text, ink, TextRole.SMALL_BOLD);
    }
}
