package org.rafterbook.review;

import java.util.Comparator;

/** The order in which values of a setting are listed. */
final class LevelOrder {

    /** Numbers ascending, then words. */
    static final Comparator<Level> NUMBERS_FIRST = Comparator.comparing(
                    Level::value, Comparator.nullsLast(Double::compare))
            .thenComparing(Level::key);

    private LevelOrder() {}
}
