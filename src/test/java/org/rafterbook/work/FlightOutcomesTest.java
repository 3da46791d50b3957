package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;

/** A flight flagged after its time was known, and cut short: the same wherever it is told. */
class FlightOutcomesTest {

    @TempDir
    Path folder;

    private ReviewEvenings evenings;
    private String model;

    @BeforeEach
    void flag() {
        evenings = new ReviewEvenings(folder.resolve("a.rafterbook"));
        model = evenings.model().id();
        SettingDef wing = evenings.setting("wing edge", "LENGTH", "mm");
        evenings.trim(Map.of(wing.id(), Setting.of(0.149)), null);
        evenings.book().trials().open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 2);
        evenings.book().trials().setNext(model);
        Flight flight = evenings.fly(450, Ending.TOUCHED, CutShort.YES, "", 1400);
        new LandingAnswers(evenings.book().logbook(), evenings.book().clock()).leaveOut(flight.id(), "draught");
    }

    @AfterEach
    void close() {
        evenings.close();
    }

    private Season.Flown inTheSeason() {
        return evenings.book()
                .season()
                .load(null, Progress.none())
                .season()
                .flights()
                .get(0);
    }

    private boolean atLeastInTheTable() {
        return FlightAnswers.of(evenings.book(), null).get(0).atLeast();
    }

    private int inTheTrial() {
        return evenings.book().trials().now(model).orElseThrow().state().flown();
    }

    @Test
    void aLateFlagIsNoReasonToLeaveItOut() {
        assertThat(inTheSeason().atLeast()).isTrue();
        assertThat(inTheSeason().counts()).isTrue();
        assertThat(atLeastInTheTable()).isTrue();
        assertThat(inTheTrial()).isEqualTo(1);
    }

    @Test
    void whereTheFlyerSaysSoItIsLeftOutEverywhere() {
        new ReviewDesk(evenings.book(), MarginPercent.NONE).countLateFlags(model, true);
        assertThat(inTheSeason().counts()).isFalse();
        assertThat(atLeastInTheTable()).isFalse();
        assertThat(inTheTrial()).isZero();
        assertThat(new ReviewDesk(evenings.book(), MarginPercent.NONE)
                        .review(model, false, Progress.none())
                        .trials()
                        .get(0)
                        .state()
                        .flown())
                .isZero();
    }
}
