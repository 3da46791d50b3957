package org.rafterbook.ui.bench;

import java.util.List;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;
import org.rafterbook.stability.PlacementAnswer;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.KeyCap;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Looked;
import org.rafterbook.work.Placements;

/** Where the wings must sit for a wished margin, in sight under the settings. */
final class WhereBlock {

    private static final Duration CALM = Duration.millis(300);

    private final BenchModel model;
    private final QuantityFormat format;
    private final FxBackground.Slot slot = new FxBackground.Slot();
    private final Field<TypedValue> wished;
    private final Label lead = Words.aside("Leading edge at");
    private final Label answer = Words.figure("–");
    private final Label remark = Words.hint("");
    private final Sheet.Section section;
    private final PauseTransition calm = new PauseTransition(CALM);
    private @Nullable Looked looked;
    private String modelId = "";

    /**
     * @param ask puts the cursor into the field
     * @param more opens every other way to the margin
     */
    WhereBlock(BenchContext context, Action ask, Action more) {
        model = context.model();
        format = context.format();
        wished = Field.quantity("", Quantity.FRACTION, context.units());
        wished.getStyleClass().add("in-row");
        wished.input().setAccessibleText("Wished margin, in %");
        wished.onKept(value -> compute());
        ask.at(wished);
        answer.getStyleClass().add("place");
        remark.setWrapText(true);
        section = new Sheet.Section(
                "Where must the wing sit?",
                "",
                Lay.row(12, Lay.styled(wished, "wished"), Lay.column(0, lead, answer)),
                Lay.row(8, Lay.grow(remark), Buttons.link(more)));
        section.beside(new KeyCap(ask.key()));
        calm.setOnFinished(event -> compute());
    }

    Node node() {
        return section;
    }

    void edit() {
        wished.edit();
    }

    /** Whether the wished margin is being typed. */
    boolean isTyping() {
        return wished.input().isFocused();
    }

    /** Computes for what is looked at, a moment after it last changed. */
    void show(BenchDesk.Bench bench, Looked now) {
        Model shown = bench.now().model();
        if (!shown.id().equals(modelId)) {
            modelId = shown.id();
            Double low = shown.wishedLow();
            Double high = shown.wishedHigh();
            wished.fill(low == null || high == null ? "" : QuantityFormat.rounded((low + high) * 50, 1));
        }
        List<Surface> wings = now.airframe() == null
                ? List.of()
                : WingGeometry.of(now.airframe()).wings();
        boolean several = wings.size() > 1;
        section.caption(several ? "Where must the wings sit?" : "Where must the wing sit?");
        lead.setText(several ? "Leading edge of " + wings.get(0).name() : "Leading edge at");
        if (looked != now) {
            slot.cancel();
            say("–", ""); // never the answer to what was looked at before
        }
        looked = now;
        calm.playFromStart();
    }

    private void compute() {
        Looked now = looked;
        TypedValue typed = wished.value();
        Airframe airframe = now == null ? null : now.airframe();
        if (now == null || airframe == null || typed == null) {
            slot.cancel();
            say("–", typed == null ? "Type the margin wished for, then Enter." : "");
            return;
        }
        record Found(PlacementAnswer place, Placements.@Nullable Range range, double stands) {}
        model.background()
                .call(progress -> {
                    Placements placements = new Placements(now, typed.si());
                    List<Surface> wings = WingGeometry.of(airframe).wings();
                    double edge = wings.isEmpty() ? 0 : wings.get(0).edgeAftM();
                    return new Found(placements.wings(), placements.slider(), edge);
                })
                .in(slot)
                .then(found -> {
                    Double place = found.place().value();
                    if (place == null) {
                        say("–", String.valueOf(found.place().reason()));
                    } else {
                        say(
                                format.text(Quantity.LENGTH, place),
                                way(place - found.stands()) + ", " + slider(found.range()));
                    }
                });
    }

    private String way(double m) {
        String far = format.text(Quantity.LENGTH, Math.abs(m));
        boolean none = far.equals(format.text(Quantity.LENGTH, 0.0));
        return none ? "as it stands" : far + (m > 0 ? " back" : " forward");
    }

    private String slider(Placements.@Nullable Range range) {
        if (range == null) {
            return "";
        }
        String ends = format.range(Quantity.LENGTH, range.fromM(), range.toM());
        return range.ofSlider()
                ? "inside the slider's " + ends + "."
                : "looked for from " + ends + "; the slider has no limits.";
    }

    private void say(String place, String why) {
        answer.setText(place);
        remark.setText(why);
    }
}
