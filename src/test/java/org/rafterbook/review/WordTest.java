package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordTest {

    @ParameterizedTest
    @CsvSource({
        "0.975, true, raised",
        "0.974, true, very probably raised",
        "0.95, true, very probably raised",
        "0.949, true, probably raised",
        "0.80, true, probably raised",
        "0.799, true, no clear difference",
        "0.5, true, no clear difference",
        "0.201, true, no clear difference",
        "0.19, true, probably lowered",
        "0.04, true, very probably lowered",
        "0.02, true, lowered",
        "0.999, false, very probably raised",
        "0.001, false, very probably lowered"
    })
    void wordsFollowTheProbabilityAndTheComparison(double probability, boolean sameDay, String expected) {
        assertThat(Word.of(probability, sameDay).word()).isEqualTo(expected);
    }
}
