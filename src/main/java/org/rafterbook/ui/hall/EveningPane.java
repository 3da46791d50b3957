package org.rafterbook.ui.hall;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.review.Outcome;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Evening;

/** The evening's flights, the newest on top; a click opens one. */
final class EveningPane {

    private static final String[] HEADS = {"", "version", "torque", "margin", "time", "turns left"};

    /** Rows, the head among them, that are wished to be in sight. */
    private static final int WISHED = 7;

    private final HallModel model;
    private final QuantityFormat format;
    private final GridPane table = new GridPane();
    private final Label hint = Words.prose("");
    private final Sheet.Section section = new Sheet.Section("This evening", "");

    EveningPane(HallModel model, QuantityFormat format) {
        this.model = model;
        this.format = format;
        table.getStyleClass().add("evening-table");
        for (int i = 0; i < HEADS.length; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setHalignment(i < 2 ? HPos.LEFT : HPos.RIGHT);
            column.setHgrow(i == 1 ? Priority.ALWAYS : Priority.NEVER);
            table.getColumnConstraints().add(column);
        }
        ScrollPane scroll = new Rolling();
        section.getChildren().addAll(Lay.grow(scroll), hint);
        section.setMinHeight(0);
    }

    Node node() {
        return section;
    }

    void show(Evening evening) {
        table.getChildren().clear();
        String[] units = {"", "", format.unitOf(Quantity.TORQUE), "%", "", ""};
        for (int i = 0; i < HEADS.length; i++) {
            Label head = Words.hint(units[i].isEmpty() ? HEADS[i] : HEADS[i] + "\n" + units[i]);
            head.getStyleClass().add("evening-head");
            head.setMaxWidth(Double.MAX_VALUE);
            head.setMaxHeight(Double.MAX_VALUE);
            head.setMinWidth(Label.USE_PREF_SIZE);
            table.add(head, i, 0);
        }
        boolean atLeast = false;
        boolean flagged = false;
        int touched = 0;
        int row = 1;
        for (int i = evening.flights().size() - 1; i >= 0; i--) {
            FlightLine line = evening.flights().get(i);
            boolean censored = line.flight().durationS() != null
                    && evening.outcome(line.flight()).kind() == Outcome.Kind.AT_LEAST;
            atLeast |= censored;
            flagged |= line.flight().leftOutWhy() != null && !Texts.isLeftOut(evening, line.flight());
            touched += evening.eventsOf(line.flight().id()).stream().anyMatch(e -> e.kind() == FlightEventKind.TOUCHED)
                    ? 1
                    : 0;
            addRow(evening, line, censored, row++);
        }
        int count = evening.flights().size();
        section.aside(
                count == 0
                        ? ""
                        : count
                                + (count == 1 ? " flight" : " flights")
                                + (touched == 0 ? "" : ", " + touched + " touched"));
        hint.setText(
                count == 0
                        ? "Flights appear here as they are made, the newest on top."
                        : Stream.of(
                                        atLeast ? "≥ means at least: that flight was cut short." : "",
                                        flagged
                                                ? "Flagged after its time was known, a flight is still counted, unless"
                                                        + " Review is told to leave such flights out."
                                                : "")
                                .filter(text -> !text.isEmpty())
                                .collect(Collectors.joining(" ")));
        Lay.show(hint, !hint.getText().isEmpty());
    }

    private void addRow(Evening evening, FlightLine line, boolean censored, int row) {
        Flight flight = line.flight();
        Label number = Words.aside(String.valueOf(flight.ordinal()));
        Node version = line.version() == null || line.model() == null
                ? Words.accent("give a model")
                : Lay.row(
                        4,
                        new MarkView(
                                VersionMark.dealt(line.version().number() - 1),
                                censored ? MarkStyle.AT_LEAST : MarkStyle.CLEAN),
                        Words.body(line.model().letter() + line.version().number()));
        Label torque = Words.body(
                line.wind() == null
                        ? QuantityFormat.UNKNOWN
                        : format.number(Quantity.TORQUE, line.wind().launchTorqueNm()));
        Label margin = Words.body(Texts.margin(evening.margins().get(flight.id()), 1));
        Label time = Words.figure(Texts.time(evening, flight));
        String apart = apart(evening, flight);
        Node timed = apart.isEmpty() ? time : Lay.column(0, time, Words.hint("× " + apart));
        boolean ask = flight.turnsLeft() == null && Texts.atLaunch(line.wind()) != null && flight.durationS() != null;
        Label left = ask ? Words.accent("add") : Words.body(Texts.turns(flight.turnsLeft()));
        Node[] cells = {number, version, torque, margin, timed, left};
        for (int i = 0; i < cells.length; i++) {
            HBox cell = new HBox(cells[i]);
            cell.getStyleClass().add(i < 2 ? "evening-cell" : "evening-number");
            cell.setOnMouseClicked(event -> model.landing().open(line));
            table.add(cell, i, row);
        }
        time.setMinWidth(Label.USE_PREF_SIZE);
    }

    /** What sets the flight apart from those that count, in a word or two; empty for nothing. */
    private static String apart(Evening evening, Flight flight) {
        return Texts.isLeftOut(evening, flight) ? "left out" : flight.leftOutWhy() == null ? "" : "flagged";
    }

    /** Rolls the list, and wishes for no more height than a few flights need. */
    private final class Rolling extends ScrollPane {

        private Rolling() {
            super(table);
            setFitToWidth(true);
            setFocusTraversable(false);
            setMinHeight(0);
        }

        @Override
        protected double computePrefHeight(double width) {
            double whole = super.computePrefHeight(width);
            int rows = table.getRowCount();
            return rows <= WISHED ? whole : whole * WISHED / rows;
        }
    }
}
