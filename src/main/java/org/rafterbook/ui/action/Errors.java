package org.rafterbook.ui.action;

import java.util.Objects;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Where every error of the window ends: logged once, shown as a sentence in the bar under the head, and the window goes
 * on. It is also the JavaFX thread's handler for what nobody caught.
 */
public final class Errors implements Thread.UncaughtExceptionHandler {

    private final ReadOnlyObjectWrapper<@Nullable Problem> shown = new ReadOnlyObjectWrapper<>(this, "shown");
    private @Nullable String lastLogged;

    /** The problem to show, null for none. */
    public ReadOnlyObjectProperty<@Nullable Problem> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** Logs the failure and shows it; called on the JavaFX thread. */
    public void show(Throwable failure) {
        log(failure);
        shown.set(Problem.of(failure));
    }

    /** Shows a problem that is nobody's failure. */
    public void show(Problem problem) {
        shown.set(problem);
    }

    /** Takes the bar away. */
    public void clear() {
        shown.set(null);
    }

    /** Runs it; whatever it throws is shown instead of thrown. */
    public void guard(Runnable action) {
        try {
            action.run();
        } catch (RuntimeException | Error e) {
            show(e);
        }
    }

    @Override
    public void uncaughtException(Thread thread, Throwable failure) {
        show(failure);
    }

    private void log(Throwable failure) {
        // fetched when first needed: a logger at the start would delay the first frame
        Logger log = LoggerFactory.getLogger(Errors.class);
        if (failure instanceof UserError error) {
            log.info(error.sentence(), error.getCause());
            return;
        }
        // a timer that fails at every frame says so once
        String same = failure + " at " + (failure.getStackTrace().length == 0 ? "" : failure.getStackTrace()[0]);
        if (!Objects.equals(same, lastLogged)) {
            lastLogged = same;
            log.error("Not caught before it reached the window", failure);
        }
    }
}
