package org.rafterbook.review;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Whether a claim was tested by a session flown after it could first be made.
 *
 * @param laterDay first later session that holds both values; null while the claim is to be confirmed
 * @param sameDay the same-day comparison from the later sessions alone; null where their flights differ in something else
 */
public record Confirmation(
        @Nullable LocalDate laterDay, @Nullable SameDayResult sameDay) {

    public boolean isToBeConfirmed() {
        return laterDay == null;
    }
}
