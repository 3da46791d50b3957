package org.rafterbook.ui.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LabelsTest {

    private final Labels labels = new Labels();

    @Test
    void wordsThatWouldPrintOverOthersAreMovedOnUntilTheyDoNot() {
        Labels.Box wished = new Labels.Box(10, 0, 40, 14);
        assertThat(labels.place(wished, 0, 14)).isEqualTo(wished);
        assertThat(labels.place(wished, 0, 14)).isEqualTo(new Labels.Box(10, 14, 40, 28));
        assertThat(labels.place(new Labels.Box(20, 2, 60, 16), 8, 0))
                .as("clear of both lines")
                .isEqualTo(new Labels.Box(44, 2, 84, 16));
    }

    @Test
    void aPlaceKeptForWordsThatCannotMoveIsKeptFree() {
        labels.take(new Labels.Box(0, 0, 50, 14));
        assertThat(labels.place(new Labels.Box(30, 5, 60, 19), 10, 0)).isEqualTo(new Labels.Box(50, 5, 80, 19));
    }
}
