package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;

class OutcomeRuleTest {

    @ParameterizedTest
    @CsvSource({
        ",, EXACT",
        "CLEAN,, EXACT",
        "CLEAN, NO, EXACT",
        "CLEAN, YES, AT_LEAST",
        "CLEAN, CANNOT_SAY, AT_LEAST",
        "TOUCHED,, AT_LEAST",
        "TOUCHED, NO, EXACT",
        "TOUCHED, YES, AT_LEAST",
        "MID_AIR,, AT_LEAST",
        "MID_AIR, NO, EXACT",
        "HUNG,, AT_LEAST",
        "HUNG, CANNOT_SAY, AT_LEAST",
        "STEERED,, LEFT_OUT",
        "STEERED, NO, LEFT_OUT",
        "ABORTED,, EXACT"
    })
    void endingAndCutShortDecide(@Nullable Ending ending, @Nullable CutShort cutShort, Outcome.Kind expected) {
        assertThat(OutcomeRule.of(600, ending, cutShort).outcome().kind()).isEqualTo(expected);
    }

    @Test
    void steeredFlightIsAtLeastTheTimeOfItsFirstSteer() {
        Outcome outcome = new OutcomeRule(600.0, Ending.STEERED, null, 420.0, null, null, false).outcome();
        assertThat(outcome.kind()).isEqualTo(Outcome.Kind.AT_LEAST);
        assertThat(outcome.countsS()).isEqualTo(420);
    }

    @Test
    void abortedFlightFlaggedAtLaunchIsLeftOut() {
        assertThat(flagged(Ending.ABORTED, true, false).kind()).isEqualTo(Outcome.Kind.LEFT_OUT);
    }

    @Test
    void flagSetAfterTheTimeWasKnownDoesNotTakeTheFlightOut() {
        Outcome outcome = flagged(Ending.CLEAN, false, false);
        assertThat(outcome.kind()).isEqualTo(Outcome.Kind.EXACT);
        assertThat(outcome.reason()).isEqualTo("bad launch: flagged after its time was known, so it counts as flown");
    }

    @Test
    void flagOfAnUnknownMomentDoesNotTakeTheFlightOut() {
        assertThat(flagged(Ending.ABORTED, null, false).kind()).isEqualTo(Outcome.Kind.EXACT);
    }

    @Test
    void lateFlagTakesTheFlightOutWhereTheFlyerSaysSo() {
        Outcome outcome = flagged(Ending.CLEAN, false, true);
        assertThat(outcome.kind()).isEqualTo(Outcome.Kind.LEFT_OUT);
        assertThat(outcome.reason()).contains("after its time was known");
    }

    @Test
    void abortedWithATimeAndNoFlagIsOneOfAnUnknownMomentAndSaysSo() {
        Outcome counts = OutcomeRule.of(12, Ending.ABORTED, null).outcome();
        assertThat(counts.kind()).isEqualTo(Outcome.Kind.EXACT);
        assertThat(counts.reason()).isEqualTo("aborted: flagged at an unknown moment, so it counts as flown");
        assertThat(new OutcomeRule(12.0, Ending.ABORTED, null, null, null, null, true)
                        .outcome()
                        .kind())
                .isEqualTo(Outcome.Kind.LEFT_OUT);
    }

    @Test
    void flightWithoutATimeIsLeftOut() {
        Outcome outcome = new OutcomeRule(null, Ending.ABORTED, null, null, null, null, false).outcome();
        assertThat(outcome.kind()).isEqualTo(Outcome.Kind.LEFT_OUT);
    }

    private static Outcome flagged(Ending ending, @Nullable Boolean beforeTime, boolean lateFlagsCount) {
        return new OutcomeRule(600.0, ending, CutShort.NO, null, "bad launch", beforeTime, lateFlagsCount).outcome();
    }
}
