package org.rafterbook.ui.action;

import java.util.LinkedHashSet;
import java.util.Set;
import javafx.beans.value.ObservableValue;

/**
 * Parts of a screen that show what is in a view model. When something they show changes, each is shown anew in a turn of
 * its own on the JavaFX thread, in the order asked for, so that keys and frames come in between; asked for again before
 * its turn, it is shown once.
 *
 * <pre>
 * parts.add(chart::show, model.axisProperty(), model.equalTurnsProperty());
 * </pre>
 */
public final class Parts {

    private final FxBackground background;
    private final Set<Runnable> waiting = new LinkedHashSet<>();
    private boolean underWay;

    public Parts(FxBackground background) {
        this.background = background;
    }

    /** Shows the part now, and again whenever one of these changes. */
    public void add(Runnable show, ObservableValue<?>... of) {
        show.run();
        for (ObservableValue<?> one : of) {
            one.addListener((value, before, now) -> ask(show));
        }
    }

    /** Shows this part again when its turn comes. */
    public void ask(Runnable show) {
        waiting.add(show);
        if (!underWay) {
            underWay = true;
            background.later(this::next);
        }
    }

    private void next() {
        Runnable first = waiting.iterator().next();
        waiting.remove(first);
        try {
            first.run();
        } finally {
            underWay = !waiting.isEmpty();
            if (underWay) {
                background.later(this::next);
            }
        }
    }
}
