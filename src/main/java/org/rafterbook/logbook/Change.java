package org.rafterbook.logbook;

/** What one action of the flyer writes, without an answer: all of it is kept, or nothing. */
@FunctionalInterface
public interface Change {

    /** Runs on the writer's thread; the writer must not be kept. */
    void make(Writer writer);
}
