package org.rafterbook.ui.hall;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.TurnsUsed;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.power.Wind;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.WatchFace;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.MachineNumber;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.LandingEnd;

/** After landing: the time, how it ended and what else is worth knowing; everything is kept as it is answered. */
final class LandingView implements HallSheet {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final int COLUMNS = 3;

    private final HallModel model;
    private final QuantityFormat format;
    private final ZoneId zone;
    private final Label over = Words.aside("");
    private final WatchFace watch = new WatchFace(WatchFace.Size.LANDING);
    private final Label doubt = Words.prose("");
    private final Map<LandingEnd, Button> ends = new EnumMap<>(LandingEnd.class);
    private final Map<CutShort, Button> costs = new EnumMap<>(CutShort.class);
    private final Label costQuestion = Words.body("");
    private final HBox costRow;
    private final Field<TypedValue> left;
    private final Field<TypedRange> peak;
    private final Field<String> note = Field.words("Note");
    private final Field<TypedValue> correct;
    private final HBox correctFold;
    private final Field<String> leaveOut = Field.words("Left out, because").prompt("counts");
    private final ChoiceField<Model> giveModel = new ChoiceField<>("Model of this flight", Model::name);
    private final Label used = Words.prose("");
    private final Label handling = Words.prose("");
    private final Action next;
    private final Action stillFlying;
    private final Sheet sheet = new Sheet();
    private @Nullable String filled;

    LandingView(HallModel model, Keys keys, DisplayUnits units, ZoneId zone) {
        this.model = model;
        this.format = new QuantityFormat(units);
        this.zone = zone;
        left = Field.quantity("Turns left", Quantity.TURNS, units).large();
        peak = Field.range("Peak height", Quantity.HEIGHT, units).large();
        note.large().prompt("anything worth remembering");
        correct = Field.quantity("The right time", Quantity.TIME, units);
        next = keys.on("Enter", "Prepare the next flight", this::done);
        stillFlying = keys.on("Backspace", "Still flying", model::stillFlying);
        Action correcting = keys.on("E", "Correct the time", this::startCorrecting);
        correctFold = Lay.row(12, correct);
        correct.onKept(typed -> {
            if (typed != null) {
                model.correctTime(typed, Inputs.refusal(correct));
                Lay.show(correctFold, !correct.refusal().isEmpty());
            }
        });
        GridPane grid = new GridPane();
        grid.getStyleClass().add("tiles");
        for (int i = 0; i < COLUMNS; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100.0 / COLUMNS);
            grid.getColumnConstraints().add(column);
        }
        for (LandingEnd end : LandingEnd.values()) {
            Action answer = keys.on(String.valueOf(end.ordinal() + 1), end.says(), () -> model.end(end));
            Button tile = Buttons.secondary(answer);
            tile.getStyleClass().add("tile");
            tile.setMaxWidth(Double.MAX_VALUE);
            tile.setMinWidth(0);
            ends.put(end, tile);
            grid.add(tile, end.ordinal() % COLUMNS, end.ordinal() / COLUMNS);
        }
        costRow = Lay.row(
                8,
                costQuestion,
                Lay.space(),
                cost(keys, "F", "No, full time", CutShort.NO),
                cost(keys, "T", "Yes", CutShort.YES),
                cost(keys, "C", "Cannot say", CutShort.CANNOT_SAY));
        left.key(keys.on("U", "Turns left", left::edit));
        peak.key(keys.on("H", "Peak height", peak::edit));
        note.key(keys.on("N", "Note", note::edit));
        leaveOut.key(keys.on("X", "Leave out", leaveOut::edit));
        giveModel.key(keys.on("M", "Model of this flight", giveModel::open));
        Action stall = keys.on("S", "It stalled", () -> model.did(FlightEventKind.STALLED));
        Action recovered = keys.on("R", "Recovered", () -> model.did(FlightEventKind.RECOVERED));
        Action notRecovered = keys.on("D", "Did not recover", () -> model.did(FlightEventKind.NOT_RECOVERED));
        keys.on("↑", "The flight after", () -> model.openNext(1));
        keys.on("↓", "The flight before", () -> model.openNext(-1));
        keys.on("Esc", "Leave the field", this::focusPage);
        left.onKept(turns -> model.turnsLeft(turns, Inputs.refusal(left)));
        peak.onKept(range -> model.peak(range, Inputs.refusal(peak)));
        note.onKept(model::notes);
        leaveOut.onKept(
                why -> model.leaveLandedOut(why == null || why.isBlank() ? null : why, Inputs.refusal(leaveOut)));
        giveModel.onChosen(chosen -> {
            model.giveModel(chosen.id());
            focusPage();
        });
        keys.hint("1 … 6", "how it ended");
        keys.hint("U", "turns left");
        keys.hint("H", "height");
        keys.hint("N", "note");
        keys.hint("Enter", "next flight");
        layOut(grid, correcting, stall, recovered, notRecovered);
    }

    private void layOut(GridPane grid, Action correcting, Action stall, Action recovered, Action notRecovered) {
        Lay.show(correctFold, false);
        HBox stopped = Lay.row(8, Buttons.secondary(stillFlying), Buttons.secondary(correcting));
        stopped.setAlignment(Pos.CENTER_RIGHT);
        sheet.section(
                over,
                Lay.row(
                        16,
                        watch,
                        Lay.space(),
                        Lay.column(8, Words.aside("Stopped by mistake? The watch ran on."), stopped)),
                correctFold,
                doubt);
        sheet.section("How did it end?", "number key", grid, costRow);
        HBox fields = Lay.row(12, left, peak, Lay.grow(note));
        fields.setAlignment(Pos.TOP_LEFT);
        Sheet.Section more = new Sheet.Section(
                "Worth knowing",
                "all of it may wait",
                fields,
                used,
                Lay.row(
                        8,
                        Words.small("Handling"),
                        Buttons.secondary(stall),
                        Buttons.secondary(recovered),
                        Buttons.secondary(notRecovered),
                        handling),
                Lay.row(12, giveModel, Lay.grow(leaveOut)));
        sheet.add(Inputs.rolling(more));
        sheet.section(Buttons.main(
                next,
                Words.body("Everything here is kept already;"),
                Words.body("fill in the rest whenever you like.")));
        model.landedProperty().subscribe(shown -> showTime());
    }

    private Button cost(Keys keys, String key, String label, CutShort answer) {
        Button button = Buttons.secondary(keys.on(key, label, () -> model.costTime(answer)));
        costs.put(answer, button);
        return button;
    }

    @Override
    public Node node() {
        return sheet;
    }

    private void focusPage() {
        if (sheet.getScene() != null) {
            sheet.getScene().getRoot().requestFocus();
        }
    }

    /** Enter goes on, unless a field has just refused what was typed in it. */
    private void done() {
        for (Field<?> field : List.of(left, peak, correct, leaveOut)) {
            if (!field.refusal().isEmpty()) {
                return;
            }
        }
        model.done();
    }

    private void startCorrecting() {
        Lay.show(correctFold, true);
        correct.fill("");
        correct.edit();
    }

    private void showTime() {
        HallModel.Landed shown = model.landedProperty().get();
        if (shown != null) {
            watch.show(shown.durationS());
            over.setText(shown.name());
            HallData data = model.data();
            if (data != null) {
                show(data);
            }
        }
    }

    @Override
    public void show(HallData data) {
        HallModel.Landed shown = model.landedProperty().get();
        Flight flight = shown == null ? null : shown.flight();
        FlightLine line = shown == null ? null : data.evening().find(shown.flightId());
        next.labelProperty()
                .set(
                        model.watches().isEmpty()
                                ? "Prepare flight " + data.prepared().ordinal()
                                : "Back to the flight in the air");
        if (shown != null) {
            fill(line, !shown.flightId().equals(filled));
            filled = shown.flightId();
        }
        if (shown == null || flight == null || line == null) {
            return;
        }
        List<FlightEvent> events = data.evening().eventsOf(flight.id());
        over.setText("Flight " + flight.ordinal() + (line.model() == null ? "" : ", " + shown.name())
                + (flight.landedAt() == null
                        ? ""
                        : ", landed " + CLOCK.format(flight.landedAt().atZone(zone))));
        stillFlying.enabledProperty().set(flight.launchedAt() != null);
        doubt.setText(source(flight));
        Lay.show(doubt, !doubt.getText().isEmpty());
        LandingEnd end = LandingEnd.of(flight, events);
        ends.forEach((key, button) -> button.pseudoClassStateChanged(CHOSEN, key == end));
        showCost(flight, events);
        boolean noModel = line.model() == null;
        Lay.show(giveModel, noModel && !data.models().isEmpty());
        if (noModel) {
            giveModel.offer(data.models(), null);
        }
        showTurns(flight, line.wind());
        handling.setText((flight.stalls() == null ? "" : "stalls " + flight.stalls() + "  ")
                + (flight.recovered() == null
                        ? ""
                        : "recovered: " + flight.recovered().word()));
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

    private void showCost(Flight flight, List<FlightEvent> events) {
        FlightEvent touch = events.stream()
                .filter(e -> e.kind() == FlightEventKind.TOUCHED)
                .findFirst()
                .orElse(null);
        boolean ask = touch != null
                || flight.ending() == Ending.TOUCHED
                || flight.ending() == Ending.HUNG
                || flight.ending() == Ending.MID_AIR;
        Lay.show(costRow, ask);
        String what = touch == null ? "" : Texts.event(touch, format) + ". ";
        costQuestion.setText(what + "Did that cost time?");
        costs.forEach((key, button) -> button.pseudoClassStateChanged(CHOSEN, key == flight.cutShort()));
    }

    /**
     * Fills the fields with what is kept. Only another flight's landing empties them all; else what is being typed or was
     * refused stays, above all while the landing itself is still on its way to disk.
     */
    private void fill(@Nullable FlightLine line, boolean another) {
        Flight flight = line == null ? null : line.flight();
        Map<String, String> typed = flight == null ? Map.of() : flight.asTyped();
        Double turns = flight == null ? null : flight.turnsLeft();
        Double low = flight == null ? null : flight.peakLowM();
        Double high = flight == null ? null : flight.peakHighM();
        Double atLaunch = line == null ? null : Texts.atLaunch(line.wind());
        fill(left, turns == null ? null : typed.getOrDefault("turnsLeft", MachineNumber.text(turns)), another);
        left.quietly(atLaunch == null ? "" : "of " + Texts.turns(atLaunch) + " at launch");
        fill(peak, low == null || high == null ? null : typed.getOrDefault("peakM", low + " to " + high), another);
        peak.quietly(low == null || high != null ? "" : "at least " + format.text(Quantity.HEIGHT, low));
        fill(note, flight == null ? null : flight.notes(), another);
        fill(leaveOut, flight == null ? null : flight.leftOutWhy(), another);
    }

    private static void fill(Field<?> field, @Nullable String kept, boolean another) {
        boolean atRest = !field.input().isFocused() && field.refusal().isEmpty();
        String text = Objects.requireNonNullElse(kept, "");
        if (another || atRest && !field.typed().equals(text)) {
            field.fill(text);
        }
    }

    private void showTurns(Flight flight, @Nullable Wind wind) {
        Double wound = wind == null ? null : wind.turnsWound();
        Double kept = flight.turnsLeft();
        Double duration = flight.durationS();
        if (wind == null || wound == null || kept == null || duration == null) {
            used.setText("");
            Lay.show(used, false);
            return;
        }
        Double off = wind.turnsBackedOff();
        TurnsUsed turns = new TurnsUsed(wound, off == null ? 0 : off, kept);
        Lay.show(used, true);
        used.setText("used " + Texts.turns(turns.used()) + " turns, " + Texts.turns(turns.meanRpm(duration))
                + " a minute; " + QuantityFormat.rounded(turns.shareLeft() * 100, 0) + " % came back");
    }
}
