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
            neutral(neutral, balance != null && neutral < balance);
        }
        if (balance != null) {
            balance(balance);
        }
        if (balance != null && neutral != null && chord != null) {
            dimension(balance, neutral, chord);
        }
    }

    /** Keeps the places of the words beside the neutral point, from which other words have to stay away. */
    void keepPlaces(Labels labels) {
        Double neutral = margin.neutralPointM();
        if (neutral != null) {
            double x = wordsPx(neutral);
            String beside = "  "; // what is moved on does not touch them
            labels.take(Labels.line(pen, neutralWords(neutral) + beside, TextRole.SMALL_BOLD, x, sidePx() - pen.px(6)));
            labels.take(Labels.line(pen, bandWords() + beside, TextRole.SMALL, x, sidePx() + pen.px(8)));
        }
    }

    private double sidePx() {
        return fit.stickPx() - pen.px(34);
    }

    /** Half of the neutral point's band, 0 where none is to be read. */
    private double bandM() {
        Double band = margin.band();
        Double chord = margin.meanChordM();
        return band == null || chord == null || band < MarginWords.LEAST ? 0 : band * chord;
    }

    private double wordsPx(double neutral) {
        return x(neutral) + pen.px(14) + Math.max(0, x(neutral + bandM()) - x(neutral) - pen.px(8));
    }

    private static String neutralWords(double neutral) {
        return "neutral " + QuantityFormat.rounded(neutral * 1000, 1);
    }

    private String bandWords() {
        return bandM() == 0 ? "" : "± " + QuantityFormat.rounded(bandM() * 1000, 1);
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
        String words = "balance " + QuantityFormat.rounded(balance * 1000, 1);
        boolean ahead = x(balance) - pen.px(18) > pen.textWidth(words, TextRole.SMALL_BOLD);
        pen.textOn(
                Token.SHEET,
                words,
                x(balance) + pen.px(ahead ? -14 : 14),
                fit.stickPx() + pen.px(18),
                TextRole.SMALL_BOLD,
                Token.INK,
                ahead ? HPos.RIGHT : HPos.LEFT,
                VPos.CENTER);
    }

    private void neutral(double neutral, boolean unstable) {
        double side = sidePx();
        double half = bandM();
        if (half > 0) {
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
        double text = wordsPx(neutral);
        pen.textOn(
                Token.SHEET,
                neutralWords(neutral),
                text,
                side - pen.px(6),
                TextRole.SMALL_BOLD,
                unstable ? Token.STOP : Token.INK,
                HPos.LEFT,
                VPos.CENTER);
        if (half > 0) {
            pen.textOn(
                    Token.SHEET,
                    bandWords(),
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
