package org.rafterbook.ui.hall;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.TurnsUsed;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.chart.Gauge;
import org.rafterbook.ui.chart.GaugeLayers;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.MachineNumber;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Evening;
import org.rafterbook.work.HeightMark;

/** What else is worth knowing of a landed flight: turns left, peak height, a note, how it handled; all of it may wait. */
final class LandingFacts {

    private final QuantityFormat format;
    private final Field<TypedValue> left;
    private final Field<TypedRange> peak;
    private final Field<String> note = Field.words("Note").large().prompt("anything worth remembering");
    private final Field<String> leaveOut = Field.words("Left out, because").prompt("counts");
    private final ChoiceField<Model> giveModel = new ChoiceField<>("Model of this flight", Model::name);
    private final Gauge gauge = new Gauge(Graduation.numbers()).unit("turns");
    private final Label used = Words.prose("");
    private final Label handling = Words.prose("");
    private final Sheet.Section node;
    private List<HeightMark> heights = List.of();
    private final Action countAgain;
    private final Consumer<Throwable> late;
    private @Nullable String filled;

    /**
     * @param late takes a refusal that comes when another flight is on the sheet already
     */
    LandingFacts(LandingModel model, Keys keys, DisplayUnits units, Consumer<Throwable> late) {
        this.late = late;
        this.format = new QuantityFormat(units);
        left = Field.quantity("Turns left", Quantity.TURNS, units).large();
        peak = Field.range("Peak height", Quantity.HEIGHT, units).large();
        peak.also(range -> range.readBack() + HeightWords.between(heights, range, format));
        left.key(keys.on("U", "Turns left", left::edit));
        peak.key(keys.on("H", "Peak height", peak::edit));
        note.key(keys.on("N", "Note", note::edit));
        leaveOut.key(keys.on("X", "Leave out", leaveOut::edit));
        giveModel.key(keys.on("M", "Model of this flight", giveModel::open));
        left.onKept(turns -> model.turnsLeft(turns, refusal(left)));
        peak.onKept(range -> model.peak(range, refusal(peak)));
        note.onKept(text -> model.notes(text, refusal(note)));
        leaveOut.onKept(why -> model.leaveOut(why == null || why.isBlank() ? null : why, refusal(leaveOut)));
        countAgain = keys.on("G", "Count it again", () -> model.leaveOut(null, refusal(leaveOut)));
        Button again = Buttons.secondary(countAgain);
        again.managedProperty().bind(again.visibleProperty());
        again.visibleProperty().bind(countAgain.enabledProperty());
        node = new Sheet.Section(
                "Worth knowing",
                "all of it may wait",
                HallForm.fields(Lay.styled(left, "fact"), Lay.styled(peak, "fact"), Lay.grow(note)),
                gauge,
                used,
                Lay.row(
                        8,
                        Words.small("Handling"),
                        Buttons.secondary(keys.on("S", "It stalled", () -> model.did(FlightEventKind.STALLED))),
                        Buttons.secondary(keys.on("R", "Recovered", () -> model.did(FlightEventKind.RECOVERED))),
                        Buttons.secondary(
                                keys.on("D", "Did not recover", () -> model.did(FlightEventKind.NOT_RECOVERED))),
                        handling),
                HallForm.row(giveModel, Lay.grow(leaveOut), again));
        giveModel.onChosen(chosen -> {
            model.giveModel(chosen.id());
            HallForm.leave(node);
        });
    }

    Sheet.Section node() {
        return node;
    }

    /** True where no field has refused what was typed in it. */
    boolean accepted() {
        return HallForm.accepted(List.of(left, peak, note, leaveOut));
    }

    /** Shows a refusal beside its field as long as the flight is the one it was typed for. */
    private Consumer<Throwable> refusal(Field<?> field) {
        String of = filled;
        String typed = field.typed();
        return failure -> {
            if (Objects.equals(of, filled)) {
                field.refuse(failure);
            } else {
                late.accept(UserError.couldNot(
                        "“" + typed + "” was not kept with its flight. " + Texts.sentence(failure), failure));
            }
        };
    }

    /**
     * Fills the fields with what is kept. Only another flight's landing empties them all; else what is being typed or was
     * refused stays, above all while the landing itself is still on its way to disk.
     */
    void fill(String flightId, @Nullable FlightLine line, Evening evening) {
        boolean another = !flightId.equals(filled);
        filled = flightId;
        heights = evening.heights();
        Flight flight = line == null ? null : line.flight();
        Map<String, String> typed = flight == null ? Map.of() : flight.asTyped();
        Double turns = flight == null ? null : flight.turnsLeft();
        Double low = flight == null ? null : flight.peakLowM();
        Double high = flight == null ? null : flight.peakHighM();
        Double atLaunch = line == null ? null : Texts.atLaunch(evening, line);
        fill(left, turns == null ? null : typed.getOrDefault("turnsLeft", MachineNumber.text(turns)), another);
        left.quietly(atLaunch == null ? "" : "of " + Texts.turns(atLaunch) + " at launch");
        fill(peak, low == null || high == null ? null : peakText(low, high), another);
        peak.quietly(
                low == null || high != null
                        ? HeightWords.known(heights, format)
                        : "at least " + format.text(Quantity.HEIGHT, low));
        fill(note, flight == null ? null : flight.notes(), another);
        fill(leaveOut, flight == null ? null : flight.leftOutWhy(), another);
    }

    /** In the units of now, which may not be those it was typed in. */
    private String peakText(double lowM, double highM) {
        String low = format.shortest(Quantity.HEIGHT, lowM, 3);
        return lowM == highM ? low : low + " to " + format.shortest(Quantity.HEIGHT, highM, 3);
    }

    private static void fill(Field<?> field, @Nullable String kept, boolean another) {
        boolean atRest = !field.input().isFocused() && field.refusal().isEmpty();
        String text = Objects.requireNonNullElse(kept, "");
        if (another || atRest && !field.typed().equals(text)) {
            field.fill(text);
        }
    }

    /** Nothing is known of the flight yet. */
    void clear() {
        for (Node part : List.of(used, gauge, giveModel)) {
            Lay.show(part, false);
        }
        handling.setText("");
        countAgain.enabledProperty().set(false);
    }

    void show(HallData data, Flight flight, FlightLine line) {
        countAgain.enabledProperty().set(flight.leftOutWhy() != null);
        boolean noModel = line.model() == null;
        Lay.show(giveModel, noModel && !data.models().isEmpty());
        if (noModel) {
            giveModel.offer(data.models(), null);
        }
        showTurns(flight, Texts.atLaunch(data.evening(), line));
        handling.setText((flight.stalls() == null ? "" : "stalls " + flight.stalls() + "  ")
                + (flight.recovered() == null
                        ? ""
                        : "recovered: " + flight.recovered().word()));
    }

    private void showTurns(Flight flight, @Nullable Double atLaunch) {
        Double kept = flight.turnsLeft();
        Double duration = flight.durationS();
        boolean known = atLaunch != null && kept != null && duration != null && kept <= atLaunch;
        Lay.show(used, known);
        Lay.show(gauge, known);
        if (atLaunch != null && kept != null && duration != null && known) {
            TurnsUsed turns = new TurnsUsed(atLaunch, 0, kept);
            String words = "used " + Texts.turns(turns.used()) + " turns, " + Texts.turns(turns.meanRpm(duration))
                    + " a minute; " + QuantityFormat.rounded(turns.shareLeft() * 100, 0) + " % came back";
            used.setText(words);
            gauge.show(
                    0,
                    atLaunch * 1.1,
                    List.of(
                            GaugeLayers.filled(0, kept),
                            GaugeLayers.at(atLaunch, Texts.turns(atLaunch) + " at launch", Token.INK)),
                    words);
        }
    }
}
