package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.review.TrialPlan.Side;
import org.rafterbook.review.TrialState.TrialFlight;
import org.rafterbook.units.UserError;

class TrialPlanTest {

    private static final SettingInfo WING = new SettingInfo("wing.edge", "wing", "mm", 1.0, 0.2, 100.0, 180.0);
    private static final Level A = Level.number(149);
    private static final Level B = Level.number(146);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 99, -7, 1_767_222_000_000L})
    void everyPairHoldsBothValues(long seed) {
        TrialPlan plan = TrialPlan.draw(WING, A, B, 5, seed);

        assertThat(plan.order()).hasSize(10);
        for (int pair = 0; pair < 5; pair++) {
            assertThat(plan.order().subList(2 * pair, 2 * pair + 2))
                    .as("seed %d", seed)
                    .containsExactlyInAnyOrder(Side.A, Side.B);
        }
        assertThat(TrialPlan.draw(WING, A, B, 5, seed)).isEqualTo(plan);
        assertThat(TrialPlan.kept(WING, A, B, 5, seed, plan.drawnOrder())).isEqualTo(plan);
    }

    @Test
    void theDrawIsFair() {
        long aFirst = LongStream.range(0, 2000)
                .filter(seed -> TrialPlan.draw(WING, A, B, 2, seed).order().get(0) == Side.A)
                .count();
        long same = LongStream.range(0, 2000)
                .filter(seed -> {
                    List<Side> order = TrialPlan.draw(WING, A, B, 2, seed).order();
                    return order.get(0) == order.get(2);
                })
                .count();

        // Four standard deviations of 2000 fair throws.
        assertThat(aFirst).isBetween(910L, 1090L);
        assertThat(same).isBetween(910L, 1090L);
    }

    @Test
    void whatIsNoTrialIsRefused() {
        assertThatThrownBy(() -> TrialPlan.draw(WING, A, Level.number(149), 3, 1))
                .isInstanceOf(UserError.class)
                .hasMessage("A trial compares two values of wing; both are 149 mm.");
        assertThatThrownBy(() -> TrialPlan.draw(WING, A, B, 1, 1))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("2 to 30 flights");
        assertThatThrownBy(() -> TrialPlan.kept(WING, A, B, 3, 1, "AABBAA"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aModelHasOneTrialOpen() {
        TrialPlan open = TrialPlan.draw(WING, A, B, 3, 1);

        TrialPlan.requireNoneOpen("Teasel", null);
        assertThatThrownBy(() -> TrialPlan.requireNoneOpen("Teasel", open))
                .isInstanceOf(UserError.class)
                .hasMessage("Teasel has a trial open, wing at 149 or 146 mm. Fly it to its end, or end it, before the"
                        + " next one.");
    }

    @Test
    void itSaysWhatItIs() {
        TrialPlan plan = TrialPlan.draw(WING, A, B, 3, 1);

        assertThat(plan.title()).isEqualTo("Trial: wing at 149 or 146 mm");
        assertThat(plan.orderInWords())
                .isEqualTo("3 + 3 flights on one day, order drawn at the start; each pair holds both values.");
        assertThat(plan.judgedWhen()).isEqualTo("Judged when all 6 are flown, or when you end it.");
    }

    @Test
    void theStateFollowsTheFlights() {
        TrialPlan plan = TrialPlan.kept(WING, A, B, 2, 5, "ABBA");
        List<TrialFlight> flights = new ArrayList<>();

        assertThat(Objects.requireNonNull(TrialState.of(plan, flights).next())).isEqualTo(A);

        flights.add(new TrialFlight("f1", "s", A, true));
        flights.add(new TrialFlight("f2", "s", Level.number(150), true));
        flights.add(new TrialFlight("f3", "s", B, false));
        TrialState state = TrialState.of(plan, flights);
        assertThat(state.progress()).isEqualTo("1 of 4 flown");
        assertThat(state.nextSlot()).isEqualTo(1);
        assertThat(state.sentences())
                .containsExactly("Next: wing 146 mm.", "1 flight left out: its place is flown again.");

        flights.add(new TrialFlight("f4", "s", B, true));
        flights.add(new TrialFlight("f5", "s", A, true));
        state = TrialState.of(plan, flights);
        // The other value was taken first: its own slot is filled, the passed one is still to fly.
        assertThat(state.slots().get(3).flightId()).isEqualTo("f5");
        assertThat(state.nextSlot()).isEqualTo(2);
        assertThat(state.flown(Side.A)).isEqualTo(2);
        assertThat(state.left()).isEqualTo(1);
        assertThat(state.isComplete()).isFalse();

        flights.add(new TrialFlight("f6", "s", B, true));
        flights.add(new TrialFlight("f7", "s", B, true));
        state = TrialState.of(plan, flights);
        assertThat(state.isComplete()).isTrue();
        assertThat(state.next()).isNull();
        assertThat(state.extra()).isEqualTo(1);
        assertThat(state.sentences())
                .containsExactly(
                        "All 4 flights are flown: the trial is judged.",
                        "1 flight left out: its place is flown again.",
                        "1 flight beyond the plan; judged with the others.");
    }

    @Test
    void aPairFlownOnTwoDaysIsTold() {
        TrialPlan plan = TrialPlan.kept(WING, A, B, 2, 5, "ABBA");

        TrialState split = TrialState.of(
                plan, List.of(new TrialFlight("f1", "mon", A, true), new TrialFlight("f2", "tue", B, true)));
        TrialState whole = TrialState.of(
                plan,
                List.of(
                        new TrialFlight("f1", "mon", A, true),
                        new TrialFlight("f2", "mon", B, true),
                        new TrialFlight("f3", "tue", B, true)));

        assertThat(split.sentences())
                .contains("1 pair had its two values flown on different days and tells less for it.");
        assertThat(TrialState.of(
                                plan,
                                List.of(
                                        new TrialFlight("f1", "mon", A, true),
                                        new TrialFlight("f2", "tue", B, true),
                                        new TrialFlight("f3", "tue", B, true),
                                        new TrialFlight("f4", "wed", A, true)))
                        .sentences())
                .contains("2 pairs had their two values flown on different days and tell less for it.");
        assertThat(whole.sentences())
                .contains("Flown on 2 days; each pair was completed on one day, so the comparison holds.");
    }
}
