package org.rafterbook.stability;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;

/**
 * What gives a wished margin, or why nothing does.
 *
 * @param value the answer: a place aft of the origin or a height, m; a mass, kg; an area over the present one
 * @param airframe the airframe with the answer put in; its measured balance, if any, carried over to it
 * @param margin the margin it then has, fraction of the mean chord
 * @param reason why there is no answer; null where there is one
 */
public record PlacementAnswer(
        @Nullable Double value,
        @Nullable Airframe airframe,
        @Nullable Double margin,
        @Nullable String reason) {

    /** No answer; numbers below zero in the sentence get their minus sign. */
    static PlacementAnswer none(String reason) {
        return new PlacementAnswer(null, null, null, reason.replaceAll("-(?=\\d)", "\u2212"));
    }
}
