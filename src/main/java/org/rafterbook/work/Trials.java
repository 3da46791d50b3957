package org.rafterbook.work;

import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Trial;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.review.Level;
import org.rafterbook.review.Outcome;
import org.rafterbook.review.TrialPlan;
import org.rafterbook.review.TrialProposal;
import org.rafterbook.review.TrialState;
import org.rafterbook.review.TrialState.TrialFlight;
import org.rafterbook.units.UserError;

/** Trials: opened for two values of a setting, flown slot by slot in the order drawn, judged. One is open a model. */
public final class Trials {

    private final Logbook logbook;
    private final Riggings riggings;
    private final Clock clock;
    private final LongSupplier seeds;

    Trials(Logbook logbook, Riggings riggings, Clock clock, LongSupplier seeds) {
        this.logbook = logbook;
        this.riggings = riggings;
        this.clock = clock;
        this.seeds = seeds;
    }

    /** Opens what was proposed. */
    public Trial open(String modelId, TrialProposal proposal) {
        return logbook.enter("trial", w -> {
            SettingDef def = w.get(SettingDef.class, proposal.setting().key());
            return open(w, modelId, def, si(w, def, proposal.from()), si(w, def, proposal.to()), proposal.perSide());
        });
    }

    /** Opens a trial of two values of the flyer's own choice. */
    public Trial open(String modelId, String settingId, Setting a, Setting b, int perSide) {
        return logbook.enter("trial", w -> open(w, modelId, w.get(SettingDef.class, settingId), a, b, perSide));
    }

    private Trial open(Writer writer, String modelId, SettingDef def, Setting wishedA, Setting wishedB, int perSide) {
        Rigged now = Riggings.now(writer, modelId);
        Trial other = openOf(writer, modelId);
        TrialPlan.requireNoneOpen(now.model().name(), other == null ? null : plan(writer, other));
        writer.preference(HallDesk.MODEL, modelId); // the Hall goes on with the model on trial
        // as the versions that fly it will stand, else no flight would be at either value
        VersionBook versions = new VersionBook(writer, now.model(), clock);
        Setting a = versions.snap(def, wishedA);
        Setting known = versions.snap(def, wishedB);
        Setting b = known.same(a, Objects.requireNonNullElse(def.tolerance(), 0.0)) ? a : known;
        TrialPlan plan = TrialPlan.draw(
                ReviewLevels.info(def),
                ReviewLevels.level(def, a),
                ReviewLevels.level(def, b),
                perSide,
                seeds.getAsLong());
        return writer.insert(new Trial(
                Logbook.newId(),
                modelId,
                def.id(),
                a.number(),
                a.word(),
                b.number(),
                b.word(),
                perSide,
                plan.seed(),
                plan.drawnOrder(),
                clock.instant(),
                null,
                null));
    }

    /** The value as it was flown, so that it is the same version again; else as its words or number say. */
    private static Setting si(Reader reader, SettingDef def, Level level) {
        for (SettingValue value : reader.where(SettingValue.class, "settingId", def.id())) {
            Setting flown = new Setting(value.number(), value.word(), value.asTyped());
            if (ReviewLevels.level(def, flown).same(level)) {
                return flown;
            }
        }
        Double number = level.value();
        return number == null
                ? Setting.of(level.label())
                : Setting.of(ImportSettings.unitOf(def).toSi(number));
    }

    static @Nullable Trial openOf(Reader reader, String modelId) {
        return reader.where(Trial.class, "modelId", modelId).stream()
                .filter(t -> t.judgedAt() == null)
                .findFirst()
                .orElse(null);
    }

    private static TrialPlan plan(Reader reader, Trial trial) {
        return plan(trial, reader.get(SettingDef.class, trial.settingId()));
    }

    /** The plan as it was drawn, its values in the setting's unit. */
    static TrialPlan plan(Trial trial, SettingDef def) {
        return TrialPlan.kept(
                ReviewLevels.info(def),
                ReviewLevels.level(def, valueA(trial)),
                ReviewLevels.level(def, valueB(trial)),
                trial.perSide(),
                trial.seed(),
                trial.drawnOrder());
    }

    static Setting valueA(Trial trial) {
        return new Setting(trial.numberA(), trial.wordA(), null);
    }

    static Setting valueB(Trial trial) {
        return new Setting(trial.numberB(), trial.wordB(), null);
    }

    /** How far the model's open trial is; empty where none is open. */
    public Optional<TrialNow> now(String modelId) {
        return logbook.read(r -> Optional.ofNullable(now(r, modelId)));
    }

    static @Nullable TrialNow now(Reader reader, String modelId) {
        Trial trial = openOf(reader, modelId);
        // a setting that was taken away takes its trial's question with it
        return trial == null || reader.find(SettingDef.class, trial.settingId()) == null ? null : now(reader, trial);
    }

    private static TrialNow now(Reader reader, Trial trial) {
        SettingDef def = reader.get(SettingDef.class, trial.settingId());
        TrialPlan plan = plan(trial, def);
        TrialState state = TrialState.of(plan, flights(reader, trial, def));
        Rigged stands = Riggings.now(reader, trial.modelId());
        Rigged base = base(reader, trial, stands);
        Level next = state.next();
        Setting value = stands.values().get(def.id());
        Level stand = value == null ? null : ReviewLevels.level(def, value);
        boolean alike = value != null
                && stands.version().build() == base.version().build()
                && same(stands.values(), with(base, def.id(), value));
        boolean set = alike && next != null && stand != null && stand.same(next);
        TrialPlan.Side side = alike && stand != null && isIn(trial, stands.rigging()) ? plan.side(stand) : null;
        boolean open = side != null && state.slots().stream().anyMatch(slot -> slot.side() == side && !slot.isFlown());
        return new TrialNow(
                trial,
                plan,
                state,
                valueA(trial),
                valueB(trial),
                version(reader, base, def, valueA(trial)),
                version(reader, base, def, valueB(trial)),
                set,
                set || open);
    }

    private static boolean isIn(Trial trial, @Nullable Rigging rigging) {
        return rigging != null && trial.id().equals(rigging.trialId());
    }

    /**
     * The rigging a launch of the model flies on: of the open trial where the model stands at its next value, however it
     * came to stand there, so that the flight fills its place.
     */
    Rigging ofLaunch(Writer writer, String modelId) {
        TrialNow now = now(writer, modelId);
        Rigged stands = Riggings.now(writer, modelId);
        TrialPlan.Side side = now == null ? null : now.nextSide();
        if (now != null && side != null && now.set() && !isIn(now.trial(), stands.rigging())) {
            riggings.set(
                    writer,
                    stands.model(),
                    stands.values(),
                    stands.geometry(),
                    "trial: " + now.words(side),
                    now.trial().id());
        }
        return Riggings.last(writer, modelId);
    }

    /** Flights made on riggings of the trial; one in the air fills no place yet. */
    private static List<TrialFlight> flights(Reader reader, Trial trial, SettingDef def) {
        List<FlightLine> lines = reader.flights().ofModel(trial.modelId()).stream()
                .filter(l ->
                        l.rigging() != null && trial.id().equals(l.rigging().trialId()))
                .filter(l -> l.flight().durationS() != null)
                .toList();
        FlightOutcomes outcomes = FlightOutcomes.of(reader, lines);
        return lines.stream()
                .map(l -> {
                    Version version = Objects.requireNonNull(l.version());
                    Setting value = Riggings.values(reader, version).get(def.id());
                    return new TrialFlight(
                            l.flight().id(),
                            l.session().id(),
                            value == null ? Level.word("") : ReviewLevels.level(def, value),
                            outcomes.of(l).kind() != Outcome.Kind.LEFT_OUT);
                })
                .toList();
    }

    /** What all the trial's flights have in common: as its first rigging, before that as the model stands. */
    private static Rigged base(Reader reader, Trial trial, Rigged stands) {
        return Riggings.ordered(reader, trial.modelId()).stream()
                .filter(g -> trial.id().equals(g.trialId()))
                .findFirst()
                .map(g -> Riggings.rigged(reader, stands.model(), g, reader.get(Version.class, g.versionId())))
                .orElse(stands);
    }

    private static @Nullable Version version(Reader reader, Rigged base, SettingDef def, Setting value) {
        Map<String, Setting> wanted = with(base, def.id(), value);
        return reader.where(Version.class, "modelId", base.model().id()).stream()
                .filter(v -> v.build() == base.version().build())
                .filter(v -> same(Riggings.values(reader, v), wanted))
                .findFirst()
                .orElse(null);
    }

    private static boolean same(Map<String, Setting> one, Map<String, Setting> other) {
        return one.keySet().equals(other.keySet())
                && one.entrySet().stream()
                        .allMatch(e -> e.getValue().same(Objects.requireNonNull(other.get(e.getKey())), 0));
    }

    private static Map<String, Setting> with(Rigged base, String settingId, Setting value) {
        Map<String, Setting> values = new HashMap<>(base.values());
        values.put(settingId, value);
        return values;
    }

    /** Sets the model to the next value of its open trial, all else as the trial began: a rigging of the trial. */
    public Rigged setNext(String modelId) {
        return logbook.enter("next of the trial", w -> {
            TrialNow now = now(w, modelId);
            TrialPlan.Side side = now == null ? null : now.nextSide();
            if (now == null || side == null) {
                throw UserError.badInput(
                        now == null ? "No trial is open." : "All flights of this trial are flown; it can be judged.");
            }
            Rigged base = base(w, now.trial(), Riggings.now(w, modelId));
            Setting value = side == TrialPlan.Side.A ? now.a() : now.b();
            return riggings.set(
                    w,
                    base.model(),
                    with(base, now.trial().settingId(), value),
                    base.geometry(),
                    "trial: " + now.words(side),
                    now.trial().id());
        });
    }

    /**
     * Goes on after a landing: where the flight was the model's last and of its open trial, the next value is set, or the
     * trial judged if it was the last one planned. Anything else is left as it is.
     *
     * @return true where the trial went on
     */
    public boolean landed(String modelId, String flightId) {
        TrialNow now = logbook.read(r -> Optional.ofNullable(goesOn(r, modelId, flightId)))
                .orElse(null);
        if (now != null && now.state().isComplete()) {
            judge(modelId, null);
        } else if (now != null) {
            setNext(modelId);
        }
        return now != null;
    }

    private static @Nullable TrialNow goesOn(Reader reader, String modelId, String flightId) {
        List<FlightLine> flown = reader.flights().ofModel(modelId);
        FlightLine last = flown.isEmpty() ? null : flown.get(flown.size() - 1);
        TrialNow now = now(reader, modelId);
        return now != null
                        && last != null
                        && last.rigging() != null
                        && last.flight().id().equals(flightId)
                        && now.trial().id().equals(last.rigging().trialId())
                        && Riggings.last(reader, modelId)
                                .id()
                                .equals(last.rigging().id())
                ? now
                : null;
    }

    /**
     * The open trial that a turn of one setting by hand keeps to: the model stands in it and the value is one of its two;
     * null otherwise.
     */
    static @Nullable String keptTo(Reader reader, String modelId, String settingId, Setting value) {
        Trial trial = openOf(reader, modelId);
        Rigged stands = trial == null ? null : Riggings.now(reader, modelId);
        return trial != null
                        && stands != null
                        && stands.rigging() != null
                        && trial.id().equals(stands.rigging().trialId())
                        && trial.settingId().equals(settingId)
                        && (value.same(valueA(trial), 0) || value.same(valueB(trial), 0))
                ? trial.id()
                : null;
    }

    /**
     * Judges the model's open trial: from now on its flights enter the estimates. What flies next is no part of it.
     *
     * @param why what the flyer says on ending it before all are flown; null or empty for nothing
     */
    public Trial judge(String modelId, @Nullable String why) {
        return logbook.enter("trial judged", w -> {
            Trial open = openOf(w, modelId);
            if (open == null) {
                throw UserError.badInput("No trial is open.");
            }
            Trial judged = w.update(new Trial(
                    open.id(),
                    open.modelId(),
                    open.settingId(),
                    open.numberA(),
                    open.wordA(),
                    open.numberB(),
                    open.wordB(),
                    open.perSide(),
                    open.seed(),
                    open.drawnOrder(),
                    open.openedAt(),
                    clock.instant(),
                    why == null || why.isBlank() ? null : why.strip()));
            Rigged stands = Riggings.now(w, modelId);
            if (stands.rigging() != null && open.id().equals(stands.rigging().trialId())) {
                riggings.set(w, stands.model(), stands.values(), stands.geometry(), "after the trial", null);
            }
            return judged;
        });
    }
}
