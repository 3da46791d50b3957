package org.rafterbook.ui.hall;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Notice;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.WatchFace;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedValue;

/** After landing: the time, how it ended and what else is worth knowing; everything is kept as it is answered. */
final class LandingView implements HallSheet {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private final HallModel hall;
    private final LandingModel model;
    private final ZoneId zone;
    private final Label over = Words.aside("");
    private final WatchFace watch = new WatchFace(WatchFace.Size.LANDING);
    private final Label smaller = Words.readout("", 3);
    private final Label doubt = Words.prose("");
    private final Label byMistake = Words.aside("Stopped by mistake? The watch ran on.");
    private final Notice unkept;
    private final Action keepAgain;
    private final ShortFlight shortOne;
    private final Field<TypedValue> correct;
    private final HBox correctFold;
    private final LandingEnds ends;
    private final LandingFacts facts;
    private final Action next;
    private final Action stillFlying;
    private final Sheet sheet = new Sheet();

    LandingView(HallModel hall, Keys keys, DisplayUnits units, ZoneId zone, Followed followed) {
        this.hall = hall;
        this.model = hall.landing();
        this.zone = zone;
        correct = Field.quantity("The right time", Quantity.TIME, units);
        next = keys.on("Enter", "Prepare the next flight", this::done);
        stillFlying = keys.on("Backspace", "Still flying", model::stillFlying);
        Action correcting = keys.on("E", "Correct the time", this::startCorrecting);
        correctFold = Lay.row(12, correct);
        correct.onKept(typed -> {
            if (typed != null) {
                model.correctTime(typed, () -> Lay.show(correctFold, false), correct::refuse);
            }
        });
        ends = new LandingEnds(model, keys, new QuantityFormat(units));
        facts = new LandingFacts(model, keys, units, hall::show);
        shortOne = new ShortFlight(hall, keys);
        Action inTheAir = keys.on(
                "V", "Back to the flight in the air", () -> hall.stateProperty().set(HallState.IN_THE_AIR));
        inTheAir.enabledProperty().bind(Bindings.isNotEmpty(hall.air().watches()));
        keepAgain = keys.on("K", "Keep the time again", model::done);
        keepAgain.enabledProperty().set(false);
        unkept = Notice.wrong(Buttons.secondary(keepAgain));
        keys.on("↑", "The flight after", () -> model.openNext(1));
        keys.on("↓", "The flight before", () -> model.openNext(-1));
        keys.on("Esc", "Leave the field", () -> HallForm.leave(sheet));
        keys.hint("1 … 6", "how it ended");
        keys.hint("U", "turns left");
        keys.hint("H", "height");
        keys.hint("N", "note");
        keys.hint("Enter", "next flight");
        layOut(correcting);
        model.beforeAnother(this::keepTyped);
        followed.follow(model.landedProperty(), shown -> showTime());
        followed.follow(hall.outlookProperty(), outlook -> showTime());
    }

    private void layOut(Action correcting) {
        Lay.show(correctFold, false);
        Button still = Buttons.secondary(stillFlying);
        still.managedProperty().bind(still.visibleProperty());
        still.visibleProperty().bind(byMistake.visibleProperty());
        HBox stopped = Lay.row(8, still, Buttons.secondary(correcting));
        stopped.setAlignment(Pos.CENTER_RIGHT);
        sheet.section(
                over,
                Lay.row(16, watch, smaller, Lay.space(), Lay.column(8, byMistake, stopped)),
                unkept,
                correctFold,
                doubt,
                shortOne.node());
        Lay.show(unkept, false);
        doubt.setMinHeight(Label.USE_PREF_SIZE);
        sheet.add(Lay.rolling(new VBox(ends.node(), Lay.hairline(), facts.node())));
        sheet.section(Buttons.main(
                next,
                Words.body("Everything here is kept already;"),
                Words.body("fill in the rest whenever you like.")));
    }

    @Override
    public Node node() {
        return sheet;
    }

    /** Where the height is low for the text size the time is smaller, so that the question below it is in sight. */
    @Override
    public void fold(boolean narrow, boolean low) {
        Lay.show(watch, !low);
        Lay.show(smaller, low);
    }

    /** Enter goes on when all that was typed is kept, unless a field has refused it. */
    private void done() {
        LandingModel.Landed shown = model.landedProperty().get();
        if (correct.input().isFocused()) {
            HallForm.leave(sheet); // a time put right is looked at before the Hall goes on
        } else if (accepted()) {
            hall.whenKept(() -> {
                LandingModel.Landed now = model.landedProperty().get();
                boolean same = shown != null && now != null && shown.flightId().equals(now.flightId());
                if (accepted() && same && hall.stateProperty().get() == HallState.LANDING) {
                    model.done();
                }
            });
        }
    }

    private boolean accepted() {
        return facts.accepted() && correct.refusal().isEmpty();
    }

    /** What is being typed is kept before another flight takes the sheet; false where it cannot be. */
    private boolean keepTyped() {
        HallForm.leave(sheet);
        return accepted();
    }

    private void startCorrecting() {
        Lay.show(correctFold, true);
        correct.fill("");
        correct.edit();
    }

    private void showTime() {
        LandingModel.Landed shown = model.landedProperty().get();
        if (shown != null) {
            watch.show(shown.durationS());
            smaller.setText(ClockTime.tenths(shown.durationS()));
            over.setText(shown.name());
            String why = shown.refused();
            boolean refused = why != null;
            unkept.say("This time is not kept yet.", why == null ? "" : why);
            Lay.show(unkept, refused);
            keepAgain.enabledProperty().set(refused);
            boolean watched = shown.flight() == null || shown.flight().launchedAt() != null;
            Lay.show(byMistake, watched);
            stillFlying.enabledProperty().set(watched);
            HallData data = hall.data();
            if (data != null) {
                show(data);
            }
        }
    }

    @Override
    public void show(HallData data) {
        LandingModel.Landed shown = model.landedProperty().get();
        Flight flight = shown == null ? null : shown.flight();
        FlightLine line = shown == null ? null : data.evening().find(shown.flightId());
        next.labelProperty()
                .set(
                        shown != null && shown.refused() != null
                                ? "Keep this time"
                                : hall.air().watches().isEmpty()
                                        ? "Prepare flight " + data.prepared().ordinal()
                                        : "Back to the flight in the air");
        if (shown != null) {
            facts.fill(shown.flightId(), line, data.evening());
        }
        shortOne.show(data, line);
        if (shown == null || flight == null || line == null) {
            // nothing of the flight before may stand beside this one
            Lay.show(doubt, false);
            ends.clear();
            facts.clear();
            return;
        }
        List<FlightEvent> events = data.evening().eventsOf(flight.id());
        over.setText("Flight " + flight.ordinal() + (line.model() == null ? "" : ", " + shown.name())
                + (flight.landedAt() == null
                        ? ""
                        : ", landed " + CLOCK.format(flight.landedAt().atZone(zone))));
        doubt.setText(Stream.of(source(flight), Texts.flagged(data.evening(), flight), Texts.uncounted(data, line))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" ")));
        Lay.show(doubt, !doubt.getText().isEmpty());
        ends.show(flight, events);
        facts.show(data, flight, line);
    }

    private static String source(Flight flight) {
        if (flight.durationSource() == DurationSource.WALL_CLOCK) {
            return "The program was closed during this flight: its time goes by the wall clock.";
        }
        Double apart = flight.clockDoubtS();
        return apart == null
                ? ""
                : "The computer's clock was put " + (apart > 0 ? "back" : "forward") + " during this flight by "
                        + QuantityFormat.rounded(Math.abs(apart), 1) + " s; the watch was not touched by it.";
    }
}
