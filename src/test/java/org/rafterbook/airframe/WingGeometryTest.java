package org.rafterbook.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Areas and mean chords; the values follow from plane geometry (exact) unless a source is named. */
class WingGeometryTest {

    private static Surface wing(String name, double edge, double rise, List<Rib> ribs) {
        return Surface.symmetric(name, Role.WING, edge, rise, 0.03, 0, ribs);
    }

    private static Surface tail(double edge, double rise, double span, double chord) {
        return Surface.symmetric("tail", Role.TAILPLANE, edge, rise, 0.01, 0, Planforms.rectangle(span, chord));
    }

    private static Airframe airframe(Surface... surfaces) {
        return new Airframe(List.of(surfaces), List.of(), null, null);
    }

    @Test
    void aTaperedWingHasTheMeanChordOfTheTrapezium() {
        // c_mean = 2/3 c_root (1 + t + t^2)/(1 + t), t = 0.5; its leading edge by the same integrals (any text).
        Planform plan = Planform.of(wing("w", 0.02, 0, Planforms.taper(0.4, 0.12, 0.06, 0.25)));
        assertThat(plan.areaM2()).isCloseTo(0.036, within(1e-12));
        assertThat(plan.meanChordM()).isCloseTo(0.12 * 2 / 3 * 1.75 / 1.5, within(1e-12));
        assertThat(plan.quarterChordM()).isCloseTo(0.02 + 0.03, within(1e-12));
        assertThat(plan.geometricChordM()).isCloseTo(0.09, within(1e-12));
        assertThat(plan.aspectRatio()).isCloseTo(0.16 / 0.036, within(1e-12));
    }

    @Test
    void anEllipseHasTheEllipsesAreaAndMeanChord() {
        Planform plan = Planform.of(wing("w", 0, 0, Planforms.ellipse(0.4, 0.1, 0.25)));
        assertThat(plan.areaM2()).isCloseTo(Math.PI / 4 * 0.4 * 0.1, within(1e-9));
        assertThat(plan.meanChordM()).isCloseTo(0.1 * 8 / (3 * Math.PI), within(1e-4));
        assertThat(plan.quarterChordM()).isCloseTo(0.025, within(1e-9));
    }

    @Test
    void roundedTipsKeepSpanAndTakeOnlyTheCorners() {
        Planform plan = Planform.of(wing("w", 0, 0, Planforms.roundedTips(0.4, 0.1, 0.05, 0.5)));
        assertThat(plan.spanM()).isEqualTo(0.4);
        assertThat(plan.areaM2()).isCloseTo(0.3 * 0.1 + Math.PI / 4 * 0.1 * 0.1, within(1e-9));
    }

    @Test
    void aRectanglesSemiperimeterPerSpanIsOnePlusChordPerSpan() {
        assertThat(Planform.of(wing("w", 0, 0, Planforms.rectangle(0.4, 0.1))).semiperimeterPerSpan())
                .isCloseTo(1.25, within(1e-12));
    }

    @Test
    void twoWingsTakeTheLongerSpanOverTheTotalArea() {
        Surface lower = wing("lower", 0.10, 0.01, Planforms.rectangle(0.34, 0.10));
        Surface upper = wing("upper", 0.07, 0.10, Planforms.rectangle(0.38, 0.12));
        WingGeometry geometry = WingGeometry.of(airframe(lower, upper, tail(0.4, 0.05, 0.2, 0.08)));
        double area = 0.034 + 0.0456;
        assertThat(geometry.areaM2()).isCloseTo(area, within(1e-12));
        assertThat(geometry.aspectRatio()).isCloseTo(0.38 * 0.38 / area, within(1e-12));
        assertThat(geometry.meanChordM()).isCloseTo((0.034 * 0.10 + 0.0456 * 0.12) / area, within(1e-12));
        assertThat(geometry.gapM()).isCloseTo(0.09, within(1e-12));
        assertThat(geometry.staggerM()).isCloseTo(0.03, within(1e-12));
        assertThat(geometry.decalageRad(upper)).isCloseTo(0.02, within(1e-12));
    }

    @Test
    void tailVolumeTakesTheArmFromTheWingsAerodynamicCentre() {
        WingGeometry geometry = WingGeometry.of(
                airframe(wing("w", 0.1, 0, Planforms.rectangle(0.42, 0.11)), tail(0.4, 0.02, 0.27, 0.08)));
        double arm = (0.4 + 0.02) - (0.1 + 0.0275);
        assertThat(geometry.tailArmM()).isCloseTo(arm, within(1e-12));
        assertThat(geometry.tailVolume()).isCloseTo(0.27 * 0.08 * arm / (0.42 * 0.11 * 0.11), within(1e-12));
    }

    @Test
    void unequalHalvesAreAddedAndTiltRaisesTheLeft() {
        Surface lopsided = new Surface(
                "w",
                Role.WING,
                0,
                0.1,
                0,
                0,
                Planforms.rectangle(0.4, 0.1),
                Planforms.rectangle(0.44, 0.12),
                0.003,
                0.1,
                null,
                null);
        Planform plan = Planform.of(lopsided);
        assertThat(plan.areaM2()).isCloseTo(0.02 + 0.0264, within(1e-12));
        assertThat(plan.spanM()).isCloseTo(0.42, within(1e-12));
        double sideways = (0.0264 * 0.11 - 0.02 * 0.10) / plan.areaM2();
        assertThat(plan.heightM()).isCloseTo(0.1 + sideways * Math.sin(0.1), within(1e-12));
        assertThat(plan.leftM()).isCloseTo(0.003 + sideways * Math.cos(0.1), within(1e-12));
    }

    @Test
    void noWingsGiveNumbersAndNoNaN() {
        WingGeometry geometry = WingGeometry.of(airframe(tail(0.4, 0, 0.2, 0.08)));
        assertThat(geometry.areaM2()).isZero();
        assertThat(geometry.aspectRatio()).isZero();
        assertThat(geometry.tailVolume()).isNull();
        Planform nothing = Planform.of(wing("w", 0.1, 0.02, List.of()));
        assertThat(nothing.meanChordM()).isZero();
        assertThat(nothing.aspectRatio()).isZero();
    }
}
