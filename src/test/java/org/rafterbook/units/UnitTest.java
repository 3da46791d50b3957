package org.rafterbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {

    // Rows C1 to C3: conversions exact by the definitions of inch, ounce, pound and standard gravity.
    @Test
    void ouncesAndInchesBecomeNewtonMillimetres() {
        double nm = Unit.IN_OZ.toSi(1);
        assertThat(Unit.N_MM.fromSi(nm)).isCloseTo(7.06155, within(1e-5));
        assertThat(Unit.GF_CM.fromSi(nm)).isCloseTo(72.0078, within(1e-3));
        assertThat(Unit.FT_LB_PER_LB.toSi(4000)).isCloseTo(11956, within(1.0));
    }

    // Conventional millimetre of mercury, 133.322387415 Pa; inch of mercury is 25.4 of them (exact).
    @Test
    void inchesOfMercuryAreMillimetresOfMercury() {
        assertThat(Unit.IN_HG.toSi(1)).isEqualTo(Unit.MM_HG.toSi(25.4));
        assertThat(Unit.HPA.fromSi(Unit.IN_HG.toSi(29.92))).isCloseTo(1013.207, within(0.001));
    }

    @Test
    void typedValuesComeOutAsTyped() {
        assertThat(Unit.DEG.fromSi(Unit.DEG.toSi(2.5))).isEqualTo(2.5);
        assertThat(Unit.MM.fromSi(0.1 + 0.2)).isEqualTo(300);
        assertThat(Unit.CELSIUS.fromSi(Unit.CELSIUS.toSi(0.1))).isEqualTo(0.1);
        assertThat(Unit.CELSIUS.fromSi(273.15)).isZero();
        assertThat(Unit.MM.toSi(31)).isEqualTo(0.031);
    }

    @Test
    void computedValuesKeepTheirFullPrecision() {
        double third = 1.0 / 3;
        assertThat(Unit.M.fromSi(third)).isEqualTo(third);
        assertThat(Unit.MM.fromSi(third)).isCloseTo(1000.0 / 3, within(1e-12));
        assertThat(MachineNumber.text(third, Unit.M)).isEqualTo("0.3333333333333333");
    }

    @Test
    void nothingIsMadeUpForWhatIsNoNumber() {
        assertThat(Unit.MM.fromSi(Double.NaN)).isNaN();
        assertThat(Unit.MM.toSi(Double.POSITIVE_INFINITY)).isInfinite();
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everySymbolNamesItsOwnUnit(Unit unit) {
        if (!unit.symbol().isEmpty()) {
            assertThat(Unit.find(unit.symbol(), unit.dimension())).hasValue(unit);
            assertThat(Unit.find(" " + unit.symbol().toUpperCase(Locale.ROOT) + " ", unit.dimension()))
                    .hasValue(unit);
        }
    }

    @Test
    void machineNumbersHaveNoExponentAndNoIdleZeros() {
        assertThat(MachineNumber.text(650.0)).isEqualTo("650");
        assertThat(MachineNumber.text(1e-5)).isEqualTo("0.00001");
        assertThat(MachineNumber.text(-0.0)).isEqualTo("0");
        assertThat(MachineNumber.text(1.2e7)).isEqualTo("12000000");
        assertThat(MachineNumber.text(0.0434, Unit.DEG)).startsWith("2.4866");
    }
}
