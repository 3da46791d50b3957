package org.rafterbook.ui.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class KeysTest {

    private final Keys keys = new Keys(new Errors());

    @Test
    void aKeyIsDealtOnce() {
        keys.on("P", "Wing position", () -> {});
        assertThatThrownBy(() -> keys.on("p", "Propeller", () -> {})).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aForgottenSettingGivesItsLetterBack() {
        keys.forget(keys.on("P", "Wing position", () -> {}));
        assertThat(keys.find("P")).isNull();
        keys.on("P", "Propeller", () -> {});
    }

    @Test
    void aDisabledActionIsNotRun() {
        AtomicInteger runs = new AtomicInteger();
        Action action = keys.on("S", "Start", runs::incrementAndGet);
        action.enabledProperty().set(false);
        action.run();
        assertThat(runs).hasValue(0);
    }

    @Test
    void theInstantOfThePressIsHandedOn() {
        Press[] seen = new Press[1];
        Action action = keys.onPress("Space", "Start the watch", press -> seen[0] = press);
        Press press = Press.now();
        action.run(press);
        assertThat(seen[0]).isSameAs(press);
    }
}
