package org.rafterbook.review;

import java.util.concurrent.CancellationException;

/** Told how far a long computation is, and says whether it is still wanted. */
@FunctionalInterface
public interface Progress {

    /** Nobody watches. */
    Progress NONE = share -> true;

    /**
     * Takes note of the share done.
     *
     * @param share 0 to 1
     * @return false where the result is no longer wanted
     */
    boolean at(double share);

    /** Takes note of the share done and stops where the result is no longer wanted. */
    default void report(double share) {
        if (!at(share)) {
            throw new CancellationException();
        }
    }

    /** The same computation as a part of a longer one. */
    default Progress part(double from, double to) {
        return share -> at(from + share * (to - from));
    }
}
