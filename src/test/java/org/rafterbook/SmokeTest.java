package org.rafterbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SmokeTest {
    @Test
    void theBuildRunsTests() {
        assertThat(1 + 1).isEqualTo(2);
    }
}
