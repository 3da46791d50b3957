package org.rafterbook.work;

import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeEvent;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.review.Share;
import org.rafterbook.rules.ClassFinding;
import org.rafterbook.rules.ClassSheet;
import org.rafterbook.stability.PropellerTerm;
import org.rafterbook.stability.Weights;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.UserError;

/** What the Bench shows and does: a model with its rig strip, and a trim looked at before it is set. */
public final class BenchDesk {

    private final Logbook logbook;
    private final Riggings riggings;
    private final Margins margins;
    private final Airframes airframes;
    private final Parts parts;
    private final Weighings weighings;
    private final Builds builds;
    private final SettingList settings;
    private final ClassSheets classes;
    private final Comparison comparison;
    private final BenchReading reading;
    private final Map<String, Margins.Standing> standings = new HashMap<>();

    BenchDesk(Logbook logbook, Clock clock, Riggings riggings, Margins margins) {
        this.logbook = logbook;
        this.riggings = riggings;
        this.margins = margins;
        airframes = new Airframes(logbook, clock, riggings);
        parts = new Parts(logbook, airframes);
        weighings = new Weighings(logbook, clock);
        builds = new Builds(logbook, clock, riggings);
        settings = new SettingList(logbook);
        classes = new ClassSheets(logbook);
        comparison = new Comparison(this, riggings);
        reading = new BenchReading(logbook, this);
        logbook.onChange(this::forget);
    }

    public Airframes airframes() {
        return airframes;
    }

    public Parts parts() {
        return parts;
    }

    public Weighings weighings() {
        return weighings;
    }

    public Builds builds() {
        return builds;
    }

    public SettingList settings() {
        return settings;
    }

    public ClassSheets classes() {
        return classes;
    }

    public Comparison comparison() {
        return comparison;
    }

    /** One occasion of the strip: how the model was rigged, what changed, how many flights were flown and how they went. */
    public record Occasion(Rigged rigged, List<TrimChange> changes, int flights, Share upsets, boolean isReturn) {}

    /** A version that never flew, and how it differs from what the model is rigged as. */
    public record Sketch(Rigged rigged, List<TrimChange> changes) {}

    /**
     * What is known of the model beside its trim.
     *
     * @param flights of the whole model
     * @param shared masses that other models use too, with those models' names
     * @param findings how the version shown stands to the class sheet
     * @param weights its masses against the scale and the class's minimum
     * @param ownFormulaM neutral point of the version shown by the flyer's own formula, m; null where none was typed
     */
    public record Facts(
            int flights,
            List<Weighing> weighings,
            List<AirframeEvent> events,
            Map<String, List<String>> shared,
            @Nullable ClassSheet classSheet,
            List<ClassFinding> findings,
            Weights weights,
            @Nullable Double ownFormulaM) {}

    /**
     * A model on the bench.
     *
     * @param now as it is rigged
     * @param shown the version looked at, which may be an earlier one or a sketch
     * @param flown flights of the version shown
     * @param strip newest first
     * @param good the version last marked as well-behaved, null where there is none
     */
    public record Bench(
            List<Model> models,
            Rigged now,
            Looked shown,
            int flown,
            List<Occasion> strip,
            List<Sketch> sketches,
            @Nullable Looked good,
            Facts facts,
            Surroundings in) {

        /** True where the version shown is the one the model is rigged as. */
        public boolean showsNow() {
            return shown.version().version().id().equals(now.version().id());
        }
    }

    /** The model asked for, else the one prepared in the Hall, else the first, showing the version asked for, or the one of now; empty without any model. */
    public Optional<Bench> load(@Nullable String modelId, @Nullable String versionId, DisplayUnits units) {
        List<Model> models = riggings.models();
        if (models.isEmpty()) {
            return Optional.empty();
        }
        String wanted = modelId == null
                ? logbook.read(r -> Optional.ofNullable(HallDesk.chosenModel(r, List.of())))
                        .orElse(null)
                : modelId;
        Model model =
                models.stream().filter(m -> m.id().equals(wanted)).findFirst().orElse(models.get(0));
        Rigged now = riggings.now(model.id());
        List<Rigged> strip = riggings.strip(model.id());
        List<Rigged> sketches = riggings.sketches(model.id());
        Rigged shown = Stream.concat(strip.stream(), sketches.stream())
                .filter(r -> r.version().id().equals(versionId))
                .findFirst()
                .orElse(now);
        Rigged good = strip.stream()
                .filter(r -> r.version().markedGood())
                .reduce((a, b) -> b)
                .orElse(null);
        List<FlightLine> lines = logbook.read(r -> r.flights().ofModel(model.id()));
        Surroundings in = logbook.read(r -> Surroundings.of(r, model.id()));
        return Optional.of(new Bench(
                models,
                now,
                look(shown, in),
                (int) lines.stream()
                        .map(FlightLine::version)
                        .filter(v -> v != null && v.id().equals(shown.version().id()))
                        .count(),
                reading.occasions(strip, lines),
                sketches.stream()
                        .map(s -> new Sketch(s, TrimChange.between(s.settings(), now.values(), s.values())))
                        .toList(),
                good == null ? null : look(good, in),
                reading.facts(model, shown, lines.size(), units),
                in));
    }

    /** The flights of a version in flying order. */
    public List<FlightLine> flightsOf(String versionId) {
        return logbook.read(r -> {
            String model = r.get(Version.class, versionId).modelId();
            return r.flights().ofModel(model).stream()
                    .filter(l ->
                            l.version() != null && Objects.equals(l.version().id(), versionId))
                    .toList();
        });
    }

    /** A version as it is. */
    public Looked look(Rigged version, Surroundings in) {
        return looked(
                version, version.geometry(), margins.ofVersion(version.version().id(), null, 1), in);
    }

    /** A version with other settings, which are only looked at. */
    public Looked look(Rigged version, Map<String, Setting> changed, Surroundings in) {
        Airframe geometry = version.geometry();
        if (geometry == null) {
            return look(version, in);
        }
        Map<String, Setting> values = new HashMap<>(version.values());
        values.putAll(changed);
        return look(version, VersionBook.applied(version.settings(), values, geometry), in);
    }

    /** A version with another airframe in the place of its own. */
    public Looked look(Rigged version, Airframe edited, Surroundings in) {
        return looked(version, edited, margins.edited(standing(version.version().id()), edited), in);
    }

    /** Read anew after every entry. */
    private synchronized Margins.Standing standing(String versionId) {
        return standings.computeIfAbsent(versionId, margins::standing);
    }

    private synchronized void forget() {
        standings.clear();
    }

    private Looked looked(Rigged version, @Nullable Airframe airframe, MarginAnswer margin, Surroundings in) {
        return new Looked(version, airframe, margin, airframe == null ? null : margins.trim(airframe, margin, in));
    }

    /** Keeps what the flyer's own formula gives for a version, m aft of the origin; null forgets it. */
    public void ownFormula(String versionId, @Nullable Double neutralPointM) {
        logbook.change(
                "own formula", w -> w.update(w.get(Version.class, versionId).withOwnNeutralPoint(neutralPointM)));
    }

    /** Keeps the circle in which the figures are computed. */
    public void circle(double radiusM) {
        if (!(radiusM > 0)) {
            throw UserError.badInput("The radius of a circle is above zero.");
        }
        logbook.change("circle", w -> Surroundings.keep(w, radiusM));
    }

    /** Keeps the propeller that enters the model's figures as a fin; null leaves it out. */
    public void propeller(String modelId, @Nullable PropellerTerm propeller) {
        logbook.change("propeller", w -> Surroundings.keep(w, modelId, propeller));
    }

    /** Marks a version as well-behaved, or takes the mark away. */
    public void mark(String versionId, boolean good) {
        logbook.change(
                good ? "marked well-behaved" : "mark taken away",
                w -> w.update(w.get(Version.class, versionId).withMark(good)));
    }

    /**
     * Moves the zero: the flyer knows at which margin a version flew, and the neutral point of the model is shifted to fit.
     *
     * @param shiftM of the neutral point, aft positive; null takes the shift away
     */
    public void zero(String versionId, @Nullable Double shiftM, @Nullable String reason) {
        logbook.change(
                shiftM == null ? "zero taken back" : "zero moved",
                w -> w.update(w.get(Version.class, versionId).withZero(shiftM, reason)));
    }
}
