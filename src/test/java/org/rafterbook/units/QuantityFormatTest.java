package org.rafterbook.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityFormatTest {

    private final QuantityFormat metric = new QuantityFormat(DisplayUnits.METRIC);
    private final QuantityFormat inch = new QuantityFormat(DisplayUnits.INCH);

    @Test
    void showsValueAndUnitWithSensibleDigits() {
        assertThat(metric.text(Quantity.TORQUE, 0.002612)).isEqualTo("2.6 N·mm");
        assertThat(metric.text(Quantity.FRACTION, 0.0512)).isEqualTo("5.1 %");
        assertThat(metric.text(Quantity.TEMPERATURE, 292.55)).isEqualTo("19.4 °C");
        assertThat(metric.text(Quantity.PRESSURE, 101_325.0)).isEqualTo("1013 hPa");
        assertThat(metric.text(Quantity.DENSITY, 1.19931)).isEqualTo("1.199 kg/m³");
        assertThat(metric.text(Quantity.TURNS, 1979.6)).isEqualTo("1980 turns");
        assertThat(metric.text(Quantity.SPECIFIC_ENERGY, 7700.0)).isEqualTo("7.7 J/g");
        assertThat(metric.text(Quantity.ANGLE, Math.toRadians(-0.5))).isEqualTo("−0.50°");
        assertThat(metric.text(Quantity.LENGTH, 0.14040, 2)).isEqualTo("140.40 mm");
        assertThat(metric.text(Quantity.PLAIN, -3.0)).isEqualTo("−3.00");
    }

    @Test
    void inchFlyersSeeInchesAndOunceInchesButGrams() {
        assertThat(inch.text(Quantity.LENGTH, 0.11)).isEqualTo("4.33 in");
        assertThat(inch.text(Quantity.TORQUE, 0.0017654)).isEqualTo("0.25 in-oz");
        assertThat(inch.text(Quantity.MASS, 0.00104)).isEqualTo("1.04 g");
        assertThat(inch.text(Quantity.HEIGHT, 8.001)).isEqualTo("26.3 ft");
    }

    @Test
    void theOtherUnitIsToldBelowAField() {
        assertThat(metric.otherUnit(Quantity.LENGTH, 0.11)).hasValue("4.33 in");
        assertThat(inch.otherUnit(Quantity.LENGTH, 0.11)).hasValue("110.0 mm");
        assertThat(metric.otherUnit(Quantity.MASS, 0.001)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void unknownIsADashInEveryQuantity(Quantity quantity) {
        assertThat(metric.text(quantity, null)).isEqualTo("–");
        assertThat(metric.number(quantity, Double.NaN)).isEqualTo("–");
        assertThat(metric.difference(quantity, Double.POSITIVE_INFINITY)).isEqualTo("–");
        assertThat(metric.atLeast(quantity, null)).isEqualTo("–");
        assertThat(metric.plusMinus(quantity, null, 1.0)).isEqualTo("–");
        assertThat(metric.textOr("not weighed", quantity, null)).isEqualTo("not weighed");
    }

    @Test
    void timesAreMinutesAndSecondsAndNeverRoundedUp() {
        assertThat(metric.text(Quantity.TIME, 641.7)).isEqualTo("10:41");
        assertThat(metric.text(Quantity.TIME, 599.97)).isEqualTo("9:59");
        assertThat(ClockTime.tenths(599.97)).isEqualTo("9:59.9");
        assertThat(ClockTime.tenths(641.3)).isEqualTo("10:41.3");
        assertThat(ClockTime.tenths(0)).isEqualTo("0:00.0");
        assertThat(metric.text(Quantity.TIME, 5.0)).isEqualTo("0:05");
        assertThat(metric.text(Quantity.TIME, 4172.0)).isEqualTo("69:32");
        assertThat(metric.atLeast(Quantity.TIME, 527.4)).isEqualTo("≥ 8:47");
    }

    @Test
    void aDoubleJustBelowAWholeSecondIsThatSecond() {
        assertThat(ClockTime.minutesSeconds(640.9999999999999)).isEqualTo("10:41");
    }

    @Test
    void differencesCarryTheirSign() {
        assertThat(metric.difference(Quantity.TIME, 46.2)).isEqualTo("+0:46");
        assertThat(metric.difference(Quantity.TIME, -65.0)).isEqualTo("−1:05");
        assertThat(metric.difference(Quantity.TIME, 0.2)).isEqualTo("0:00");
        assertThat(metric.difference(Quantity.LENGTH, 0.00151)).isEqualTo("+1.5 mm");
        assertThat(metric.difference(Quantity.LENGTH, -0.00151)).isEqualTo("−1.5 mm");
        assertThat(metric.difference(Quantity.LENGTH, -0.00001)).isEqualTo("0.0 mm");
    }

    @Test
    void shortestKeepsTheDecimalsThereAre() {
        assertThat(metric.shortest(Quantity.MASS, 0.0009, 4)).isEqualTo("0.9 g");
        assertThat(metric.shortest(Quantity.MASS, 0.0013996, 4)).isEqualTo("1.3996 g");
        assertThat(metric.shortest(Quantity.LENGTH, 1.0 / 3, 4)).isEqualTo("333.3333 mm");
        assertThat(metric.shortest(Quantity.LENGTH, -0.002, 4)).isEqualTo("−2 mm");
        assertThat(metric.shortest(Quantity.TIME, 641.7, 4)).isEqualTo("10:41");
        assertThat(metric.shortest(Quantity.MASS, null, 4)).isEqualTo("–");
    }

    @Test
    void rangesAndUncertaintiesNameTheirUnitOnce() {
        assertThat(metric.range(Quantity.HEIGHT, 7.9, 9.4)).isEqualTo("7.9 to 9.4 m");
        assertThat(metric.range(Quantity.HEIGHT, 7.9, 7.9)).isEqualTo("7.9 m");
        assertThat(metric.plusMinus(Quantity.LENGTH, 0.2027, 0.0025)).isEqualTo("202.7 ± 2.5 mm");
    }

    @Test
    void tableNumbersGoWithoutTheUnitOfTheirHead() {
        assertThat(metric.number(Quantity.LENGTH, 0.146)).isEqualTo("146.0");
        assertThat(metric.number(Quantity.LENGTH, 0.146, 0)).isEqualTo("146");
        assertThat(metric.unitOf(Quantity.LENGTH)).isEqualTo("mm");
        assertThat(QuantityFormat.inUnit(Math.toRadians(2.75), Unit.DEG)).isEqualTo("2.75°");
    }
}
