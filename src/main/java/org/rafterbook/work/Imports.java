package org.rafterbook.work;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Version;
import org.rafterbook.exchange.ImportProblem;
import org.rafterbook.exchange.Mapping;
import org.rafterbook.exchange.MappingJson;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.UserError;

/** Takes plain files into the logbook: read, looked over, then kept as one entry, all or none. */
public final class Imports {

    private static final String NAMES = "import.mappings";
    private static final String MAPPING = "import.mapping.";

    /** Gives an entry up on purpose: what it would have written has been counted. */
    private static final class Rehearsed extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient ImportSummary summary;

        Rehearsed(ImportSummary summary) {
            super(null, null, false, false);
            this.summary = summary;
        }
    }

    private final Logbook logbook;
    private final Clock clock;
    private final Riggings riggings;
    private final Sheets sheets;

    Imports(Logbook logbook, Clock clock, Riggings riggings, Sheets sheets) {
        this.logbook = logbook;
        this.clock = clock;
        this.riggings = riggings;
        this.sheets = sheets;
    }

    /** What there is to say before these files are read: the tables' headings with what each seems to be. */
    public ImportDraft draft(List<ImportFile> files) {
        return logbook.read(r -> ImportDraft.of(files, mappings(r), airframes(r)));
    }

    /** The newest geometry of each model. */
    private static List<Airframe> airframes(Reader reader) {
        Map<String, Version> newest = new HashMap<>();
        for (Version version : reader.all(Version.class)) {
            if (version.geometry() != null) {
                newest.put(version.modelId(), version);
            }
        }
        return newest.values().stream()
                .map(version -> Objects.requireNonNull(Geometry.of(version)))
                .toList();
    }

    /** Reads files without writing anything; what is wrong with them is in the plan. */
    public ImportPlan plan(List<ImportFile> files, ImportChoices choices) {
        return ImportReading.read(files, choices, mappings());
    }

    /** Reads files for a logbook that is still to be made: it remembers no mapping. */
    public static ImportPlan planForNew(List<ImportFile> files, ImportChoices choices) {
        return ImportReading.read(files, choices, List.of());
    }

    /** What keeping the plan would add, found out by doing it and taking it back at once. */
    public ImportSummary preview(ImportPlan plan) {
        return preview(plan, Progress.none());
    }

    /** The same, telling how far it is. */
    public ImportSummary preview(ImportPlan plan, Progress progress) {
        if (!plan.problems().isEmpty()) {
            return refused(plan.problems());
        }
        try {
            return logbook.enter(plan.why(), w -> {
                throw new Rehearsed(new ImportRun(w, clock, riggings, sheets, plan, progress).run());
            });
        } catch (Rehearsed rehearsed) {
            return rehearsed.summary;
        }
    }

    /**
     * Keeps the plan as one entry, which one undo takes back.
     *
     * @throws UserError of bad input where anything is wrong; nothing is kept then
     */
    public ImportSummary carryOut(ImportPlan plan) {
        return carryOut(plan, "", Progress.none());
    }

    /**
     * The same, telling how far it is; where it is cancelled nothing is kept.
     *
     * @param keepAs name under which the same entry remembers what the columns are; blank for none
     */
    public ImportSummary carryOut(ImportPlan plan, String keepAs, Progress progress) {
        refuse(plan.problems());
        return logbook.enter(plan.why(), w -> {
            ImportSummary summary = new ImportRun(w, clock, riggings, sheets, plan, progress).run();
            refuse(summary.problems());
            if (!keepAs.isBlank()) {
                plan.mapping(keepAs.strip()).ifPresent(mapping -> remember(w, mapping));
            }
            return summary;
        });
    }

    private static ImportSummary refused(List<ImportProblem> problems) {
        return new ImportSummary(0, 0, Map.of(), List.of(), problems, List.of());
    }

    /** Refuses what has problems: the first of them in one sentence, and how many more there are. */
    public static void refuse(List<ImportProblem> problems) {
        if (!problems.isEmpty()) {
            String more = problems.size() == 1 ? "" : " (" + (problems.size() - 1) + " more)";
            throw UserError.badInput(problems.get(0) + more);
        }
    }

    /** The remembered mappings, the newest first. */
    public List<Mapping> mappings() {
        return logbook.read(Imports::mappings);
    }

    private static List<Mapping> mappings(Reader reader) {
        List<Mapping> mappings = new ArrayList<>();
        for (String name : names(reader)) {
            String json = reader.preference(MAPPING + name);
            if (json != null) {
                mappings.add(MappingJson.read(json, "the mapping '" + name + "'"));
            }
        }
        return mappings;
    }

    private static List<String> names(Reader reader) {
        String names = reader.preference(NAMES);
        return names == null
                ? List.of()
                : names.lines().filter(n -> !n.isEmpty()).toList();
    }

    /** Remembers a mapping by its name, in the place of one of the same name. */
    public void remember(Mapping mapping) {
        logbook.change("mapping " + mapping.name().strip(), w -> remember(w, mapping));
    }

    private static void remember(Writer writer, Mapping mapping) {
        String name = mapping.name().strip();
        if (name.isEmpty() || name.lines().count() > 1) {
            throw UserError.badInput("A mapping needs a name on one line.");
        }
        List<String> all = new ArrayList<>(names(writer));
        all.removeIf(n -> n.equalsIgnoreCase(name));
        all.add(0, name);
        writer.preference(NAMES, String.join("\n", all));
        writer.preference(MAPPING + name, MappingJson.write(mapping));
    }

    /**
     * The mapping a command names: one remembered by that name, else one in a file.
     *
     * @throws UserError of bad input where there is neither
     */
    public Mapping mapping(String nameOrFile) {
        Optional<Mapping> remembered = mappings().stream()
                .filter(m -> m.name().equalsIgnoreCase(nameOrFile.strip()))
                .findFirst();
        if (remembered.isPresent()) {
            return remembered.get();
        }
        if (Files.isRegularFile(Path.of(nameOrFile))) {
            return mappingInFile(nameOrFile);
        }
        throw UserError.badInput("There is no mapping named '" + nameOrFile + "' and no such file.");
    }

    /** The mapping in a file. */
    public static Mapping mappingInFile(String file) {
        return MappingJson.read(Path.of(file));
    }
}
