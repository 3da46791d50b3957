package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Fold;
import org.rafterbook.ui.kit.FoldingColumn;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.GoBack;
import org.rafterbook.work.Prepared;
import org.rafterbook.work.Rigged;
import org.rafterbook.work.TrialNow;

/** The next flight: model, trim, margin, motor and wind; Space starts the watch, a typed time is as fast. */
final class PreparingView implements HallSheet {

    /** A model by name, or none. */
    private record ModelChoice(@Nullable String id, String name) {}

    private final HallModel hall;
    private final PreparingModel model;
    private final TrimPart trim;
    private final MarginPart margin;
    private final WindPart wind;
    private final OtherWatchPart other;
    private final Action windStep;
    private final Label over = Words.small("");
    private final Label name = Words.head("");
    private final MarkView sign = new MarkView(VersionMark.dealt(0));
    private final Label changes = Words.aside("");
    private final ChoiceField<ModelChoice> models = new ChoiceField<>("Model", ModelChoice::name);
    private final Field<String> newModel = Field.words("A new model's name");
    private final ChoiceField<BackTo> versions = new ChoiceField<>("Back to", BackTo::words);
    private final Fold modelFold = new Fold(models, Lay.grow(newModel));
    private final Fold versionFold = new Fold(Lay.grow(versions));
    private final FoldingColumn leftSide = new FoldingColumn();
    private final FoldingColumn rightSide = new FoldingColumn();
    private final Sheet sheet = new Sheet();
    private final Label trialLine = Words.accent("");
    private boolean firstModelAwaited;
    private boolean narrow;

    PreparingView(HallModel hall, Keys keys, DisplayUnits units, Followed followed) {
        this.hall = hall;
        this.model = hall.preparing();
        QuantityFormat format = new QuantityFormat(units);
        Action start = keys.onPress("Space", "Start the watch", model::start);
        trim = new TrimPart(model, keys, followed);
        margin = new MarginPart(format);
        windStep = keys.on("N", "Motor and wind", this::wind);
        wind = new WindPart(
                hall,
                format,
                windStep,
                keys.on("K", "Relaunch", this::turnRelaunch),
                keys.on("O", "Last flight", () -> hall.landing().openNext(-1)),
                followed);
        other = new OtherWatchPart(model, keys, units, followed);
        keys.on("Enter", "Keep the typed time", other::keep);
        keys.on("Esc", "Leave the field", () -> HallForm.leave(sheet));
        keys.on("F3", "Motor and wind", this::wind);
        keys.on("A", "Venue and air", () -> hall.stateProperty().set(HallState.VISIT));
        Action inTheAir = keys.on(
                "V", "Back to the flight in the air", () -> hall.stateProperty().set(HallState.IN_THE_AIR));
        inTheAir.enabledProperty().bind(Bindings.isNotEmpty(hall.air().watches()));
        Action pickModel = keys.on("M", "Model", this::toggleModels);
        Action backTo = keys.on("F", "Back to …", this::openVersions);
        keys.hint("Space", "start");
        keys.hint("0 … 9", "type a time");
        keys.hint("N", "motor and wind");
        keys.hint("M", "model");
        keys.hint("A", "venue and air");
        choices();
        sheet.section(
                over,
                Lay.row(12, name, sign, changes, Lay.space(), Buttons.secondary(backTo), Buttons.secondary(pickModel)),
                modelFold,
                versionFold);
        Lay.show(trialLine, false);
        changes.setMinWidth(0);
        sheet.add(Lay.grow(sides(keys, format, followed)));
        sheet.section(
                trialLine,
                Buttons.main(
                        start,
                        Words.body("Kept from the first instant."),
                        Words.body("A wrong press is taken back with Ctrl+Z.")));
    }

    private HBox sides(Keys keys, QuantityFormat format, Followed followed) {
        VBox expected = lined(new ExpectedPart(hall, format, followed).node());
        VBox winding = lined(wind.node());
        VBox typing = lined(other.node());
        Action unfold = keys.on("H", "Expected flight", () -> rightSide.unfold(expected));
        other.onType(() -> leftSide.unfold(typing));
        leftSide.addGrowing(trim.node())
                .add(winding, 3, windStep, wind.summary())
                .add(typing, 2, other.type());
        rightSide.add(margin.node()).add(expected, 1, unfold);
        leftSide.getStyleClass().add("hall-trim");
        leftSide.setMinSize(0, 0);
        rightSide.setMinSize(0, 0);
        HBox sides = new HBox(leftSide, Lay.styled(new Region(), "upright-hairline"), Lay.grow(rightSide));
        sides.setMinHeight(0);
        return sides;
    }

    private static VBox lined(Node part) {
        return new VBox(Lay.hairline(), part);
    }

    private void choices() {
        model.onHighestEstimate(this::showHighestEstimate);
        models.onChosen(choice -> {
            modelFold.show(false);
            model.choose(choice.id());
            HallForm.leave(sheet);
        });
        newModel.onKept(typed -> {
            if (typed != null && !typed.isBlank()) {
                Runnable emptied = HallForm.emptied(newModel);
                model.addModel(
                        typed,
                        () -> {
                            emptied.run();
                            modelFold.show(false);
                            HallForm.leave(sheet);
                        },
                        newModel::refuse);
            }
        });
        versions.onChosen(choice -> {
            versionFold.show(false);
            model.backTo(choice.version().id(), choice.name());
            HallForm.leave(sheet);
        });
    }

    private void wind() {
        hall.stateProperty().set(HallState.WINDING);
    }

    private void turnRelaunch() {
        model.relaunchProperty().set(!model.relaunchProperty().get());
    }

    @Override
    public Node node() {
        return sheet;
    }

    /** Fits to the room: where the side is folded away a line tells of the open trial, C sets its next value. */
    @Override
    public void fold(boolean isNarrow, boolean low) {
        narrow = isNarrow;
        margin.low(low);
        Lay.show(over, !low);
        showTrial();
    }

    private void showTrial() {
        HallData data = hall.data();
        TrialNow now = data == null ? null : data.prepared().trial();
        boolean counts = now == null || now.counts() || now.nextSide() == null;
        Lay.show(trialLine, now != null && (narrow || !counts));
        if (now != null && data != null) {
            String next = TrialPart.next(now, data.prepared());
            trialLine.setText(
                    counts
                            ? "Trial, " + now.state().progress() + "; " + next
                                    + (now.set() || now.nextSide() == null ? "" : ": C sets it")
                            : "A flight launched now does not count for the trial; " + next + ": C sets it");
        }
    }

    private void toggleModels() {
        boolean open = !modelFold.isVisible();
        modelFold.show(open);
        if (open) {
            if (models.box().getItems().size() > 1) {
                models.open();
            } else {
                newModel.edit();
            }
        }
    }

    private void openVersions() {
        versionFold.show(true);
        versions.open();
        versions.quietly("The highest estimate is being looked for.");
        model.findHighestEstimate();
    }

    private void showHighestEstimate(Optional<GoBack> found) {
        HallData data = hall.data();
        if (data != null && versionFold.isVisible()) {
            versions.quietly(found.map(g -> g.name() + ": " + g.why()).orElse(""));
            versions.offer(BackTo.of(data.prepared(), found.orElse(null)), null);
        }
    }

    @Override
    public void show(HallData data) {
        Prepared prepared = data.prepared();
        Rigged rigged = prepared.rigged();
        over.setText("Flight " + prepared.ordinal()
                + (prepared.last() == null ? "" : ", as the last one unless you change it"));
        name.setText(rigged == null ? "Just the time" : rigged.model().name() + " " + rigged.name());
        name.setMinWidth(Label.USE_PREF_SIZE);
        Lay.show(sign, rigged != null);
        if (rigged != null) {
            sign.show(VersionMark.dealt(rigged.version().number() - 1), MarkStyle.CLEAN);
        }
        changes.setText(rigged == null ? "give it a model now or after landing" : Texts.changes(prepared));
        offerModels(data);
        versions.offer(BackTo.of(prepared, null), null);
        trim.show(prepared);
        margin.show(prepared);
        wind.show();
        showTrial();
    }

    private void offerModels(HallData data) {
        List<ModelChoice> choices = new ArrayList<>();
        for (Model m : data.models()) {
            choices.add(new ModelChoice(m.id(), m.name()));
        }
        choices.add(new ModelChoice(null, "Just time a flight"));
        Rigged rigged = data.prepared().rigged();
        String now = rigged == null ? null : rigged.model().id();
        models.offer(
                choices,
                choices.stream()
                        .filter(c -> Objects.equals(c.id(), now))
                        .findFirst()
                        .orElse(null));
        if (data.models().isEmpty()) {
            modelFold.show(true);
        } else if (firstModelAwaited) {
            modelFold.show(false);
        }
        firstModelAwaited = data.models().isEmpty();
        Lay.show(models, !data.models().isEmpty());
    }
}
