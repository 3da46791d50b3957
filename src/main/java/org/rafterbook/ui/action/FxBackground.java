package org.rafterbook.ui.action;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Scene;
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
 * background.call(progress -&gt; desk.launch(flight)).entry().then(kept -&gt; {});
 * </pre>
 */
public final class FxBackground {

    private final Background background;
    private final Executor fx;
    private final BiConsumer<Scene, Runnable> frames;
    private final Errors errors;
    private final Lane entries = new Lane();
    private final List<Runnable> whenQuiet = new ArrayList<>();
    private @Nullable Problem refusedEntry;
    private int open;

    /** Without frames to wait for: what is to follow one follows at once. */
    public FxBackground(Background background, Executor fx, Errors errors) {
        this(background, fx, (scene, what) -> what.run(), errors);
    }

    private FxBackground(Background background, Executor fx, BiConsumer<Scene, Runnable> frames, Errors errors) {
        this.background = background;
        this.fx = fx;
        this.frames = frames;
        this.errors = errors;
    }

    /** Delivers through the JavaFX thread. */
    public static FxBackground on(Background background, Errors errors) {
        return new FxBackground(background, Platform::runLater, FxBackground::afterPulse, errors);
    }

    /** Runs everything before {@link Call#then} returns: for tests and pictures. */
    public static FxBackground onTheSpot(Errors errors) {
        return new FxBackground(Background.onTheSpot(), Runnable::run, errors);
    }

    /** Prepares a call; {@link Call#then} starts it. */
    public <T> Call<T> call(Job<? extends T> job) {
        return new Call<>(job);
    }

    /** Brings it to the JavaFX thread, from whichever thread. */
    public void later(Runnable what) {
        fx.execute(() -> errors.guard(what));
    }

    /**
     * Does it once the next frame of the scene is laid out: what may wait until the rest is on the screen. At once where
     * there is no scene.
     */
    public void afterFrame(@Nullable Scene scene, Runnable what) {
        if (scene == null) {
            errors.guard(what);
        } else {
            frames.accept(scene, () -> errors.guard(what));
        }
    }

    private static void afterPulse(Scene scene, Runnable what) {
        Runnable[] once = new Runnable[1];
        once[0] = () -> {
            scene.removePostLayoutPulseListener(once[0]);
            Platform.runLater(what);
        };
        scene.addPostLayoutPulseListener(once[0]);
        Platform.requestNextPulse();
    }

    /** Does it once no call is open any more: for closing what they work on. */
    public void whenQuiet(Runnable what) {
        whenQuiet.add(what);
        tellIfQuiet();
    }

    private void tellIfQuiet() {
        if (open == 0) {
            List<Runnable> waiting = List.copyOf(whenQuiet);
            whenQuiet.clear();
            waiting.forEach(errors::guard);
        }
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
        private boolean cancelled;

        @Override
        public void cancel() {
            cancelled = true;
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
        private boolean entry;
        private Consumer<Throwable> failed = this::show;
        private Runnable cancelled = () -> {};

        private Call(Job<? extends T> job) {
            this.job = job;
        }

        /** Makes an entry in the logbook: it begins when those before it have ended, so that none overtakes another. */
        public Call<T> entry() {
            entry = true;
            return this;
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
            Handle handle = new Handle();
            if (slot != null) {
                slot.cancel();
                slot.running = handle;
            }
            open++;
            if (entry) {
                entries.add(() -> start(handle, taker));
            } else {
                start(handle, taker);
            }
            return handle;
        }

        private void start(Handle handle, Consumer<? super T> taker) {
            if (handle.cancelled) {
                end(cancelled);
                return;
            }
            handle.running = background.submit(job, fx, new Outcome<T>() {
                @Override
                public void done(T value) {
                    if (entry) {
                        forgetRefusal();
                    }
                    close(() -> taker.accept(value));
                }

                @Override
                public void failed(Throwable failure) {
                    close(() -> failed.accept(failure));
                }

                @Override
                public void cancelled() {
                    close(cancelled);
                }

                @Override
                public void at(Step step) {
                    if (display != null) {
                        display.at(handle, step);
                    }
                }

                private void close(Runnable what) {
                    if (display != null) {
                        display.ended(handle);
                    }
                    end(what);
                }
            });
            if (display != null && !handle.ended()) {
                display.started(handle);
            }
        }

        private void show(Throwable failure) {
            errors.show(failure);
            if (entry) {
                refusedEntry = errors.shownProperty().get();
            }
        }

        /** An entry that was kept makes the refusal of the one before an old story. */
        private void forgetRefusal() {
            if (refusedEntry != null && refusedEntry == errors.shownProperty().get()) {
                errors.clear();
            }
            refusedEntry = null;
        }

        private void end(Runnable what) {
            errors.guard(what);
            open--;
            if (entry) {
                entries.next();
            }
            tellIfQuiet();
        }
    }
}
