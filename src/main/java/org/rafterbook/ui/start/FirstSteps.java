package org.rafterbook.ui.start;

import java.util.function.Consumer;
import org.rafterbook.ui.action.Press;

/** What the first start leads to in the logbook that is open, or is being made. */
public interface FirstSteps {

    /** Adds a model by its name and goes on in the Hall. */
    void addModel(String name, Consumer<Throwable> refused);

    /** Times a flight without a model, from the press itself. */
    void justTime(Press press);

    /** Opens the flyer's own logbook again, after what was in the way is gone. */
    void tryAgain();
}
