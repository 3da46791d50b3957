package org.rafterbook.ui.hall;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.action.Press;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.WatchFace;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.HeightMark;

/** The flight in the air: its watch, one key for each thing it may do, and Space for the landing. */
final class AirView implements HallSheet {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final int COLUMNS = 3;
    private static final String MARK_LETTERS = "BCFIJKMOQUVYZAW";

    private final HallModel model;
    private final Keys keys;
    private final QuantityFormat format;
    private final ZoneId zone;
    private final Label name = Words.head("");
    private final Label since = Words.aside("");
    private final WatchFace watch = new WatchFace(WatchFace.Size.PICKED);
    private final Label byWallClock =
            Words.prose("The program was closed while this flight was in the air: its time goes by the wall clock.");
    private final GridPane tiles = new GridPane();
    private final List<Action> marks = new ArrayList<>();
    private List<HeightMark> dealt = List.of();
    private final List<Action> fixed = new ArrayList<>();
    private final VBox others = Lay.column(8);
    private final VBox noted = Lay.column(4);
    private final Field<String> note = Field.words("Note");
    private final Field<TypedValue> time;
    private final Action land;
    private final Sheet sheet = new Sheet();
    private final Sheet side = new Sheet();
    private @Nullable Press noteBegun;

    AirView(HallModel model, Keys keys, DisplayUnits units, ZoneId zone) {
        this.model = model;
        this.keys = keys;
        this.format = new QuantityFormat(units);
        this.zone = zone;
        land = keys.onPress("Space", "Landed", model::stop);
        time = Field.quantity("Time by another watch", Quantity.TIME, units);
        keys.on("E", "Type its time", time::edit);
        note.key(keys.onPress("N", "Write a note", press -> {
            noteBegun = press;
            note.edit();
        }));
        fixed.add(event("W", "Touched the wall", FlightEventKind.TOUCHED, "wall"));
        fixed.add(event("H", "Top of climb", FlightEventKind.TOP_OF_CLIMB, null));
        fixed.add(event("L", "Lap", FlightEventKind.LAP, null));
        fixed.add(event("G", "Steered", FlightEventKind.STEERED, null));
        fixed.add(event("S", "Stalled", FlightEventKind.STALLED, null));
        fixed.add(event("R", "Upset: recovered", FlightEventKind.RECOVERED, null));
        fixed.add(event("D", "Upset: did not", FlightEventKind.NOT_RECOVERED, null));
        Action noLaunch = keys.on("X", "Did not launch", model::didNotLaunch);
        Action prepare = keys.on(
                "P", "Prepare the next flight", () -> model.stateProperty().set(HallState.PREPARING));
        keys.on("Esc", "Leave the field", this::focusPage);
        for (int i = 1; i <= 9; i++) {
            int number = i;
            keys.on(String.valueOf(i), "Pick the flight in the air", () -> pick(number));
        }
        note.onKept(text -> {
            Press begun = noteBegun;
            if (text != null && !text.isBlank()) {
                model.note(begun == null ? Press.now() : begun, FlightEventKind.NOTE, null, text);
                note.fill("");
                focusPage();
            }
        });
        keys.on("Enter", "Keep the typed time or note", this::keepTime);
        keys.hint("Space", "stop the picked one");
        keys.hint("1 2", "pick the model in the air");
        keys.hint("X", "did not launch");
        keys.hint("P", "prepare the next flight");
        keys.hint("N", "note");
        layOut(noLaunch, prepare);
    }

    private void layOut(Action noLaunch, Action prepare) {
        sheet.section(Lay.baseline(12, name, Lay.space(), since));
        for (int i = 0; i < COLUMNS; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100.0 / COLUMNS);
            tiles.getColumnConstraints().add(column);
        }
        tiles.getStyleClass().add("tiles");
        Sheet.Section middle = sheet.section(
                watch,
                byWallClock,
                Lay.space(),
                Lay.baseline(
                        12,
                        Words.caption("Note what it does"),
                        Lay.space(),
                        Words.aside("one key, kept with its second")),
                tiles);
        Lay.grow(middle);
        sheet.section(Buttons.main(land, Words.body("A wrong stop is taken back"), Words.body("with Backspace.")));
        Sheet.Section rest = side.section("Also in the air", "", others);
        rest.managedProperty().bind(rest.visibleProperty());
        rest.visibleProperty()
                .bind(javafx.beans.binding.Bindings.size(model.watches()).greaterThan(1));
        Lay.grow(side.section("Noted so far", "", noted));
        side.section(note, time, Lay.row(12, Buttons.secondary(prepare), Buttons.secondary(noLaunch)));
        side.getStyleClass().add("evening");
        model.pickedProperty().subscribe(timed -> showPicked());
    }

    @Override
    public Node node() {
        return sheet;
    }

    Node side() {
        return side;
    }

    private Action event(String key, String label, FlightEventKind kind, @Nullable String text) {
        return keys.onPress(key, label, press -> model.note(press, kind, null, text));
    }

    private void pick(int number) {
        if (number <= model.watches().size()) {
            model.pickedProperty().set(model.watches().get(number - 1));
        }
    }

    private void focusPage() {
        if (sheet.getScene() != null) {
            sheet.getScene().getRoot().requestFocus();
        }
    }

    private void keepTime() {
        TypedValue typed = time.value();
        Timed picked = model.pickedProperty().get();
        if (typed != null && picked != null && time.check()) {
            model.landTyped(picked, typed, Inputs.refusal(time));
            if (time.refusal().isEmpty()) {
                time.fill("");
            }
        }
    }

    /** Shows the running times; called at each frame. */
    void tick(long nanoTime) {
        Timed picked = model.pickedProperty().get();
        if (picked != null) {
            watch.show(model.elapsedS(picked, nanoTime));
        }
        int row = 0;
        for (Timed timed : model.watches()) {
            if (row < others.getChildren().size()
                    && others.getChildren().get(row) instanceof HBox box
                    && box.getChildren().get(box.getChildren().size() - 1) instanceof Label label) {
                label.setText(ClockTime.minutesSeconds(model.elapsedS(timed, nanoTime)));
            }
            row++;
        }
    }

    private void showPicked() {
        Timed picked = model.pickedProperty().get();
        name.setText(picked == null ? "" : picked.name());
        since.setText(
                picked == null
                        ? ""
                        : "in the air since "
                                + CLOCK.format(picked.watch().launchedAt().atZone(zone)));
        land.labelProperty().set(picked == null ? "Landed" : "Landed: stop " + picked.name());
        Lay.show(byWallClock, picked != null && picked.watch().byWallClock());
        others.getChildren().clear();
        int number = 1;
        for (Timed timed : model.watches()) {
            HBox box = Lay.row(
                    8,
                    new org.rafterbook.ui.kit.KeyCap(String.valueOf(number)),
                    timed.equals(picked) ? Words.accent(timed.name()) : Words.body(timed.name()),
                    Lay.space(),
                    Words.figure(""));
            int index = number++;
            box.setOnMouseClicked(event -> pick(index));
            others.getChildren().add(box);
        }
        HallData data = model.data();
        if (data != null) {
            show(data);
        }
        tick(System.nanoTime());
    }

    @Override
    public void show(HallData data) {
        deal(data.evening().heights());
        noted.getChildren().clear();
        Timed picked = model.pickedProperty().get();
        List<FlightEvent> events = picked == null ? List.of() : data.evening().eventsOf(picked.flightId());
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

    private void deal(List<HeightMark> heights) {
        if (heights.equals(dealt) && !tiles.getChildren().isEmpty()) {
            return;
        }
        dealt = heights;
        marks.forEach(keys::forget);
        marks.clear();
        for (HeightMark mark : heights) {
            String letter = letter(mark.name());
            if (letter != null) {
                marks.add(keys.onPress(
                        letter,
                        "Touched " + mark.name() + ", " + format.text(Quantity.HEIGHT, mark.heightM()),
                        press -> model.note(press, FlightEventKind.TOUCHED, mark, null)));
            }
        }
        tiles.getChildren().clear();
        List<Action> all = new ArrayList<>(marks);
        all.addAll(fixed);
        for (int i = 0; i < all.size(); i++) {
            Button tile = Buttons.secondary(all.get(i));
            tile.getStyleClass().add("tile");
            tile.setMaxWidth(Double.MAX_VALUE);
            tile.setMinWidth(0);
            tiles.add(tile, i % COLUMNS, i / COLUMNS);
        }
    }

    /** The first free letter of the mark's name, else any free one; null where all are dealt. */
    private @Nullable String letter(String markName) {
        String wanted = markName.toUpperCase(Locale.ROOT) + "T" + MARK_LETTERS;
        for (int i = 0; i < wanted.length(); i++) {
            String letter = wanted.substring(i, i + 1);
            if (letter.compareTo("A") >= 0 && letter.compareTo("Z") <= 0 && keys.find(letter) == null) {
                return letter;
            }
        }
        return null;
    }
}
