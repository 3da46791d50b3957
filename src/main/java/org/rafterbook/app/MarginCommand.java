package org.rafterbook.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.exchange.AirframeSheets;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Book;
import org.rafterbook.work.MarginAnswer;
import org.rafterbook.work.Margins;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Stability of airframe sheets, or of each version flown in a logbook. */
@Command(name = "margin", description = "Stability margin of airframe sheets, or of each version flown.")
final class MarginCommand implements Callable<Integer> {

    private static final List<String> HEADS = List.of(
            "version", "margin %", "± %", "neutral mm", "balance mm", "mean chord mm", "slope /rad", "closed form mm");

    @Mixin
    private final Answer answer = new Answer();

    @Mixin
    private final LogbookChoice logbook = new LogbookChoice();

    @Option(names = "--model", description = "Only this model of the logbook.")
    private @Nullable String model;

    @Parameters(paramLabel = "SHEET.json", arity = "0..*", description = "Airframe sheets.")
    private List<Path> sheets = new ArrayList<>();

    @Override
    public Integer call() {
        if (sheets.isEmpty() == !logbook.named()) {
            throw UserError.badInput("Give airframe sheets, or a logbook with --logbook FILE.");
        }
        List<Row> rows = sheets.isEmpty() ? ofLogbook() : ofSheets();
        if (!answer.json()) {
            table(rows);
        } else if (sheets.isEmpty()) {
            answer.document(Map.of("versions", rows.stream().map(Row::keys).toList()));
        } else {
            answer.document(rows.stream().map(Row::keys).toList());
        }
        return 0;
    }

    private record Row(String model, String version, MarginAnswer margin) {

        Map<String, @Nullable Object> keys() {
            Map<String, @Nullable Object> keys = new LinkedHashMap<>();
            keys.put("model", model);
            keys.put("version", version);
            keys.putAll(MarginKeys.of(margin));
            return keys;
        }
    }

    /** All sheets are read before anything is answered. */
    private List<Row> ofSheets() {
        List<AirframeSheet> read = sheets.stream().map(AirframeSheets::read).toList();
        return read.stream()
                .map(s -> new Row(s.model(), s.version(), Margins.of(s.airframe())))
                .toList();
    }

    private List<Row> ofLogbook() {
        try (Book book = logbook.open(Mode.READ_ONLY)) {
            if (model != null
                    && book.riggings().models().stream().noneMatch(m -> m.name().equalsIgnoreCase(model))) {
                throw UserError.badInput("There is no model named '" + model + "' in this logbook.");
            }
            return book.margins().flown(model, book.riggings()).stream()
                    .map(v -> new Row(v.version().model().name(), v.version().name(), v.margin()))
                    .toList();
        }
    }

    private void table(List<Row> rows) {
        List<List<String>> lines = new ArrayList<>();
        for (Row row : rows) {
            MarginAnswer m = row.margin();
            lines.add(List.of(
                    row.model() + " " + row.version(),
                    MarginKeys.text(m.margin(), 100, 1),
                    MarginKeys.band(m.band()),
                    MarginKeys.text(m.neutralPointM(), 1000, 1),
                    MarginKeys.text(m.balanceM(), 1000, 1),
                    MarginKeys.text(m.meanChordM(), 1000, 1),
                    MarginKeys.text(m.liftSlopePerRad(), 1, 2),
                    MarginKeys.text(m.closedFormM(), 1000, 1)));
        }
        answer.table(HEADS, lines);
        for (Row row : rows) {
            String name = row.model() + " " + row.version() + ": ";
            row.margin().remarks().forEach(remark -> answer.line(name + remark));
            if (row.margin().missing() != null) {
                answer.line(name + row.margin().missing());
            }
        }
        if (rows.isEmpty()) {
            answer.line("No version has flown yet; an airframe sheet is answered without a flight.");
        }
    }
}
