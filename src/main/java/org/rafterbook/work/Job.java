package org.rafterbook.work;

/** A piece of long work: it computes one value, tells how far it is and stops when asked to. */
@FunctionalInterface
public interface Job<T> {

    /**
     * Computes the value; called on a background thread.
     *
     * @throws java.util.concurrent.CancellationException as thrown by {@code progress}, when it was cancelled
     */
    T run(Progress progress) throws Exception;
}
