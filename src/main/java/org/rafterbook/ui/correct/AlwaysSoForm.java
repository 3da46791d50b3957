package org.rafterbook.ui.correct;

import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.FormSheet;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.SettingWords;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.Counted;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.Book;
import org.rafterbook.work.Corrections;
import org.rafterbook.work.Recordings;

/**
 * 'It was always so': a value recorded wrongly is put right in every version that carries it, after those are listed and
 * it is said which of them become one.
 */
public final class AlwaysSoForm {

    private record Seen(List<Corrections.Carrier> carriers, List<Recordings.Equal> equal) {}

    private final Book book;
    private final FxBackground background;
    private final FxBackground.Slot slot = new FxBackground.Slot();
    private final DisplayUnits units;
    private final String modelId;
    private final Runnable leave;
    private final FormSheet form;
    private final ChoiceField<SettingDef> settings = new ChoiceField<>("Setting", SettingDef::label);
    private final VBox right = Lay.column(0);
    private final VBox list = Lay.column(4);
    private final ChoiceField<Setting> wrong;
    private @Nullable SettingDef setting;
    private @Nullable Field<Setting> was;

    /**
     * @param leave called when it is done or left
     */
    public AlwaysSoForm(Tools tools, Book book, DisplayUnits units, String modelId, Runnable leave) {
        this.book = book;
        this.background = tools.background();
        this.units = units;
        this.modelId = modelId;
        this.leave = leave;
        form = new FormSheet(tools.keys(), "It was always so", "a value recorded wrongly");
        wrong = new ChoiceField<>("Is recorded as", v -> setting == null ? "" : SettingWords.value(setting, v));
        settings.onChosen(this::choose);
        wrong.onChosen(v -> look());
        form.add(settings, wrong, right, list);
        form.keep("Put it right", this::keep);
        form.leave(leave);
    }

    public Node node() {
        return form.node();
    }

    public Keys keys() {
        return form.keys();
    }

    /** Loads the model's settings; called when the form comes into sight. */
    public void opened() {
        background.call(progress -> book.riggings().now(modelId).settings()).then(all -> {
            settings.offer(all, all.isEmpty() ? null : all.get(0));
            if (all.isEmpty()) {
                form.refuse("This model has no settings yet.");
            } else {
                choose(all.get(0));
            }
            form.focusFirst();
        });
    }

    private void choose(SettingDef chosen) {
        setting = chosen;
        Field<Setting> field = SettingWords.field("Was really", chosen);
        field.required().valueProperty().subscribe(value -> look());
        was = field;
        right.getChildren().setAll(field);
        background
                .call(progress -> new Stood(
                        book.recordings().recorded(chosen.id()),
                        book.riggings().now(modelId).values().get(chosen.id())))
                .in(slot)
                .then(stood -> {
                    Setting now = stood.now();
                    wrong.offer(
                            stood.values(),
                            stood.values().stream()
                                    .filter(v -> now != null && v.same(now, 0))
                                    .findFirst()
                                    .orElse(
                                            stood.values().isEmpty()
                                                    ? null
                                                    : stood.values().get(0)));
                    wrong.quietly(stood.values().isEmpty() ? "Nothing is recorded of it." : "");
                    look();
                });
    }

    private record Stood(List<Setting> values, @Nullable Setting now) {}

    private void look() {
        SettingDef of = setting;
        Setting from = wrong.chosen();
        Setting to = was == null ? null : was.value();
        if (of == null || from == null) {
            list.getChildren().clear();
            return;
        }
        background
                .call(progress -> new Seen(
                        book.corrections().carriers(modelId, of.id(), from),
                        to == null || to.same(from, 0)
                                ? List.of()
                                : book.recordings().becomeEqual(modelId, of.id(), from, to, units)))
                .in(slot)
                .then(this::list);
    }

    private void list(Seen seen) {
        int flights =
                seen.carriers().stream().mapToInt(Corrections.Carrier::flights).sum();
        list.getChildren()
                .setAll(Words.caption(
                        seen.carriers().size() == 1
                                ? "One version carries it"
                                : seen.carriers().size() + " versions carry it"));
        list.getChildren()
                .add(Words.prose(seen.carriers().stream()
                        .map(c -> c.name() + ", " + count(c.flights()))
                        .collect(Collectors.joining("; "))));
        for (Recordings.Equal equal : seen.equal()) {
            list.getChildren()
                    .add(Words.prose(equal.gone() + " becomes equal to " + equal.kept() + ": they become one."));
            equal.carried().forEach(said -> list.getChildren().add(Words.prose(said)));
        }
        list.getChildren()
                .add(Words.prose(count(flights) + " stay where they are; riggings stay, and Ctrl+Z takes it back."));
    }

    private static String count(int flights) {
        return Counted.of(flights, "flight");
    }

    private void keep() {
        SettingDef of = setting;
        Field<Setting> field = was;
        Setting from = wrong.chosen();
        if (of == null || field == null || from == null) {
            form.refuse("Choose the setting and the value that is recorded.");
            return;
        }
        if (!field.check()) {
            return;
        }
        Setting to = field.value();
        if (to == null || to.same(from, 0)) {
            field.refuse("That is what is recorded.");
            return;
        }
        background
                .call(progress -> book.corrections().alwaysSo(modelId, of.id(), from, to))
                .entry()
                .otherwise(form::refuse)
                .then(done -> leave.run());
    }
}
