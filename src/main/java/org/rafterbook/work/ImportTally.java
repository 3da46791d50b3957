package org.rafterbook.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.ImportProblem;

/** Counts what an import adds, gathers remarks and problems as it goes, and tells how far it is. */
final class ImportTally {

    private final Progress progress;
    private final Map<String, Integer> added = new LinkedHashMap<>();
    private final Set<String> remarks = new LinkedHashSet<>();
    private final List<ImportProblem> problems = new ArrayList<>();
    private List<ImportDoubt> doubts = List.of();
    int flights;
    int alreadyThere;

    ImportTally(Progress progress) {
        this.progress = progress;
    }

    /** Tells how far it is; ends the import where it was cancelled. */
    void step(int done, int total, String of) {
        progress.step(done, total, of);
    }

    void add(String what) {
        add(what, 1);
    }

    void add(String what, int n) {
        added.merge(what, n, Integer::sum);
    }

    void remark(String sentence) {
        remarks.add(sentence);
    }

    void problem(String file, int line, @Nullable String column, String sentence) {
        problems.add(new ImportProblem(file, line, column, sentence));
    }

    void doubts(List<ImportDoubt> found) {
        doubts = found;
    }

    List<ImportProblem> problems() {
        return problems;
    }

    ImportSummary summary() {
        return new ImportSummary(
                flights, alreadyThere, new LinkedHashMap<>(added), List.copyOf(remarks), problems, doubts);
    }
}
