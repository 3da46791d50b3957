package org.rafterbook.ui.hall;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.review.Span;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.chart.Gauge;
import org.rafterbook.ui.chart.GaugeLayers;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.Layer;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.WatchFace;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;

/** The flight in the air: its watch, one key for each thing it may do, and Space for the landing. */
final class AirView implements HallSheet {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final double LEAST_GAUGE_S = 300;
    private static final String LOW = "low-air";

    private final HallModel hall;
    private final AirModel model;
    private final ZoneId zone;
    private final Label name = Words.head("");
    private final Label since = Words.aside("");
    private final WatchFace large = new WatchFace(WatchFace.Size.PICKED);
    private final WatchFace smaller = new WatchFace(WatchFace.Size.LANDING);
    private final Label expected = Words.readout("", 1);
    private final VBox landing = Lay.column(0, Words.aside("Expected landing"), expected);
    private final Gauge gauge = new Gauge(Graduation.minutes()).unit("minutes");
    private final Label byWallClock =
            Words.prose("The program was closed while this flight was in the air: its time goes by the wall clock.");
    private final Label uncounted = Words.accent("");
    private final HBox noting = Lay.baseline(
            12, Words.caption("Note what it does"), Lay.space(), Words.aside("one key, kept with its second"));
    private Node head = new Region();
    private final AirTiles tiles;
    private final AirSide side;
    private final Action land;
    private final Sheet sheet = new Sheet();
    private int gaugeAt = -1;

    /**
     * @param sideInFront where there is room for one side only: told which
     */
    AirView(
            HallModel hall,
            Keys keys,
            DisplayUnits units,
            ZoneId zone,
            Followed followed,
            Consumer<Boolean> sideInFront) {
        this.hall = hall;
        this.model = hall.air();
        this.zone = zone;
        QuantityFormat format = new QuantityFormat(units);
        land = keys.onPress("Space", "Landed", model::stop);
        tiles = new AirTiles(model, keys, format);
        side = new AirSide(hall, keys, units, sideInFront);
        keys.on("Esc", "Leave the field", () -> {
            HallForm.leave(sheet);
            sideInFront.accept(false);
        });
        for (int i = 1; i <= 9; i++) {
            int number = i;
            keys.on(String.valueOf(i), "Pick the flight in the air", () -> pick(number));
        }
        keys.hint("Space", "stop the picked one");
        keys.hint("N", "note");
        keys.hint("X", "did not launch");
        keys.hint("P", "prepare the next flight");
        keys.hint("1 2", "pick the model in the air");
        layOut();
        followed.follow(model.pickedProperty(), timed -> showPicked());
    }

    private void layOut() {
        head = sheet.section(Lay.baseline(12, name, Lay.space(), since));
        VBox watches = new VBox(large, smaller);
        watches.setMinWidth(Region.USE_PREF_SIZE);
        VBox says = Lay.styled(Lay.column(4, landing, uncounted, byWallClock), "air-says");
        for (Label label : List.of(uncounted, byWallClock)) {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
        }
        Sheet.Section middle = sheet.section(Lay.row(16, watches, Lay.space(), says), gauge, noting, tiles.node());
        Lay.grow(middle);
        sheet.section(Buttons.main(land, Words.body("A wrong stop is taken back"), Words.body("with Backspace.")));
    }

    /** Where the height is low for the text size the watch is smaller, and head and gauge go. */
    @Override
    public void fold(boolean narrow, boolean low) {
        Lay.show(large, !low);
        Lay.show(smaller, low);
        Lay.show(gauge, !low);
        Lay.show(head, !low);
        Lay.show(noting, !low);
        sheet.getStyleClass().remove(LOW);
        if (low) {
            sheet.getStyleClass().add(LOW);
        }
    }

    @Override
    public Node node() {
        return sheet;
    }

    Node side() {
        return side.node();
    }

    private void pick(int number) {
        if (number <= model.watches().size()) {
            model.pickedProperty().set(model.watches().get(number - 1));
        }
    }

    /** Shows the running times; called at each frame. */
    void tick(long nanoTime) {
        Timed picked = model.pickedProperty().get();
        if (picked != null) {
            double elapsed = model.elapsedS(picked, nanoTime);
            (large.isVisible() ? large : smaller).show(elapsed);
            gauge(elapsed, model.expectedS(picked));
        }
        side.tick(nanoTime);
    }

    /** The gauge moves by seconds; at each frame nothing is painted that was painted before. */
    private void gauge(double elapsed, @Nullable Span band) {
        if ((int) elapsed == gaugeAt || !gauge.isVisible()) {
            return;
        }
        gaugeAt = (int) elapsed;
        List<Layer> layers = new ArrayList<>();
        layers.add(GaugeLayers.filled(0, elapsed));
        if (band != null) {
            layers.add(GaugeLayers.range(band.low(), band.high(), "expected"));
        }
        double high = Math.max(LEAST_GAUGE_S, Math.max(elapsed, band == null ? 0 : band.high()) * 1.15);
        gauge.show(0, high, layers, "in the air for " + ClockTime.minutesSeconds(elapsed));
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
        Span band = picked == null ? null : model.expectedS(picked);
        Lay.show(landing, band != null);
        if (band != null) {
            expected.setText(ClockTime.minutesSeconds(band.low()) + " to " + ClockTime.minutesSeconds(band.high()));
        }
        gaugeAt = -1;
        side.pick(picked);
        HallData data = hall.data();
        if (data != null) {
            show(data);
        }
        tick(System.nanoTime());
    }

    @Override
    public void show(HallData data) {
        Timed picked = model.pickedProperty().get();
        List<FlightEvent> events = picked == null ? List.of() : data.evening().eventsOf(picked.flightId());
        uncounted.setText(
                picked == null ? "" : Texts.uncounted(data, data.evening().find(picked.flightId())));
        Lay.show(uncounted, !uncounted.getText().isEmpty());
        tiles.show(data.evening().heights(), events);
        side.show(events);
    }
}
