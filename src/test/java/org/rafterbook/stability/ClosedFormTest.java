package org.rafterbook.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;

/** The formulas and the closed form against published and independently computed values; row ids stand beside them. */
class ClosedFormTest {

    @Test
    void theWorkedAnswerWithSlopesPerDegreeComesOut() {
        // CF-01, aerospaceanswers.com, worked answer (inputs and answer read in the source), formula Anderson ch. 7.
        double h = StabilityFormulas.neutralPoint(0.30, 0.352, 0.12, 0.085, 0.36, 1);
        assertThat(h).isCloseTo(0.6180, within(1e-4));
        assertThat(StabilityFormulas.staticMargin(h, 0.38)).isCloseTo(0.2380, within(1e-4));
    }

    @Test
    void tailVolumeFromTheBalancePointGivesTheAskersNeutralPoint() {
        // CF-02, aviation.stackexchange.com Q29641 (read in the source); arm from the balance point, wing's own slope.
        double volume = StabilityFormulas.tailVolume(69.5, 30, 260, 6.608);
        assertThat(volume).isCloseTo(1.213564, within(1e-6));
        assertThat(StabilityFormulas.neutralPoint(0.26, volume, 0.07, 0.12, 0.5, 1))
                .isCloseTo(0.61396, within(1e-5));
        // Moment about the balance point; the tail's leading edge is down by 1.5 degrees (Anderson's sign).
        double tailAngle = 3 * (1 - 0.5) - 1.5;
        double cm = -0.04 + 0.12 * 3 * (0.31 - 0.26) - volume * 0.07 * tailAngle;
        assertThat(cm).isCloseTo(-0.0220, within(5e-5));
    }

    @Test
    void theLightAeroplaneProblemComesOut() {
        // CF-03a..c, Anderson, Introduction to Flight, problems 7.2, 7.4, 7.6: statements read, two moments from memory
        // of
        // the source, numbers computed independently.
        double q = 6125;
        double wing = 1.5;
        double chord = 0.45;
        double cmAc = -12.4 / (q * wing * chord);
        double centre = 20.67 / (q * wing * chord) - cmAc;
        assertThat(cmAc).isCloseTo(-0.003, within(2e-5));
        assertThat(centre / (3675 / (q * wing))).isCloseTo(0.02, within(2e-5));
        double volume = StabilityFormulas.tailVolume(0.4, 1.0, wing, chord);
        assertThat(volume).isCloseTo(0.5926, within(1e-4));
        double slope = 4134 / (q * wing) / 5;
        assertThat(slope).isCloseTo(0.09, within(1e-4));
        double cm = -0.003 + slope * 5 * 0.02 - volume * 0.12 * (5 * (1 - 0.42) - 2.0);
        assertThat(cm).isCloseTo(-0.0580, within(2e-4));
        assertThat(cm * q * wing * chord).isCloseTo(-240, within(1.0));
        double h = StabilityFormulas.neutralPoint(0.24, volume, 0.12, slope, 0.42, 1);
        assertThat(h).isCloseTo(0.698, within(1e-3));
        assertThat(StabilityFormulas.staticMargin(h, 0.26)).isCloseTo(0.438, within(1e-3));
    }

    @Test
    void marginIsTheRatioOfTheSlopes() {
        // CF-05, bissoy.com question 415550 (read in the source): x_cg = 0.30, CL_a = 4.76, Cm_a = -0.116.
        double margin = 0.116 / 4.76;
        assertThat(StabilityFormulas.staticMargin(0.32437, 0.30)).isCloseTo(margin, within(5e-6));
    }

    @Test
    void theTailsLiftInTheTotalSlopeIsTheExactForm() {
        // CF-06, data of the single-engine fighter in Phillips, Mechanics of Flight, ch. 4 (inputs from memory of the
        // source, answer computed independently): 1.0686 ft behind the wing's centre = 0.1613 S/b.
        double ft = StabilityFormulas.neutralPointBehindWing(18.16, 4.62, 4.06, 31.0 / 244, 0.44, 1);
        assertThat(ft).isCloseTo(1.0686, within(5e-4));
        double chord = 244 / 36.83;
        assertThat(ft / chord).isCloseTo(0.1613, within(1e-4));
        double r = 4.06 * 31 / 244 * (1 - 0.44);
        double volume = StabilityFormulas.tailVolume(31, 18.16, 244, chord);
        assertThat(StabilityFormulas.neutralPoint(0, volume, 4.06, 4.62 + r, 0.44, 1))
                .isCloseTo(ft / chord, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"2, 2.5133", "3.4615, 3.3660", "6, 4.1888"})
    void jonesSlopeOfRectangles(double aspectRatio, double slope) {
        // CF-10, R. T. Jones, NACA TN-817 (1941): principle read, closed formula from memory.
        assertThat(StabilityFormulas.jonesSlope(aspectRatio, 1 + 1 / aspectRatio))
                .isCloseTo(slope, within(1e-4));
    }

    @Test
    void oneHorseshoeOnTheCentreLine() {
        // CF-13, simple horseshoe (form of Phillips et al., J. Aircraft 39 (2002)), computed independently.
        assertThat(StabilityFormulas.horseshoeDownwash(3.366, 450, 3.4615, 330, 0))
                .isCloseTo(0.5355, within(5e-4));
        assertThat(StabilityFormulas.horseshoeDownwash(3.366, 450, 3.4615, 1e9, 0))
                .isCloseTo(0.5018, within(5e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "0.05, 0.7845",
        "0.10, 0.6565",
        "0.15, 0.5604",
        "0.20, 0.4842",
        "0.30, 0.3705",
        "0.40, 0.2905",
        "0.50, 0.2322"
    })
    void interferenceOfEqualSpans(double gapPerSpan, double exact) {
        // BP-01, definition of NACA TR-116 and TR-182; exact values computed independently.
        assertThat(StabilityFormulas.interference(1, 1, gapPerSpan)).isCloseTo(exact, within(5e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "0.8, 0.1, 0.6074", "0.8, 0.2, 0.4621", "0.8, 0.3, 0.3581", "0.8, 0.5, 0.2268",
        "0.6, 0.1, 0.4898", "0.6, 0.2, 0.3930", "0.6, 0.3, 0.3148", "0.6, 0.5, 0.2063"
    })
    void interferenceOfUnequalSpans(double ratio, double gapPerMeanSpan, double exact) {
        // BP-02, computed independently from the definition.
        double gap = gapPerMeanSpan * (1 + ratio) / 2;
        assertThat(StabilityFormulas.interference(1, ratio, gap)).isCloseTo(exact, within(5e-4));
        assertThat(StabilityFormulas.interference(ratio, 1, gap)).isCloseTo(exact, within(5e-4));
    }

    @Test
    void interferenceAtNoGapIsTheSpanRatio() {
        assertThat(StabilityFormulas.interference(1, 1, 0)).isCloseTo(1, within(1e-9));
        assertThat(StabilityFormulas.interference(1, 0.8, 0)).isCloseTo(0.8, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "0.50, 0.7309, 1.3", "0.60, 0.7621, 1.3", "0.75, 0.8026, 0.2", "1.00, 0.8545, 0.2",
        "1.25, 0.8908, 0.2", "1.50, 0.9162, 0.2", "2.00, 0.9473, 0.2", "3.00, 0.9743, 0.2"
    })
    void plateInterferenceFitsTheExactSolution(double gapPerChord, double exact, double percent) {
        // BP-04, two parallel plates (problem of Munk, NACA TR-151), exact values computed independently.
        assertThat(StabilityFormulas.plateInterference(gapPerChord)).isCloseTo(exact, within(exact * percent / 100));
    }

    static Surface rectangle(String name, Role role, double quarterMm, double riseMm, double spanMm, double chordMm) {
        return Surface.symmetric(
                name,
                role,
                (quarterMm - chordMm / 4) / 1000,
                riseMm / 1000,
                0,
                0,
                Planforms.rectangle(spanMm / 1000, chordMm / 1000));
    }

    private static Airframe airframe(Surface... surfaces) {
        return new Airframe(List.of(surfaces), List.of(), null, null);
    }

    @ParameterizedTest
    @CsvSource({"110, 3.5186, 0.4942, 85.97", "145, 3.0865, 0.5714, 81.29", "185, 2.7066, 0.6394, 81.35"})
    void oneWingAndTail(double chordMm, double slope, double downwash, double neutralPointMm) {
        // CF-14, wing 420 x chord, tail 270 x 80 at +25 mm, arm 320 mm; computed independently.
        ClosedForm.Answer answer = ClosedForm.of(airframe(
                rectangle("wing", Role.WING, chordMm / 4, 0, 420, chordMm),
                rectangle("tail", Role.TAILPLANE, chordMm / 4 + 320, 25, 270, 80)));
        ClosedForm.Figures figures = answer.figures();
        assertThat(figures).isNotNull();
        if (figures != null) {
            assertThat(figures.wingSlope()).isCloseTo(slope, within(1e-4));
            assertThat(figures.tailSlope()).isCloseTo(3.3264, within(1e-4));
            assertThat(figures.downwash()).isCloseTo(downwash, within(1e-4));
        }
        assertThat(answer.neutralPointM()).isCloseTo(neutralPointMm / 1000, within(5e-5));
        assertThat(answer.error()).contains("3 to 4 %");
    }

    @Test
    void twoWingsAndTail() {
        // CF-15, two wings 400 x 105, gap 90 mm, tail 260 x 80 at mid-gap, arm 310 mm; computed independently.
        ClosedForm.Answer answer = ClosedForm.of(airframe(
                rectangle("lower", Role.WING, 26.25, 0, 400, 105),
                rectangle("upper", Role.WING, 26.25, 90, 400, 105),
                rectangle("tail", Role.TAILPLANE, 26.25 + 310, 45, 260, 80)));
        ClosedForm.Figures figures = answer.figures();
        assertThat(figures).isNotNull();
        if (figures != null) {
            assertThat(figures.interference()).isCloseTo(0.4516, within(1e-4));
            assertThat(2 / (1 + figures.interference())).isCloseTo(1.3778, within(1e-4));
            assertThat(figures.effectiveAspectRatio()).isCloseTo(2.6243, within(2e-4));
            assertThat(figures.plateInterference()).isCloseTo(0.8270, within(1e-4));
            assertThat(figures.wingSlope()).isCloseTo(2.8127, within(1e-4));
            assertThat(figures.tailSlope()).isCloseTo(3.2673, within(1e-4));
            assertThat(figures.downwash()).isCloseTo(0.7483, within(1e-4));
        }
        assertThat(answer.neutralPointM()).isCloseTo(0.04718, within(5e-5));
    }

    @Test
    void whereThereIsNoClosedFormTheReasonIsSaid() {
        Surface wing = rectangle("wing", Role.WING, 200, 0, 420, 110);
        Surface ahead = rectangle("foreplane", Role.TAILPLANE, 20, 0, 200, 60);
        Surface tail = rectangle("tail", Role.TAILPLANE, 500, 25, 270, 80);
        Surface second = rectangle("second", Role.WING, 200, 90, 420, 110);
        Surface third = rectangle("third", Role.WING, 200, 180, 420, 110);
        assertThat(ClosedForm.of(airframe(wing, ahead)).reason()).contains("ahead of \"wing\"");
        assertThat(ClosedForm.of(airframe(wing)).reason()).contains("without a tailplane");
        assertThat(ClosedForm.of(airframe(wing, second, third, tail)).reason()).contains("3 wings");
        assertThat(ClosedForm.of(airframe(tail)).reason()).contains("no wing");
        assertThat(ClosedForm.of(airframe(wing, rectangle("rear", Role.WING, 350, 0, 420, 110), tail))
                        .reason())
                .contains("one behind the other");
        assertThat(ClosedForm.of(airframe(wing)).neutralPointM()).isNull();
    }
}
