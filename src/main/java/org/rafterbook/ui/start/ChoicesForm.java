package org.rafterbook.ui.start;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Segments;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Theme;
import org.rafterbook.units.DisplayUnits;

/** The flyer's name, units, theme and text size. */
final class ChoicesForm extends GridPane {

    private final Field<String> name = Field.words("Your name, for the report").prompt("may stay empty");
    private final ChoiceField<DisplayUnits> units = new ChoiceField<>("Units on screen", DisplayUnits::label);
    private final Segments<Theme> theme = new Segments<>("Theme", List.of(Theme.values()), Theme::label);
    private final Segments<TextSize> size = new Segments<>("Text size", List.of(TextSize.values()), TextSize::label);

    ChoicesForm(Choices choices) {
        getStyleClass().addAll("section", "choices");
        name.onKept(typed -> choices.flyerProperty().set(typed == null ? "" : typed));
        choices.flyerProperty().subscribe(name::fill);
        units.quietly("Any unit may be typed: 14.5 in");
        units.onChosen(choices.unitsProperty()::set);
        choices.unitsProperty().subscribe(now -> units.offer(List.of(DisplayUnits.values()), now));
        theme.onChosen(choices.look().themeProperty()::set);
        choices.look().themeProperty().subscribe(theme::choose);
        size.onChosen(choices.look().textSizeProperty()::set);
        choices.look().textSizeProperty().subscribe(size::choose);
        for (int i = 0; i < 2; i++) {
            ColumnConstraints half = new ColumnConstraints();
            half.setPercentWidth(50);
            half.setHgrow(Priority.ALWAYS);
            getColumnConstraints().add(half);
        }
        add(name, 0, 0);
        add(units, 1, 0);
        add(captioned("Theme", theme, "Ctrl+Shift+T turns to the next"), 0, 1);
        add(captioned("Text size", size, "Ctrl+Shift+S turns to the next"), 1, 1);
    }

    private static Node captioned(String caption, Node choice, String hint) {
        return Lay.styled(Lay.column(0, Words.small(caption), choice, Words.hint(hint)), "field");
    }

    /** Puts the cursor into the first field. */
    void edit() {
        name.edit();
    }
}
