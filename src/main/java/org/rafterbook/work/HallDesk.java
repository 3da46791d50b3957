package org.rafterbook.work;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.review.BackChoice;
import org.rafterbook.review.TrialStatement;
import org.rafterbook.units.UserError;

/** Today's session as the Hall works on it: what there is, the next flight, and the way to everything entered there. */
public final class HallDesk {

    /** Preference: the model the next flight is prepared for. */
    static final String MODEL = "hall.model";

    private static final String NO_MODEL = "none";

    private final Book book;
    private final Logbook logbook;
    private final MarginText margins;
    private final Flying flying;
    private final LandingAnswers answers;
    private final Winding winding;
    private final Visit visit;
    private final Outlooks outlooks;

    public HallDesk(Book book, MarginText margins) {
        this.book = book;
        this.logbook = book.logbook();
        this.margins = margins;
        this.flying = new Flying(logbook, book.trials(), book.clock());
        this.answers = new LandingAnswers(logbook, book.clock());
        this.winding = new Winding(logbook, book.clock());
        this.visit = new Visit(logbook, book.clock());
        this.outlooks = new Outlooks(book.review(), book.clock());
    }

    /** The same desk but for the margins, which take longer than all else: for what a window shows first. */
    public HallDesk withoutMargins() {
        return new HallDesk(book, (rigged, motor) -> MarginText.LATER);
    }

    public Book book() {
        return book;
    }

    /** Launches, landings and what happens between. */
    public Flying flying() {
        return flying;
    }

    /** What is told of a flight after it has landed. */
    public LandingAnswers answers() {
        return answers;
    }

    /** Motors and their winds. */
    public Winding winding() {
        return winding;
    }

    /** Venue, heights and air. */
    public Visit visit() {
        return visit;
    }

    /** Trials of the model's settings. */
    public Trials trials() {
        return book.trials();
    }

    /** Today's session with its flights. */
    public Evening evening() {
        return logbook.read(r -> new EveningReading(r, margins).of(Sessions.today(r, book.clock())));
    }

    /** The next flight, prepared from the last. */
    public Prepared prepare() {
        return logbook.read(r -> {
            Session session = Sessions.today(r, book.clock());
            List<FlightLine> evening = session == null ? List.of() : r.flights().ofSession(session.id());
            return new Preparation(r, margins, session).of(chosenModel(r, evening), evening);
        });
    }

    /**
     * What the prepared flight may do; empty without a model.
     *
     * @param relaunch true where it goes on the wind of the last flight
     */
    public Optional<Outlook> outlook(Prepared prepared, boolean relaunch, Evening evening, Progress progress) {
        return outlooks.of(prepared, relaunch, evening, progress);
    }

    /** The version of the model with the highest estimate, where another than the present one has it. */
    public Optional<GoBack> highestEstimate(String modelId, Progress progress) {
        return book.review().review(modelId, true, progress).back().stream()
                .filter(b -> b.reasons().contains(BackChoice.Reason.HIGHEST_ESTIMATE))
                .findFirst();
    }

    /** What a judged trial of the model says; empty where it is none. */
    public Optional<TrialStatement> statement(String modelId, String trialId, Progress progress) {
        return book.review().review(modelId, true, progress).trials().stream()
                .filter(t -> t.trial().id().equals(trialId))
                .flatMap(t -> Stream.ofNullable(t.statement()))
                .findFirst();
    }

    /** The model chosen, else that of the evening's last flight, else the one rigged last; null for just timing. */
    static @Nullable String chosenModel(Reader reader, List<FlightLine> evening) {
        String chosen = reader.preference(MODEL);
        if (NO_MODEL.equals(chosen)) {
            return null;
        }
        if (chosen != null && reader.find(Model.class, chosen) != null) {
            return chosen;
        }
        for (int i = evening.size() - 1; i >= 0; i--) {
            Rigging rigging = evening.get(i).rigging();
            if (rigging != null) {
                return rigging.modelId();
            }
        }
        return reader.all(Rigging.class).stream()
                .reduce((one, later) -> later)
                .map(Rigging::modelId)
                .orElse(null);
    }

    /** The model the next flight is prepared for; null to just time flights. */
    public void choose(@Nullable String modelId) {
        logbook.enter("model chosen", w -> {
            w.preference(MODEL, modelId == null ? NO_MODEL : modelId);
            return true;
        });
    }

    /** Adds a model by its name and chooses it. */
    public Model addModel(String name) {
        return logbook.enter("model " + name.strip(), w -> {
            Model model = book.riggings().addModel(w, name);
            w.preference(MODEL, model.id());
            return model;
        });
    }

    /** Turns a setting of the model by so many of its usual steps. */
    public Rigged step(String modelId, String settingId, int steps) {
        Rigged now = book.riggings().now(modelId);
        SettingDef def = definition(now, settingId);
        Setting value = now.values().get(settingId);
        Double number = value == null ? null : value.number();
        Double step = def.step();
        if (number == null || step == null) {
            throw UserError.badInput(
                    def.label() + (number == null ? " has no number yet; type it." : " has no usual step; type it."));
        }
        // whole steps from where it stands, free of the rounding that adding leaves behind
        double turned = Math.round((number + steps * step) * 1e9) / 1e9;
        Double low = def.low();
        Double high = def.high();
        if (low != null && turned < low - 1e-9 || high != null && turned > high + 1e-9) {
            throw UserError.badInput(def.label() + " cannot go further; its limit is reached.");
        }
        return set(modelId, settingId, Setting.of(turned));
    }

    /** Sets one setting of the model. */
    public Rigged set(String modelId, String settingId, Setting value) {
        SettingDef def = definition(book.riggings().now(modelId), settingId);
        String trial = logbook.read(r -> Optional.ofNullable(TrialReading.keptTo(r, modelId, settingId, value)))
                .orElse(null);
        return book.riggings().trim(modelId, Map.of(settingId, value), def.label(), trial);
    }

    private static SettingDef definition(Rigged rigged, String settingId) {
        return rigged.settings().stream()
                .filter(d -> d.id().equals(settingId))
                .findFirst()
                .orElseThrow(() -> UserError.badInput("This model has no such setting."));
    }
}
