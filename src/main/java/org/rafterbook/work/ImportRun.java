package org.rafterbook.work;

import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Version;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.exchange.FlightTable;
import org.rafterbook.exchange.SideRows.ModelRow;
import org.rafterbook.exchange.SideRows.SettingRow;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Flight;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Writer;

/** Writes one import within one entry. */
final class ImportRun {

    private final Writer w;
    private final Clock clock;
    private final Riggings riggings;
    private final Sheets sheets;
    private final ImportPlan plan;
    private final ImportTally tally;
    private final ImportBasics basics;
    private final ImportSessions sessions;
    private final Map<String, Model> models = new HashMap<>();

    ImportRun(Writer writer, Clock clock, Riggings riggings, Sheets sheets, ImportPlan plan, Progress progress) {
        this.w = writer;
        this.clock = clock;
        this.riggings = riggings;
        this.sheets = sheets;
        this.plan = plan;
        this.tally = new ImportTally(progress);
        this.basics = new ImportBasics(writer, tally);
        this.sessions = new ImportSessions(writer, tally, basics, clock.getZone());
        w.all(Model.class).forEach(m -> models.put(ImportBasics.key(m.name()), m));
    }

    /** Writes all; the summary's problems say what could not be taken, and then the entry must be given up. */
    ImportSummary run() {
        basics.take(plan);
        for (FlightTable table : plan.flights) {
            for (FlightRow row : table.rows()) {
                basics.venue(row.venue(), row.ceilingM());
            }
        }
        sessions.takeZones(plan);
        ImportFlights flights = new ImportFlights(w, tally, sessions);
        flights.place(plan.flights);
        sessions.take(plan);
        models(flights.fresh());
        new ImportWinds(w, tally, basics, sessions).take(plan, flights);
        List<ImportedFlight> fresh = flights.fresh();
        tally.doubts(new ImportDoubts(w, basics).of(fresh));
        for (ImportedFlight flight : fresh) {
            write(flight);
            tally.step(tally.flights, fresh.size(), "flights written");
        }
        if (tally.problems().isEmpty()) {
            new ImportEvents(w, tally, basics, sessions).take(plan);
        }
        return tally.summary();
    }

    private void models(List<ImportedFlight> fresh) {
        Map<String, List<ImportedFlight>> flights = new LinkedHashMap<>();
        for (ImportedFlight flight : fresh) {
            if (!flight.row.model().isEmpty()) {
                flights.computeIfAbsent(ImportBasics.key(flight.row.model()), m -> new ArrayList<>())
                        .add(flight);
            }
        }
        Map<String, List<AirframeSheet>> sheetsOf = new LinkedHashMap<>();
        plan.sheets.forEach(s -> sheetsOf.computeIfAbsent(ImportBasics.key(s.model()), m -> new ArrayList<>())
                .add(s));
        Map<String, ModelRow> rows = new LinkedHashMap<>();
        plan.models.forEach(m -> rows.put(ImportBasics.key(m.row().model()), m.row()));
        flights.forEach((name, ofModel) -> fly(
                model(ofModel.get(0).row.model(), rows.get(name)), ofModel, sheetsOf.getOrDefault(name, List.of())));
        sheetsOf.forEach((name, ofModel) -> {
            if (!flights.containsKey(name)) {
                sheetsOnly(ofModel, rows.get(name));
            }
        });
        rows.forEach((name, row) -> {
            Model known = models.get(name);
            if (known == null) {
                tally.add("models");
                known = riggings.addModel(w, row.model());
            }
            describe(known, row);
        });
    }

    private Model model(String name, @Nullable ModelRow row) {
        Model known = models.get(ImportBasics.key(name));
        if (known != null) {
            return known;
        }
        tally.add("models");
        String letter = row == null ? null : row.letter();
        Model made = w.insert(new Model(
                Logbook.newId(),
                name,
                letter != null && letter.length() == 1 ? letter : Riggings.letterOf(name),
                1,
                null,
                null,
                null,
                null));
        models.put(ImportBasics.key(name), made);
        return made;
    }

    /** What models.csv says beyond names and flights, where the logbook has nothing yet. */
    private void describe(Model known, ModelRow row) {
        Model model = w.get(Model.class, known.id());
        Integer build = row.build();
        boolean wished = model.wishedLow() == null && model.wishedHigh() == null;
        w.update(new Model(
                model.id(),
                model.name(),
                model.letter(),
                build == null ? model.build() : Math.max(build, model.build()),
                wished ? row.wishedLow() : model.wishedLow(),
                wished ? row.wishedHigh() : model.wishedHigh(),
                model.classSheetId(),
                basics.keep("model " + model.name() + ", notes", model.notes(), row.notes())));
    }

    private void fly(Model model, List<ImportedFlight> fresh, List<AirframeSheet> ofModel) {
        ImportSettings settings = new ImportSettings(w, model, details(model));
        ofModel.forEach(s -> settings.ofSheet(s.airframe()));
        settings.ofDetails(tally);
        for (FlightTable table : plan.flights) {
            for (FlightTable.SettingColumn column : table.settings()) {
                boolean used = fresh.stream()
                        .anyMatch(f -> f.table == table && f.row.settings().containsKey(column.name()));
                if (used) {
                    settings.byName(column.name(), column.unit(), ImportSettings.isNumeric(column, plan.flights));
                }
            }
        }
        List<FlyingOrder.Step> steps = new ArrayList<>();
        Map<String, ImportedFlight> byId = new HashMap<>();
        fresh.forEach(f -> byId.put(f.id, f));
        for (FlightLine line : w.flights().ofModel(model.id())) {
            steps.add(new FlyingOrder.Step(line, null));
        }
        fresh.forEach(f -> steps.add(new FlyingOrder.Step(null, f)));
        steps.sort(FlyingOrder.OF_STEPS);
        new ImportModel(w, clock, tally, model, settings, sheets, ofModel).rig(steps);
    }

    private Map<String, ImportPlan.Placed<SettingRow>> details(Model model) {
        Map<String, ImportPlan.Placed<SettingRow>> details = new LinkedHashMap<>();
        for (ImportPlan.Placed<SettingRow> placed : plan.settings) {
            if (ImportBasics.key(placed.row().model()).equals(ImportBasics.key(model.name()))) {
                details.put(ImportBasics.key(placed.row().setting()), placed);
            }
        }
        return details;
    }

    /** Sheets of a model that this import brings no new flight of. */
    private void sheetsOnly(List<AirframeSheet> ofModel, @Nullable ModelRow row) {
        for (AirframeSheet sheet : ofModel) {
            Model known = models.get(ImportBasics.key(sheet.model()));
            if (known != null && has(known, sheet)) {
                continue;
            }
            if (known == null) {
                model(sheet.model(), row);
                known = Objects.requireNonNull(models.get(ImportBasics.key(sheet.model())));
                riggings.set(w, known, Map.of(), null, "as built", null);
            }
            ImportSettings settings = new ImportSettings(w, known, details(known));
            settings.ofSheet(sheet.airframe());
            settings.ofDetails(tally);
            sheets.take(w, sheet);
            tally.add("airframe sheets");
        }
    }

    private boolean has(Model model, AirframeSheet sheet) {
        String text = Geometry.write("", "", ImportModel.bare(sheet));
        return w.where(Version.class, "modelId", model.id()).stream()
                .map(Geometry::of)
                .filter(Objects::nonNull)
                .anyMatch(g -> Geometry.write("", "", g).equals(text));
    }

    private void write(ImportedFlight f) {
        FlightRow row = f.row;
        FlightRow.LeftOut out = row.leftOut();
        sessions.ceiling(f.session, basics.venue(row.venue(), null), row.ceilingM());
        sessions.air(f.session, f.launchedAt, row.air());
        Map<String, String> asTyped = new HashMap<>();
        typed(row, asTyped, "duration_s", "durationS");
        typed(row, asTyped, "turns_left", "turnsLeft");
        typed(row, asTyped, "peak_height_m", "peakLowM");
        DurationSource source =
                row.durationS() == null ? null : Objects.requireNonNullElse(row.durationSource(), DurationSource.TYPED);
        w.insert(new Flight(
                f.id,
                f.session.id(),
                f.riggingId,
                f.windId,
                f.ordinal,
                row.wind().launchNo(),
                f.launchedAt,
                ImportSessions.instant(f.session, row.landedAt()),
                row.durationS(),
                source,
                row.clockDoubtS(),
                row.ending(),
                row.cutShort(),
                row.peakLowM(),
                row.peakHighM(),
                row.turnsLeft(),
                f.fraction,
                row.recovered(),
                row.stalls(),
                out == null ? null : out.why(),
                out == null ? null : out.by(),
                out == null ? null : ImportSessions.instant(f.session, out.at()),
                out == null ? null : out.beforeTime(),
                row.notes(),
                asTyped));
        tally.flights++;
    }

    static void typed(FlightRow row, Map<String, String> asTyped, String heading, String component) {
        String text = row.asTyped().get(heading);
        if (text != null) {
            asTyped.put(component, text);
        }
    }
}
