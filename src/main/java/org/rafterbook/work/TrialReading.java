package org.rafterbook.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Trial;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Reader;
import org.rafterbook.review.Level;
import org.rafterbook.review.Outcome;
import org.rafterbook.review.TrialPlan;
import org.rafterbook.review.TrialState;
import org.rafterbook.review.TrialState.TrialFlight;

/** What is known of a model's trials: how far the open one is, what its flights have in common, where the model stands. */
final class TrialReading {

    private TrialReading() {}

    static @Nullable Trial openOf(Reader reader, String modelId) {
        return reader.where(Trial.class, "modelId", modelId).stream()
                .filter(t -> t.judgedAt() == null)
                .findFirst()
                .orElse(null);
    }

    static TrialPlan plan(Reader reader, Trial trial) {
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

    static boolean isIn(Trial trial, @Nullable Rigging rigging) {
        return rigging != null && trial.id().equals(rigging.trialId());
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
    static Rigged base(Reader reader, Trial trial, Rigged stands) {
        return Riggings.ordered(reader, trial.modelId()).stream()
                .filter(g -> trial.id().equals(g.trialId()))
                .findFirst()
                .map(g -> Riggings.rigged(reader, stands.model(), g, reader.get(Version.class, g.versionId())))
                .orElse(stands);
    }

    static @Nullable Version version(Reader reader, Rigged base, SettingDef def, Setting value) {
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

    static Map<String, Setting> with(Rigged base, String settingId, Setting value) {
        Map<String, Setting> values = new HashMap<>(base.values());
        values.put(settingId, value);
        return values;
    }

    static @Nullable TrialNow goesOn(Reader reader, String modelId, String flightId) {
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
}
