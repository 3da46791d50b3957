package org.rafterbook.review;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What plans for one model go by beside its flights.
 *
 * @param now the settings as they are now
 * @param markedGood combinations of settings the flyer marked good, latest first
 * @param margin the stability margin as an axis, with the wished range as its limits
 * @param marginMovers settings that move the margin
 * @param differencePercent the difference in time the flyer cares about, per cent
 */
public record PlanWishes(
        Map<String, Level> now,
        List<Map<String, Level>> markedGood,
        SettingInfo margin,
        Set<String> marginMovers,
        double differencePercent) {

    /** The difference taken where the flyer named none. */
    public static final double USUAL_DIFFERENCE_PERCENT = 4;

    public PlanWishes {
        now = Map.copyOf(now);
        markedGood = List.copyOf(markedGood);
        marginMovers = Set.copyOf(marginMovers);
    }
}
