package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.assertj.core.api.Assertions;
import org.hipparchus.random.Well19937c;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.flight.Ending;
import org.rafterbook.review.BackChoice.Reason;
import org.rafterbook.review.TrialProposal.Open;

/** Plans from a made-up winter whose truth is known: incidence is best at 2.5, the pitch moved with the motor. */
class SeasonPlansTest {

    private static final SettingInfo INCIDENCE =
            new SettingInfo("incidence", "wing incidence", "°", 0.5, 0.1, 1.0, 4.0);
    private static final SettingInfo MARGIN = new SettingInfo("", "stability margin", "%", null, 0.25, null, null);

    private static ReviewInput season;
    private static SeasonPlans.WithEffects answer;

    @BeforeAll
    static void review() {
        season = season(31);
        answer = SeasonPlans.of(season, wishes(), Progress.NONE);
    }

    @Test
    void proposalsAreForecastOneByOneAndCanBeStoppedBetween() {
        List<Double> shares = new ArrayList<>();

        SeasonPlans.of(season, wishes(), shares::add);

        double before =
                0.8 + 0.2 * season.settingKeys().size() / (season.settingKeys().size() + 1);
        assertThat(shares.stream().filter(share -> share > before))
                .hasSizeGreaterThanOrEqualTo(answer.effects().changes().size() - 1);
        assertThat(shares).isSorted();
    }

    @Test
    void aValueBeyondAnythingFlownIsProposedWithWhatIsToBeKnownBefore() {
        Random random = new Random(5);
        SeasonBuilder builder = new SeasonBuilder();
        for (int day = 0; day < 4; day++) {
            builder.day(7 * day);
            for (int i = 0; i < 9; i++) {
                double x = 2 + 0.25 * (i % 3);
                builder.fly(Math.exp(6 + 0.15 * x + 0.01 * random.nextGaussian()), "incidence", x);
            }
        }
        ReviewInput rising = ReviewInput.of("Teasel", builder.flights(), List.of(INCIDENCE));
        PlanWishes wishes =
                new PlanWishes(Map.of("incidence", Level.number(2.5)), List.of(), MARGIN, Set.of("incidence"), 3);

        List<TrialProposal> proposals =
                SeasonPlans.of(rising, wishes, Progress.NONE).plans().proposals();

        assertThat(proposals.stream().filter(p -> p.open() == TrialProposal.Open.WORTH_TRYING))
                .singleElement()
                .satisfies(p -> assertThat(p.sentences())
                        .contains(
                                "It lies beyond anything flown, 2 to 2.5°.",
                                "It moves the margin too: see first what the curve over the margin says of going"
                                        + " there."));
    }

    private static PlanWishes wishes() {
        Map<String, Level> now =
                season.flights().get(season.flights().size() - 1).settings();
        Map<String, Level> good = season.flights().get(0).settings();
        return new PlanWishes(now, List.of(good), MARGIN, Set.of("wing place"), 3);
    }

    /** Seven evenings of eight flights; the margin goes with the wing's place alone. */
    private static ReviewInput season(long seed) {
        Random random = new Random(seed);
        SeasonBuilder builder = new SeasonBuilder();
        double[] incidences = {2, 3, 2.5, 1.5};
        for (int evening = 0; evening < 7; evening++) {
            builder.day(7 * evening);
            double day = 0.02 * random.nextGaussian();
            for (int i = 0; i < 8; i++) {
                double incidence = incidences[i < 4 ? evening % 4 : (evening + 1) % 4];
                double place = 140 + 3 * (evening / 2);
                String pitch = evening < 3 ? "300" : "320";
                String motor = evening < 3 ? "thin" : "thick";
                double margin = (place - 130) / 2;
                double y = 6.2
                        + day
                        - 0.06 * (incidence - 2.5) * (incidence - 2.5)
                        - 0.004 * (margin - 7) * (margin - 7)
                        + 0.03 * random.nextGaussian();
                Map<String, Level> settings = new TreeMap<>(Map.of(
                        "incidence", Level.number(incidence),
                        "wing place", Level.number(place),
                        "pitch", Level.word(pitch),
                        "motor size", Level.word(motor)));
                boolean touched = i == 7 && evening % 3 == 0;
                double duration = Math.exp(y) * (touched ? 0.9 : 1);
                ReviewFlight flight = ReviewFlight.of(
                                "f" + evening + i,
                                "e" + evening,
                                SeasonBuilder.FIRST_DAY.plusDays(7L * evening),
                                i + 1,
                                touched ? Outcome.atLeast(duration, "touched") : Outcome.exact(duration),
                                settings)
                        .with(MotorUse.turns(1500.0), 1.19);
                builder.add(withMargin(flight, margin));
            }
        }
        return ReviewInput.of(
                "Teasel",
                builder.flights(),
                List.of(INCIDENCE, SettingInfo.named("wing place"), SettingInfo.named("pitch")));
    }

    private static ReviewFlight withMargin(ReviewFlight f, double margin) {
        return new ReviewFlight(
                f.id(),
                f.riggingId(),
                f.sessionId(),
                f.sessionDate(),
                f.orderInSession(),
                f.durationS(),
                f.outcome(),
                f.motor(),
                f.densityKgM3(),
                false,
                1,
                f.settings(),
                margin,
                f.peak(),
                f.handling(),
                "");
    }

    private static Response response(@Nullable Answer<Response> response) {
        if (response instanceof Answer.Known<Response> known) {
            return known.value();
        }
        return Assertions.fail("no curve: " + response);
    }

    @Test
    void theBestIncidenceIsFoundWhereItIs() {
        Response incidence = response(answer.plans().responses().get("incidence"));

        assertThat(incidence.best().holds(2.5)).isTrue();
        assertThat(incidence.best().width()).isLessThan(1.5);
        assertThat(incidence.valuesFlown()).isEqualTo(4);
        assertThat(incidence.atLeast()).isEqualTo(3);
        assertThat(incidence.sentences().get(0)).startsWith("Best wing incidence probably 2° or more (90 %)");
    }

    @Test
    void theMarginKeepsTheEffectOfWhatMovesIt() {
        Response margin = response(answer.plans().margin());
        double atSeven = loss(margin, 7);
        double atTen = loss(margin, 9.5);

        // The truth loses 2.5 % from 7 to 9.5; taken out with the wing's place it would lose nothing.
        assertThat(atTen - atSeven).isGreaterThan(0.005);
        assertThat(margin.flown().low()).isCloseTo(5, within(1e-9));
    }

    @Test
    void onlyWhatDoesNotMoveTheMarginIsTakenOut() {
        Design design = new Design(season);
        SeasonFit fit =
                new SeasonFit(design, design.model(), Sampler.run(design.model(), List.of(), 200, 1000, Progress.NONE));
        List<ResponsePoint> kept = new CorrectedFlights(fit).alongMargin(Set.of("wing place"));
        List<ResponsePoint> removed = new CorrectedFlights(fit).alongMargin(Set.of());
        Level last =
                season.flights().get(season.flights().size() - 1).settings().get("wing place");

        for (int i = 0; i < kept.size(); i++) {
            Level own = season.flights().get(i).settings().get("wing place");
            double[] contrast = Objects.requireNonNull(
                    design.contrast("wing place", Objects.requireNonNull(last), Objects.requireNonNull(own)));
            double effect = IntStream.range(0, contrast.length)
                    .mapToDouble(j -> contrast[j] * fit.draws().columnMeans()[j])
                    .sum();
            assertThat(kept.get(i).logDuration() - removed.get(i).logDuration())
                    .isCloseTo(own.same(last) ? 0 : effect, within(1e-12));
        }
    }

    private static double loss(Response response, double at) {
        return response.curve().stream()
                .reduce((a, b) -> Math.abs(b.value() - at) < Math.abs(a.value() - at) ? b : a)
                .orElseThrow()
                .expectedLoss();
    }

    @Test
    void oneWordAmongNumbersIsCalledOne() {
        SeasonBuilder mixed = new SeasonBuilder().day(0);
        for (int i = 0; i < 9; i++) {
            mixed.fly(500 + (i * 29) % 17, "prop", new String[] {"22", "24", "birch"}[i % 3]);
        }

        assertThat(SeasonPlans.of(mixed.input(), wishes(), Progress.NONE)
                        .plans()
                        .responses()
                        .get("prop"))
                .isEqualTo(Answer.cannotTell(
                        "One of the values of prop is a word; a curve needs three that are numbers."));
    }

    @Test
    void wordsCarryNoCurve() {
        assertThat(answer.plans().responses().get("pitch"))
                .isEqualTo(Answer.cannotTell("The values of pitch are words; a curve needs three that are numbers."));
    }

    @Test
    void whatAlwaysMovedTogetherIsProposedToBeParted() {
        List<TrialProposal> parting = answer.plans().proposals().stream()
                .filter(p -> p.open() == Open.MOVED_TOGETHER)
                .toList();

        assertThat(parting).hasSize(1);
        TrialProposal proposal = parting.get(0);
        assertThat(proposal.title())
                .isIn("Trial: pitch 300 or 320, motor size kept.", "Trial: motor size thin or thick, pitch kept.");
        assertThat(proposal.forecast().perSide()).isEqualTo(3);
        assertThat(proposal.sentences().get(2))
                .contains("3 + 3 flights on one day")
                .contains("chance of a clear result");
        assertThat(proposal.draw(7).order()).hasSize(6);
    }

    @Test
    void proposalsStandInTheOrderOfWhatTheyAreWorth() {
        List<Forecast> forecasts = answer.plans().proposals().stream()
                .map(p -> Objects.requireNonNull(p.forecast()))
                .toList();

        assertThat(forecasts)
                .isNotEmpty()
                .isSortedAccordingTo(Comparator.comparing((Forecast f) -> f.chanceClear() < 0.05)
                        .thenComparing(Comparator.comparing(Forecast::worth).reversed()))
                .allMatch(f -> f.worth() >= 0);
    }

    @Test
    void backOffersTheLastTheGoodAndTheHighestEstimateOnly() {
        List<BackChoice> back = answer.plans().back();

        assertThat(back.get(0).reasons()).contains(Reason.LAST_SETTING);
        assertThat(back).anyMatch(c -> c.reasons().contains(Reason.WELL_BEHAVED));
        assertThat(back).hasSizeLessThanOrEqualTo(3);
        back.stream()
                .filter(c -> c.reasons().contains(Reason.HIGHEST_ESTIMATE))
                .forEach(c -> assertThat(c.against()).isNotNull());
    }

    @Test
    void oneLuckyFlightDoesNotMakeAVersionTheOneToGoBackTo() {
        // The same season with the time of one flight of the poorest incidence doubled: the best time of all, once.
        int lucky = IntStream.range(0, season.flights().size())
                .filter(i -> season.flights().get(i).settings().get("incidence").equals(Level.number(1.5)))
                .findFirst()
                .orElseThrow();
        List<ReviewFlight> flights = new ArrayList<>(season.flights());
        ReviewFlight f = flights.get(lucky);
        flights.set(
                lucky,
                withMargin(
                        ReviewFlight.of(
                                        f.id(),
                                        f.sessionId(),
                                        f.sessionDate(),
                                        f.orderInSession(),
                                        Outcome.exact(1.25 * f.durationS()),
                                        f.settings())
                                .with(f.motor(), f.densityKgM3()),
                        f.marginPercent() == null ? 0 : f.marginPercent()));
        ReviewInput input = ReviewInput.of("Teasel", flights, season.settings());

        SeasonPlans plans = SeasonPlans.of(input, wishes(), Progress.NONE).plans();

        assertThat(plans.back().stream()
                        .filter(c -> c.reasons().contains(Reason.HIGHEST_ESTIMATE))
                        .map(c -> c.settings().get("incidence")))
                .doesNotContain(Level.number(1.5));
    }

    @Test
    void aJudgedTrialSaysWhatItsFlightsAndAllFlightsSay() {
        TrialPlan trial = TrialPlan.kept(INCIDENCE, Level.number(1.5), Level.number(2), 4, 1, "ABABABAB");
        Set<String> last = new HashSet<>();
        season.flights().stream().filter(f -> f.sessionId().equals("e3")).forEach(f -> last.add(f.id()));

        TrialStatement statement = TrialStatement.of(trial, season, last, answer.effects(), null);
        assertThat(statement.sentences().get(0))
                .startsWith("Trial: wing incidence at 1.5 or 2°, 4 + 4 flown: 2° against 1.5° ")
                .endsWith("these flights alone.");
        assertThat(statement.all()).isNotNull();
        assertThat(statement.sentences()).anyMatch(s -> s.startsWith("With all flights of Teasel: "));
    }

    @Test
    void aTrialEndedEarlySaysSo() {
        TrialPlan trial = TrialPlan.kept(INCIDENCE, Level.number(1.5), Level.number(2), 4, 1, "ABABABAB");

        TrialStatement statement = TrialStatement.of(trial, season, Set.of("f30"), answer.effects(), "hall closed");

        assertThat(statement.alone()).isNull();
        assertThat(statement.sentences()).contains("Ended before all 8 were flown: hall closed.");
    }

    @Test
    void aFlightOfATrialFlaggedLateCountsAndIsSaidInItsStatement() {
        TrialPlan trial = TrialPlan.kept(INCIDENCE, Level.number(1.5), Level.number(2), 4, 1, "ABABABAB");
        Outcome late = new OutcomeRule(480.0, Ending.CLEAN, null, null, "bad launch", false, false).outcome();
        ReviewFlight flight = ReviewFlight.of(
                "late", "e3", LocalDate.of(2026, 1, 12), 3, late, Map.of(INCIDENCE.key(), Level.number(2)));
        ReviewInput with = ReviewInput.of("Teasel", List.of(flight), season.settings());

        assertThat(TrialStatement.of(trial, with, Set.of("late"), answer.effects(), null)
                        .sentences())
                .contains("Flight 3 of 12 Jan 2026: bad launch: flagged after its time was known, so it counts as"
                        + " flown.");
    }

    @Test
    void aThinLogGetsSentences() {
        ReviewInput one = ReviewInput.of("Teasel", season.flights().subList(0, 1), season.settings());

        SeasonPlans plans = SeasonPlans.of(one, wishes(), Progress.NONE).plans();

        assertThat(plans.proposals()).isEmpty();
        assertThat(plans.margin()).isInstanceOf(Answer.CannotTell.class);
        assertThat(plans.responses().values()).allMatch(r -> r instanceof Answer.CannotTell);
        assertThat(plans.advice().get(0)).startsWith("Alternate the two settings on the same day");
        assertThat(SeasonPlans.of(ReviewInput.of("Teasel", List.of(), List.of()), wishes(), Progress.NONE)
                        .plans()
                        .back())
                .hasSizeLessThanOrEqualTo(1);
    }

    /** Whatever is thrown at it: plans with words, no exception, nothing that is not a number. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32})
    void anySmallSeasonHasPlansInWords(long seed) {
        ReviewInput input = ThinSeasonsTest.random(new Well19937c(seed));

        SeasonPlans plans = SeasonPlans.of(input, wishes(), Progress.NONE).plans();

        List<String> words = new ArrayList<>(plans.advice());
        plans.responses().values().forEach(r -> words.addAll(words(r)));
        words.addAll(words(plans.margin()));
        plans.proposals().forEach(p -> words.addAll(p.sentences()));
        assertThat(words).as("seed %d", seed).noneMatch(s -> s.contains("NaN") || s.contains("null"));
        assertThat(plans.proposals())
                .allMatch(p ->
                        p.forecast() == null || Double.isFinite(p.forecast().worth()));
    }

    private static List<String> words(Answer<Response> answer) {
        if (answer instanceof Answer.Known<Response> known) {
            assertThat(known.value().curve())
                    .allMatch(p -> p.logLow() <= p.logDuration() && p.logDuration() <= p.logHigh());
            List<String> words = new ArrayList<>(known.value().sentences());
            words.add(known.value().next().sentence());
            return words;
        }
        return List.of(((Answer.CannotTell<Response>) answer).sentence());
    }

    @Test
    void itStopsWhenNobodyWantsItAnyMore() {
        Assertions.assertThatThrownBy(() -> SeasonPlans.of(season, wishes(), share -> share < 0.85))
                .isInstanceOf(CancellationException.class);
    }
}
