package org.rafterbook.work;

import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Version;
import org.rafterbook.review.BackChoice;

/**
 * A version to go back to, never for a best time.
 *
 * @param name the version's name, such as v8
 * @param against estimated effect of going there from what is set now; null where it is not offered for its estimate
 */
public record GoBack(
        Version version, String name, Set<BackChoice.Reason> reasons, BackChoice.@Nullable Estimated against) {

    /** Why it is offered, such as "last setting, well-behaved". */
    public String why() {
        return reasons.stream().sorted().map(BackChoice.Reason::word).collect(Collectors.joining(", "))
                + (against == null ? "" : ", " + against.words() + " against now");
    }
}
