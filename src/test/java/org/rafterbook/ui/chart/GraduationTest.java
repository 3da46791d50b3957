package org.rafterbook.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GraduationTest {

    private static List<String> labels(List<Tick> ticks) {
        return ticks.stream().map(Tick::label).filter(label -> !label.isEmpty()).toList();
    }

    @Test
    void numbersAreLabelledInRoundSteps() {
        assertThat(labels(Graduation.numbers().ticks(3, 13, 27))).containsExactly("4", "6", "8", "10", "12");
        assertThat(labels(Graduation.numbers().ticks(-0.4, 1, 100))).containsExactly("0.0", "0.5", "1.0");
        assertThat(labels(Graduation.numbers().ticks(0, 2400, 0.5)))
                .containsExactly(
                        "0", "200", "400", "600", "800", "1000", "1200", "1400", "1600", "1800", "2000", "2200",
                        "2400");
    }

    @ParameterizedTest
    @CsvSource({"0,10,20", "0,10,100", "-4,16,18", "0,2400,0.45", "-30,620,1.88", "0.001,0.004,200000"})
    void labelsHaveRoomAndTheGraduationsToo(double low, double high, double pxPerUnit) {
        List<Tick> ticks = Graduation.numbers().ticks(low, high, pxPerUnit);
        double before = Double.NaN;
        double labelBefore = Double.NaN;
        for (Tick tick : ticks) {
            if (!Double.isNaN(before)) {
                assertThat((tick.value() - before) * pxPerUnit).isGreaterThan(3.5);
            }
            before = tick.value();
            if (!tick.label().isEmpty()) {
                if (!Double.isNaN(labelBefore)) {
                    assertThat((tick.value() - labelBefore) * pxPerUnit).isGreaterThan(45);
                }
                labelBefore = tick.value();
            }
        }
        assertThat(labels(ticks)).isNotEmpty();
    }

    @Test
    void tenMillimetresHaveOneLongFourShortAndOneMiddleGraduation() {
        List<Tick> ticks = Graduation.numbers().ticks(0, 10, 40);
        assertThat(ticks.stream().filter(tick -> tick.value() < 1.9).map(Tick::level))
                .containsExactly(Tick.Level.TEN, Tick.Level.ONE, Tick.Level.FIVE, Tick.Level.ONE);
    }

    @Test
    void theClockIsLabelledInTheSessionsZone() {
        double from = Instant.parse("2026-01-20T18:30:00Z").getEpochSecond();
        List<Tick> ticks = Graduation.clock(ZoneId.of("Europe/Berlin")).ticks(from, from + 3600, 0.092);
        assertThat(labels(ticks)).containsExactly("19:30", "19:45", "20:00", "20:15", "20:30");
        assertThat(ticks).hasSize(61);
    }

    @Test
    void minutesAreCountedInSeconds() {
        assertThat(labels(Graduation.minutes().ticks(360, 720, 0.4))).containsExactly("6", "8", "10", "12");
    }

    @Test
    void monthsAreNamedAndTheYearOnceAndInJanuary() {
        double from = LocalDate.of(2025, 9, 29).toEpochDay();
        assertThat(labels(Graduation.days().ticks(from, from + 170, 5)))
                .containsExactly("Oct 2025", "Nov", "Dec", "Jan 2026", "Feb", "Mar");
    }
}
