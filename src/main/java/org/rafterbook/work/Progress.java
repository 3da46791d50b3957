package org.rafterbook.work;

/** What a job calls to tell how far it is and to learn that it should stop. */
public interface Progress {

    /** Tells how far the work is ("128 of 200 versions") and stops the job if it was cancelled. */
    void step(long done, long total, String of);

    /** Throws {@link java.util.concurrent.CancellationException} if the job was cancelled. */
    void check();

    /** Whether the job was cancelled, for numerics that take a flag instead of an exception. */
    boolean cancelled();

    /** Progress nobody watches and nobody cancels. */
    static Progress none() {
        return new Steps(step -> {});
    }
}
