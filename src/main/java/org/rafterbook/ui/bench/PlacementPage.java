package org.rafterbook.ui.bench;

import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Setting;
import org.rafterbook.stability.GapStudy;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.FormSheet;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Looked;
import org.rafterbook.work.Placements;

/** Every way to a wished margin: wings, ballast, tailplane, gap; each says where, or that there is none and why. */
final class PlacementPage implements BenchPage {

    private record Ways(Placements placements, List<PlacementWays.Way> list, List<GapStudy.Row> gaps) {}

    private static final double[] GAPS = {0.5, 0.75, 1, 1.25, 1.5, 2};

    private final BenchContext context;
    private final BenchModel model;
    private final FxBackground.Slot slot = new FxBackground.Slot();
    private final FormSheet form;
    private final Amount wished;
    private final Amount ballast;
    private final Amount place;
    private final ProgressRule progress = new ProgressRule();
    private final VBox answers = Lay.column(12);
    private final Table<GapStudy.Row> gaps = new Table<>("gaps");
    private final VBox gapBlock;

    PlacementPage(BenchContext context) {
        this.context = context;
        this.model = context.model();
        form = new FormSheet(context.keys(), "Where must it sit?", "for a wished margin");
        wished = new Amount("Wished margin", Quantity.FRACTION, context.units());
        ballast = new Amount("Ballast of", Quantity.MASS, context.units());
        place = new Amount("or ballast at", Quantity.LENGTH, context.units());
        ballast.field().refuseIf(v -> v.si() <= 0, v -> "Ballast above zero.");
        gaps.number("gap", "chords", 4, r -> BenchWords.number(r.gapInChords(), 2));
        QuantityFormat format = context.format();
        String unit = format.unitOf(Quantity.LENGTH);
        gaps.number("gap", unit, 4, r -> format.number(Quantity.LENGTH, r.gapM()));
        gaps.number("slope kept", "%", 5, PlacementPage::kept).grow();
        gaps.number("drag", "now 100", 5, r -> QuantityFormat.rounded(r.inducedDrag() * 100, 0));
        gaps.number("neutral", unit, 5, r -> format.number(Quantity.LENGTH, r.neutralPointM()));
        gaps.asHighAsItsRows();
        gapBlock = Lay.column(4, Words.caption("What the gap buys here"), gaps, Words.hint(GapStudy.CONVENTION));
        form.beside(wished.field(), ballast.field(), place.field()).add(progress, answers, gapBlock);
        form.keep("Compute", this::compute);
        form.leave(() -> {
            slot.cancel();
            context.back().run();
        });
    }

    private static String kept(GapStudy.Row row) {
        return String.join(
                ", ",
                row.slopeKept().values().stream()
                        .map(k -> QuantityFormat.rounded(k * 100, 0))
                        .toList());
    }

    @Override
    public Node node() {
        return form.node();
    }

    @Override
    public Keys keys() {
        return form.keys();
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        Double low = bench.now().model().wishedLow();
        Double high = bench.now().model().wishedHigh();
        wished.fill(low == null || high == null ? 0.05 : (low + high) / 2);
        Lay.show(gapBlock, false);
        compute();
        form.focusFirst();
    }

    private void compute() {
        BenchDesk.Bench bench = model.bench().get();
        Double margin = wished.si();
        boolean sound =
                wished.field().check() & ballast.field().check() & place.field().check();
        if (bench == null || !sound) {
            return;
        }
        if (margin == null) {
            wished.field().refuse("Type the margin wished for.");
            return;
        }
        Looked preview = model.preview().get();
        Looked looked = preview == null ? bench.shown() : preview;
        Double mass = ballast.si();
        Double at = place.si();
        Double minimum = bench.facts().classSheet() == null
                ? null
                : bench.facts().classSheet().minAirframeKg();
        model.background()
                .call(steps -> {
                    Placements placements = new Placements(looked, margin);
                    Airframe airframe = looked.airframe();
                    List<PlacementWays.Way> ways =
                            PlacementWays.of(placements, airframe, mass, at, minimum, context.format(), steps);
                    return new Ways(placements, ways, airframe == null ? List.of() : GapStudy.of(airframe, GAPS));
                })
                .in(slot)
                .showing(progress)
                .otherwise(form::refuse)
                .then(found -> show(bench, found));
    }

    private void show(BenchDesk.Bench bench, Ways found) {
        answers.getChildren().clear();
        for (PlacementWays.Way way : found.list()) {
            Airframe put = way.answer().airframe();
            var says = way.answer().value() == null ? Words.prose(way.says()) : Words.bold(way.says());
            says.setWrapText(true);
            VBox block = Lay.column(2, Words.small(way.name()), says);
            if (put != null) {
                block.getChildren()
                        .add(Buttons.link(form.keys().action("Take it", () -> take(bench, found.placements(), put))));
            }
            answers.getChildren().add(block);
        }
        gaps.rows(found.gaps());
        Lay.show(gapBlock, !found.gaps().isEmpty());
    }

    /** Settings are turned to the answer; what no setting reaches becomes a sketch. */
    private void take(BenchDesk.Bench bench, Placements placements, Airframe put) {
        Map<String, Setting> changed = placements.asSettings(put);
        if (!changed.isEmpty()) {
            context.back().run();
            model.turnTo(changed);
        } else {
            String version = BenchModel.shown(bench).version().id();
            Airframe kept = placements.kept(put);
            model.enter(
                    steps -> context.book().riggings().sketch(version, Map.of(), kept),
                    sketch -> {
                        context.back().run();
                        model.lookAt(sketch);
                    },
                    form::refuse);
        }
    }
}
