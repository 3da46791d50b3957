package org.rafterbook.ui.action;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.rafterbook.ui.FxTest;
import org.rafterbook.units.UserError;

@FxTest
class ErrorsTest {

    private final Errors errors = new Errors();
    private final List<LogRecord> logged = new ArrayList<>();
    private final Logger logger = Logger.getLogger(Errors.class.getName());
    private final Handler ear = new Handler() {
        @Override
        public void publish(LogRecord record) {
            logged.add(record);
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    };

    @BeforeEach
    void listen() {
        logger.setUseParentHandlers(false);
        logger.addHandler(ear);
    }

    @AfterEach
    void stopListening() {
        logger.removeHandler(ear);
        logger.setUseParentHandlers(true);
    }

    @Test
    void anActionThatThrowsIsShownAndTheNextOneWorks() {
        Keys keys = new Keys(errors);
        List<String> done = new ArrayList<>();
        Action broken = keys.on("B", "Break", () -> {
            throw new IllegalStateException("boom");
        });
        Action sound = keys.on("S", "Sound", () -> done.add("sound"));
        broken.run();
        sound.run();
        assertThat(done).containsExactly("sound");
        assertThat(errors.shownProperty().get()).isNotNull();
        assertThat(logged).hasSize(1);
    }

    @Test
    void aUserErrorIsShownWithItsOwnSentence() {
        errors.guard(() -> {
            throw UserError.couldNot("The disk is full.", null);
        });
        Problem shown = errors.shownProperty().get();
        assertThat(shown).isNotNull();
        assertThat(shown.what()).isEqualTo("The disk is full.");
    }

    @Test
    void whatFailsAtEveryFrameIsLoggedOnce() {
        for (int frame = 0; frame < 100; frame++) {
            errors.guard(ErrorsTest::fail);
        }
        assertThat(logged).hasSize(1);
    }

    private static void fail() {
        throw new IllegalStateException("each frame");
    }

    @Test
    void anErrorOfTheMachineIsShownToo() {
        errors.guard(() -> {
            throw new StackOverflowError();
        });
        assertThat(errors.shownProperty().get()).isNotNull();
    }
}
