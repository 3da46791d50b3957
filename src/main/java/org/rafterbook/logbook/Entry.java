package org.rafterbook.logbook;

import org.jspecify.annotations.Nullable;

/** What one action of the flyer writes: all of it is kept, or nothing. */
@FunctionalInterface
public interface Entry<T extends @Nullable Object> {

    /** Runs on the writer's thread; the writer must not be kept. */
    T make(Writer writer);
}
