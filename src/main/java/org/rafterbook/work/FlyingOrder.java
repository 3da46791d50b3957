package org.rafterbook.work;

import java.util.Comparator;
import java.util.Objects;
import org.rafterbook.flight.Session;

/** The order in which flights were flown, the logbook's own: by day, session and place in the session. */
final class FlyingOrder {

    static final Comparator<ImportModel.Step> OF_STEPS = Comparator.comparing(
                    (ImportModel.Step s) -> session(s).localDate())
            .thenComparing(s -> session(s).id())
            .thenComparingInt(FlyingOrder::ordinal);

    private FlyingOrder() {}

    private static Session session(ImportModel.Step step) {
        return step.line() != null ? step.line().session() : Objects.requireNonNull(step.imported()).session;
    }

    private static int ordinal(ImportModel.Step step) {
        return step.line() != null ? step.line().flight().ordinal() : Objects.requireNonNull(step.imported()).ordinal;
    }
}
