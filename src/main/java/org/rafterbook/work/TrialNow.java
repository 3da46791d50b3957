package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Trial;
import org.rafterbook.review.Level;
import org.rafterbook.review.TrialPlan;
import org.rafterbook.review.TrialState;

/**
 * An open trial as the Hall goes on with it: flights done and left, never a time.
 *
 * @param a the first value, SI
 * @param b the second value, SI
 * @param versionA the version with the first value and all else as the trial has it; null where it was not rigged yet
 * @param versionB the same with the second value
 * @param set whether the model stands at the next value and in all else as the trial has it: its flight fills the place
 * @param counts whether a flight launched now fills a place of the trial: the next one, or where the flyer has turned the
 *     trial to its other value one of that value
 */
public record TrialNow(
        Trial trial,
        TrialPlan plan,
        TrialState state,
        Setting a,
        Setting b,
        @Nullable Version versionA,
        @Nullable Version versionB,
        boolean set,
        boolean counts) {

    /** The version of a side, null where it was not rigged yet. */
    public @Nullable Version version(TrialPlan.Side side) {
        return side == TrialPlan.Side.A ? versionA : versionB;
    }

    /** Such as "wing edge 146 mm". */
    public String words(TrialPlan.Side side) {
        Level level = plan.level(side);
        return plan.setting().label() + " " + plan.setting().show(level);
    }

    /** The side to fly next, null where all are flown. */
    public TrialPlan.@Nullable Side nextSide() {
        int next = state.nextSlot();
        return next < 0 ? null : state.slots().get(next).side();
    }
}
