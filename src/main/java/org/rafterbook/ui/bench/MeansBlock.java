package org.rafterbook.ui.bench;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.stability.StabilityAnswer;
import org.rafterbook.stability.TrimAnswer;
import org.rafterbook.ui.kit.CautionBox;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Looked;
import org.rafterbook.work.MarginAnswer;
import org.rafterbook.work.Surroundings;

/** What it means: the figures that follow, and beside them those of the version compared with. */
final class MeansBlock {

    private final QuantityFormat format;

    private final GridPane grid = new GridPane();
    private final VBox caution = Lay.column(0);
    private final Label remark = Words.hint("");
    private final Sheet.Section section = new Sheet.Section("What it means", "", caution, grid, remark);

    MeansBlock(QuantityFormat format) {
        this.format = format;
        grid.getStyleClass().add("means");
        ColumnConstraints name = new ColumnConstraints();
        name.setHgrow(Priority.ALWAYS);
        ColumnConstraints value = new ColumnConstraints();
        value.setHalignment(HPos.RIGHT);
        ColumnConstraints other = new ColumnConstraints();
        other.setHalignment(HPos.RIGHT);
        grid.getColumnConstraints().setAll(name, value, other);
        remark.setWrapText(true);
    }

    Sheet.Section node() {
        return section;
    }

    /**
     * @param ownFormulaM neutral point by the flyer's own formula, null for none
     */
    void show(Looked now, @Nullable Looked beside, Surroundings in, @Nullable Double ownFormulaM) {
        List<Means.Row> rows = Means.of(now, in, ownFormulaM, format);
        List<Means.Row> others = beside == null ? List.of() : Means.of(beside, in, null, format);
        String stall = now.trim() == null ? null : now.trim().caution();
        caution.getChildren().setAll(stall == null ? List.of() : List.of(new CautionBox("Beyond stall.", stall)));
        Lay.show(caution, stall != null);
        grid.getChildren().clear();
        for (int i = 0; i < rows.size(); i++) {
            Means.Row row = rows.get(i);
            Label name = Words.aside(row.name());
            name.setMinWidth(0);
            name.setWrapText(true);
            Label value = Words.body(row.value());
            value.setMinWidth(Label.USE_PREF_SIZE);
            grid.add(name, 0, i);
            grid.add(value, 1, i);
            String other = others.stream()
                    .filter(r -> r.name().equals(row.name()))
                    .map(Means.Row::value)
                    .findFirst()
                    .orElse("");
            if (beside != null) {
                // the unit stands with the first of the two
                Label quiet = Words.hint(other.replace(" " + format.unitOf(Quantity.LENGTH), ""));
                quiet.setMinWidth(Label.USE_PREF_SIZE);
                grid.add(quiet, 2, i);
            }
        }
        section.aside(
                beside == null
                        ? ""
                        : (now.version().equals(beside.version())
                                        ? "turned"
                                        : now.version().name())
                                + ", " + beside.version().name());
        remark.setText(remark(now, in));
        Lay.show(remark, !remark.getText().isEmpty());
    }

    /** What is wrong or missing with the surfaces, and what is shown all the same. */
    private static String problems(MarginAnswer margin) {
        StabilityAnswer shape = margin.stability();
        return shape == null
                ? ""
                : shape.problems().stream()
                        .map(p -> p.sentence() + " " + p.stillShown())
                        .collect(Collectors.joining(" "));
    }

    private static String remark(Looked now, Surroundings in) {
        TrimAnswer trim = now.trim();
        String closed = now.margin().closedFormNote();
        String problems = problems(now.margin());
        Stream<@Nullable String> all = trim == null
                ? Stream.of(problems, closed)
                : Stream.of(
                        problems,
                        trim.missing(),
                        "Speeds in " + in.airFrom() + ", " + BenchWords.number(in.airDensity(), 3)
                                + " kg/m³. Linear theory: the computed margin is no promise of safe flight near people.",
                        closed == null ? null : "Closed form: " + closed);
        return String.join(" ", all.filter(s -> s != null && !s.isEmpty()).toList());
    }
}
