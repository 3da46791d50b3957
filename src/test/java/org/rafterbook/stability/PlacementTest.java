package org.rafterbook.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Balance;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;

/** Every answer of the placement, put back in, gives the wished margin. */
class PlacementTest {

    private static final Airframe MODEL = new Airframe(
            List.of(Models.wing(420, 110), Models.tail(320, 110, 25, 270, 80)),
            List.of(
                    new MassItem("wing", 9e-4, 0.05, 0),
                    new MassItem("tail", 3e-4, 0.37, 0.025),
                    new MassItem("stick", 1.6e-3, 0.09, 0)),
            null,
            new MotorPlace(1.6e-3, 0.08));

    private static void givesTheMargin(PlacementAnswer answer, double wished) {
        assertThat(answer.reason()).isNull();
        Airframe put = answer.airframe();
        assertThat(put).isNotNull();
        if (put != null) {
            Double margin = Stability.analyse(put).margin(Balance.of(put, null).aftM());
            assertThat(margin).isCloseTo(wished, within(0.001));
        }
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(101, 150);
    }

    private static Map<Long, Optional<Throwable>> outcomes = Map.of();

    /** On as many cores as there are. */
    @BeforeAll
    static void randomAirframes() {
        outcomes = seeds().parallel().boxed().collect(Collectors.toConcurrentMap(seed -> seed, PlacementTest::outcome));
    }

    private static Optional<Throwable> outcome(long seed) {
        try {
            place(seed);
            return Optional.empty();
        } catch (AssertionError | RuntimeException e) {
            return Optional.of(e);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void wingPlaceAndBallastOfRandomAirframes(long seed) {
        assertThat(outcomes.get(seed)).isEmpty();
    }

    private static void place(long seed) {
        Airframe airframe = Arrangements.of(seed);
        Random random = new Random(seed);
        double wished = 0.02 + 0.2 * random.nextDouble();
        if (seed % 2 == 0) {
            // Measured with the sheet's motor, flown with another.
            Double balance = Balance.of(airframe, null).aftM();
            airframe = new Airframe(airframe.surfaces(), airframe.masses(), balance, airframe.motor());
        }
        MotorPlace motor = airframe.motor();
        assertThat(motor).isNotNull();
        if (motor == null) {
            return;
        }
        MotorPlace flown = new MotorPlace(motor.massKg() * 1.2, motor.aftM() + 0.01);
        Placement placement = new Placement(airframe, flown, wished);
        WingGeometry wings = WingGeometry.of(airframe);
        List<String> names = wings.wings().stream().map(Surface::name).toList();
        double edge = wings.wings().get(0).edgeAftM();
        PlacementAnswer slid = placement.slide(names, edge - 2 * wings.meanChordM(), edge + 2 * wings.meanChordM());
        if (slid.reason() == null) {
            givesTheMargin(slid, wished);
        } else {
            assertThat(slid.reason()).containsPattern("never at|same place");
        }
        givesTheMargin(placement.ballast(4e-3, -9, 9), wished);
    }

    @Test
    void ballastAtAGivenPlace() {
        Placement placement = new Placement(MODEL, null, 0.10);
        Double now = Stability.analyse(MODEL).margin(Balance.of(MODEL, null).aftM());
        assertThat(now).isNotNull();
        double wished = now == null ? 0 : now + 0.05;
        Placement forward = new Placement(MODEL, null, wished);
        givesTheMargin(forward.ballastAt(0, 5e-3), wished);
        assertThat(forward.ballastAt(0.5, 5e-3).reason()).contains("wrong way").contains("ahead");
        assertThat(new Placement(MODEL, null, 4).ballastAt(0.01, 5e-3).reason())
                .contains("never brings the balance point beyond its own place")
                .contains("ahead of \u2212");
        assertThat(forward.ballastAt(0, 1e-6).reason()).contains("more than");
        assertThat(placement.ballast(1e-4, 0, 0.4).reason()).contains("would have to lie at");
        assertThat(new Placement(MODEL, null, now == null ? 0 : now)
                        .ballastAt(0, 1)
                        .reason())
                .contains("no ballast is needed");
    }

    @Test
    void ballastToTheMinimumServesMarginAndClass() {
        Double now = Stability.analyse(MODEL).margin(Balance.of(MODEL, null).aftM());
        double wished = now == null ? 0 : now + 0.05;
        Placement placement = new Placement(MODEL, null, wished);
        PlacementAnswer answer = placement.ballastToMinimum(3.4e-3, 0, 0.4);
        givesTheMargin(answer, wished);
        Airframe put = answer.airframe();
        assertThat(put).isNotNull();
        if (put != null) {
            double mass = put.masses().stream().mapToDouble(MassItem::massKg).sum();
            assertThat(mass).isCloseTo(3.4e-3, within(1e-12));
        }
        assertThat(placement.ballastToMinimum(2e-3, 0, 0.4).reason()).contains("above the minimum");
    }

    @Test
    void tailAreaAndTailArm() {
        Double now = Stability.analyse(MODEL).margin(Balance.of(MODEL, null).aftM());
        double wished = now == null ? 0 : now + 0.06;
        Placement placement = new Placement(MODEL, null, wished);
        PlacementAnswer area = placement.tailArea(0.5, 2);
        givesTheMargin(area, wished);
        assertThat(area.value()).isGreaterThan(1);
        PlacementAnswer arm = placement.tailArm(0.25, 0.6);
        givesTheMargin(arm, wished);
        assertThat(new Placement(MODEL, null, 3).tailArea(0.5, 2).reason()).contains("never at 300.0 %");
    }

    @Test
    void gapHasAnAnswerOnlyWithinWhatItMoves() {
        Airframe two = new Airframe(
                List.of(
                        Models.wing(400, 105),
                        Models.rectangle("upper", org.rafterbook.airframe.Role.WING, 0, 90, 400, 105),
                        Models.tail(310, 105, 45, 260, 80)),
                List.of(new MassItem("all", 3e-3, 0.045, 0)),
                null,
                null);
        double balance = 0.045;
        Double at90 = Stability.analyse(two).margin(balance);
        double wished = at90 == null ? 0 : at90 + 0.01;
        givesTheMargin(new Placement(two, null, wished).gap(0.05, 0.2), wished);
        assertThat(new Placement(two, null, 0.5).gap(0.05, 0.2).reason()).contains("never at");
        assertThat(new Placement(MODEL, null, 0.1).gap(0.05, 0.2).reason()).contains("two wings");
    }

    @Test
    void noAnswerSaysWhy() {
        Airframe massless = new Airframe(MODEL.surfaces(), List.of(), null, null);
        assertThat(new Placement(massless, null, 0.1)
                        .slide(List.of("wing"), 0, 0.1)
                        .reason())
                .contains("No mass");
        assertThat(new Placement(massless, null, 0.1).ballast(1e-3, 0, 1).reason())
                .contains("No mass");
        Airframe hidden = new Airframe(List.of(Models.wing(0, 110)), MODEL.masses(), null, null);
        assertThat(new Placement(hidden, null, 0.1)
                        .slide(List.of("wing"), 0, 0.1)
                        .reason())
                .contains("no span");
        assertThat(new Placement(MODEL, null, 0.1)
                        .slide(List.of("canard"), 0, 0.1)
                        .reason())
                .contains("no surface");
        Airframe unweighed = new Airframe(MODEL.surfaces(), List.of(), 0.08, MODEL.motor());
        assertThat(new Placement(unweighed, null, 0.1)
                        .slide(List.of("wing"), 0, 0.1)
                        .reason())
                .contains("mass is unknown");
    }
}
