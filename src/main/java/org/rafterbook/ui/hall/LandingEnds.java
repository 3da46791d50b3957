package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.LandingEnd;

/** How the flight ended, by number keys, and after a touch whether that cost time. */
final class LandingEnds {

    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final LandingModel model;
    private final QuantityFormat format;
    private final Map<LandingEnd, Button> ends = new EnumMap<>(LandingEnd.class);
    private final Map<CutShort, Button> costs = new EnumMap<>(CutShort.class);
    private final Label question = Words.body("");
    private final HBox cost;
    private final Sheet.Section node;

    LandingEnds(LandingModel model, Keys keys, QuantityFormat format) {
        this.model = model;
        this.format = format;
        List<Tile> tiles = new ArrayList<>();
        for (LandingEnd end : LandingEnd.values()) {
            Tile tile =
                    new Tile(keys.on(String.valueOf(end.ordinal() + 1), end.says(), () -> model.end(end)), end.means());
            ends.put(end, tile);
            tiles.add(tile);
        }
        cost = Lay.row(
                8,
                question,
                Lay.space(),
                cost(keys, "F", "No, full time", CutShort.NO),
                cost(keys, "T", "Yes", CutShort.YES),
                cost(keys, "C", "Cannot say", CutShort.CANNOT_SAY));
        node = new Sheet.Section("How did it end?", "number key", Tile.grid(tiles), cost);
    }

    Sheet.Section node() {
        return node;
    }

    private Button cost(Keys keys, String key, String label, CutShort answer) {
        Button button = Buttons.secondary(keys.on(key, label, () -> model.costTime(answer)));
        costs.put(answer, button);
        return button;
    }

    /** Nothing is known of the flight yet. */
    void clear() {
        ends.values().forEach(button -> button.pseudoClassStateChanged(CHOSEN, false));
        Lay.show(cost, false);
    }

    void show(Flight flight, List<FlightEvent> events) {
        LandingEnd end = LandingEnd.of(flight, events);
        ends.forEach((key, button) -> button.pseudoClassStateChanged(CHOSEN, key == end));
        FlightEvent touch = events.stream()
                .filter(e -> e.kind() == FlightEventKind.TOUCHED)
                .findFirst()
                .orElse(null);
        boolean ask = touch != null
                || flight.ending() == Ending.TOUCHED
                || flight.ending() == Ending.HUNG
                || flight.ending() == Ending.MID_AIR;
        Lay.show(cost, ask);
        question.setText((touch == null ? "" : Texts.event(touch, format) + ". ") + "Did that cost time?");
        costs.forEach((key, button) -> button.pseudoClassStateChanged(CHOSEN, key == flight.cutShort()));
    }
}
