package org.rafterbook.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.CheckRows;
import org.rafterbook.power.Winder;
import org.rafterbook.units.UserError;

class TurnsUsedTest {

    private static final CheckRows CHECKS = CheckRows.of("power.csv");

    /** Rows C20 to C22: flights logged in winder turns; the file carries source and standing. */
    @ParameterizedTest
    @ValueSource(strings = {"C20", "C21", "C22"})
    void meanRpmOfPublishedFlights(String row) {
        Winder winder = new Winder(CHECKS.input(row, "winder_ratio"));
        TurnsUsed turns = new TurnsUsed(
                winder.motorTurns(CHECKS.input(row, "winder_turns")),
                winder.motorTurns(CHECKS.input(row, "backoff")),
                winder.motorTurns(CHECKS.input(row, "left")));
        CHECKS.hold(row, turns.meanRpm(CHECKS.input(row, "time_s")));
    }

    // Row C20 in motor turns (message 1106/9514, read in the source): 1275 wound, 180 backed off, 225 left.
    @Test
    void shareLeftIsOfTheTurnsAtLaunch() {
        TurnsUsed turns = new TurnsUsed(1275, 180, 225);
        assertThat(turns.atLaunch()).isEqualTo(1095);
        assertThat(turns.used()).isEqualTo(870);
        assertThat(turns.shareLeft()).isCloseTo(225 / 1095.0, within(1e-15));
    }

    @ParameterizedTest
    @CsvSource({"100, 20, 81", "100, 101, 0", "-1, 0, 0", "100, -1, 0", "100, 0, -1", "NaN, 0, 0"})
    void turnsThatCannotBelongToOneFlightAreRefused(double wound, double backedOff, double left) {
        assertThat(TurnsUsed.refusal(wound, backedOff, left)).isPresent();
        assertThatThrownBy(() -> new TurnsUsed(wound, backedOff, left)).isInstanceOf(UserError.class);
    }

    @Test
    void nothingIsMadeUpWithoutTimeOrTurns() {
        assertThat(new TurnsUsed(100, 0, 0).meanRpm(0)).isNaN();
        assertThat(new TurnsUsed(0, 0, 0).shareLeft()).isNaN();
        assertThat(TurnsUsed.refusal(100, 20, 81))
                .hasValue("81 turns left are more than the 80 on the motor at launch.");
    }
}
