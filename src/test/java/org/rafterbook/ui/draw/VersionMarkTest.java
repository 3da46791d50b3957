package org.rafterbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class VersionMarkTest {

    @Test
    void versionsNextToEachOtherDifferInShapeAndColour() {
        for (int i = 0; i < 100; i++) {
            VersionMark one = VersionMark.dealt(i);
            VersionMark next = VersionMark.dealt(i + 1);
            assertThat(one.shape()).isNotEqualTo(next.shape());
            assertThat(one.colour()).isNotEqualTo(next.colour());
        }
    }

    @Test
    void fromTheSeventhOnThePairingTurnsByOne() {
        assertThat(VersionMark.dealt(0)).isEqualTo(new VersionMark(MarkShape.CIRCLE, 0));
        assertThat(VersionMark.dealt(5)).isEqualTo(new VersionMark(MarkShape.PLUS, 5));
        assertThat(VersionMark.dealt(6)).isEqualTo(new VersionMark(MarkShape.CIRCLE, 1));
        assertThat(VersionMark.dealt(12)).isEqualTo(new VersionMark(MarkShape.CIRCLE, 2));
    }

    @Test
    void thirtySixVersionsHaveMarksOfTheirOwn() {
        Set<VersionMark> marks = new HashSet<>();
        for (int i = 0; i < 36; i++) {
            marks.add(VersionMark.dealt(i));
        }
        assertThat(marks).hasSize(36);
    }
}
