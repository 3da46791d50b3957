package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.Season.Flown;
import org.rafterbook.work.Season.Flyer;
import org.rafterbook.work.Season.Turn;
import org.rafterbook.work.Season.Visit;
import org.rafterbook.work.Season.Wing;

class SeasonTest {

    private static final LocalDate OCTOBER = LocalDate.of(2025, 10, 28);
    private static final LocalDate MARCH = LocalDate.of(2026, 3, 3);

    private static final Map<String, Visit> VISITS = Map.of(
            "low", new Visit(OCTOBER, "Saltmarsh Sports Hall", 9.4, 292.0, "first trim", 1),
            "high", new Visit(MARCH, "Drill Hall", 14.0, null, null, 0));

    private final List<Flown> flights = new ArrayList<>();

    private Flown flown(String session, int version, double seconds, boolean atLeast, double fraction, Turn turn) {
        Visit visit = VISITS.get(session);
        Flown flown = new Flown(
                "f" + flights.size(),
                session,
                visit.date(),
                visit.venue(),
                "m1",
                "Teasel",
                "t" + version,
                version,
                turn,
                seconds,
                atLeast,
                true,
                0.071,
                0.08,
                0.0026,
                "M1",
                fraction,
                "a < b & \"c\"");
        flights.add(flown);
        return flown;
    }

    private Season season() {
        return new Season(
                flights, VISITS, Map.of("m1", new Flyer("Teasel", List.of(new Wing(0.42, 0.11)), "35 cm class")));
    }

    private void fly() {
        flown("low", 1, 500, false, 1, new Turn(List.of(), false, false));
        flown("low", 1, 560, true, 1, null);
        flown("low", 2, 520, false, 1, new Turn(List.of("wing edge 146 mm, was 149"), false, false));
        flown("low", 1, 510, false, 1, new Turn(List.of("wing edge 149 mm, was 146"), true, false));
        flown("low", 1, 270, false, 0.5, null);
        flown("high", 1, 600, false, 1, null);
    }

    @Test
    void aWinterIsOneSeasonAndBeginsInJuly() {
        assertThat(Season.year(LocalDate.of(2025, 7, 1))).isEqualTo(2025);
        assertThat(Season.year(OCTOBER)).isEqualTo(2025);
        assertThat(Season.year(LocalDate.of(2026, 6, 30))).isEqualTo(2025);
    }

    @Test
    void bestsAreCleanFlightsByCeilingAndPartOfAMotor() {
        fly();
        assertThat(season().bests())
                .extracting(
                        b -> b.flight().durationS(),
                        Season.Best::ceilingM,
                        b -> b.flight().fraction())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(600.0, 14.0, 1.0),
                        org.assertj.core.groups.Tuple.tuple(520.0, 9.4, 1.0),
                        org.assertj.core.groups.Tuple.tuple(270.0, 9.4, 0.5));
        assertThat(season().bests()).extracting(Season.Best::className).containsOnly("35 cm class");
    }

    @Test
    void changesCountVersionsThatFollowEachOtherOnOneEvening() {
        fly();
        assertThat(season().evenings())
                .satisfiesExactly(high -> assertThat(high.changes()).isZero(), low -> {
                    assertThat(low.changes()).isEqualTo(2);
                    assertThat(low.flights()).isEqualTo(5);
                    assertThat(low.bestS()).as("the touched flight is none").isEqualTo(520);
                });
    }

    @Test
    void versionsTellWhatMadeThemAndWhenTheyFlew() {
        fly();
        assertThat(season().versions("m1"))
                .satisfiesExactly(
                        second -> {
                            assertThat(second.version()).isEqualTo("t2");
                            assertThat(second.changes()).containsExactly("wing edge 146 mm, was 149");
                            assertThat(second.flights()).isEqualTo(1);
                        },
                        first -> {
                            assertThat(first.first()).isEqualTo(OCTOBER);
                            assertThat(first.last()).isEqualTo(MARCH);
                            assertThat(first.sessions()).isEqualTo(2);
                        });
    }

    @Test
    void motorsAreCountedOnceAndBrokenOnesByTheirEvenings() {
        fly();
        assertThat(season().motors()).isEqualTo(1);
        assertThat(season().broken()).isEqualTo(1);
    }

    @Test
    void theReportStandsAloneAndWritesWhatWasNotedAsItWas() {
        fly();
        String html = new SeasonReport(season(), "2025 to 2026", "R. Aldous", DisplayUnits.METRIC).html();
        assertThat(html)
                .contains("<h1>Season 2025 to 2026</h1>", "R. Aldous. 6 flights, 1 of them “at least”, on 2 evenings")
                .contains("≥ 9:20", "wing edge 146 mm, was 149", "14.0 m", "7.1")
                .contains("a &lt; b &amp; \"c\"")
                .doesNotContain("http", "<script", "null");
    }

    @Test
    void aSeasonWithoutFlightsHasNeitherEveningsNorBests() {
        assertThat(season().bests()).isEmpty();
        assertThat(season().evenings()).isEmpty();
    }
}
