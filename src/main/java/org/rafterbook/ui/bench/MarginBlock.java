package org.rafterbook.ui.bench;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.stability.MarginDifference;
import org.rafterbook.ui.chart.MarginBar;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Looked;
import org.rafterbook.work.MarginAnswer;
import org.rafterbook.work.MarginWords;

/**
 * The stability margin: the figure, first how it differs from the well-behaved version with the band of that difference,
 * then what is not known of the margin by itself.
 */
final class MarginBlock {

    private final QuantityFormat format;

    private final Label figure = Words.readout("–", 1);
    private final Label verdict = Words.small("");
    private final Label own = Words.hint("");
    private final MarginBar bar = new MarginBar();
    private final Sheet.Section section;

    MarginBlock(QuantityFormat format) {
        this.format = format;
        figure.setMinSize(Label.USE_PREF_SIZE, Label.USE_PREF_SIZE);
        figure.setAccessibleText("Stability margin");
        verdict.getStyleClass().add("verdict");
        verdict.setWrapText(true);
        own.setWrapText(true);
        HBox row = Lay.row(12, figure, Lay.grow(Lay.column(0, verdict, own)));
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("margin-row");
        section = new Sheet.Section("Stability margin", "", row, bar);
    }

    Node node() {
        return section;
    }

    /**
     * Shows the margin of what is looked at.
     *
     * @param before the same version as it stands, null while nothing is turned
     * @param beside the version compared with, whose margin is told too; null for none
     */
    void show(BenchDesk.Bench bench, Looked now, @Nullable Looked before, @Nullable Looked beside) {
        MarginAnswer margin = now.margin();
        Double is = margin.margin();
        figure.setText(is == null ? "–" : BenchWords.percent(is));
        Looked good = bench.good();
        boolean isGood = good != null
                && before == null
                && good.version().version().id().equals(now.version().version().id());
        MarginDifference apart = good == null || isGood ? null : margin.differenceFrom(good.margin());
        verdict.setText(verdict(now, is, good, isGood, apart));
        verdict.getStyleClass().setAll("label", apart == null && is != null ? "hint" : "verdict");
        own.setText(ownWords(margin, beside));
        Double was = before == null ? null : before.margin().margin();
        bar.show(new MarginBar.Margin(
                BenchWords.inPercent(is),
                was == null && good != null && !isGood
                        ? BenchWords.inPercent(good.margin().margin())
                        : BenchWords.inPercent(was),
                apart == null ? null : (Double) (apart.bandPoints() * 100),
                BenchWords.inPercent(bench.now().model().wishedLow()),
                BenchWords.inPercent(bench.now().model().wishedHigh())));
    }

    private String verdict(
            Looked now, @Nullable Double is, @Nullable Looked good, boolean isGood, @Nullable MarginDifference apart) {
        if (is == null) {
            String missing = now.margin().missing();
            return missing == null ? "The margin cannot be told." : missing;
        }
        if (is < 0) {
            return "Unstable by " + BenchWords.percent(-is) + ": the balance point lies behind the neutral point.";
        }
        if (isGood) {
            return "The well-behaved version others are compared with.";
        }
        if (good == null || apart == null) {
            return "Mark a version as well-behaved to compare with it.";
        }
        if (Math.abs(apart.points()) < MarginWords.LEAST) {
            return "The same as " + good.version().name() + ", well-behaved.";
        }
        String points = QuantityFormat.rounded(Math.abs(apart.points() * 100), 1);
        String far = format.text(Quantity.LENGTH, Math.abs(apart.distanceM()));
        return points + " points (" + far + ") " + (apart.points() < 0 ? "less" : "more") + " than "
                + good.version().name() + ", well-behaved, "
                + MarginWords.band(apart.bandPoints()) + " points"
                + (apart.bandPoints() < MarginWords.LEAST
                        ? ""
                        : " (± " + format.text(Quantity.LENGTH, apart.bandM()) + ")");
    }

    private static String ownWords(MarginAnswer margin, @Nullable Looked beside) {
        Double was = beside == null ? null : beside.margin().margin();
        String then = beside == null || was == null
                ? ""
                : beside.version().name() + ": " + Words.unbroken(BenchWords.percent(was));
        return Stream.of(MarginWords.trust(margin), then)
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining("; "));
    }
}
