package org.rafterbook.ui.hall;

import java.util.ArrayDeque;
import java.util.Deque;
import org.rafterbook.ui.NoDialogs;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.look.Look;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.work.Background;

/** Tools whose background answers are held back while they are {@link #slow}, and arrive when the test says so. */
final class LateAnswers {

    private final Deque<Runnable> onTheWay = new ArrayDeque<>();
    private final Tools tools;
    private boolean slow;

    LateAnswers() {
        Errors errors = new Errors();
        FxBackground background = new FxBackground(Background.onTheSpot(), this::answer, errors);
        tools = new Tools(errors, new Look(), background, new NoDialogs());
    }

    Tools tools() {
        return tools;
    }

    private void answer(Runnable answer) {
        if (slow) {
            onTheWay.add(answer);
        } else {
            answer.run();
        }
    }

    void slow() {
        slow = true;
    }

    /** The oldest answer arrives, the others still wait. */
    void arriveOne() {
        onTheWay.remove().run();
    }

    /** How many are still on the way. */
    int waiting() {
        return onTheWay.size();
    }

    /** All arrive, and from now on at once. */
    void arrive() {
        slow = false;
        while (!onTheWay.isEmpty()) {
            onTheWay.remove().run();
        }
    }
}
