package org.rafterbook.airframe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Each thing that is wrong with an airframe gets its sentence, its place and what can still be shown. */
class AirframeProblemsTest {

    private static final Surface TAIL =
            Surface.symmetric("tail", Role.TAILPLANE, 0.4, 0.02, 0, 0, Planforms.rectangle(0.27, 0.08));

    private static Surface wing(double rise, List<Rib> ribs) {
        return Surface.symmetric("wing", Role.WING, 0.1, rise, 0, 0, ribs);
    }

    private static List<AirframeProblem> problems(Surface... surfaces) {
        return AirframeProblems.of(new Airframe(
                List.of(surfaces), List.of(new MassItem("all", 3e-3, 0.15, 0)), null, new MotorPlace(1.6e-3, 0.12)));
    }

    private static void only(List<AirframeProblem> problems, AirframeProblem.Kind kind, String... words) {
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).kind()).isEqualTo(kind);
        assertThat(problems.get(0).sentence()).contains(words);
        assertThat(problems.get(0).stillShown()).contains("still shown");
    }

    @Test
    void aSoundAirframeHasNone() {
        assertThat(problems(wing(0, Planforms.rectangle(0.42, 0.11)), TAIL)).isEmpty();
        assertThat(problems(wing(0, Planforms.ellipse(0.42, 0.11, 0.25)), TAIL)).isEmpty();
    }

    @Test
    void zeroSpanIsNamedWithItsSurface() {
        only(problems(wing(0, Planforms.rectangle(0, 0.11)), TAIL), AirframeProblem.Kind.ZERO_SPAN, "\"wing\"", "span");
        only(problems(wing(0, List.of()), TAIL), AirframeProblem.Kind.ZERO_SPAN, "\"wing\"");
        only(problems(wing(0, Planforms.rectangle(1e-6, 0.11)), TAIL), AirframeProblem.Kind.ZERO_SPAN, "\"wing\"");
    }

    @Test
    void halvesApartAreSaidUnlessAnotherSurfaceFillsTheSlot() {
        List<Rib> outer = List.of(new Rib(0.1, 0, 0.1, 0, 0), new Rib(0.2, 0, 0.1, 0, 0));
        List<AirframeProblem> problems = problems(wing(0, outer), TAIL);
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).kind()).isEqualTo(AirframeProblem.Kind.SLOT);
        assertThat(problems.get(0).sentence())
                .contains("100.0 mm beside the middle")
                .contains("slot of 200.0 mm");
        Surface inner = Surface.symmetric("inner", Role.WING, 0.1, 0, 0, 0, Planforms.rectangle(0.2, 0.1));
        assertThat(problems(wing(0, outer), inner, TAIL)).isEmpty();
    }

    @Test
    void crossedRibsAreNamedWithTheirNumbers() {
        List<Rib> crossed = List.of(new Rib(0, 0, 0.1, 0, 0), new Rib(0.15, 0, 0.1, 0, 0), new Rib(0.1, 0, 0.1, 0, 0));
        only(
                problems(wing(0, crossed), TAIL),
                AirframeProblem.Kind.CROSSED_RIBS,
                "rib 3 at 100.0 mm does not lie outside rib 2 at 150.0 mm");
    }

    @Test
    void aRibWithoutChordIsNamed() {
        List<Rib> hole = List.of(new Rib(0, 0, 0.1, 0, 0), new Rib(0.1, 0, 0, 0, 0), new Rib(0.2, 0, 0.1, 0, 0));
        only(problems(wing(0, hole), TAIL), AirframeProblem.Kind.ZERO_CHORD, "rib 2");
    }

    @Test
    void twoSurfacesInTheSamePlaceAreNamed() {
        Surface one = wing(0, Planforms.rectangle(0.42, 0.11));
        Surface two = Surface.symmetric("second", Role.WING, 0.1, 0, 0, 0, Planforms.rectangle(0.42, 0.11));
        only(problems(one, two, TAIL), AirframeProblem.Kind.SAME_PLACE, "\"wing\"", "\"second\"", "same place");
        Surface crossing = Surface.symmetric(
                "second",
                Role.WING,
                0.1,
                -0.02,
                0,
                0,
                List.of(new Rib(0, 0, 0.1, 0, 0), new Rib(0.2, 0, 0.1, 0.05, 0)));
        only(problems(one, crossing, TAIL), AirframeProblem.Kind.SAME_PLACE, "same place");
    }

    @Test
    void touchingSurfacesAreNotInTheSamePlace() {
        Surface front = wing(0, Planforms.rectangle(0.42, 0.05));
        Surface rear = Surface.symmetric("rear", Role.WING, 0.15, 0, 0, 0, Planforms.rectangle(0.42, 0.06));
        assertThat(problems(front, rear, TAIL)).isEmpty();
        Surface inner = wing(0, Planforms.rectangle(0.2, 0.11));
        Surface outer = Surface.symmetric(
                "outer", Role.WING, 0.1, 0, 0, 0, List.of(new Rib(0.1, 0, 0.11, 0, 0), new Rib(0.21, 0, 0.11, 0, 0)));
        assertThat(problems(inner, outer, TAIL)).isEmpty();
    }

    @Test
    void noTailNoMassAndNoBalanceLeaveTheNeutralPoint() {
        Surface wing = wing(0, Planforms.rectangle(0.42, 0.11));
        List<AirframeProblem> noTail = problems(wing);
        assertThat(noTail).hasSize(1);
        assertThat(noTail.get(0).kind()).isEqualTo(AirframeProblem.Kind.NO_TAIL);
        assertThat(noTail.get(0).stillShown()).contains("of the wing alone");
        assertThat(noTail.get(0).kind().hidesNeutralPoint()).isFalse();

        List<AirframeProblem> noMass = AirframeProblems.of(new Airframe(List.of(wing, TAIL), List.of(), null, null));
        only(noMass, AirframeProblem.Kind.NO_MASS, "No mass is given");
        assertThat(noMass.get(0).kind().hidesNeutralPoint()).isFalse();

        List<AirframeProblem> badMass = AirframeProblems.of(
                new Airframe(List.of(wing, TAIL), List.of(new MassItem("fin", Double.NaN, 0.1, 0)), 0.1, null));
        assertThat(badMass).extracting(AirframeProblem::kind).contains(AirframeProblem.Kind.BAD_MASS);
    }

    @Test
    void noWingIsSaid() {
        assertThat(problems(TAIL)).extracting(AirframeProblem::kind).containsExactly(AirframeProblem.Kind.NO_WING);
        assertThat(problems()).extracting(AirframeProblem::kind).contains(AirframeProblem.Kind.NO_WING);
    }

    @Test
    void aPlaceThatIsNoNumberIsSaid() {
        List<AirframeProblem> problems = problems(wing(Double.NaN, Planforms.rectangle(0.42, 0.11)), TAIL);
        only(problems, AirframeProblem.Kind.NOT_A_NUMBER, "\"wing\"");
    }
}
