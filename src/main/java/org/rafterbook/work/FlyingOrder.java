package org.rafterbook.work;

import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.FlightLine;

/** The order in which flights were flown, the logbook's own: by day, session and place in the session. */
final class FlyingOrder {

    /** One flight in flying order: there already, or imported. */
    record Step(@Nullable FlightLine line, @Nullable ImportedFlight imported) {}

    static final Comparator<Step> OF_STEPS = Comparator.comparing(
                    (Step s) -> session(s).localDate())
            .thenComparing(s -> session(s).id())
            .thenComparingInt(FlyingOrder::ordinal);

    private FlyingOrder() {}

    private static Session session(Step step) {
        return step.line() != null ? step.line().session() : Objects.requireNonNull(step.imported()).session;
    }

    private static int ordinal(Step step) {
        return step.line() != null ? step.line().flight().ordinal() : Objects.requireNonNull(step.imported()).ordinal;
    }
}
