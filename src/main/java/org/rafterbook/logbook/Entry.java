package org.rafterbook.logbook;

/** What one action of the flyer writes, with an answer: all of it is kept, or nothing. */
@FunctionalInterface
public interface Entry<T> {

    /** Runs on the writer's thread; the writer must not be kept. */
    T make(Writer writer);
}
