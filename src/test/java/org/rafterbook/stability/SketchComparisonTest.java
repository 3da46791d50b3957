package org.rafterbook.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Role;

/** Sketches side by side at equal margin, mass and lift. */
class SketchComparisonTest {

    private static final List<MassItem> MASSES = List.of(
            new MassItem("wing", 5e-4, 0.05, 0),
            new MassItem("upper", 5e-4, 0.05, 0.09),
            new MassItem("tail", 3e-4, 0.35, 0.04),
            new MassItem("stick", 1.2e-3, 0.12, 0));
    private static final MotorPlace MOTOR = new MotorPlace(1.6e-3, 0.1);
    private static final Airframe TWO = new Airframe(
            List.of(
                    Models.wing(400, 105),
                    Models.rectangle("upper", Role.WING, 0, 90, 400, 105),
                    Models.tail(310, 105, 45, 260, 80)),
            MASSES,
            null,
            MOTOR);
    private static final Airframe ONE =
            new Airframe(List.of(Models.wing(400, 150), Models.tail(310, 150, 25, 260, 80)), MASSES, null, MOTOR);

    private static List<SketchComparison.Row> rows(double ahead, double aft) {
        Map<String, Airframe> sketches = new LinkedHashMap<>();
        sketches.put("two", TWO);
        sketches.put("one", ONE);
        return SketchComparison.of(sketches, new SketchComparison.Terms(0.08, 2.5e-3, null, 0.7, 1.2, ahead, aft));
    }

    @Test
    void bothFlyAtTheCommonMarginMassAndLift() {
        for (SketchComparison.Row row : rows(0.2, 0.2)) {
            assertThat(row.missing()).isNull();
            assertThat(row.sliderAllows()).isTrue();
            assertThat(row.massKg()).isCloseTo(4.1e-3, within(1e-12));
            TrimAnswer trim = row.trim();
            assertThat(trim).isNotNull();
            if (trim != null) {
                assertThat(trim.margin()).isCloseTo(0.08, within(1e-9));
                assertThat(trim.liftCoefficient()).isCloseTo(0.7, within(1e-6));
                assertThat(trim.inducedPowerW()).isPositive();
                assertThat(trim.touchiness()).isNotEmpty();
                assertThat(trim.slowMode()).isNotNull();
            }
        }
    }

    @Test
    void twoWingsKeepLessOfTheirSlopeAndFlySlower() {
        List<SketchComparison.Row> rows = rows(0.2, 0.2);
        assertThat(rows.get(0).gapInChords()).isCloseTo(90.0 / 105, within(1e-9));
        assertThat(rows.get(1).gapInChords()).isNull();
        // Two wings of A 3.81 at G/c 0.86: between 74 and 82 % (methods section 2), the tail's upwash adds a little.
        assertThat(rows.get(0).slopeKept().get("wing")).isBetween(0.74, 0.84);
        assertThat(rows.get(1).slopeKept().get("wing")).isBetween(0.99, 1.03);
        TrimAnswer two = rows.get(0).trim();
        TrimAnswer one = rows.get(1).trim();
        assertThat(two).isNotNull();
        assertThat(one).isNotNull();
        if (two != null && one != null) {
            assertThat(two.speed()).isNotNull();
            assertThat(one.speed()).isGreaterThan(two.speed() == null ? 9 : two.speed());
        }
    }

    @Test
    void aSliderTooShortIsSaid() {
        List<SketchComparison.Row> rows = rows(0, 0);
        assertThat(rows.get(0).sliderAllows()).isFalse();
        assertThat(rows.get(0).wingMovedM()).isNotNull();
        Map<String, Airframe> hidden = Map.of("none", Models.airframe(Models.wing(0, 100)));
        SketchComparison.Row row = SketchComparison.of(
                        hidden, new SketchComparison.Terms(0.08, 2.5e-3, null, 0.7, 1.2, 0, 0))
                .get(0);
        assertThat(row.missing()).contains("no span");
    }

    @Test
    void whatAGapBuysIsSmooth() {
        // methods section 2 (A 3.46, no tail): kept slope 0.735, 0.818, 0.880 at G/c 0.6, 1.0, 1.5; induced drag at
        // equal
        // lift goes with 1/k^2: 1.3178, 1.4496, 1.5741 (BP-10).
        Airframe cell = Models.airframe(Models.wing(450, 130), Models.rectangle("upper", Role.WING, 0, 130, 450, 130));
        List<GapStudy.Row> rows = GapStudy.of(cell, 0.6, 1.0, 1.5);
        double[] kept = {0.735, 0.818, 0.880};
        double[] k2 = {1.3178, 1.4496, 1.5741};
        for (int i = 0; i < 3; i++) {
            assertThat(rows.get(i).slopeKept().get("upper")).isCloseTo(kept[i], within(0.002));
            assertThat(rows.get(i).inducedDrag()).isCloseTo(k2[1] / k2[i], Percentage.withPercentage(0.3));
        }
        assertThat(GapStudy.of(ONE, 1)).isEmpty();
        assertThat(GapStudy.CONVENTION).contains("convention");
    }

    @Test
    void excessMassCostsTime() {
        // Time goes with mass^-1.5: 5 % more mass costs 1 - 1.05^-1.5 = 7.1 %.
        Weights weights = Weights.of(MASSES, 2.6e-3, 2.4e-3, 1.6e-3);
        assertThat(weights.sumKg()).isCloseTo(2.5e-3, within(1e-12));
        assertThat(weights.scaleLessSumKg()).isCloseTo(1e-4, within(1e-12));
        assertThat(weights.overMinimumKg()).isCloseTo(2e-4, within(1e-12));
        assertThat(weights.timeLost()).isCloseTo(1 - Math.pow(1.05, -1.5), within(1e-12));
        assertThat(Weights.timeLost(1, 2)).isZero();
        assertThat(Weights.of(List.of(), null, 2e-3, 1e-3).timeLost()).isNull();
    }
}
