package org.rafterbook.ui.review;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.review.FlightsNeeded;
import org.rafterbook.review.SeasonFigures;
import org.rafterbook.review.TrialPlan;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Parsed;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.UserError;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.SettingInput;
import org.rafterbook.work.SettingNow;

/** A trial of the flyer's own choice: a setting, two values, how many flights each, and what so many will show. */
final class OwnTrial {

    private final ReviewModel model;
    private final Runnable opened;
    private final ChoiceField<SettingNow> setting =
            new ChoiceField<>("Setting", s -> s.def().label());
    private final Field<String> a = Field.words("One value");
    private final Field<String> b = Field.words("The other");
    private final Field<TypedValue> each =
            Field.quantity("Flights each", Quantity.PLAIN, DisplayUnits.METRIC).unit("");
    private final Label shows = Words.prose("");
    private final VBox node;

    OwnTrial(ReviewModel model, Keys keys, Runnable opened) {
        this.model = model;
        this.opened = opened;
        Action open = keys.action("Open this trial", this::keep);
        setting.onChosen(this::propose);
        each.valueProperty().subscribe(this::forecast);
        shows.setMinHeight(Label.USE_PREF_SIZE);
        node = Lay.column(
                8,
                setting,
                Lay.even(8, a, b, each),
                shows,
                Lay.row(8, Buttons.primary(open), Words.hint("Esc leaves it")));
        for (Field<?> field : List.of(a, b, each)) {
            field.setMinWidth(0);
            field.input().setOnAction(event -> keep());
        }
    }

    VBox node() {
        return node;
    }

    /** Shows the form, filled from how the model stands now. */
    void open() {
        node.setVisible(true);
        each.fill(String.valueOf(TrialPlan.USUAL_PER_SIDE));
        model.read(id -> model.desk().settingsNow(id), settings -> {
            SettingNow first = settings.isEmpty() ? null : settings.get(0);
            setting.offer(settings, first);
            setting.quietly(first == null ? "This model has no setting yet; make one on the Bench." : "");
            if (first != null) {
                propose(first);
            }
            a.edit();
        });
        forecast();
    }

    private void propose(SettingNow now) {
        a.fill(now.value());
        b.fill("");
        a.unit(now.def().unit());
        b.unit(now.def().unit());
    }

    private void forecast() {
        int perSide = perSide();
        ModelReview answer = model.answer();
        SeasonFigures season = answer == null ? null : answer.season();
        double scatter = season == null ? FlightsNeeded.USUAL_SCATTER : season.flightScatter();
        shows.setText(
                perSide < TrialPlan.LEAST_PER_SIDE || perSide > TrialPlan.MOST_PER_SIDE
                        ? ""
                        : FlightsNeeded.trialSentence(perSide, scatter));
    }

    private int perSide() {
        TypedValue typed = each.value();
        return typed == null ? 0 : (int) Math.round(typed.si());
    }

    private void keep() {
        SettingNow chosen = setting.chosen();
        if (chosen == null || !each.check()) {
            return;
        }
        Setting one = read(chosen.def(), a);
        Setting other = read(chosen.def(), b);
        int perSide = perSide();
        if (one != null && other != null) {
            model.enter(
                    id -> model.desk().trials().open(id, chosen.def().id(), one, other, perSide),
                    trial -> opened.run(),
                    failure -> b.refuse(failure instanceof UserError error ? error.sentence() : failure.toString()));
        }
    }

    private static @Nullable Setting read(SettingDef def, Field<String> field) {
        Parsed<Setting> parsed = SettingInput.read(def, field.typed());
        parsed.refusal().ifPresent(field::refuse);
        return parsed.toOptional().orElse(null);
    }
}
