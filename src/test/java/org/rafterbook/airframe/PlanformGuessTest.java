package org.rafterbook.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanformGuessTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void everyPresetIsKnownAgainByItsRibs(long seed) {
        Random random = new Random(seed);
        double span = 0.2 + 0.4 * random.nextDouble();
        double chord = 0.05 + 0.1 * random.nextDouble();
        double tip = chord * (0.2 + 0.7 * random.nextDouble());
        double length = span * (0.05 + 0.3 * random.nextDouble());
        double at = random.nextDouble();
        known(PlanformGuess.Kind.RECTANGLE, Planforms.rectangle(span, chord));
        known(PlanformGuess.Kind.TAPER, Planforms.taper(span, chord, tip, at));
        known(PlanformGuess.Kind.ELLIPSE, Planforms.ellipse(span, chord, at));
        known(PlanformGuess.Kind.ROUNDED_TIPS, Planforms.roundedTips(span, chord, length, at));
    }

    private static void known(PlanformGuess.Kind kind, List<Rib> ribs) {
        PlanformGuess guess = PlanformGuess.of(ribs);
        assertThat(guess.kind()).isEqualTo(kind);
        List<Rib> again = guess.ribs();
        assertThat(again).isNotNull().hasSameSizeAs(ribs);
        for (int i = 0; i < ribs.size(); i++) {
            assertThat(again.get(i).outM()).isCloseTo(ribs.get(i).outM(), within(1e-12));
            assertThat(again.get(i).edgeAftM()).isCloseTo(ribs.get(i).edgeAftM(), within(1e-12));
            assertThat(again.get(i).chordM()).isCloseTo(ribs.get(i).chordM(), within(1e-12));
        }
    }

    @Test
    void ribsNoPresetMadeStayRibs() {
        List<Rib> cranked =
                List.of(new Rib(0, 0, 0.1, 0, 0), new Rib(0.1, 0.01, 0.1, 0, 0), new Rib(0.2, 0.03, 0.06, 0, 0));
        assertThat(PlanformGuess.of(cranked).kind()).isEqualTo(PlanformGuess.Kind.RIBS);
        assertThat(PlanformGuess.of(List.of()).kind()).isEqualTo(PlanformGuess.Kind.RIBS);
    }
}
