package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StepTest {

    @Test
    void aStepIsToldInThingsASharePlainly() {
        assertThat(new Step(128, 200, "versions").sentence()).isEqualTo("128 of 200 versions");
        assertThat(new Step(7, 0, "rows").sentence()).isEqualTo("7 rows");
        assertThat(new Step(79, 100, Step.PERCENT).sentence()).isEqualTo("79 %");
    }
}
