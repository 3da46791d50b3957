package org.rafterbook.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.ColumnRule;
import org.rafterbook.exchange.ImportProblem;
import org.rafterbook.exchange.TextFiles;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Book;
import org.rafterbook.work.ImportChoices;
import org.rafterbook.work.ImportFile;
import org.rafterbook.work.ImportPlan;
import org.rafterbook.work.ImportSummary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes plain files in, all or none. */
@Command(name = "import", description = "Tables of flights, motors, venues and airframe sheets, all or none.")
final class ImportCommand implements Callable<Integer> {

    @Mixin
    private final Answer answer = new Answer();

    @Mixin
    private final LogbookChoice logbook = new LogbookChoice();

    @Option(names = "--mapping", paramLabel = "NAME|FILE", description = "A saved mapping of your own headings.")
    private @Nullable String mapping;

    @Option(
            names = "--column",
            paramLabel = "heading=field[:unit]",
            description = "What one of your own columns means; may be given several times.")
    private List<String> columns = new ArrayList<>();

    @Option(
            names = "--all",
            paramLabel = "field=value",
            description = "What holds for every row, such as model=Teasel.")
    private Map<String, String> fixed = new LinkedHashMap<>();

    @Option(names = "--winder", paramLabel = "RATIO", description = "Motor turns for one turn of the handle.")
    private @Nullable Double winder;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "The files.")
    private List<Path> files = new ArrayList<>();

    @Override
    public Integer call() {
        List<ImportFile> read = files.stream()
                .map(f -> new ImportFile(TextFiles.nameOf(f), TextFiles.read(f)))
                .toList();
        try (Book book = logbook.open(Mode.CREATE)) {
            ImportChoices choices = new ImportChoices(
                    mapping == null ? null : book.imports().mapping(mapping),
                    columns.stream().map(ColumnRule::parse).toList(),
                    fixed,
                    null,
                    winder,
                    null);
            ImportPlan plan = book.imports().plan(read, choices);
            List<ImportProblem> problems = plan.problems();
            if (!problems.isEmpty()) {
                String more = problems.size() == 1 ? "" : " (" + (problems.size() - 1) + " more like it)";
                throw UserError.badInput(problems.get(0) + more + " Nothing was taken in.");
            }
            ImportSummary summary = book.imports().carryOut(plan);
            if (answer.json()) {
                Map<String, Object> keys = new LinkedHashMap<>();
                keys.put("flights_added", summary.flights());
                keys.put("flights_already_there", summary.alreadyThere());
                keys.put("added", summary.added());
                keys.put("remarks", summary.remarks());
                answer.document(keys);
            } else {
                summary.lines().forEach(answer::line);
            }
        }
        return 0;
    }
}
