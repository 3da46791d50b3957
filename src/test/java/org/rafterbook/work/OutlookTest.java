package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.power.Wind;
import org.rafterbook.review.Answer;
import org.rafterbook.review.ExpectedFlight;
import org.rafterbook.review.TrialPlan;

/** What the Hall expects of the next flight, and what it prepares. */
class OutlookTest {

    @TempDir
    Path folder;

    private ReviewEvenings evenings;
    private SettingDef wing;
    private HallDesk desk;
    private String model;

    @BeforeEach
    void open() {
        evenings = new ReviewEvenings(folder.resolve("a.rafterbook"));
        model = evenings.model().id();
        wing = evenings.setting("wing edge", "LENGTH", "mm");
        evenings.trim(wing, 0.149);
        desk = evenings.book().hall();
    }

    @AfterEach
    void close() {
        evenings.close();
    }

    private Outlook outlook() {
        return desk.outlook(desk.prepare(), false, desk.evening(), Progress.none())
                .orElseThrow();
    }

    private ExpectedFlight expected() {
        return Objects.requireNonNull(outlook().expected());
    }

    private void wind(double torqueNm) {
        evenings.book().logbook().enter("wind", w -> {
            Wind last = w.all(Wind.class).get(w.all(Wind.class).size() - 1);
            return w.insert(new Wind(
                    Logbook.newId(),
                    last.motorId(),
                    last.sessionId(),
                    99,
                    null,
                    1400.0,
                    null,
                    null,
                    torqueNm,
                    null,
                    null,
                    null,
                    last.asTyped()));
        });
    }

    @Test
    void withoutAModelNothingIsExpected() {
        desk.choose(null);
        assertThat(desk.outlook(desk.prepare(), false, desk.evening(), Progress.none()))
                .isEqualTo(Optional.empty());
    }

    @Test
    void withoutFlightsItSaysWhatIsMissing() {
        assertThat(outlook().expected()).isNull();
        assertThat(outlook().flight()).isInstanceOf(Answer.CannotTell.class);
    }

    @Test
    void theTimeIsExpectedFromTheModelsOwnFlights() {
        for (double seconds : new double[] {500, 505, 510, 495}) {
            evenings.fly(seconds);
        }
        ExpectedFlight expected = expected();
        assertThat(expected.flights()).isEqualTo(4);
        assertThat(expected.durationS()).isBetween(495.0, 510.0);
        assertThat(expected.bandS().low()).isLessThan(expected.durationS());
        assertThat(expected.bandS().high()).isGreaterThan(expected.durationS());
    }

    @Test
    void flightsOfAnOpenTrialTellNothingYet() {
        for (double seconds : new double[] {500, 505, 510, 495}) {
            evenings.fly(seconds);
        }
        ExpectedFlight before = expected();
        Trials trials = evenings.book().trials();
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 3);
        for (int i = 0; i < 2; i++) {
            trials.setNext(model);
            evenings.fly(700);
        }
        trials.setNext(model);
        assertThat(expected().flights()).isEqualTo(before.flights());
        assertThat(expected().bandS().high()).isLessThan(700);
    }

    @Test
    void theLaunchTorqueOfTheWindTellsPeakAndChance() {
        evenings.venue(7.9);
        for (int i = 0; i < 12; i++) {
            double torque = 0.0022 + 0.00008 * i;
            evenings.flyHigh(500 + i, torque, 7.8 * torque / 0.0027 + 0.1 * (i % 3), torque > 0.0028);
        }
        assertThat(outlook().chance()).isNull();
        wind(0.0022);
        Outlook low = outlook();
        wind(0.0030);
        Outlook high = outlook();
        assertThat(Objects.requireNonNull(low.peak()).heightM()).isCloseTo(6.4, within(0.5));
        assertThat(Objects.requireNonNull(low.chance())).isLessThan(0.1);
        assertThat(Objects.requireNonNull(high.chance())).isGreaterThan(0.5);
        assertThat(Objects.requireNonNull(low.risk()).limit().name()).isEqualTo("lamps");
    }

    @Test
    void theTopOfTheClimbStandsWhereItWasNoted() {
        for (double share : new double[] {0.3, 0.4}) {
            String flight = evenings.fly(500).id();
            evenings.book()
                    .logbook()
                    .enter(
                            "top",
                            w -> w.insert(new FlightEvent(
                                    Logbook.newId(),
                                    flight,
                                    FlightEventKind.TOP_OF_CLIMB,
                                    500 * share,
                                    null,
                                    null,
                                    "")));
        }
        assertThat(Objects.requireNonNull(outlook().topShare())).isCloseTo(0.35, within(1e-9));
        assertThat(outlook().topCount()).isEqualTo(2);
    }

    @Test
    void theNextFlightKnowsTheLastSettingTheWellBehavedVersionAndTheTrial() {
        String first = evenings.book().riggings().now(model).version().id();
        evenings.fly(500);
        evenings.trim(wing, 0.146);
        evenings.fly(510);
        evenings.trim(wing, 0.143);
        Version second = desk.prepare().flown().get(0);
        assertThat(desk.prepare().lastSetting()).isEqualTo(second.id());
        assertThat(desk.prepare().good()).isNull();
        evenings.book().bench().mark(first, true);
        assertThat(Objects.requireNonNull(desk.prepare().good()).version().id()).isEqualTo(first);
        assertThat(desk.prepare().trial()).isNull();

        Trials trials = evenings.book().trials();
        trials.open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), TrialPlan.LEAST_PER_SIDE);
        TrialNow trial = Objects.requireNonNull(desk.prepare().trial());
        assertThat(trial.set()).isFalse();
        assertThat(desk.prepare().judged()).isNull();
        trials.judge(model, "hall closed");
        assertThat(desk.prepare().trial()).isNull();
        assertThat(desk.prepare().judged()).isNotNull();
    }
}
