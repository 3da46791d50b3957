package org.rafterbook.logbook;

/** A listener's place with the logbook, until it is given up. */
@FunctionalInterface
public interface Subscription {

    /** The listener hears nothing more. */
    void cancel();
}
