package org.rafterbook.ui.imports;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.DatePatterns;
import org.rafterbook.exchange.FlightField;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Segments;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DecimalMark;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.TypedValue;

/** How the tables write numbers and days, the winder's ratio, and what holds for every row. */
final class WritingForm extends VBox {

    private final TakingIn taking;
    private final Segments<DecimalMark> mark =
            new Segments<>("Decimal mark", List.of(DecimalMark.values()), WritingForm::word);
    private final ChoiceField<String> days = new ChoiceField<>("Days are written", DatePatterns::sample);
    private final Field<TypedValue> ratio = Field.number(
                    "Motor turns for one of the winder",
                    QuantityParser.typed(Quantity.PLAIN, DisplayUnits.METRIC)::read)
            .refuseIf(value -> value.si() <= 0, value -> "A winder's ratio is above zero.");
    private final Field<String> model = Field.words("Model of every row");
    private final Field<String> venue = Field.words("Venue of every row");

    /**
     * @param said called after a choice, to go back to the list of columns
     */
    WritingForm(TakingIn taking, Keys keys, Runnable said) {
        this.taking = taking;
        getStyleClass().addAll("section", "writing");
        days.key(keys.on("D", "How days are written", days::open)).onChosen(pattern -> {
            taking.daysProperty().set(pattern);
            said.run();
        });
        ratio.key(keys.on("W", "Ratio of the winder", ratio::edit))
                .onKept(value -> taking.ratioProperty().set(value == null ? null : Double.valueOf(value.si())));
        model.key(keys.on("M", "Model of every row", model::edit))
                .onKept(typed -> taking.sayForAll(FlightField.MODEL, typed == null ? "" : typed));
        venue.key(keys.on("V", "Venue of every row", venue::edit))
                .onKept(typed -> taking.sayForAll(FlightField.VENUE, typed == null ? "" : typed));
        mark.onChosen(taking.markProperty()::set);
        Node marks = Lay.styled(
                Lay.column(0, Lay.styled(Lay.row(8, Words.small("Decimal mark")), "field-top"), mark), "field");
        HBox first = Lay.row(12, marks, share(days), share(ratio));
        HBox second = Lay.row(12, share(model), share(venue));
        for (HBox row : List.of(first, second)) {
            row.setAlignment(Pos.TOP_LEFT);
        }
        getChildren().addAll(first, second);
        taking.markProperty().subscribe(mark::choose);
        taking.daysProperty().subscribe(this::showDays);
        taking.dayChoicesProperty().subscribe(this::showDays);
        taking.ratioProperty().subscribe(this::showRatio);
    }

    private static <N extends VBox> N share(N field) {
        field.setPrefWidth(1);
        field.setMinWidth(0);
        return Lay.grow(field);
    }

    private static String word(DecimalMark mark) {
        return switch (mark) {
            case POINT -> "2.5";
            case COMMA -> "2,5";
            case EITHER -> "found out";
        };
    }

    private void showDays() {
        String now = taking.daysProperty().get();
        List<String> choices = new ArrayList<>(taking.dayChoicesProperty().get());
        if (now != null && !choices.contains(now)) {
            choices.add(0, now);
        }
        days.offer(choices, now);
        boolean either = now == null
                && choices.size() > 1
                && choices.size() < DatePatterns.known().size();
        days.quietly(either ? "Say which comes first: day or month." : "");
    }

    private void showRatio(@Nullable Double now) {
        ratio.fill(now == null ? "" : String.valueOf(now));
    }

    /** Asks only for what the columns leave open. */
    void fit() {
        Lay.show(ratio, taking.countsWinderTurns());
        boolean noModel = taking.columnOf(FlightField.MODEL) == null;
        boolean noVenue = taking.columnOf(FlightField.VENUE) == null;
        Lay.show(model, noModel);
        Lay.show(venue, noVenue);
        Lay.show(model.getParent(), noModel || noVenue);
        if (!model.input().isFocused()) {
            model.fill(taking.forAll(FlightField.MODEL));
        }
        if (!venue.input().isFocused()) {
            venue.fill(taking.forAll(FlightField.VENUE));
        }
    }
}
