package org.rafterbook.ui.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import org.rafterbook.stability.SketchComparison;
import org.rafterbook.stability.TrimAnswer;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.FormSheet;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Comparison;

/** Designs side by side before anything is built: at equal margin, airframe mass and lift. */
final class SketchTable implements BenchPage {

    /** More designs than this go on below. */
    private static final int BESIDE = 4;

    private final BenchContext context;
    private final BenchModel model;
    private final FxBackground.Slot slot = new FxBackground.Slot();
    private final FormSheet form;
    private final Amount margin;
    private final Amount mass;
    private final Amount lift;
    private final VBox choices = Lay.column(4);
    private final Map<CheckBox, Comparison.Design> offered = new LinkedHashMap<>();
    private final ProgressRule progress = new ProgressRule();
    private final GridPane grid = new GridPane();
    private final VBox reasons = Lay.column(4);

    SketchTable(BenchContext context) {
        this.context = context;
        this.model = context.model();
        form = new FormSheet(context.keys(), "Designs side by side", "equal margin, airframe mass, lift");
        margin = new Amount("Margin", Quantity.FRACTION, context.units());
        mass = new Amount("Airframe", Quantity.MASS, context.units());
        lift = new Amount("Lift coefficient", Quantity.PLAIN, context.units());
        for (Amount amount : List.of(margin, mass, lift)) {
            amount.field().required();
        }
        mass.field().refuseIf(v -> v.si() <= 0, v -> "A mass above zero.");
        lift.field().refuseIf(v -> v.si() <= 0, v -> "A lift coefficient above zero.");
        grid.getStyleClass().add("side-by-side");
        form.add(choices).beside(margin.field(), mass.field(), lift.field()).add(progress, grid, reasons);
        form.keep("Compare", this::compute);
        form.leave(() -> {
            slot.cancel();
            context.back().run();
        });
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
        margin.fill(low == null || high == null ? 0.05 : (low + high) / 2);
        Double minimum = bench.facts().classSheet() == null
                ? null
                : bench.facts().classSheet().minAirframeKg();
        mass.fill(minimum == null ? bench.facts().weights().sumKg() : minimum);
        mass.field()
                .quietly(
                        minimum == null
                                ? "at first this model's parts"
                                : "the class's minimum is " + context.format().text(Quantity.MASS, minimum));
        TrimAnswer trim = bench.shown().trim();
        Double hands = trim == null || trim.caution() != null ? null : trim.liftCoefficient();
        lift.fill(hands == null ? 0.7 : Math.rint(hands * 100) / 100);
        model.background()
                .call(steps -> context.book().bench().comparison().designs(BenchModel.shown(bench)))
                .then(designs -> {
                    offer(designs);
                    compute();
                    form.focusFirst();
                });
    }

    private void offer(List<Comparison.Design> designs) {
        offered.clear();
        choices.getChildren().setAll(Words.small("Which"));
        for (Comparison.Design design : designs) {
            CheckBox tick = new CheckBox(design.name());
            tick.setMnemonicParsing(false);
            tick.setSelected(design.ofThisModel());
            offered.put(tick, design);
        }
        FlowPane ticks = new FlowPane(16, 4);
        ticks.getChildren().addAll(offered.keySet());
        choices.getChildren().add(ticks);
    }

    private void compute() {
        boolean sound =
                margin.field().check() & mass.field().check() & lift.field().check();
        BenchDesk.Bench bench = model.bench().get();
        Double wished = margin.si();
        Double kg = mass.si();
        Double coefficient = lift.si();
        if (!sound || bench == null || wished == null || kg == null || coefficient == null) {
            return;
        }
        List<Comparison.Design> picked = offered.entrySet().stream()
                .filter(e -> e.getKey().isSelected())
                .map(Map.Entry::getValue)
                .toList();
        model.background()
                .call(steps ->
                        context.book().bench().comparison().of(picked, wished, kg, coefficient, bench.in(), steps))
                .in(slot)
                .showing(progress)
                .otherwise(form::refuse)
                .then(this::show);
    }

    private void show(List<SketchComparison.Row> rows) {
        grid.getChildren().clear();
        ColumnConstraints names = new ColumnConstraints();
        names.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().setAll(names);
        reasons.getChildren().clear();
        if (rows.isEmpty()) {
            reasons.getChildren()
                    .add(Words.prose("Tick two designs or more. A sketch is made on the bench: turn settings or"
                            + " change a surface, then keep it as a sketch."));
        }
        List<SketchLines.Line> lines = SketchLines.in(context.format());
        for (int from = 0; from < rows.size(); from += BESIDE) {
            block(rows.subList(from, Math.min(rows.size(), from + BESIDE)), lines, from / BESIDE * (lines.size() + 1));
        }
        for (SketchComparison.Row row : rows) {
            if (row.missing() != null) {
                reasons.getChildren().add(Words.prose(row.name() + ": " + row.missing()));
            }
        }
    }

    /** Designs beside each other: their names, then line by line what they are compared by. */
    private void block(List<SketchComparison.Row> rows, List<SketchLines.Line> lines, int top) {
        for (int c = 0; c < rows.size(); c++) {
            if (grid.getColumnConstraints().size() <= c + 1) {
                ColumnConstraints design = new ColumnConstraints();
                design.setHalignment(HPos.RIGHT);
                grid.getColumnConstraints().add(design);
            }
            grid.add(whole(Words.bold(rows.get(c).name().replace(' ', '\n'))), c + 1, top);
        }
        for (int l = 0; l < lines.size(); l++) {
            SketchLines.Line line = lines.get(l);
            grid.add(Words.prose(unbroken(line.name())), 0, top + 1 + l);
            for (int c = 0; c < rows.size(); c++) {
                grid.add(whole(Words.body(line.value().apply(rows.get(c)))), c + 1, top + 1 + l);
            }
        }
    }

    /** The same name in which no line ends before its unit. */
    private static String unbroken(String name) {
        return name.replaceFirst(", (?=[^,]*$)", ",\u00a0");
    }

    /** Of the columns only the one of the lines' names gives way: a cut number is a wrong one. */
    private static Label whole(Label label) {
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.setTextAlignment(TextAlignment.RIGHT);
        return label;
    }
}
