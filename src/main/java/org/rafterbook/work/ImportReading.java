package org.rafterbook.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.exchange.AirframeSheets;
import org.rafterbook.exchange.ColumnRule;
import org.rafterbook.exchange.CsvTable;
import org.rafterbook.exchange.CsvTables;
import org.rafterbook.exchange.FlightField;
import org.rafterbook.exchange.FlightTable;
import org.rafterbook.exchange.FlightTables;
import org.rafterbook.exchange.ImportProblem;
import org.rafterbook.exchange.Mapping;
import org.rafterbook.exchange.MappingProposal;
import org.rafterbook.exchange.SideTable;
import org.rafterbook.exchange.SideTables;
import org.rafterbook.units.UserError;

/** Reads the files of an import and finds out what each of them is. */
final class ImportReading {

    private final ImportChoices choices;
    private final List<Mapping> remembered;
    private final ImportPlan plan = new ImportPlan();
    private final Set<String> meant = new HashSet<>();
    private final Map<SideTable<?>, List<?>> places = new HashMap<>();

    private ImportReading(ImportChoices choices, List<Mapping> remembered) {
        this.choices = choices;
        this.remembered = remembered;
        places.put(SideTables.VENUES, plan.venues);
        places.put(SideTables.MARKS, plan.marks);
        places.put(SideTables.BATCHES, plan.batches);
        places.put(SideTables.MOTORS, plan.motors);
        places.put(SideTables.MODELS, plan.models);
        places.put(SideTables.SETTINGS, plan.settings);
        places.put(SideTables.SESSIONS, plan.sessions);
        places.put(SideTables.AIR, plan.air);
        places.put(SideTables.LIMITS, plan.limits);
        places.put(SideTables.WINDS, plan.winds);
        places.put(SideTables.EVENTS, plan.events);
        places.put(SideTables.READINGS, plan.readings);
    }

    /** Reads all files; what is wrong with any of them is in the plan's problems. */
    static ImportPlan read(List<ImportFile> files, ImportChoices choices, List<Mapping> remembered) {
        for (String field : choices.fixed().keySet()) {
            if (FlightField.of(field).isEmpty()) {
                throw UserError.badInput("'" + field + "' is no field of a flight such as model or venue.");
            }
        }
        ImportReading reading = new ImportReading(choices, remembered);
        for (ImportFile file : files) {
            reading.take(file);
        }
        for (ColumnRule rule : choices.columns()) {
            if (!reading.meant.contains(rule.heading().toLowerCase(Locale.ROOT))) {
                throw UserError.badInput("No table has a column '" + rule.heading() + "'.");
            }
        }
        return reading.plan;
    }

    private void take(ImportFile file) {
        try {
            if (file.isJson()) {
                AirframeSheet sheet = AirframeSheets.read(file.text(), file.name());
                plan.sheets.add(sheet);
                plan.read.put(file.name(), "airframe sheet of " + sheet.model());
            } else {
                CsvTable table = CsvTables.parse(file.text(), file.name());
                SideTable<?> form = SideTables.formOf(table).orElse(null);
                if (form == null) {
                    flights(table);
                } else {
                    side(form, table);
                }
            }
        } catch (UserError e) {
            if (e.kind() != UserError.Kind.BAD_INPUT) {
                throw e;
            }
            String prefix = file.name() + ": ";
            String sentence = e.sentence();
            plan.problems.add(
                    sentence.startsWith(file.name())
                            ? ImportProblem.spoken(sentence)
                            : ImportProblem.spoken(prefix + sentence));
        }
    }

    @SuppressWarnings("unchecked")
    private <R> void side(SideTable<R> form, CsvTable table) {
        List<ImportProblem> found = new ArrayList<>();
        List<R> rows = form.read(table, found);
        plan.problems.addAll(found);
        List<ImportPlan.Placed<R>> place = (List<ImportPlan.Placed<R>>) places.get(form);
        if (place == null) {
            throw new IllegalStateException("no place for " + form.stem());
        }
        rows.forEach(row -> place.add(new ImportPlan.Placed<>(table.file(), row)));
        plan.read.put(table.file(), rows.size() + " rows of " + form.stem().replace('_', ' '));
    }

    private void flights(CsvTable table) {
        Mapping mapping = mappingFor(table);
        List<ImportProblem> found = new ArrayList<>();
        FlightTable read = FlightTables.read(table, mapping, found);
        plan.problems.addAll(found);
        plan.flights.add(read);
        plan.mappings.add(mapping);
        plan.read.put(table.file(), read.rows().size() + " flights by " + mapping.name());
    }

    private Mapping mappingFor(CsvTable table) {
        Mapping chosen = choices.mapping();
        Mapping own = MappingProposal.own(table);
        Mapping base = chosen != null && (chosen.covers(table) || !own.covers(table))
                ? chosen
                : MappingProposal.certain(table, remembered).orElse(own);
        List<ColumnRule> rules = new ArrayList<>();
        for (ColumnRule rule : choices.columns()) {
            String heading = rule.heading().toLowerCase(Locale.ROOT);
            if (table.headings().stream()
                    .anyMatch(h -> h.toLowerCase(Locale.ROOT).equals(heading))) {
                meant.add(heading);
                rules.add(rule);
            }
        }
        base.columns().stream()
                .filter(c -> rules.stream().noneMatch(r -> r.heading().equalsIgnoreCase(c.heading())))
                .forEach(rules::add);
        if (chosen != null && base == chosen) {
            // Own headings need no rule in a mapping that explains the others.
            own.columns().stream()
                    .filter(c -> rules.stream().noneMatch(r -> r.heading().equalsIgnoreCase(c.heading())))
                    .forEach(rules::add);
        }
        Map<String, String> fixed = new HashMap<>(base.fixed());
        fixed.putAll(choices.fixed());
        return new Mapping(
                base.name(),
                rules,
                fixed,
                choices.mark() == null ? base.mark() : choices.mark(),
                choices.winderRatio() == null ? base.winderRatio() : choices.winderRatio(),
                choices.datePattern() == null ? base.datePattern() : choices.datePattern());
    }
}
