package org.rafterbook.work;

/** A job that was submitted and may still be running. */
public interface Running {

    /** Asks the job to stop; what it still delivers is dropped. Does nothing once the job has ended. */
    void cancel();

    /** Whether the job has ended, in whatever way, and its end has been delivered. */
    boolean ended();
}
