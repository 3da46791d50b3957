package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.RollingPane;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Evening;

/** The evening's flights, the newest on top; a click opens one. */
final class EveningPane {

    /** Rows that are wished to be in sight. */
    private static final int WISHED = 6;

    private final QuantityFormat format;
    private final EveningList list;
    private final Label hint = Words.prose("");
    private final Sheet.Section section = new Sheet.Section("This evening", "");

    EveningPane(HallModel model, QuantityFormat format) {
        this.format = format;
        list = new EveningList(format, row -> model.landing().open(row.line()));
        section.getChildren().addAll(Lay.grow(new Rolling()), hint);
        section.setMinHeight(0);
    }

    Node node() {
        return section;
    }

    void show(Evening evening) {
        List<EveningRow> rows = new ArrayList<>();
        for (FlightLine line : evening.flights()) {
            rows.add(0, EveningRow.of(evening, line, format));
        }
        list.show(rows);
        Lay.show(list, !rows.isEmpty());
        section.aside(
                rows.isEmpty() ? "" : rows.size() + (rows.size() == 1 ? " flight" : " flights") + touched(evening));
        hint.setText(rows.isEmpty() ? "Flights appear here as they are made, the newest on top." : hint(rows));
        Lay.show(hint, !hint.getText().isEmpty());
    }

    private static String touched(Evening evening) {
        long touched = evening.flights().stream()
                .filter(line -> evening.eventsOf(line.flight().id()).stream()
                        .anyMatch(e -> e.kind() == FlightEventKind.TOUCHED))
                .count();
        return touched == 0 ? "" : ", " + touched + " touched";
    }

    private static String hint(List<EveningRow> rows) {
        List<String> sentences = new ArrayList<>();
        if (rows.stream().anyMatch(EveningRow::atLeast)) {
            sentences.add("≥ means at least: that flight was cut short.");
        }
        if (rows.stream().anyMatch(EveningRow::flagged)) {
            sentences.add("Flagged after its time was known, a flight is still counted, unless Review is told to leave"
                    + " such flights out.");
        }
        return String.join(" ", sentences);
    }

    /** Rolls the list, and wishes for no more height than a few flights need. */
    private final class Rolling extends RollingPane {

        private Rolling() {
            super(list);
            setFitToWidth(true);
            setFocusTraversable(false);
            setMinHeight(0);
        }

        @Override
        protected double computePrefHeight(double width) {
            return list.isManaged() ? list.em() * list.heightEm(WISHED) + 2 : super.computePrefHeight(width);
        }
    }
}
