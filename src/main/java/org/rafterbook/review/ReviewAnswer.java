package org.rafterbook.review;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the review says about one model.
 *
 * @param model the model's name
 * @param changes its changes, in the order in which they were first made
 * @param season scatter and trend; null where too little was flown, or before it is computed
 * @param flightsExact flights whose time counts as it is
 * @param flightsAtLeast flights that count as at least this long
 * @param flightsLeftOut flights that do not count
 * @param sessions sessions with flights that count
 * @param claims how many changes were judged
 * @param remarks what else is said of the season as a whole, and what is needed next
 * @param farOff clean flights that lie so far off that they hardly count
 */
public record ReviewAnswer(
        String model,
        List<ChangeEffect> changes,
        @Nullable SeasonFigures season,
        int flightsExact,
        int flightsAtLeast,
        int flightsLeftOut,
        int sessions,
        Claims claims,
        List<String> remarks,
        List<FarOff> farOff) {

    public ReviewAnswer {
        changes = List.copyOf(changes);
        remarks = List.copyOf(remarks);
        farOff = List.copyOf(farOff);
    }

    /** The same answer with these changes. */
    ReviewAnswer with(List<ChangeEffect> others) {
        return new ReviewAnswer(
                model, others, season, flightsExact, flightsAtLeast, flightsLeftOut, sessions, claims, remarks, farOff);
    }
}
