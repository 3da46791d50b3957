package org.rafterbook.work;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.Version;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.exchange.FlightTable;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.Parsed;

/**
 * One model's flights of an import: each gets its version, carried over from the flight before it where a cell is empty,
 * and the riggings are laid along all its flights, old and new.
 */
final class ImportModel {

    /** What a version is made of; two flights alike in it share their version. */
    private record State(
            int build,
            Map<String, Setting> values,
            @Nullable Integer geometry) {}

    private final Writer w;
    private final Clock clock;
    private final ImportTally tally;
    private final ImportSettings settings;
    private final Sheets sheets;
    private final Map<String, AirframeSheet> named = new LinkedHashMap<>();
    private final @Nullable AirframeSheet given;
    private final List<Airframe> geometries = new ArrayList<>();
    private final Map<State, Version> versions = new HashMap<>();
    private Model model;

    ImportModel(
            Writer writer,
            Clock clock,
            ImportTally tally,
            Model model,
            ImportSettings settings,
            Sheets sheets,
            List<AirframeSheet> ofModel) {
        this.w = writer;
        this.clock = clock;
        this.tally = tally;
        this.model = model;
        this.settings = settings;
        this.sheets = sheets;
        ofModel.forEach(s -> named.putIfAbsent(s.version(), s));
        this.given = ofModel.isEmpty() ? null : ofModel.get(0);
    }

    /** Gives each new flight its rigging; {@code flights} are all of the model's in flying order. */
    void rig(List<FlyingOrder.Step> flights) {
        if (given != null) {
            takeUnderVersions();
        }
        VersionBook book = new VersionBook(w, model, clock);
        int before = w.where(Version.class, "modelId", model.id()).size();
        boolean byName = flights.stream().anyMatch(s -> s.imported() != null && isNamed(s.imported()));
        if (byName) {
            sketches(book, flights);
        }
        List<ImportStrip.Flown> flown = new ArrayList<>();
        boolean flew = flights.stream().anyMatch(s -> s.line() != null);
        State state = flew ? beforeFirst(flights) : start();
        for (FlyingOrder.Step step : flights) {
            FlightLine line = step.line();
            tally.step(flown.size(), flights.size(), "flights of " + model.name() + " given their version");
            if (line != null) {
                Version version = Objects.requireNonNull(line.version());
                state = new State(version.build(), book.valuesOf(version), base(version, state));
                Rigging rigging = Objects.requireNonNull(line.rigging());
                flown.add(new ImportStrip.Flown(
                        rigging, version.id(), line.flight().launchedAt(), null));
            } else {
                ImportedFlight f = Objects.requireNonNull(step.imported());
                state = next(state, f);
                Version version = version(book, state, f);
                state = new State(state.build(), book.valuesOf(version), state.geometry());
                flown.add(new ImportStrip.Flown(null, version.id(), f.launchedAt, f.row.changeReason()));
            }
        }
        ImportLaying.lay(w, tally, model.id(), flights, flown, !flew);
        tally.add(
                "versions",
                Math.max(0, w.where(Version.class, "modelId", model.id()).size() - before));
        keepBalances(book);
        raiseBuild(state.build());
    }

    private boolean isNamed(ImportedFlight flight) {
        return flight.row.version() != null && named.containsKey(flight.row.version());
    }

    /** A model that flew without geometry gets the sheet's under all its versions. */
    private void takeUnderVersions() {
        List<Version> all = w.where(Version.class, "modelId", model.id());
        if (!all.isEmpty() && all.stream().allMatch(v -> v.geometry() == null)) {
            Sheets.underAllVersions(w, model, bare(Objects.requireNonNull(given)));
        }
    }

    static Airframe bare(AirframeSheet sheet) {
        Airframe a = sheet.airframe();
        return new Airframe(a.surfaces(), a.masses(), null, a.motor());
    }

    private int index(Airframe geometry) {
        int known = geometries.indexOf(geometry);
        if (known < 0) {
            geometries.add(geometry);
            return geometries.size() - 1;
        }
        return known;
    }

    /** Before the first flight: as the sheet says, else as the model is rigged now. */
    private State start() {
        List<Rigging> all = Riggings.ordered(w, model.id());
        if (given != null) {
            return new State(model.build(), valuesOf(bare(given)), index(bare(given)));
        }
        if (all.isEmpty()) {
            return new State(model.build(), Map.of(), null);
        }
        Rigged first = Riggings.now(w, model.id());
        Airframe geometry = first.geometry();
        return new State(
                first.version().build(), first.values(), geometry == null ? null : Integer.valueOf(index(geometry)));
    }

    /** Before the first flight of a model that has flown: its geometry as it was then, nothing else. */
    private State beforeFirst(List<FlyingOrder.Step> flights) {
        Version first = flights.stream()
                .map(FlyingOrder.Step::line)
                .filter(Objects::nonNull)
                .map(line -> Objects.requireNonNull(line.version()))
                .findFirst()
                .orElseThrow();
        Airframe geometry = given == null ? Geometry.of(first) : bare(given);
        return geometry == null
                ? new State(first.build(), Map.of(), null)
                : new State(first.build(), valuesOf(geometry), index(geometry));
    }

    private Map<String, Setting> valuesOf(Airframe geometry) {
        Map<String, Setting> values = new HashMap<>();
        for (SettingDef def : settings.defs()) {
            SheetPath path = def.path() == null ? null : SheetPath.parse(def.path());
            if (path != null && path.isIn(geometry)) {
                values.put(def.id(), Setting.of(path.read(geometry)));
            }
        }
        return values;
    }

    /** A sheet of this import stands for what flies from here on; else the version's own geometry goes on. */
    private @Nullable Integer base(Version version, State state) {
        if (given != null) {
            return state.geometry();
        }
        Airframe geometry = Geometry.of(version);
        return geometry == null ? null : Integer.valueOf(index(geometry));
    }

    private State next(State before, ImportedFlight f) {
        Map<String, Setting> values = new HashMap<>(before.values());
        Integer geometry = before.geometry();
        if (isNamed(f)) {
            Airframe named = bare(Objects.requireNonNull(this.named.get(f.row.version())));
            geometry = index(named);
            values.putAll(valuesOf(named));
        }
        for (FlightTable.SettingColumn column : f.table.settings()) {
            String text = f.row.settings().get(column.name());
            if (text == null) {
                continue;
            }
            SettingDef def = settings.byName(column.name(), column.unit(), true);
            Parsed<ImportSettings.Said> said = settings.read(def, column, text, f.table.mark());
            if (said instanceof Parsed.Accepted<ImportSettings.Said> accepted) {
                Setting value = accepted.value().value();
                if (value == null) {
                    values.remove(def.id());
                } else {
                    values.put(def.id(), value);
                }
            } else {
                tally.problem(
                        f.table.file(),
                        f.row.line(),
                        column.heading(),
                        said.refusal().orElse("cannot be read."));
            }
        }
        Integer build = f.row.build();
        return new State(build == null ? before.build() : build, values, geometry);
    }

    private Version version(VersionBook book, State state, ImportedFlight f) {
        return versions.computeIfAbsent(
                state,
                s -> book.findOrMake(
                        w,
                        s.build(),
                        s.values(),
                        s.geometry() == null ? null : geometries.get(s.geometry()),
                        false,
                        number(f.row.version())));
    }

    /** The number in a version's name of this model, such as 3 of t3. */
    private @Nullable Integer number(@Nullable String name) {
        if (name == null || !name.matches(model.letter() + "[1-9]\\d{0,6}")) {
            return null;
        }
        return Integer.valueOf(name.substring(1));
    }

    /** Sheets of an export that none of its flights flew are sketches. */
    private void sketches(VersionBook book, List<FlyingOrder.Step> flights) {
        for (AirframeSheet sheet : named.values()) {
            boolean flown = flights.stream()
                    .anyMatch(s -> s.imported() != null
                            && sheet.version().equals(s.imported().row.version()));
            if (!flown) {
                Airframe geometry = bare(sheet);
                book.findOrMake(w, model.build(), valuesOf(geometry), geometry, true, number(sheet.version()));
            }
        }
    }

    /** A balance on a sheet is a measurement of the version it describes. */
    private void keepBalances(VersionBook book) {
        for (AirframeSheet sheet : named.values()) {
            if (sheet.airframe().measuredBalanceM() != null) {
                Airframe geometry = bare(sheet);
                Version described = versions.entrySet().stream()
                        .filter(e -> describes(e.getKey(), geometry))
                        .map(Map.Entry::getValue)
                        .min(Comparator.comparingInt(Version::number))
                        .orElseGet(() -> book.findOrMake(
                                w, model.build(), valuesOf(geometry), geometry, true, number(sheet.version())));
                sheets.keepBalance(w, model, described, sheet.airframe());
            }
        }
    }

    private boolean describes(State state, Airframe geometry) {
        Integer index = state.geometry();
        return index != null
                && geometries.get(index).equals(geometry)
                && valuesOf(geometry).entrySet().stream().allMatch(e -> {
                    Setting value = state.values().get(e.getKey());
                    return value != null && value.same(e.getValue(), 0);
                });
    }

    private void raiseBuild(int build) {
        if (build > model.build()) {
            model = w.update(new Model(
                    model.id(),
                    model.name(),
                    model.letter(),
                    build,
                    model.wishedLow(),
                    model.wishedHigh(),
                    model.classSheetId(),
                    model.notes()));
        }
    }
}
