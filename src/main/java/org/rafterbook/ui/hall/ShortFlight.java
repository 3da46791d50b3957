package org.rafterbook.ui.hall;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.review.ExpectedFlight;
import org.rafterbook.review.Outcome;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.ClockTime;
import org.rafterbook.work.Outlook;

/** Asks of a time far below all else the model flew whether it was an aborted launch; the flight is kept either way. */
final class ShortFlight {

    /** A clean time below this share of what is expected is asked about. */
    private static final double SHARE = 0.2;

    private final HallModel hall;
    private final Label question = Words.accent("");
    private final HBox node;

    ShortFlight(HallModel hall, Keys keys) {
        this.hall = hall;
        Action aborted = keys.on("A", "Aborted launch", hall.landing()::aborted);
        question.setWrapText(true);
        question.setMinHeight(Label.USE_PREF_SIZE);
        node = Lay.row(12, Lay.grow(question), Buttons.secondary(aborted));
        Lay.show(node, false);
    }

    HBox node() {
        return node;
    }

    void show(HallData data, @Nullable FlightLine line) {
        // what was expected at launch is there at once; after a typed time what is expected of the next one has to do
        ExpectedFlight atLaunch =
                line == null ? null : hall.air().expectedAtLaunch(line.flight().id());
        ExpectedFlight expected = atLaunch == null
                ? hall.outlookProperty().get().map(Outlook::expected).orElse(null)
                : atLaunch;
        Double duration = line == null ? null : line.flight().durationS();
        Lay.show(node, false);
        if (line == null || duration == null || expected == null || !clean(line.flight(), data)) {
            return;
        }
        boolean same = line.model() != null && line.model().name().equals(expected.model());
        if (same && duration / line.flight().partialFraction() < SHARE * expected.durationS()) {
            Lay.show(node, true);
            question.setText(ClockTime.minutesSeconds(duration) + " is far below the "
                    + ClockTime.minutesSeconds(expected.durationS()) + " that " + expected.model()
                    + " would be expected to fly, from " + expected.flights()
                    + " flights. Was it an aborted launch? If so it is flagged to be left out; its time is kept.");
        }
    }

    private static boolean clean(Flight flight, HallData data) {
        return flight.leftOutWhy() == null
                && (flight.ending() == null || flight.ending() == Ending.CLEAN)
                && data.evening().outcome(flight).kind() == Outcome.Kind.EXACT;
    }
}
