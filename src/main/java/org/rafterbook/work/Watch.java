package org.rafterbook.work;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.units.UserError;

/**
 * The running watch of one flight. Within one run of the program a time is the difference of two readings of the
 * monotonic clock; a flight found in the air at the start has only its wall clock, and its time says so.
 */
public final class Watch {

    /** Wall and monotonic clock may differ by this much before the flight says so, s. */
    public static final double DOUBT_S = 0.2;

    private static final double NANOS = 1e9;
    private static final double MILLIS = 1e3;

    private final Instant launchedAt;
    private final @Nullable Long startNanos;

    private Watch(Instant launchedAt, @Nullable Long startNanos) {
        this.launchedAt = launchedAt;
        this.startNanos = startNanos;
    }

    /** A watch started by a key: the reading of {@link System#nanoTime()} and the wall clock at its press. */
    public static Watch started(long nanoTime, Instant at) {
        return new Watch(at, nanoTime);
    }

    /** The watch of a flight whose launch another run of the program wrote down. */
    public static Watch found(Instant launchedAt) {
        return new Watch(launchedAt, null);
    }

    public Instant launchedAt() {
        return launchedAt;
    }

    /** True where only wall clocks tell the time. */
    public boolean byWallClock() {
        return startNanos == null;
    }

    /** Seconds since launch at a moment, never below zero. */
    public double elapsedS(long nanoTime, Instant at) {
        double elapsed = startNanos == null ? wallS(at) : (nanoTime - startNanos) / NANOS;
        return Math.max(0, elapsed);
    }

    /** The time of a landing at a moment; the watch itself runs on, so that a wrong stop can be taken back. */
    public Stop stop(long nanoTime, Instant at) {
        double duration = Math.round(elapsedS(nanoTime, at) * MILLIS) / MILLIS;
        if (startNanos == null) {
            if (duration <= 0) {
                throw UserError.badInput("This computer's clock stands before the launch; type the time instead.");
            }
            return new Stop(duration, DurationSource.WALL_CLOCK, at, null);
        }
        double apart = Math.round((duration - wallS(at)) * MILLIS) / MILLIS;
        return new Stop(
                Math.max(duration, 1 / MILLIS), DurationSource.WATCH, at, Math.abs(apart) > DOUBT_S ? apart : null);
    }

    private double wallS(Instant at) {
        return Duration.between(launchedAt, at).toNanos() / NANOS;
    }

    /**
     * A time as stopped.
     *
     * @param doubtS monotonic minus wall clock, s, where they differ by more than {@value #DOUBT_S} s
     */
    public record Stop(
            double durationS,
            DurationSource source,
            Instant at,
            @Nullable Double doubtS) {}
}
