package org.rafterbook.ui.action;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;
import org.rafterbook.work.Background;
import org.rafterbook.work.Job;
import org.rafterbook.work.Outcome;
import org.rafterbook.work.Running;
import org.rafterbook.work.Step;

/**
 * Background work of the window: the job runs off the JavaFX thread, what follows runs on it, and failures go to the
 * {@link Errors} unless somebody else takes them.
 *
 * <pre>
 * background.call(progress -&gt; work.review(model, progress)).in(slot).showing(progressRule).then(this::show);
 * </pre>
 */
public final class FxBackground {

    private final Background background;
    private final Executor fx;
    private final Errors errors;

    public FxBackground(Background background, Executor fx, Errors errors) {
        this.background = background;
        this.fx = fx;
        this.errors = errors;
    }

    /** Delivers through the JavaFX thread. */
    public static FxBackground on(Background background, Errors errors) {
        return new FxBackground(background, Platform::runLater, errors);
    }

    /** Runs everything before {@link Call#then} returns: for tests and pictures. */
    public static FxBackground onTheSpot(Errors errors) {
        return new FxBackground(Background.onTheSpot(), Runnable::run, errors);
    }

    /** Prepares a call; {@link Call#then} starts it. */
    public <T> Call<T> call(Job<? extends T> job) {
        return new Call<>(job);
    }

    /** Where at most one job runs: a newer one cancels the one before. */
    public static final class Slot {

        private @Nullable Running running;

        /** Cancels what runs here. */
        public void cancel() {
            if (running != null) {
                running.cancel();
            }
        }
    }

    /** Shows how far a job is, such as the progress rule of the kit; each call names the job it is about. */
    public interface Display {

        /** The job has been started. */
        void started(Running running);

        /** The job is this far. */
        void at(Running running, Step step);

        /** The job has ended. */
        void ended(Running running);
    }

    /** A job under a name that exists before the job does, so that its first step can already be told. */
    private static final class Handle implements Running {

        private @Nullable Running running;

        @Override
        public void cancel() {
            if (running != null) {
                running.cancel();
            }
        }

        @Override
        public boolean ended() {
            return running != null && running.ended();
        }
    }

    /** A job on its way to being started. */
    public final class Call<T> {

        private final Job<? extends T> job;
        private @Nullable Slot slot;
        private @Nullable Display display;
        private Consumer<Throwable> failed = errors::show;
        private Runnable cancelled = () -> {};

        private Call(Job<? extends T> job) {
            this.job = job;
        }

        /** Cancels what ran in the slot before. */
        public Call<T> in(Slot where) {
            slot = where;
            return this;
        }

        /** Shows progress there. */
        public Call<T> showing(Display where) {
            display = where;
            return this;
        }

        /** Takes the failure instead of the error bar, for a message beside a field. */
        public Call<T> otherwise(Consumer<Throwable> taker) {
            failed = taker;
            return this;
        }

        /** Called when the job was cancelled. */
        public Call<T> ifCancelled(Runnable taker) {
            cancelled = taker;
            return this;
        }

        /** Starts the job; the taker gets its value on the JavaFX thread. */
        public Running then(Consumer<? super T> taker) {
            if (slot != null) {
                slot.cancel();
            }
            Handle handle = new Handle();
            handle.running = background.submit(job, fx, new Outcome<T>() {
                @Override
                public void done(T value) {
                    end();
                    errors.guard(() -> taker.accept(value));
                }

                @Override
                public void failed(Throwable failure) {
                    end();
                    errors.guard(() -> failed.accept(failure));
                }

                @Override
                public void cancelled() {
                    end();
                    errors.guard(cancelled);
                }

                @Override
                public void at(Step step) {
                    if (display != null) {
                        display.at(handle, step);
                    }
                }

                private void end() {
                    if (display != null) {
                        display.ended(handle);
                    }
                }
            });
            if (slot != null) {
                slot.running = handle;
            }
            if (display != null && !handle.ended()) {
                display.started(handle);
            }
            return handle;
        }
    }
}
