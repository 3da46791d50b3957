package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;

class ExpectedFlightTest {

    private static final Answer<CeilingModel> NO_HEIGHTS = Answer.cannotTell("No heights.");
    private static final QuantityFormat METRIC = new QuantityFormat(DisplayUnits.METRIC);
    private static final LocalDate DAY = LocalDate.of(2026, 1, 6);

    private static ExpectedFlight known(Answer<ExpectedFlight> answer) {
        assertThat(answer).isInstanceOf(Answer.Known.class);
        return ((Answer.Known<ExpectedFlight>) answer).value();
    }

    private static ReviewFlight flight(
            String session, int order, Outcome outcome, double turns, double fraction, double incidence) {
        return ReviewFlight.of(
                        session + order,
                        session,
                        session.equals("tonight") ? DAY : DAY.minusDays(14),
                        order,
                        outcome,
                        Map.of("incidence", Level.number(incidence)))
                .with(new MotorUse(null, null, turns, null, fraction), 1.2);
    }

    private static NextFlight next(
            String session, double incidence, @Nullable Double turns, double fraction, @Nullable Double torque) {
        return new NextFlight(
                Map.of("incidence", Level.number(incidence)), 1, session, DAY, null, turns, torque, fraction, 1.2);
    }

    private static List<ReviewFlight> evening(String session, int count, double mean, long seed) {
        Random random = new Random(seed);
        List<ReviewFlight> flights = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            double time = mean * Math.exp(0.03 * random.nextGaussian());
            flights.add(flight(session, i, Outcome.exact(time), 1500, 1, 2));
        }
        return flights;
    }

    @Test
    void fewerThanThreeFlightsCannotTell() {
        assertThat(ExpectedFlight.of(
                        "Teasel", evening("old", 2, 600, 1), next("tonight", 2, 1500.0, 1, null), NO_HEIGHTS))
                .isEqualTo(Answer.cannotTell("Cannot tell yet what to expect: 2 flights of Teasel on a full motor count"
                        + " so far, 3 are needed."));
    }

    @Test
    void partialMotorsAreNotPooledWithFullOnes() {
        List<ReviewFlight> flights = new ArrayList<>(evening("old", 6, 600, 2));
        flights.add(flight("old", 7, Outcome.exact(150), 375, 0.25, 2));

        assertThat(ExpectedFlight.of("Teasel", flights, next("tonight", 2, 375.0, 0.25, null), NO_HEIGHTS))
                .isInstanceOf(Answer.CannotTell.class);
        assertThat(known(ExpectedFlight.of("Teasel", flights, next("tonight", 2, 1500.0, 1, null), NO_HEIGHTS))
                        .flights())
                .isEqualTo(6);
    }

    @Test
    void timeGoesWithTheTurns() {
        List<ReviewFlight> flights = evening("old", 8, 600, 3);

        double at1500 = known(ExpectedFlight.of("T", flights, next("tonight", 2, 1500.0, 1, null), NO_HEIGHTS))
                .durationS();
        double at1650 = known(ExpectedFlight.of("T", flights, next("tonight", 2, 1650.0, 1, null), NO_HEIGHTS))
                .durationS();

        assertThat(at1500).isCloseTo(600, within(20.0));
        assertThat(at1650 / at1500).isCloseTo(1.1, within(0.01));
    }

    @Test
    void aRelaunchOnFewTurnsDoesNotLowerWhatIsExpectedBeforeTheNextTurnsAreKnown() {
        List<ReviewFlight> flights = evening("old", 6, 600, 12);
        NextFlight next = next("tonight", 2, null, 1, null);
        double before = known(ExpectedFlight.of("T", flights, next, NO_HEIGHTS)).durationS();
        for (int i = 1; i <= 3; i++) {
            flights.add(flight("tonight", i, Outcome.exact(200), 500, 1, 2));
        }
        ExpectedFlight expected = known(ExpectedFlight.of("T", flights, next, NO_HEIGHTS));
        assertThat(expected.durationS()).isCloseTo(before, within(20.0));
        assertThat(expected.unscaled()).isEqualTo(9);
    }

    @Test
    void tonightsFlightsCountMoreThanOlderOnes() {
        List<ReviewFlight> flights = new ArrayList<>(evening("old", 8, 600, 4));
        ExpectedFlight before = known(ExpectedFlight.of("T", flights, next("tonight", 2, 1500.0, 1, null), NO_HEIGHTS));
        flights.addAll(evening("tonight", 4, 660, 5));
        ExpectedFlight after = known(ExpectedFlight.of("T", flights, next("tonight", 2, 1500.0, 1, null), NO_HEIGHTS));

        assertThat(after.durationS()).isGreaterThan(before.durationS() + 25);
        assertThat(after.bandS().width()).isLessThan(before.bandS().width());
    }

    @Test
    void settingsNeverFlownWidenTheBand() {
        List<ReviewFlight> flights = evening("old", 10, 600, 6);
        ExpectedFlight flown = known(ExpectedFlight.of("T", flights, next("tonight", 2, 1500.0, 1, null), NO_HEIGHTS));
        ExpectedFlight other = known(ExpectedFlight.of("T", flights, next("tonight", 3, 1500.0, 1, null), NO_HEIGHTS));

        assertThat(other.bandS().width()).isGreaterThan(1.2 * flown.bandS().width());
        assertThat(other.sameSettings()).isZero();
        assertThat(other.sentences(METRIC))
                .contains("None of these flights had these settings: the band allows for what they may do.");
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 8, 20})
    void oneSpoiltFlightAmongSeveralMovesTheExpectationLittle(int sound) {
        List<ReviewFlight> flights = new ArrayList<>(evening("old", sound, 600, 11));
        NextFlight next = next("tonight", 2, 1500.0, 1, null);
        ExpectedFlight without = known(ExpectedFlight.of("T", flights, next, NO_HEIGHTS));
        for (double spoilt : new double[] {2, 30, 120}) {
            List<ReviewFlight> with = new ArrayList<>(flights);
            with.add(flight("tonight", 1, Outcome.exact(spoilt), 1500, 1, 2));
            ExpectedFlight expected = known(ExpectedFlight.of("T", with, next, NO_HEIGHTS));
            assertThat(expected.durationS()).as("after %s s", spoilt).isCloseTo(without.durationS(), within(25.0));
            assertThat(expected.bandS().low()).as("after %s s", spoilt).isGreaterThan(380);
        }
    }

    @Test
    void flightsCutShortPullUpNotDown() {
        List<ReviewFlight> flights = new ArrayList<>(evening("old", 6, 600, 7));
        ExpectedFlight without =
                known(ExpectedFlight.of("T", flights, next("tonight", 2, 1500.0, 1, null), NO_HEIGHTS));
        for (int i = 10; i < 13; i++) {
            flights.add(flight("old", i, Outcome.atLeast(300, "touched"), 1500, 1, 2));
        }
        ExpectedFlight shortOnes =
                known(ExpectedFlight.of("T", flights, next("tonight", 2, 1500.0, 1, null), NO_HEIGHTS));
        for (int i = 20; i < 23; i++) {
            flights.add(flight("old", i, Outcome.atLeast(680, "touched"), 1500, 1, 2));
        }
        ExpectedFlight longOnes =
                known(ExpectedFlight.of("T", flights, next("tonight", 2, 1500.0, 1, null), NO_HEIGHTS));

        assertThat(shortOnes.durationS()).isCloseTo(without.durationS(), within(6.0));
        assertThat(longOnes.durationS()).isGreaterThan(without.durationS() + 10);
        assertThat(longOnes.atLeast()).isEqualTo(6);
    }

    /** Flights of simulated seasons forecast from those before them: the band holds about as many as it says. */
    @Test
    void theBandHoldsTheNextFlightAboutAsOftenAsItSays() {
        int held = 0;
        int asked = 0;
        for (long seed = 1; seed <= 20; seed++) {
            List<ReviewFlight> season = SimulatedSeason.of(Scenario.BASE, seed, Double.POSITIVE_INFINITY)
                    .input()
                    .flights();
            for (int i = 12; i < season.size(); i += 9) {
                ReviewFlight f = season.get(i);
                NextFlight next = new NextFlight(
                        f.settings(),
                        1,
                        f.sessionId(),
                        f.sessionDate(),
                        null,
                        f.motor().turnsUsed(),
                        null,
                        1,
                        f.densityKgM3());
                Span band = known(ExpectedFlight.of("T", season.subList(0, i), next, NO_HEIGHTS))
                        .bandS();
                held += band.holds(f.durationS()) ? 1 : 0;
                asked++;
            }
        }

        assertThat(asked).isGreaterThan(120);
        assertThat((double) held / asked)
                .as("seeds 1 to 20, %d of %d", held, asked)
                .isBetween(0.86, 0.96);
    }

    @Test
    void thePeakComesFromTheModelsOwnHeights() {
        Random random = new Random(9);
        List<ReviewFlight> flights = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double torque = 0.0022 + 0.0006 * random.nextDouble();
            double height = 7 * torque / 0.0026 * Math.exp(0.04 * random.nextGaussian());
            ReviewFlight f = flight("old", i + 1, Outcome.exact(600), 1500, 1, 2);
            flights.add(new ReviewFlight(
                    f.id(),
                    "",
                    "s" + i / 4,
                    f.sessionDate(),
                    i + 1,
                    600,
                    f.outcome(),
                    new MotorUse(null, null, 1500.0, torque, 1),
                    1.2,
                    false,
                    1,
                    f.settings(),
                    null,
                    new Peak(height, height, null),
                    Handling.UNKNOWN,
                    ""));
        }
        NextFlight next = next("tonight", 2, 1500.0, 1, 0.0026);
        Answer<CeilingModel> heights = CeilingModel.of(flights, next.settings(), Progress.NONE);

        ExpectedFlight expected = known(ExpectedFlight.of("Teasel", flights, next, heights));
        assertThat(expected.peak()).isInstanceOf(Answer.Known.class);
        ExpectedFlight.PeakHeight peak = ((Answer.Known<ExpectedFlight.PeakHeight>) expected.peak()).value();
        assertThat(peak.heightM()).isCloseTo(7, within(0.4));
        assertThat(peak.bandM().holds(7)).isTrue();
        assertThat(expected.sentences(METRIC).get(0))
                .matches("About \\d+:\\d\\d \\(90 % band \\d+:\\d\\d to \\d+:\\d\\d\\), from 12 flights of Teasel\\.");
        assertThat(expected.sentences(METRIC).get(1)).startsWith("Peak about ").endsWith("from 12 flights.");

        NextFlight high = next("tonight", 2, 1500.0, 1, 0.0040);
        assertThat(known(ExpectedFlight.of("Teasel", flights, high, heights)).peak())
                .isInstanceOf(Answer.CannotTell.class);
        NextFlight unknown = next("tonight", 2, null, 1, null);
        ExpectedFlight open = known(ExpectedFlight.of("Teasel", flights, unknown, heights));
        assertThat(open.sentences(METRIC))
                .contains(
                        "The peak cannot be told without the launch torque.",
                        "12 flights could not be scaled to these turns or this air.");
    }
}
