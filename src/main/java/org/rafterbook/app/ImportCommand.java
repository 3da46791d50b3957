package org.rafterbook.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.ColumnRule;
import org.rafterbook.exchange.Mapping;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.DecimalMark;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Book;
import org.rafterbook.work.ImportChoices;
import org.rafterbook.work.ImportDoubt;
import org.rafterbook.work.ImportFile;
import org.rafterbook.work.ImportPlan;
import org.rafterbook.work.ImportSummary;
import org.rafterbook.work.Imports;
import org.rafterbook.work.Progress;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes plain files in, all or none. */
@Command(name = "import", description = "Tables of flights, motors, venues and airframe sheets, all or none.")
final class ImportCommand implements Callable<Integer> {

    private static final int MOST_DOUBTS = 10;

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

    @Option(names = "--dates", paramLabel = "PATTERN", description = "How days are written, such as d.M.yyyy.")
    private @Nullable String dates;

    @Option(
            names = "--decimal",
            paramLabel = "MARK",
            description = "Decimal mark: point or comma; found out if absent.")
    private @Nullable String decimal;

    @Option(
            names = "--keep-mapping",
            paramLabel = "NAME",
            description = "Remember what these columns mean under a name; tables with the same headings need no more.")
    private @Nullable String keep;

    @Option(names = "--preview", description = "Only say what would be added.")
    private boolean preview;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "The files.")
    private List<Path> files = new ArrayList<>();

    @Override
    public Integer call() {
        List<ImportFile> read = files.stream().map(ImportFile::of).toList();
        boolean makes = logbook.isToBeMade();
        if (makes) {
            // A refused import changes nothing: no logbook is made for files that cannot be taken.
            Imports.refuse(
                    Imports.planForNew(read, choices(Imports::mappingInFile)).problems());
        }
        try (Book book = logbook.open(Mode.CREATE)) {
            say(book, take(book, read));
        } catch (UserError e) {
            if (makes) {
                logbook.forget();
            }
            throw e;
        }
        if (makes && preview) {
            logbook.forget();
        }
        return 0;
    }

    private ImportSummary take(Book book, List<ImportFile> read) {
        ImportPlan plan = book.imports().plan(read, choices(book.imports()::mapping));
        if (preview) {
            ImportSummary summary = book.imports().preview(plan);
            Imports.refuse(summary.problems());
            return summary;
        }
        return book.imports().carryOut(plan, keep == null ? "" : keep, Progress.none());
    }

    private ImportChoices choices(Function<String, Mapping> mappings) {
        return new ImportChoices(
                mapping == null ? null : mappings.apply(mapping),
                columns.stream().map(ColumnRule::parse).toList(),
                fixed,
                decimal == null ? null : mark(decimal),
                winder,
                dates);
    }

    private static DecimalMark mark(String word) {
        return switch (word) {
            case "point" -> DecimalMark.POINT;
            case "comma" -> DecimalMark.COMMA;
            default -> throw UserError.badInput("The decimal mark is point or comma, not '" + word + "'.");
        };
    }

    private void say(Book book, ImportSummary summary) {
        if (answer.json()) {
            Map<String, Object> keys = new LinkedHashMap<>();
            keys.put("logbook", book.file().toString());
            keys.put("kept", !preview);
            keys.put("flights_added", summary.flights());
            keys.put("flights_already_there", summary.alreadyThere());
            keys.put("added", summary.added());
            keys.put("remarks", summary.remarks());
            keys.put(
                    "doubts",
                    summary.doubts().stream().map(ImportDoubt::toString).toList());
            answer.document(keys);
        } else {
            summary.lines().forEach(answer::line);
            summary.doubts().stream().limit(MOST_DOUBTS).forEach(doubt -> answer.line("Look at " + doubt));
            if (summary.doubts().size() > MOST_DOUBTS) {
                answer.line("Look at " + (summary.doubts().size() - MOST_DOUBTS) + " more like these.");
            }
            if (preview) {
                answer.line("This is a preview: nothing was kept.");
            }
        }
    }
}
