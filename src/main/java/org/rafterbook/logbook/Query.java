package org.rafterbook.logbook;

/** A question to the logbook, answered from one moment's state of it. */
@FunctionalInterface
public interface Query<T> {

    /** Runs on the caller's thread; the reader must not be kept. */
    T ask(Reader reader);
}
