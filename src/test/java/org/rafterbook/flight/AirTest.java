package org.rafterbook.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.CheckRows;
import org.rafterbook.units.Unit;
import org.rafterbook.units.UserError;

/** Rows A, S and I; each row of the file carries its source and standing. */
class AirTest {

    private static final CheckRows CHECKS = CheckRows.of("power.csv");

    @ParameterizedTest
    @ValueSource(strings = {"A1", "A2", "A4", "A5", "A6", "A7", "A8", "A9", "A10"})
    void densityOfMoistAir(String row) {
        double temperature = Unit.CELSIUS.toSi(CHECKS.input(row, "t_C"));
        CHECKS.hold(row, MoistAir.densityKgPerM3(temperature, CHECKS.input(row, "p_Pa"), CHECKS.input(row, "h")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"S1", "S2", "S3", "S5", "S6", "S7"})
    void saturationPressureOfWater(String row) {
        CHECKS.hold(row, MoistAir.saturationPressurePa(Unit.CELSIUS.toSi(CHECKS.input(row, "t_C"))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"I1", "I2", "I3", "I5", "I6", "I7"})
    void standardAtmosphereByHeight(String row) {
        double height = CHECKS.input(row, "H_m");
        CHECKS.hold(row, new double[] {
            StandardAtmosphere.temperatureK(height),
            Unit.HPA.fromSi(StandardAtmosphere.pressurePa(height)),
            StandardAtmosphere.densityKgPerM3(height)
        });
    }

    // ICAO Doc 7488/3 Table 4, read second-hand: 16 000 ft, 0.745979 kg/m3.
    @Test
    void standardDensityAtSixteenThousandFeet() {
        assertThat(StandardAtmosphere.densityKgPerM3(Unit.FT.toSi(16_000))).isCloseTo(0.745979, within(1e-6));
    }

    // Derived from the formulas: humidity from none to half at 20 °C takes 0.44 %, to 80 % at 30 °C 1.26 %.
    @Test
    void moistAirIsLighter() {
        double dry = MoistAir.densityKgPerM3(293.15, 101_325, 0);
        assertThat(MoistAir.densityKgPerM3(293.15, 101_325, 0.5) / dry - 1).isCloseTo(-0.0044, within(0.0001));
        double warm = MoistAir.densityKgPerM3(303.15, 101_325, 0);
        assertThat(MoistAir.densityKgPerM3(303.15, 101_325, 0.8) / warm - 1).isCloseTo(-0.0126, within(0.0001));
    }

    @Test
    void seaLevelPressureIsReducedInTheStandardProportion() {
        assertThat(StandardAtmosphere.stationPressurePa(101_325, 1_500))
                .isEqualTo(StandardAtmosphere.pressurePa(1_500));
        assertThat(StandardAtmosphere.stationPressurePa(102_000, 0)).isCloseTo(102_000, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"21, 101325, 0.45", "150, 101325, 0.45", "294.15, 1013, 0.45", "294.15, 101325, 45", "NaN, 101325, 0"})
    void airThatCannotBeIsRefused(double temperatureK, double pressurePa, double humidity) {
        assertThatThrownBy(() -> MoistAir.densityKgPerM3(temperatureK, pressurePa, humidity))
                .isInstanceOf(UserError.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-2_001, 11_001, Double.NaN})
    void heightsOutsideTheLowestLayerAreRefused(double heightM) {
        assertThatThrownBy(() -> StandardAtmosphere.pressurePa(heightM)).isInstanceOf(UserError.class);
    }
}
