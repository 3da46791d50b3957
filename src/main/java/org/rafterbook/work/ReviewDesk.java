package org.rafterbook.work;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.flight.Trial;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.review.Answer;
import org.rafterbook.review.BackChoice;
import org.rafterbook.review.Ceiling;
import org.rafterbook.review.CeilingModel;
import org.rafterbook.review.Effects;
import org.rafterbook.review.PlanWishes;
import org.rafterbook.review.ReviewAnswer;
import org.rafterbook.review.ReviewInput;
import org.rafterbook.review.SeasonPlans;
import org.rafterbook.review.TrialPlan;
import org.rafterbook.review.TrialState;
import org.rafterbook.review.TrialStatement;

/** Joins what the logbook holds of a model into its review: what screens and commands ask. */
public final class ReviewDesk {

    private static final String LATE_FLAGS = "review.late flags ";
    private static final String CHANCE = "ceiling.chance";
    static final Answer<TouchRisk> NO_HEIGHT = Answer.cannotTell(
            "What is in the way where the model flew last has no known height: give the venue a mark that costs time, in"
                    + " the Hall under venue and air.");

    private final Book book;
    private final Logbook logbook;
    private final Riggings riggings;
    private final MarginPercent margins;
    private final KeptAnswers<SeasonPlans.WithEffects> seasons;
    private final KeptAnswers<Answer<Ceiling>> ceilings;

    public ReviewDesk(Book book, MarginPercent margins) {
        this.book = book;
        this.logbook = book.logbook();
        this.riggings = book.riggings();
        this.margins = margins;
        seasons = new KeptAnswers<>(logbook, "season", SeasonPlans.EDITION, new TypeReference<>() {});
        ceilings = new KeptAnswers<>(logbook, "ceiling", Ceiling.EDITION, new TypeReference<>() {});
    }

    /** The models that have flown, the one flown last first, then the others by name. */
    public List<Model> models() {
        List<Model> flown = new ArrayList<>(logbook.read(r -> r.flights().modelsFlown()));
        if (flown.size() > 1) {
            flown.subList(1, flown.size()).sort(Comparator.comparing(Model::name, String.CASE_INSENSITIVE_ORDER));
        }
        return List.copyOf(flown);
    }

    /** Calls the listener after each entry and each undo. */
    public Subscription onChange(Runnable listener) {
        return logbook.onChange(listener);
    }

    /** The logbook it reads, for forms that put right what is recorded. */
    public Book book() {
        return book;
    }

    /** The model's trials, to be opened and ended. */
    public Trials trials() {
        return book.trials();
    }

    /** The model stands at this version from now on. */
    public Rigged backTo(String versionId, String name) {
        return riggings.backTo(versionId, "back to " + name, null);
    }

    /** The settings of a model and where they stand, in the order they are listed. */
    public List<SettingNow> settingsNow(String modelId) {
        Rigged now = riggings.now(modelId);
        return now.settings().stream()
                .map(def -> {
                    Setting value = now.values().get(def.id());
                    return new SettingNow(
                            def,
                            value == null ? "" : ReviewLevels.level(def, value).label());
                })
                .toList();
    }

    /** The chance of touching that the flyer takes from now on, 0 to 1. */
    public double takeChance(double chance) {
        book.prefer(CHANCE, String.valueOf(chance));
        return chance;
    }

    double chance() {
        String kept = book.preference(CHANCE);
        return kept == null ? TouchRisk.USUAL : Double.parseDouble(kept);
    }

    /** Whether flags set after a flight's time was known, or nobody knows when, leave it out too. */
    public void countLateFlags(String modelId, boolean leaveOut) {
        book.prefer(LATE_FLAGS + modelId, String.valueOf(leaveOut));
    }

    /** Whether flights of the model that were flagged after their time was known are left out too. */
    static boolean lateFlags(Reader reader, String modelId) {
        return Boolean.parseBoolean(reader.preference(LATE_FLAGS + modelId));
    }

    private boolean lateFlags(String modelId) {
        return Boolean.parseBoolean(book.preference(LATE_FLAGS + modelId));
    }

    /**
     * The review of a model from all its flights.
     *
     * @param fullMotorsOnly true to set flights on partial motors aside
     */
    public ModelReview review(String modelId, boolean fullMotorsOnly, Progress progress) {
        ReviewReading reading = read(modelId, progress);
        progress.check();
        ReviewInput input = reading.input(fullMotorsOnly);
        SeasonPlans.WithEffects season = season(reading, input, progress);
        Answer<TouchRisk> ceiling = ceiling(reading, input, progress);
        return answer(reading, input, season.effects(), season.plans(), ceiling);
    }

    /**
     * What can be said at once: the review as it was kept from these very flights; else everything but the effects, whose
     * words are still open, what rests on them, and margins that have to be computed.
     */
    public ModelReview atOnce(String modelId, boolean fullMotorsOnly, Progress progress) {
        ReviewReading reading = read(modelId, true, progress);
        progress.check();
        ReviewInput input = reading.input(fullMotorsOnly);
        return kept(reading, input).orElseGet(() -> answer(reading, input, Effects.atOnce(input), null, null));
    }

    private Optional<ModelReview> kept(ReviewReading reading, ReviewInput input) {
        if (reading.marginsOpen()) {
            return Optional.empty();
        }
        return seasons.find(digested(input, wishes(reading)))
                .flatMap(season -> ceilingKept(reading, input)
                        .map(ceiling -> answer(reading, input, season.effects(), season.plans(), ceiling)));
    }

    ReviewReading read(String modelId, Progress progress) {
        return read(modelId, false, progress);
    }

    private ReviewReading read(String modelId, boolean quickly, Progress progress) {
        List<Rigged> strip = riggings.strip(modelId);
        boolean late = lateFlags(modelId);
        return logbook.read(r -> new ReviewReading(r, strip, modelId, margins, late, quickly, progress));
    }

    private SeasonPlans.WithEffects season(ReviewReading reading, ReviewInput input, Progress progress) {
        PlanWishes wishes = wishes(reading);
        return seasons.of(digested(input, wishes), () -> SeasonPlans.of(input, wishes, percent(progress)));
    }

    private static Object digested(ReviewInput input, PlanWishes wishes) {
        return List.of(
                input,
                new TreeMap<>(wishes.now()),
                wishes.markedGood().stream().map(TreeMap::new).toList(),
                wishes.margin(),
                List.copyOf(new TreeSet<>(wishes.marginMovers())),
                wishes.differencePercent());
    }

    private static org.rafterbook.review.Progress percent(Progress progress) {
        return share -> {
            progress.step(Math.round(100 * share), 100, Step.PERCENT);
            return !progress.cancelled();
        };
    }

    private PlanWishes wishes(ReviewReading reading) {
        List<Rigged> good = new ArrayList<>(reading.versions().stream()
                .filter(v -> v.version().markedGood())
                .toList());
        good.sort(Comparator.comparingInt((Rigged v) -> v.version().number()).reversed());
        Set<String> movers = MarginMovers.of(reading.versions(), margins, reading.lastMotor());
        return new PlanWishes(
                reading.now(),
                good.stream().map(ReviewLevels::of).toList(),
                ReviewLevels.margin(reading.strip().get(0).model()),
                movers,
                PlanWishes.USUAL_DIFFERENCE_PERCENT);
    }

    private Answer<TouchRisk> ceiling(ReviewReading reading, ReviewInput input, Progress progress) {
        HeightMark limit = reading.limit();
        if (limit == null) {
            return NO_HEIGHT;
        }
        return risk(
                reading,
                limit,
                ceilings.of(
                        digested(reading, input, limit),
                        () -> CeilingModel.of(input.flights(), reading.now(), percent(progress))
                                .then(model -> Answer.known(Ceiling.of(model, limit.heightM())))));
    }

    private Optional<Answer<TouchRisk>> ceilingKept(ReviewReading reading, ReviewInput input) {
        HeightMark limit = reading.limit();
        return limit == null
                ? Optional.of(NO_HEIGHT)
                : ceilings.find(digested(reading, input, limit)).map(kept -> risk(reading, limit, kept));
    }

    private static Object digested(ReviewReading reading, ReviewInput input, HeightMark limit) {
        return List.of(input.flights(), new TreeMap<>(reading.now()), limit.heightM());
    }

    private Answer<TouchRisk> risk(ReviewReading reading, HeightMark limit, Answer<Ceiling> answer) {
        String trim = reading.strip().get(reading.strip().size() - 1).name();
        return answer.then(ceiling -> Answer.known(new TouchRisk(limit, trim, ceiling, chance())));
    }

    private ModelReview answer(
            ReviewReading reading,
            ReviewInput input,
            ReviewAnswer judged,
            @Nullable SeasonPlans plans,
            @Nullable Answer<TouchRisk> ceiling) {
        Model model = reading.strip().get(0).model();
        return new ModelReview(
                model,
                input,
                reading.points(),
                reading.history(),
                new ReviewChanges(reading.told(), input).of(judged),
                judged.season(),
                judged.claims(),
                judged.remarks(),
                judged.farOff(),
                trials(reading, input, judged),
                plans,
                plans == null ? List.of() : back(reading, plans),
                ceiling,
                reading.strip().get(0).settings().stream()
                        .collect(Collectors.toMap(SettingDef::id, ExportFlights::name)),
                lateFlags(model.id()),
                reading.marginsOpen());
    }

    private static List<GoBack> back(ReviewReading reading, SeasonPlans plans) {
        List<GoBack> back = new ArrayList<>();
        for (BackChoice choice : plans.back()) {
            reading.versions().stream()
                    .filter(v -> ReviewLevels.of(v).equals(choice.settings()))
                    .reduce((one, later) -> later)
                    .ifPresent(v -> back.add(new GoBack(v.version(), v.name(), choice.reasons(), choice.against())));
        }
        return back;
    }

    private static List<ReviewTrial> trials(ReviewReading reading, ReviewInput input, ReviewAnswer judged) {
        List<ReviewTrial> trials = new ArrayList<>();
        for (Trial trial : reading.trials()) {
            SettingDef def = reading.definition(trial.settingId());
            if (def != null) {
                TrialPlan plan = TrialReading.plan(trial, def);
                Set<String> flights = reading.flightsOf(trial.id());
                trials.add(new ReviewTrial(
                        trial,
                        plan,
                        TrialState.of(plan, reading.trialFlights(flights, def.id())),
                        trial.judgedAt() == null
                                ? null
                                : TrialStatement.of(plan, input, flights, judged, trial.endedWhy())));
            }
        }
        return trials;
    }
}
