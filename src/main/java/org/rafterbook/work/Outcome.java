package org.rafterbook.work;

/** Receives what becomes of a job, always on the executor it was submitted with; exactly one of the ends is called. */
public interface Outcome<T> {

    /** The job came to its end with this value. */
    void done(T value);

    /** The job failed. */
    void failed(Throwable failure);

    /** The job was cancelled; its value, if it still came to one, is dropped. */
    default void cancelled() {}

    /** The job is this far; steps that come faster than they are received are passed over. */
    default void at(Step step) {}
}
