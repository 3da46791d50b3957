package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandlingSummaryTest {

    /** Wilson's 95 % interval: Newcombe 1998, Statistics in Medicine 17:857, table I, method 3 (from memory of the source). */
    @ParameterizedTest
    @CsvSource({"81,263,.2553,.3662", "15,148,.0624,.1605", "0,20,0,.1611", "1,29,.0061,.1718"})
    void theScoreIntervalIsThePublishedOne(int count, int of, double low, double high) {
        Share share = Share.of(count, of, 0.95);

        assertThat(share.low()).isCloseTo(low, within(5e-5));
        assertThat(share.high()).isCloseTo(high, within(5e-5));
    }

    /** Exact 95 % limits of a Poisson count: the customary table after Garwood 1936 (from memory of the source). */
    @ParameterizedTest
    @CsvSource({"0,0,3.689", "1,.0253,5.572", "5,1.623,11.668", "10,4.795,18.390"})
    void theLimitsOfACountAreTheTabledOnes(int count, double low, double high) {
        Rate rate = Rate.of(count, 1, 0.95);

        assertThat(rate.low()).isCloseTo(low, within(6e-4));
        assertThat(rate.high()).isCloseTo(high, within(6e-4));
    }

    @Test
    void theScoreIntervalHoldsTheTruthOnAverage() {
        // Exact coverage, summed over all outcomes, averaged over true shares: Wilson's intervals hold their level on
        // average even with few tries.
        for (int n : new int[] {3, 6, 12}) {
            double covered = 0;
            int shares = 99;
            for (int k = 1; k <= shares; k++) {
                double p = k / 100.0;
                double probability = Math.pow(1 - p, n);
                for (int count = 0; count <= n; count++) {
                    Share share = Share.of(count, n);
                    covered += share.low() <= p && p <= share.high() ? probability / shares : 0;
                    probability *= (n - count) / (count + 1.0) * p / (1 - p);
                }
            }
            assertThat(covered).as("n %d", n).isBetween(0.87, 0.95);
        }
    }

    @Test
    void handlingIsCountedOnlyWhereSomebodyNotedIt() {
        List<ReviewFlight> flights = List.of(
                flight(1, 2.0, 5.1, new Handling(Handling.Recovery.YES, 2, null)),
                flight(2, 2.0, 5.4, new Handling(Handling.Recovery.NO, 0, 1)),
                flight(3, 2.5, 7.2, new Handling(Handling.Recovery.NOT_TRIED, null, null)),
                flight(4, 2.5, 7.9, Handling.UNKNOWN),
                flight(5, 2.5, null, new Handling(Handling.Recovery.YES, 1, null)));

        HandlingSummary all = HandlingSummary.of(flights);

        assertThat(all.recovered().counts()).isEqualTo("2 of 3");
        assertThat(all.stalls().count()).isEqualTo(3);
        assertThat(all.stalls().flights()).isEqualTo(3);
        assertThat(all.steers().flights()).isEqualTo(1);
        assertThat(HandlingSummary.bySetting(flights, "incidence").keySet())
                .containsExactly(Level.number(2.0), Level.number(2.5));
        assertThat(HandlingSummary.byMargin(flights, 2).keySet()).containsExactly(new Span(4, 6), new Span(6, 8));
        assertThat(HandlingSummary.byVersion(flights)).hasSize(2);
    }

    @Test
    void aValueWrittenInTwoWaysIsOne() {
        List<ReviewFlight> flights = List.of(
                flight(1, Level.word("2"), null, Handling.UNKNOWN),
                flight(2, Level.word("2.0"), null, Handling.UNKNOWN));

        assertThat(HandlingSummary.bySetting(flights, "incidence").values())
                .extracting(HandlingSummary::flights)
                .containsExactly(2);
    }

    @Test
    void nothingNotedIsSaidAsThat() {
        HandlingSummary none = HandlingSummary.of(List.of(flight(1, 2.0, null, Handling.UNKNOWN)));

        assertThat(none.isEmpty()).isTrue();
        assertThat(none.recovered().counts()).isEqualTo("not tried");
        assertThat(none.sentence()).isEqualTo("Nothing noted about handling on 1 flight.");
        assertThat(HandlingSummary.of(List.of()).sentence()).isEqualTo("Nothing noted about handling on 0 flights.");
    }

    @Test
    void theSentenceCarriesCountsAndIntervals() {
        List<ReviewFlight> flights = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Handling.Recovery recovery = i == 0 ? Handling.Recovery.NO : Handling.Recovery.YES;
            flights.add(flight(i, 2.0, null, new Handling(recovery, i, null)));
        }

        assertThat(HandlingSummary.of(flights).sentence())
                .isEqualTo("Upsets recovered: 3 of 4 (36 to 94 %). Stalls: 1.5 a flight (0.7 to 3), 6 in 4 flights.");
    }

    private static ReviewFlight flight(int order, double incidence, @Nullable Double margin, Handling handling) {
        return flight(order, Level.number(incidence), margin, handling);
    }

    private static ReviewFlight flight(int order, Level incidence, @Nullable Double margin, Handling handling) {
        ReviewFlight plain = ReviewFlight.of(
                "f" + order, "s", LocalDate.of(2026, 1, 20), order, Outcome.exact(600), Map.of("incidence", incidence));
        return new ReviewFlight(
                plain.id(),
                plain.riggingId(),
                plain.sessionId(),
                plain.sessionDate(),
                order,
                600,
                plain.outcome(),
                plain.motor(),
                null,
                false,
                1,
                plain.settings(),
                margin,
                Peak.UNKNOWN,
                handling,
                "");
    }

    @Test
    void aRareRateShowsThatItIsNotNothing() {
        assertThat(Rate.of(0, 74).words()).isEqualTo("0 a flight (0 to 0.04), 0 in 74 flights");
        assertThat(Rate.of(0, 400).words()).isEqualTo("0 a flight (0 to 0.007), 0 in 400 flights");
    }
}
