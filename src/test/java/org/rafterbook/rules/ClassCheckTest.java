package org.rafterbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;

/** The class and its limits are invented for these tests. */
class ClassCheckTest {

    private static final QuantityFormat METRIC = new QuantityFormat(DisplayUnits.METRIC);
    private static final ClassSheet SALTMARSH =
            new ClassSheet("c1", "Saltmarsh 450", "Hall rules", 2026, 0.0031, 0.0015, 0.45, 0.127, 0.3, 0.3, null);

    private static final Airframe MODEL = new Airframe(
            List.of(
                    Surface.symmetric("upper", Role.WING, 0, 0.1, 0, 0.04, Planforms.taper(0.45, 0.127, 0.09, 0.25)),
                    Surface.symmetric("lower", Role.WING, 0.02, 0, 0, 0.04, Planforms.rectangle(0.40, 0.11)),
                    Surface.symmetric("tail", Role.TAILPLANE, 0.34, 0, 0, 0, Planforms.rectangle(0.305, 0.14))),
            List.of(new MassItem("wings", 0.0019, 0.06, 0.05), new MassItem("stick", 0.00115, 0.15, 0)),
            null,
            new MotorPlace(0.0016, 0.12));

    @Test
    void eachLimitIsAnsweredWithValueLimitAndDifference() {
        List<ClassFinding> findings = ClassCheck.of(SALTMARSH, ClassMeasures.of(MODEL, null, null), METRIC);
        assertThat(findings)
                .extracting(ClassFinding::sentence)
                .containsExactly(
                        "Airframe 3.05 g, at least 3.1 g needed: 0.05 g too little.",
                        "Motor 1.6 g, at most 1.5 g allowed: 0.1 g too much.",
                        "Span 450 mm, at most 450 mm allowed: exactly on the limit.",
                        "Wing chord 127 mm, at most 127 mm allowed: exactly on the limit.",
                        "Tailplane span 305 mm, at most 300 mm allowed: 5 mm too much.",
                        "Propeller not known; at most 300 mm allowed.");
        assertThat(findings)
                .extracting(ClassFinding::standing)
                .containsExactly(
                        ClassFinding.Standing.BROKEN,
                        ClassFinding.Standing.BROKEN,
                        ClassFinding.Standing.KEPT,
                        ClassFinding.Standing.KEPT,
                        ClassFinding.Standing.BROKEN,
                        ClassFinding.Standing.UNKNOWN);
    }

    @Test
    void theScaleWinsOverTheSumOfTheParts() {
        ClassFinding mass = ClassCheck.of(SALTMARSH, ClassMeasures.of(MODEL, 0.00315, 0.28), METRIC)
                .get(0);
        assertThat(mass.standing()).isEqualTo(ClassFinding.Standing.KEPT);
        assertThat(mass.sentence()).isEqualTo("Airframe 3.15 g, at least 3.1 g needed: 0.05 g to spare.");
    }

    @Test
    void partsThatAddUpToTheLimitKeepIt() {
        Airframe tenParts =
                new Airframe(List.of(), Collections.nCopies(10, new MassItem("rib", 0.00031, 0, 0)), null, null);
        ClassFinding mass = ClassCheck.of(SALTMARSH, ClassMeasures.of(tenParts, null, null), METRIC)
                .get(0);
        assertThat(mass.standing()).isEqualTo(ClassFinding.Standing.KEPT);
        assertThat(mass.sentence()).contains("exactly on the limit");
    }

    @Test
    void aHalfMilligramTooLightIsTooLight() {
        ClassFinding mass = ClassCheck.of(SALTMARSH, ClassMeasures.of(MODEL, 0.0030995, null), METRIC)
                .get(0);
        assertThat(mass.standing()).isEqualTo(ClassFinding.Standing.BROKEN);
        assertThat(mass.sentence()).contains("3.0995 g").contains("0.0005 g too little");
    }

    @Test
    void whatIsNotDrawnOrWeighedIsNotKnown() {
        Airframe bare = new Airframe(List.of(), List.of(), null, null);
        assertThat(ClassCheck.of(SALTMARSH, ClassMeasures.of(bare, null, null), METRIC))
                .extracting(ClassFinding::standing)
                .containsOnly(ClassFinding.Standing.UNKNOWN);
    }

    @Test
    void aLimitTheSheetLeavesOpenIsNotJudged() {
        ClassSheet massOnly =
                new ClassSheet("c2", "Open stick", "Hall rules", 2026, 0.001, null, null, null, null, null, null);
        assertThat(ClassCheck.of(massOnly, ClassMeasures.of(MODEL, null, 0.5), METRIC))
                .extracting(ClassFinding::of)
                .containsExactly(ClassLimit.AIRFRAME_MASS);
    }

    @Test
    void inchFlyersReadInches() {
        QuantityFormat inch = new QuantityFormat(DisplayUnits.INCH);
        assertThat(ClassCheck.of(SALTMARSH, ClassMeasures.of(MODEL, null, 0.3048), inch)
                        .get(5)
                        .sentence())
                .isEqualTo("Propeller 12 in, at most 11.811 in allowed: 0.189 in too much.");
    }
}
