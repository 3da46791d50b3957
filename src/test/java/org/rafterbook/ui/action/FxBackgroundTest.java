package org.rafterbook.ui.action;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.WaitingBackground;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Job;
import org.rafterbook.work.Running;
import org.rafterbook.work.Step;

@FxTest
class FxBackgroundTest {

    private final Errors errors = new Errors();
    private final List<String> heard = new ArrayList<>();

    @Test
    void aFailureGoesToTheErrorBarUnlessSomebodyTakesIt() {
        FxBackground background = FxBackground.onTheSpot(errors);
        background
                .<String>call(progress -> {
                    throw UserError.badInput("Line 7 has no date.");
                })
                .otherwise(failure -> heard.add(String.valueOf(failure.getMessage())))
                .then(heard::add);
        assertThat(heard).containsExactly("Line 7 has no date.");
        assertThat(errors.shownProperty().get()).isNull();
        background
                .<String>call(progress -> {
                    throw UserError.badInput("Line 7 has no date.");
                })
                .then(heard::add);
        assertThat(errors.shownProperty().get()).isNotNull();
    }

    @Test
    void anEntryThatIsKeptTakesTheRefusalOfTheOneBeforeAway() {
        FxBackground background = FxBackground.onTheSpot(errors);
        background.call(AN_ERROR).entry().then(value -> {});
        background.call(progress -> "read").then(value -> {});
        assertThat(errors.shownProperty().get()).as("only read").isNotNull();
        background.call(progress -> "kept").entry().then(value -> {});
        assertThat(errors.shownProperty().get()).isNull();
        background.call(AN_ERROR).then(value -> {});
        background.call(progress -> "kept").entry().then(value -> {});
        assertThat(errors.shownProperty().get()).as("no entry failed").isNotNull();
    }

    private static final Job<String> AN_ERROR = progress -> {
        throw UserError.badInput("crossed.json: the ribs cross.");
    };

    @Test
    void whatFollowsMayThrowWithoutHarm() {
        FxBackground.onTheSpot(errors).call(progress -> "v13").then(value -> {
            throw new IllegalStateException(value);
        });
        assertThat(errors.shownProperty().get()).isNotNull();
    }

    @Test
    void aNewerJobInASlotCancelsTheOneBefore() {
        WaitingBackground waiting = new WaitingBackground();
        FxBackground background = new FxBackground(waiting, Runnable::run, errors);
        FxBackground.Slot slot = new FxBackground.Slot();
        background.call(progress -> "old").in(slot).then(heard::add);
        background.call(progress -> "new").in(slot).then(heard::add);
        waiting.run();
        assertThat(heard).containsExactly("new");
    }

    @Test
    void theDisplayHearsOfStartStepsAndEndUnderOneName() {
        WaitingBackground waiting = new WaitingBackground();
        List<Running> names = new ArrayList<>();
        FxBackground.Display display = new FxBackground.Display() {
            @Override
            public void started(Running running) {
                names.add(running);
                heard.add("started");
            }

            @Override
            public void at(Running running, Step step) {
                names.add(running);
                heard.add(step.sentence());
            }

            @Override
            public void ended(Running running) {
                names.add(running);
                heard.add("ended");
            }
        };
        new FxBackground(waiting, Runnable::run, errors)
                .call(progress -> {
                    progress.step(1, 2, "flights");
                    return "all";
                })
                .showing(display)
                .then(heard::add);
        waiting.run();
        assertThat(heard).containsExactly("started", "1 of 2 flights", "ended", "all");
        assertThat(names).hasSize(3).allMatch(name -> name == names.get(0));
    }

    @Test
    void anEntryBeginsWhenTheOneBeforeHasEnded() {
        WaitingBackground waiting = new WaitingBackground();
        FxBackground background = new FxBackground(waiting, Runnable::run, errors);
        background.call(progress -> "launch").entry().then(heard::add);
        background
                .<String>call(progress -> {
                    throw UserError.couldNot("The disk is full.", null);
                })
                .entry()
                .otherwise(failure -> heard.add("refused"))
                .then(heard::add);
        background.call(progress -> "undo").entry().then(heard::add);
        background.call(progress -> "reading").then(heard::add);
        assertThat(waiting.count()).as("the first entry and what is no entry").isEqualTo(2);
        waiting.run();
        assertThat(heard).containsExactly("launch", "reading", "refused", "undo");
    }

    @Test
    void quietComesWhenTheLastCallHasEnded() {
        WaitingBackground waiting = new WaitingBackground();
        FxBackground background = new FxBackground(waiting, Runnable::run, errors);
        background.call(progress -> "launch").entry().then(heard::add);
        background
                .call(progress -> "landing")
                .entry()
                .then(kept -> background.call(progress -> "read again").then(heard::add));
        background.whenQuiet(() -> heard.add("quiet"));
        waiting.run();
        assertThat(heard).containsExactly("launch", "read again", "quiet");
        background.whenQuiet(() -> heard.add("still quiet"));
        assertThat(heard).endsWith("still quiet");
    }

    @Test
    void anEntryCancelledWhileItWaitsIsNotMade() {
        WaitingBackground waiting = new WaitingBackground();
        FxBackground background = new FxBackground(waiting, Runnable::run, errors);
        background.call(progress -> "launch").entry().then(heard::add);
        background
                .call(progress -> "import")
                .entry()
                .ifCancelled(() -> heard.add("cancelled"))
                .then(heard::add)
                .cancel();
        waiting.run();
        assertThat(heard).containsExactly("launch", "cancelled");
    }
}
