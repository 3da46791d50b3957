package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.action.Press;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.KeyCap;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedValue;

/** Beside the flight in the air: what else flies, what was noted so far, a note of one's own, a time from another watch. */
final class AirSide {

    private final AirModel model;
    private final Consumer<Boolean> inFront;
    private final QuantityFormat format;
    private final VBox others = Lay.column(8);
    private final List<Label> times = new ArrayList<>();
    private final VBox noted = Lay.column(4);
    private final Field<String> note = Field.words("Note");
    private final Field<TypedValue> time;
    private final Sheet sheet = new Sheet();
    private @Nullable Press noteBegun;

    /**
     * @param inFront where there is room for one side only: true to show this one, false for the watch again
     */
    AirSide(HallModel hall, Keys keys, DisplayUnits units, Consumer<Boolean> inFront) {
        this.inFront = inFront;
        this.model = hall.air();
        this.format = new QuantityFormat(units);
        time = Field.quantity("Another watch", Quantity.TIME, units);
        time.key(keys.on("E", "Type its time", () -> {
            inFront.accept(true);
            time.edit();
        }));
        note.key(keys.onPress("N", "Write a note", press -> {
            noteBegun = press;
            inFront.accept(true);
            note.edit();
        }));
        note.onKept(this::keepNote);
        Action noLaunch = keys.on("X", "Did not launch", model::didNotLaunch);
        Action prepare = keys.on(
                "P", "Prepare the next flight", () -> hall.stateProperty().set(HallState.PREPARING));
        keys.on("Enter", "Keep the typed time or note", this::keepTime);
        Sheet.Section rest = sheet.section("Also in the air", "", others);
        rest.managedProperty().bind(rest.visibleProperty());
        rest.visibleProperty().bind(Bindings.size(model.watches()).greaterThan(1));
        Lay.grow(sheet.section("Noted so far", "", noted));
        sheet.section(note, time, Lay.row(12, Buttons.secondary(prepare), Buttons.secondary(noLaunch)));
        sheet.getStyleClass().add("evening");
    }

    Node node() {
        return sheet;
    }

    private void keepNote(@Nullable String text) {
        Press begun = noteBegun;
        if (text != null && !text.isBlank()) {
            model.write(begun == null ? Press.now() : begun, text, HallForm.emptied(note), note::refuse);
            HallForm.leave(sheet);
            inFront.accept(false);
        }
    }

    private void keepTime() {
        TypedValue typed = time.value();
        Timed picked = model.pickedProperty().get();
        if (typed != null && picked != null && time.check()) {
            model.landTyped(picked, typed, HallForm.emptied(time), time::refuse);
        }
    }

    /** Lists the flights in the air, the picked one in the accent. */
    void pick(@Nullable Timed picked) {
        others.getChildren().clear();
        times.clear();
        int number = 1;
        for (Timed timed : model.watches()) {
            Label running = Words.figure("");
            HBox box = Lay.row(
                    8,
                    new KeyCap(String.valueOf(number++)),
                    timed.equals(picked) ? Words.accent(timed.name()) : Words.body(timed.name()),
                    Lay.space(),
                    running);
            box.setOnMouseClicked(event -> model.pickedProperty().set(timed));
            others.getChildren().add(box);
            times.add(running);
        }
    }

    void tick(long nanoTime) {
        for (int i = 0; i < Math.min(times.size(), model.watches().size()); i++) {
            times.get(i)
                    .setText(ClockTime.minutesSeconds(
                            model.elapsedS(model.watches().get(i), nanoTime)));
        }
    }

    /** What was noted of the picked flight, the newest first. */
    void show(List<FlightEvent> events) {
        noted.getChildren().clear();
        for (int i = events.size() - 1; i >= 0; i--) {
            FlightEvent event = events.get(i);
            Double at = event.atS();
            noted.getChildren()
                    .add(Lay.baseline(
                            12,
                            Words.aside(at == null ? "–" : ClockTime.minutesSeconds(at)),
                            Words.body(Texts.event(event, format))));
        }
        if (events.isEmpty()) {
            noted.getChildren().add(Words.prose("Nothing yet."));
        }
    }
}
