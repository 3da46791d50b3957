package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import org.rafterbook.review.HandlingSummary;
import org.rafterbook.review.Level;
import org.rafterbook.review.Rate;
import org.rafterbook.review.ReviewFlight;
import org.rafterbook.review.SettingInfo;
import org.rafterbook.review.Share;
import org.rafterbook.review.Span;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.ModelReview;

/** How the model handled along the margin or a setting, each share and rate with its 90 % interval. */
final class HandlingPanel {

    private static final double TWO_LINES_EM = 2.72;

    /** A value or stretch and how its flights handled. */
    private record Row(String value, HandlingSummary handling) {}

    private final ReviewModel model;
    private final Table<Row> table = new Table<>("Handling noted");
    private final Label along = Lay.styled(new Label(), "table-head");

    HandlingPanel(ReviewModel model) {
        this.model = model;
        along.setWrapText(true);
        table.rowHeight(TWO_LINES_EM);
        table.text("", 5.3, Row::value).grow().head(along);
        table.number("flights", "", 4.2, r -> String.valueOf(r.handling().flights()));
        table.node("upsets\nrecovered", 6.5, r -> share(r.handling().recovered()));
        table.node(
                "stalls a\nflight (n)",
                6,
                r -> rate(r.handling().stalls(), r.handling().flights()));
        table.node(
                "steers a\nflight (n)",
                5.8,
                r -> rate(r.handling().steers(), r.handling().flights()));
        model.part(table.visibleProperty(), this::show, model.axisProperty());
    }

    Table<?> node() {
        return table;
    }

    private void show() {
        ModelReview answer = model.answer();
        if (answer == null) {
            table.rows(List.of());
            return;
        }
        ReviewAxis axis = model.axisProperty().get();
        table.ifEmpty(axis.nothing(answer));
        along.setText(axis.isMargin() ? "margin\nin %" : axis.name());
        SettingInfo setting = axis.setting();
        table.rows(setting == null ? byMargin(answer.input().flights()) : bySetting(answer, setting));
    }

    private static List<Row> byMargin(List<ReviewFlight> flights) {
        List<Row> rows = new ArrayList<>();
        for (Map.Entry<Span, HandlingSummary> one : HandlingSummary.byMargin(flights, HandlingSummary.MARGIN_STRETCH)
                .entrySet()) {
            Span span = one.getKey();
            rows.add(new Row(
                    QuantityFormat.rounded(span.low(), 0) + " to " + QuantityFormat.rounded(span.high(), 0),
                    one.getValue()));
        }
        return rows;
    }

    private static List<Row> bySetting(ModelReview answer, SettingInfo setting) {
        List<Row> rows = new ArrayList<>();
        for (Map.Entry<Level, HandlingSummary> one : HandlingSummary.bySetting(
                        answer.input().flights(), setting.key())
                .entrySet()) {
            rows.add(new Row(setting.show(one.getKey()), one.getValue()));
        }
        return rows;
    }

    private static Node share(Share share) {
        return share.isKnown()
                ? both(share.counts(), Math.round(100 * share.low()) + " to " + Math.round(100 * share.high()) + " %")
                : Words.hint("–");
    }

    /** Where somebody counted on some of the flights only, the rate says in brackets on how many. */
    private static Node rate(Rate rate, int flights) {
        return rate.isKnown()
                ? both(
                        Rate.figure(rate.perFlight()) + (rate.flights() < flights ? " (" + rate.flights() + ")" : ""),
                        Rate.figure(rate.low()) + " to " + Rate.figure(rate.high()))
                : Words.hint("–");
    }

    private static Node both(String value, String interval) {
        var both = Lay.column(0, Words.body(value), Words.hint(interval));
        both.setAlignment(Pos.CENTER_LEFT);
        return both;
    }
}
