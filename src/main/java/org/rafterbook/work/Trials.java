package org.rafterbook.work;

import java.time.Clock;
import java.util.Objects;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.flight.Trial;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.review.Level;
import org.rafterbook.review.TrialPlan;
import org.rafterbook.review.TrialProposal;
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
        Trial other = TrialReading.openOf(writer, modelId);
        TrialPlan.requireNoneOpen(now.model().name(), other == null ? null : TrialReading.plan(writer, other));
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

    /** How far the model's open trial is; empty where none is open. */
    public Optional<TrialNow> now(String modelId) {
        return logbook.read(r -> Optional.ofNullable(TrialReading.now(r, modelId)));
    }

    /**
     * The rigging a launch of the model flies on: of the open trial where the model stands at its next value, however it
     * came to stand there, so that the flight fills its place.
     */
    Rigging ofLaunch(Writer writer, String modelId) {
        TrialNow now = TrialReading.now(writer, modelId);
        Rigged stands = Riggings.now(writer, modelId);
        TrialPlan.Side side = now == null ? null : now.nextSide();
        if (now != null && side != null && now.set() && !TrialReading.isIn(now.trial(), stands.rigging())) {
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

    /** Sets the model to the next value of its open trial, all else as the trial began: a rigging of the trial. */
    public Rigged setNext(String modelId) {
        return logbook.enter("next of the trial", w -> {
            TrialNow now = TrialReading.now(w, modelId);
            TrialPlan.Side side = now == null ? null : now.nextSide();
            if (now == null || side == null) {
                throw UserError.badInput(
                        now == null ? "No trial is open." : "All flights of this trial are flown; it can be judged.");
            }
            Rigged base = TrialReading.base(w, now.trial(), Riggings.now(w, modelId));
            Setting value = side == TrialPlan.Side.A ? now.a() : now.b();
            return riggings.set(
                    w,
                    base.model(),
                    TrialReading.with(base, now.trial().settingId(), value),
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
        TrialNow now = logbook.read(r -> Optional.ofNullable(TrialReading.goesOn(r, modelId, flightId)))
                .orElse(null);
        if (now != null && now.state().isComplete()) {
            judge(modelId, null);
        } else if (now != null) {
            setNext(modelId);
        }
        return now != null;
    }

    /**
     * Judges the model's open trial: from now on its flights enter the estimates. What flies next is no part of it.
     *
     * @param why what the flyer says on ending it before all are flown; null or empty for nothing
     */
    public Trial judge(String modelId, @Nullable String why) {
        return logbook.enter("trial judged", w -> {
            Trial open = TrialReading.openOf(w, modelId);
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
