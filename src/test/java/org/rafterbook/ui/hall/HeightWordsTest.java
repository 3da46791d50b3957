package org.rafterbook.ui.hall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.work.HeightMark;

class HeightWordsTest {

    private static final List<HeightMark> MARKS =
            List.of(new HeightMark("a", "lamps", 7.9, true), new HeightMark("b", "beams", 9.4, true));
    private final QuantityFormat format = new QuantityFormat(DisplayUnits.METRIC);

    private String between(String typed) {
        return HeightWords.between(
                MARKS,
                QuantityParser.typed(Quantity.HEIGHT, DisplayUnits.METRIC)
                        .readRange(typed)
                        .orThrow(),
                format);
    }

    @Test
    void aHeightStandsBetweenWhatHangsBelowAndAboveIt() {
        assertThat(between("8.5 m")).isEqualTo(", above lamps 7.9 m, below beams 9.4 m");
        assertThat(between("3 m")).isEqualTo(", below lamps 7.9 m");
        assertThat(between("11 m")).isEqualTo(", above beams 9.4 m");
    }

    @Test
    void aRangeIsJudgedByBothItsEnds() {
        assertThat(between("7 to 8.5 m")).isEqualTo(", below beams 9.4 m");
        assertThat(between("7 to 10 m")).isEmpty();
    }

    @Test
    void atLeastAsHighAsAMarkIsAboveIt() {
        assertThat(between("7.9 m to 8.2 m")).startsWith(", above lamps 7.9 m");
    }

    @Test
    void whatHangsThereIsListedFromBelow() {
        assertThat(HeightWords.known(MARKS, format)).isEqualTo("lamps 7.9 m, beams 9.4 m");
        assertThat(HeightWords.known(List.of(), format)).isEmpty();
    }
}
