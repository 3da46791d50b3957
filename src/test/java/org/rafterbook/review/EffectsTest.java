package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The whole answer on the season of flights_demo.csv, simulated for this project. Its truth: a0 0 to 1 and 1 to 2, and a2
 * did nothing; a1 (+1.3 %) and a3 (-7.3 %) always moved together.
 */
class EffectsTest {

    private static ReviewAnswer answer;

    @BeforeAll
    static void review() {
        answer = Effects.of(DemoFlights.read(DemoFlights.Touched.AT_LEAST));
    }

    @Test
    void everyPairChangedDirectlyIsListedOnceFirstFlownFirst() {
        assertThat(answer.changes())
                .extracting(c -> c.setting().key() + " " + c.from().key() + " " + c.to().key())
                .containsExactly("a2 0 1", "a0 0 1", "a1 0 1", "a3 0 1", "a0 1 2");
    }

    @Test
    void settingsThatMovedTogetherHaveOnlyTheirJointEffect() {
        ChangeEffect a1 = change("a1");
        ChangeEffect a3 = change("a3");
        assertThat(a1.comparison()).isEqualTo(Comparison.MOVED_TOGETHER);
        assertThat(a1.togetherWith()).containsExactly("a3");
        assertThat(a3.togetherWith()).containsExactly("a1");
        assertThat(a1.word()).isEqualTo(Word.CANNOT_BE_TOLD_APART);
        Estimate joint = Objects.requireNonNull(a1.effect());
        assertThat(joint).isEqualTo(a3.effect());
        // each alone has mean -.0048 (395 000 draws of a separate programme), so the two together -.0096
        assertThat(joint.mean()).isCloseTo(-0.0096, within(0.001));
        assertThat(a1.statement())
                .startsWith(
                        "a1 0 \u2192 1 and a3 0 \u2192 1 always changed together: they cannot be told apart. Together: ");
        assertThat(a1.probabilityBest()).isNull();
    }

    /** With a level for each day a solver still prints +.851 (se 5.28) for a2; the null space says it cannot be told. */
    @Test
    void contrastThatIsToldOnlyAcrossDaysIsNotCalledSameDay() {
        ChangeEffect a2 = change("a2");
        assertThat(a2.comparison()).isEqualTo(Comparison.ACROSS_DAYS);
        assertThat(a2.sameDay()).isNull();
        assertThat(a2.sentences()).anyMatch(s -> s.startsWith("Compared only on different days (1 and 10 days)"));
    }

    @Test
    void effectOfNothingIsCalledProbablyLoweredAtMost() {
        ChangeEffect a0 = change("a0");
        assertThat(a0.comparison()).isEqualTo(Comparison.SAME_DAY);
        assertThat(a0.word()).isEqualTo(Word.PROBABLY_LOWERED);
        Estimate effect = Objects.requireNonNull(a0.effect());
        assertThat(effect.lowPercent()).isLessThan(0);
        assertThat(effect.highPercent()).isPositive();
        assertThat(a0.flightsFrom()).isEqualTo(13);
        assertThat(a0.flightsTo()).isEqualTo(42);
        assertThat(a0.commonDays()).isEqualTo(1);
        // the same-day check of this season says about -1 %
        assertThat(Objects.requireNonNull(a0.sameDay()).effectPercent()).isCloseTo(-1, within(0.5));
    }

    @Test
    void noChangeWithoutAClearDifferenceIsCalledTheLikeliestBest() {
        assertThat(change("a2").probabilityBest()).isBetween(0.75, 0.80);
        assertThat(change("a2").word()).isEqualTo(Word.NO_CLEAR_DIFFERENCE);
        assertThat(change("a2").sentences()).noneMatch(s -> s.contains("likeliest"));
    }

    @Test
    void changesThatMovedTogetherAreJudgedOnce() {
        assertThat(answer.claims().judged()).isEqualTo(4);
        assertThat(answer.claims().sentence()).startsWith("4 changes were judged.");
    }

    @Test
    void seasonSaysItsScatterAndTrend() {
        assertThat(answer.remarks())
                .anyMatch(s -> s.startsWith("From one flight to the next"))
                .anyMatch(s -> s.contains("over the season whatever you did"));
        assertThat(answer.flightsExact()).isEqualTo(70);
        assertThat(answer.flightsAtLeast()).isEqualTo(10);
    }

    /** All digits, so that a machine or a Java that gives others is noticed; change them only with Effects.EDITION. */
    @Test
    void digitsAreTheSameOnEveryMachine() {
        Estimate effect = Objects.requireNonNull(change("a0").effect());
        assertThat(effect.mean()).isEqualTo(-0.035488046493759626);
        assertThat(effect.low()).isEqualTo(-0.07998992235547064);
        assertThat(effect.high()).isEqualTo(0.009118157562133222);
    }

    @Test
    void sameInputGivesTheSameAnswer() {
        assertThat(Effects.of(DemoFlights.read(DemoFlights.Touched.AT_LEAST))).isEqualTo(answer);
    }

    @Test
    void whatIsSaidAtOnceHasTheSameComparisonsWithoutEffects() {
        ReviewAnswer quick = Effects.atOnce(DemoFlights.read(DemoFlights.Touched.AT_LEAST));
        assertThat(quick.changes())
                .extracting(ChangeEffect::comparison)
                .isEqualTo(
                        answer.changes().stream().map(ChangeEffect::comparison).toList());
        assertThat(quick.changes()).allMatch(c -> c.effect() == null);
        assertThat(quick.changes().get(1).sameDay())
                .isEqualTo(answer.changes().get(1).sameDay());
    }

    /** Every effect printed is a whole per cent. */
    @Test
    void noSentencePrintsDecimalsOfAnEffect() {
        for (ChangeEffect change : answer.changes()) {
            assertThat(change.statement()).doesNotContainPattern("[0-9]\\.[0-9]+ %");
        }
    }

    private static ChangeEffect change(String setting) {
        List<ChangeEffect> found = answer.changes().stream()
                .filter(c -> c.setting().key().equals(setting))
                .toList();
        return found.get(0);
    }
}
