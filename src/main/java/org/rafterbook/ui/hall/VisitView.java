package org.rafterbook.ui.hall;

import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.rafterbook.flight.PressureSource;
import org.rafterbook.flight.Venue;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.Evening;

/** The visit: venue, what is at which height, and the air. */
final class VisitView implements HallSheet {

    private final HallModel model;
    private final QuantityFormat format;
    private final ChoiceField<Venue> venues = new ChoiceField<>("Venue", Venue::name);
    private final Field<String> newVenue = Field.words("A new venue's name");
    private final Field<TypedValue> usable;
    private final Field<TypedValue> site;
    private final Field<String> markName = Field.words("Mark").prompt("lamps");
    private final Field<TypedValue> markHeight;
    private final Label heights = Words.prose("");
    private final Field<TypedValue> temperature;
    private final Field<TypedValue> humidity;
    private final Field<TypedValue> pressure;
    private final Label air = Words.prose("");
    private final Sheet sheet = new Sheet();

    VisitView(HallModel model, Keys keys, DisplayUnits units) {
        this.model = model;
        this.format = new QuantityFormat(units);
        usable = Field.quantity("Height to fly under", Quantity.HEIGHT, units);
        site = Field.quantity("Above the sea", Quantity.HEIGHT, units);
        markHeight = Field.quantity("Its height", Quantity.HEIGHT, units);
        temperature = Field.quantity("Temperature", Quantity.TEMPERATURE, units).large();
        humidity = Field.quantity("Humidity", Quantity.HUMIDITY, units).large();
        pressure = Field.quantity("Pressure here, not reduced to sea level", Quantity.PRESSURE, units)
                .large();
        Action done = keys.on("Enter", "Keep the air and go on", this::done);
        keys.on("Esc", "Back", () -> model.stateProperty().set(HallState.PREPARING));
        venues.key(keys.on("V", "Venue", venues::open));
        newVenue.key(keys.on("W", "A new venue", newVenue::edit));
        markName.key(keys.on("K", "A mark", markName::edit));
        temperature.key(keys.on("T", "Temperature", temperature::edit));
        humidity.key(keys.on("H", "Humidity", humidity::edit));
        pressure.key(keys.on("P", "Pressure", pressure::edit));
        keys.hint("T", "temperature");
        keys.hint("H", "humidity");
        keys.hint("V", "venue");
        keys.hint("K", "a mark");
        keys.hint("Enter", "done");
        venues.onChosen(venue -> {
            model.change(d -> d.visit().at(venue.id()));
            HallForm.leave(sheet);
        });
        Sheet.Section where = new Sheet.Section(
                "Where",
                "",
                venues,
                HallForm.row(newVenue, usable, site, button(keys, "Add this venue", this::addVenue)),
                heights,
                HallForm.row(
                        markName,
                        markHeight,
                        button(keys, "Add: a touch costs time", () -> addMark(true)),
                        button(keys, "Add: a mark only", () -> addMark(false)),
                        button(keys, "Hangs there tonight only", this::addLimit)));
        Sheet.Section now = new Sheet.Section("Air now", "", HallForm.row(temperature, humidity, pressure), air);
        sheet.add(Lay.rolling(new VBox(where, Lay.hairline(), now)));
        sheet.section(Buttons.main(done, Words.body("What was typed is kept with the time of day.")));
    }

    private static Node button(Keys keys, String label, Runnable what) {
        return Buttons.secondary(keys.action(label, what));
    }

    @Override
    public Node node() {
        return sheet;
    }

    private void done() {
        List<Field<TypedValue>> fields = List.of(temperature, humidity, pressure);
        if (!HallForm.check(fields)) {
            return;
        }
        if (fields.stream().allMatch(field -> field.value() == null)) {
            model.stateProperty().set(HallState.PREPARING);
            return;
        }
        TypedValue t = temperature.value();
        TypedValue h = humidity.value();
        TypedValue p = pressure.value();
        model.change(
                d -> d.visit().air(t, h, p),
                kept -> {
                    fields.forEach(f -> f.fill(""));
                    HallForm.leave(sheet);
                    model.stateProperty().set(HallState.PREPARING);
                },
                temperature::refuse);
    }

    private void addVenue() {
        if (HallForm.check(List.of(usable, site))) {
            String name = newVenue.typed();
            TypedValue under = usable.value();
            TypedValue above = site.value();
            model.change(
                    d -> d.visit().add(name, under, above),
                    venue -> List.of(newVenue, usable, site).forEach(f -> f.fill("")),
                    newVenue::refuse);
        }
    }

    private void addMark(boolean limit) {
        Venue venue = model.data() == null ? null : model.data().evening().venue();
        TypedValue height = markHeight.value();
        if (venue == null) {
            markName.refuse("Choose or add the venue first.");
        } else if (height == null) {
            markHeight.refuse("A mark needs its height.");
        } else {
            String name = markName.typed();
            model.change(d -> d.visit().addMark(venue.id(), name, height, limit), m -> clearMark(), markName::refuse);
        }
    }

    private void addLimit() {
        TypedValue height = markHeight.value();
        if (height == null) {
            markHeight.refuse("What hangs there needs its height.");
        } else {
            String name = markName.typed();
            model.change(d -> d.visit().addLimit(name, height), m -> clearMark(), markName::refuse);
        }
    }

    private void clearMark() {
        List.of(markName, markHeight).forEach(f -> f.fill(""));
    }

    @Override
    public void show(HallData data) {
        Evening evening = data.evening();
        Venue venue = evening.venue();
        venues.offer(
                data.venues(),
                data.venues().stream()
                        .filter(v -> venue != null && v.id().equals(venue.id()))
                        .findFirst()
                        .orElse(null));
        heights.setText(
                evening.heights().isEmpty()
                        ? "No marks yet: a touch or a peak is judged against things at known heights."
                        : evening.heights().stream()
                                .map(h -> h.name() + " " + format.text(Quantity.HEIGHT, h.heightM()))
                                .collect(Collectors.joining(", ")));
        air.setText(airText(evening));
    }

    private String airText(Evening evening) {
        if (evening.air() == null) {
            return "No air read yet. Without a barometer the venue's height above the sea gives the pressure.";
        }
        return "Read last: " + format.text(Quantity.TEMPERATURE, evening.air().temperatureK()) + ", "
                + format.text(Quantity.HUMIDITY, evening.air().humidity()) + ", "
                + format.text(Quantity.PRESSURE, evening.air().pressurePa())
                + (evening.air().pressureSource() == PressureSource.FROM_HEIGHT ? " (from the height)" : "")
                + ", density " + format.text(Quantity.DENSITY, evening.densityKgPerM3());
    }
}
