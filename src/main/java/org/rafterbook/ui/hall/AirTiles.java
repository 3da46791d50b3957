package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javafx.scene.layout.GridPane;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.HeightMark;

/** One key for each thing a flight may do; the marks of the hall have theirs, dealt from their names. */
final class AirTiles {

    private static final String MARK_LETTERS = "BCFIJKMOQUVYZAW";

    /** What a tile notes. */
    private record Noting(
            Action action,
            FlightEventKind kind,
            @Nullable HeightMark mark,
            @Nullable String text) {

        boolean noted(FlightEvent event) {
            return event.kind() == kind
                    && (kind != FlightEventKind.TOUCHED
                            || (mark == null
                                    ? Objects.equals(event.notes(), text)
                                    : Objects.equals(event.notes(), mark.name())));
        }
    }

    private final AirModel model;
    private final Keys keys;
    private final QuantityFormat format;
    private final GridPane node = Tile.grid(List.of());
    private final List<Noting> fixed = new ArrayList<>();
    private final List<Noting> marks = new ArrayList<>();
    private final Map<Noting, Tile> tiles = new LinkedHashMap<>();
    private List<HeightMark> dealt = List.of();

    AirTiles(AirModel model, Keys keys, QuantityFormat format) {
        this.model = model;
        this.keys = keys;
        this.format = format;
        fixed("W", "Touched the wall", FlightEventKind.TOUCHED, "wall");
        fixed("H", "Top of climb", FlightEventKind.TOP_OF_CLIMB, null);
        fixed("L", "Lap", FlightEventKind.LAP, null);
        fixed("G", "Steered", FlightEventKind.STEERED, null);
        fixed("S", "Stalled", FlightEventKind.STALLED, null);
        fixed("R", "Upset: recovered", FlightEventKind.RECOVERED, null);
        fixed("D", "Upset: did not", FlightEventKind.NOT_RECOVERED, null);
    }

    GridPane node() {
        return node;
    }

    private void fixed(String key, String label, FlightEventKind kind, @Nullable String text) {
        Action action = keys.onPress(key, label, press -> model.note(press, kind, null, text));
        fixed.add(new Noting(action, kind, null, text));
    }

    /** Deals keys to the marks, and says of each thing what was noted of it. */
    void show(List<HeightMark> heights, List<FlightEvent> events) {
        deal(heights);
        tiles.forEach((noting, tile) -> {
            List<FlightEvent> noted = events.stream().filter(noting::noted).toList();
            tile.below(noted.isEmpty() ? none(noting) : (noting.mark() == null ? "" : "touched ") + words(noted));
        });
    }

    private static String words(List<FlightEvent> noted) {
        FlightEvent last = noted.get(noted.size() - 1);
        Double at = last.atS();
        Double value = last.kind() == FlightEventKind.LAP ? last.value() : null;
        String times = noted.size() == 1 ? "" : noted.size() + " times, last ";
        return times
                + (at == null ? "noted" : "at " + ClockTime.minutesSeconds(at))
                + (value == null ? "" : ", " + QuantityFormat.rounded(value, 0) + " s");
    }

    private void deal(List<HeightMark> heights) {
        if (heights.equals(dealt) && !tiles.isEmpty()) {
            return;
        }
        dealt = heights;
        marks.forEach(noting -> keys.forget(noting.action()));
        marks.clear();
        for (HeightMark mark : heights) {
            String letter = letter(mark.name());
            if (letter != null) {
                marks.add(new Noting(
                        keys.onPress(
                                letter,
                                "Touched " + mark.name() + ", " + format.text(Quantity.HEIGHT, mark.heightM()),
                                press -> model.note(press, FlightEventKind.TOUCHED, mark, null)),
                        FlightEventKind.TOUCHED,
                        mark,
                        null));
            }
        }
        tiles.keySet().retainAll(fixed);
        List<Noting> all = new ArrayList<>(marks);
        all.addAll(fixed);
        Tile.fill(
                node,
                all.stream()
                        .map(noting -> tiles.computeIfAbsent(noting, this::tile))
                        .toList());
    }

    /** Of a mark its name alone, so that it fits. */
    private Tile tile(Noting noting) {
        HeightMark mark = noting.mark();
        String caption = mark == null
                ? noting.action().label()
                : mark.name().substring(0, 1).toUpperCase(Locale.ROOT)
                        + mark.name().substring(1);
        return new Tile(noting.action(), caption, none(noting));
    }

    private String none(Noting noting) {
        HeightMark mark = noting.mark();
        return mark == null ? "none" : format.text(Quantity.HEIGHT, mark.heightM()) + ", no touch";
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
