package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.stability.MarginDifference;
import org.rafterbook.ui.chart.MarginBar;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.MarginText;
import org.rafterbook.work.MarginWords;
import org.rafterbook.work.Prepared;
import org.rafterbook.work.Rigged;

/**
 * The stability margin of the prepared flight, large; beside it first the difference to a version that flew well, which is
 * known better than the margin on its own.
 */
final class MarginPart {

    /** What would be rounded to nothing, a tenth of a point. */
    private final QuantityFormat format;

    private final Label margin = Words.readout("–", 3);
    private final Label difference = Words.bold("");
    private final Label alone = Words.hint("");
    private final MarginBar bar = new MarginBar();
    private final Sheet.Section node;

    MarginPart(QuantityFormat format) {
        this.format = format;
        margin.setMinWidth(Label.USE_PREF_SIZE);
        for (Label label : List.of(difference, alone)) {
            label.setWrapText(true);
            label.setMinHeight(Label.USE_PREF_SIZE);
        }
        VBox words = Lay.column(0, difference, alone);
        words.setAlignment(Pos.CENTER_LEFT);
        node = new Sheet.Section("Stability margin", "", Lay.row(16, margin, Lay.grow(words)), bar);
    }

    Sheet.Section node() {
        return node;
    }

    /** Smaller where the height is low for the text size. */
    void low(boolean low) {
        margin.getStyleClass().setAll("label", low ? "readout-2" : "readout-3");
    }

    void show(Prepared prepared) {
        MarginText.Answer now = prepared.margin();
        Double fraction = now == null ? null : now.fraction();
        node.aside(
                fraction == null || prepared.motor() == null
                        ? ""
                        : "with " + prepared.motor().name());
        Lay.show(bar, fraction != null);
        if (now == null || fraction == null) {
            margin.setText("–");
            difference.setText("");
            alone.setText(now == null ? "no model" : now.missing());
            return;
        }
        margin.setText(Texts.margin(now, 1) + " %");
        boolean changed = prepared.before() != null
                && prepared.rigged() != null
                && !prepared.before()
                        .version()
                        .id()
                        .equals(prepared.rigged().version().id());
        MarginText.Answer before = changed ? prepared.marginBefore() : null;
        boolean byGood = prepared.good() != null && prepared.marginGood() != null;
        MarginDifference apart = now.differenceFrom(byGood ? prepared.marginGood() : before);
        Rigged other = byGood ? prepared.good() : changed ? prepared.before() : null;
        difference.setText(apart == null || other == null ? "" : words(apart, other, byGood));
        alone.setText(alone(now, before, prepared.before()));
        Lay.show(difference, !difference.getText().isEmpty());
        Model model = prepared.rigged() == null ? null : prepared.rigged().model();
        bar.show(new MarginBar.Margin(
                100 * fraction,
                before == null ? null : percent(before.fraction()),
                apart == null ? null : Double.valueOf(100 * apart.bandPoints()),
                model == null ? null : percent(model.wishedLow()),
                model == null ? null : percent(model.wishedHigh())));
    }

    private static @Nullable Double percent(@Nullable Double fraction) {
        return fraction == null ? null : Double.valueOf(100 * fraction);
    }

    /** Such as "1.3 points (1.4 mm) less than v8, well-behaved, ± 1.1". */
    private String words(MarginDifference apart, Rigged other, boolean good) {
        double points = 100 * apart.points();
        String more = points < 0 ? " less than " : " more than ";
        if (Math.abs(apart.points()) < MarginWords.LEAST) {
            return "The same as " + other.name() + (good ? ", well-behaved" : "");
        }
        return QuantityFormat.rounded(Math.abs(points), 1) + " points ("
                + format.text(Quantity.LENGTH, Math.abs(apart.distanceM())) + ")" + more + other.name()
                + (good ? ", well-behaved" : "") + ", " + MarginWords.band(apart.bandPoints());
    }

    private static String alone(MarginText.Answer now, MarginText.@Nullable Answer before, @Nullable Rigged flown) {
        List<String> parts = new ArrayList<>();
        if (!now.trust().isEmpty()) {
            parts.add(now.trust());
        }
        if (before != null && before.fraction() != null && flown != null) {
            parts.add(flown.name() + ": " + Texts.margin(before, 1) + " %");
        }
        return String.join("; ", parts);
    }
}
