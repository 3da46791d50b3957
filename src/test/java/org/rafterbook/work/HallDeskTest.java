package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.PressureSource;
import org.rafterbook.flight.Recovered;
import org.rafterbook.logbook.Mode;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindEnd;
import org.rafterbook.review.Outcome;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.UserError;

class HallDeskTest {

    private static final Instant EVENING = Instant.parse("2026-01-20T18:30:00Z");

    @TempDir
    Path folder;

    private TurnedClock clock = new TurnedClock(EVENING);
    private Book book;
    private HallDesk desk;

    /** A clock the test turns. */
    private static final class TurnedClock extends Clock {
        private Instant now;

        TurnedClock(Instant now) {
            this.now = now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    @BeforeEach
    void open() {
        book = Book.open(folder.resolve("hall.rafterbook"), Mode.CREATE, clock);
        desk = new HallDesk(book, (rigged, motor) -> MarginText.NO_GEOMETRY);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private void reopen() {
        book.close();
        open();
    }

    private static TypedValue typed(Quantity quantity, String text) {
        return QuantityParser.typed(quantity, DisplayUnits.METRIC).read(text).orThrow();
    }

    private static TypedRange range(String text) {
        return QuantityParser.typed(Quantity.HEIGHT, DisplayUnits.METRIC)
                .readRange(text)
                .orThrow();
    }

    private Launch launch(@Nullable String modelId) {
        return Launch.of(modelId, null, clock.now);
    }

    private Flight landed(Launch launch, double seconds) {
        desk.flying().launch(launch);
        Watch watch = Watch.started(0, Objects.requireNonNull(launch.at()));
        clock.now = clock.now.plusMillis(Math.round(seconds * 1000));
        return desk.flying().land(launch.flightId(), watch.stop(Math.round(seconds * 1e9), clock.now), null);
    }

    private Flight stored(String flightId) {
        return Objects.requireNonNull(desk.evening().find(flightId)).flight();
    }

    @Test
    void aTypedFlightNeedsNoMoreThanTheModelsName() {
        Model model = desk.addModel("Teasel");
        Launch launch = Launch.of(model.id(), null, null);

        desk.flying().typed(launch, typed(Quantity.TIME, "1050"));

        Flight flight = stored(launch.flightId());
        assertThat(flight.durationS()).isEqualTo(1050);
        assertThat(flight.durationSource()).isEqualTo(DurationSource.TYPED);
        assertThat(flight.asTyped()).containsEntry("durationS", "1050");
        assertThat(flight.launchedAt()).isNull();
        assertThat(Objects.requireNonNull(desk.prepare().rigged()).model().name())
                .isEqualTo("Teasel");
        assertThat(desk.prepare().ordinal()).isEqualTo(2);
    }

    @Test
    void theSessionBeginsWithTheFirstEntryAndPassesMidnight() {
        Model model = desk.addModel("Teasel");
        assertThat(desk.evening().session()).isNull();
        clock.now = Instant.parse("2026-01-20T23:50:00Z");
        landed(launch(model.id()), 300);
        clock.now = Instant.parse("2026-01-21T00:20:00Z");
        landed(launch(model.id()), 310);

        assertThat(desk.evening().flights()).hasSize(2);
        clock.now = Instant.parse("2026-01-21T19:00:00Z");
        assertThat(desk.evening().session()).isNull();
    }

    @Test
    void theRowIsOnDiskFromLaunchOn() {
        Model model = desk.addModel("Teasel");
        Launch launch = launch(model.id());
        desk.flying().launch(launch);
        reopen();

        Evening evening = desk.evening();

        assertThat(evening.inTheAir()).hasSize(1);
        Flight flight = evening.inTheAir().get(0).flight();
        Watch watch = Watch.found(Objects.requireNonNull(flight.launchedAt()));
        assertThat(watch.elapsedS(77, clock.now.plusSeconds(90))).isEqualTo(90);
        Flight down = desk.flying().land(flight.id(), watch.stop(78, clock.now.plusSeconds(95)), null);
        assertThat(down.durationS()).isEqualTo(95);
        assertThat(down.durationSource()).isEqualTo(DurationSource.WALL_CLOCK);
        assertThat(desk.evening().inTheAir()).isEmpty();
    }

    @Test
    void aLaunchThatCouldNotBeWrittenIsMadeGoodAtLanding() {
        Launch launch = launch(null);

        desk.flying().land(launch.flightId(), new Watch.Stop(60, DurationSource.WATCH, clock.now, null), launch);

        assertThat(stored(launch.flightId()).durationS()).isEqualTo(60);
    }

    @Test
    void aWrongStopIsTakenBackAndTheWatchHasRunOn() {
        Launch launch = launch(desk.addModel("Teasel").id());
        landed(launch, 120);
        desk.answers().end(launch.flightId(), LandingEnd.BY_HAND);

        desk.flying().stillFlying(launch.flightId());

        assertThat(desk.evening().inTheAir()).hasSize(1);
        assertThat(desk.evening().eventsOf(launch.flightId())).isEmpty();
        Watch watch = Watch.started(0, EVENING);
        Flight flight =
                desk.flying().land(launch.flightId(), watch.stop(500_000_000_000L, EVENING.plusSeconds(500)), null);
        assertThat(flight.durationS()).isEqualTo(500);
        assertThat(flight.durationSource()).isEqualTo(DurationSource.WATCH);
    }

    @Test
    void clocksThatDifferAreTold() {
        Watch watch = Watch.started(1_000_000_000L, EVENING);

        Watch.Stop close = watch.stop(61_000_000_000L, EVENING.plusMillis(60_200));
        Watch.Stop apart = watch.stop(61_000_000_000L, EVENING.plusMillis(57_000));

        assertThat(close.durationS()).isEqualTo(60);
        assertThat(close.doubtS()).isNull();
        assertThat(apart.durationS()).isEqualTo(60);
        assertThat(apart.doubtS()).isEqualTo(3);
    }

    @Test
    void undoOfALandingPutsTheFlightBackInTheAir() {
        Launch launch = launch(desk.addModel("Teasel").id());
        landed(launch, 120);

        book.undo();

        assertThat(desk.evening().inTheAir()).hasSize(1);
        book.undo();
        assertThat(desk.evening().inTheAir()).isEmpty();
        assertThat(desk.evening().flights()).isEmpty();
    }

    @Test
    void aSettingTurnedByOneStepIsANewVersionAndBackIsTheOldOne() {
        Model model = desk.addModel("Teasel");
        SettingDef wing = book.riggings().addSetting(model.id(), "Wing position", "LENGTH", "mm", 0.001, 0.0005, null);
        assertThatThrownBy(() -> desk.step(model.id(), wing.id(), 1)).isInstanceOf(UserError.class);
        desk.set(model.id(), wing.id(), Setting.of(0.149));
        landed(launch(model.id()), 100);

        desk.step(model.id(), wing.id(), -3);

        Prepared prepared = desk.prepare();
        Rigged now = Objects.requireNonNull(prepared.rigged());
        Rigged before = Objects.requireNonNull(prepared.before());
        assertThat(Objects.requireNonNull(now.values().get(wing.id())).number()).isEqualTo(0.146);
        assertThat(Objects.requireNonNull(before.values().get(wing.id())).number())
                .isEqualTo(0.149);
        desk.step(model.id(), wing.id(), 3);
        assertThat(Objects.requireNonNull(desk.prepare().rigged()).version().id())
                .isEqualTo(before.version().id());
    }

    @Test
    void aFlightJustTimedIsGivenItsModelLater() {
        Model model = desk.addModel("Teasel");
        desk.choose(null);
        assertThat(desk.prepare().rigged()).isNull();
        Launch launch = launch(null);
        landed(launch, 80);

        desk.answers().giveModel(launch.flightId(), model.id());

        assertThat(Objects.requireNonNull(desk.evening().flights().get(0).model())
                        .name())
                .isEqualTo("Teasel");
    }

    @Test
    void aRelaunchIsTheSecondLaunchOfTheSameWind() {
        Model model = desk.addModel("Teasel");
        Motor motor = desk.winding().addMotor("M17", typed(Quantity.LENGTH, "340 mm"), typed(Quantity.MASS, "1.04 g"));
        Wind wind = desk.winding().keep(null, new WindForm(motor.id(), 1980.0, 110.0, null, 0.0026, 15.0, Map.of()));
        assertThat(Objects.requireNonNull(desk.prepare().wind()).id()).isEqualTo(wind.id());
        assertThat(desk.winding().ratio()).isEqualTo(15);
        Flight first = landed(Launch.of(model.id(), wind.id(), clock.now), 20);
        assertThat(desk.prepare().wind()).isNull();
        Wind again = Objects.requireNonNull(desk.prepare().again());

        Flight second = landed(Launch.of(model.id(), again.id(), clock.now), 600);

        assertThat(again.id()).isEqualTo(wind.id());
        assertThat(again.end()).isEqualTo(WindEnd.FLOWN);
        assertThat(second.launchNoOfWind()).isEqualTo(2);
        assertThatThrownBy(() -> desk.answers().turnsLeft(second.id(), typed(Quantity.TURNS, "1871")))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("1870");
        desk.answers().turnsLeft(second.id(), typed(Quantity.TURNS, "1870"));
        assertThat(stored(second.id()).turnsLeft()).isEqualTo(1870);

        desk.answers().turnsLeft(first.id(), typed(Quantity.TURNS, "1500"));
        assertThatThrownBy(() -> desk.answers().turnsLeft(second.id(), typed(Quantity.TURNS, "1501")))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("1501 turns left are more than the 1500 on the motor at launch");
        desk.answers().turnsLeft(second.id(), typed(Quantity.TURNS, "700"));
        assertThat(stored(second.id()).turnsLeft()).isEqualTo(700);
    }

    @Test
    void moreBackedOffThanWoundIsRefused() {
        assertThatThrownBy(
                        () -> desk.winding().keep(null, new WindForm(null, 100.0, 110.0, null, null, null, Map.of())))
                .isInstanceOf(UserError.class);
        assertThat(desk.evening().session()).isNull();
    }

    @Test
    void aRestedMotorOfTheSameSizeIsProposedAndNeverTheSame() {
        Model model = desk.addModel("Teasel");
        Motor flown = desk.winding().addMotor("M1", typed(Quantity.LENGTH, "340 mm"), typed(Quantity.MASS, "1.04 g"));
        desk.winding().addMotor("M2", typed(Quantity.LENGTH, "380 mm"), typed(Quantity.MASS, "1.04 g"));
        Motor like = desk.winding().addMotor("M3", typed(Quantity.LENGTH, "342 mm"), typed(Quantity.MASS, "1.05 g"));
        Wind wind = desk.winding().keep(null, new WindForm(flown.id(), 1900.0, null, null, null, null, Map.of()));
        landed(Launch.of(model.id(), wind.id(), clock.now), 500);

        assertThat(desk.prepare().proposed()).isEqualTo(like);
        assertThat(desk.prepare().motor()).isNull();
    }

    @Test
    void aBrokenMotorIsNotOfferedAgain() {
        Motor motor = desk.winding().addMotor("M1", null, null);
        Wind wind = desk.winding().keep(null, new WindForm(motor.id(), 900.0, null, null, null, null, Map.of()));

        desk.winding().end(wind.id(), WindEnd.BROKE);

        assertThat(desk.winding().motors()).isEmpty();
        assertThat(desk.prepare().wind()).isNull();
    }

    @Test
    void aTouchSaysAtLeastAsHighAndAsksWhetherItCostTime() {
        Model model = desk.addModel("Teasel");
        desk.visit().add("Saltmarsh Sports Hall", typed(Quantity.HEIGHT, "9.4 m"), typed(Quantity.HEIGHT, "40 m"));
        String venue = Objects.requireNonNull(desk.evening().venue()).id();
        desk.visit().addMark(venue, "lamp", typed(Quantity.HEIGHT, "7.9 m"), true);
        HeightMark lamp = desk.evening().heights().get(0);
        Launch launch = launch(model.id());
        desk.flying().launch(launch);
        desk.flying().note(launch.flightId(), FlightEventKind.TOUCHED, 192.0, lamp, null, null);
        desk.flying().land(launch.flightId(), new Watch.Stop(641, DurationSource.WATCH, clock.now, null), null);

        Flight asked = desk.answers().end(launch.flightId(), LandingEnd.MOTOR_TURNING);

        assertThat(asked.ending()).isEqualTo(Ending.TOUCHED);
        assertThat(asked.cutShort()).isNull();
        assertThat(asked.peakLowM()).isEqualTo(7.9);
        assertThat(desk.evening().outcome(asked).kind()).isEqualTo(Outcome.Kind.AT_LEAST);
        Flight clean = desk.answers().costTime(launch.flightId(), CutShort.NO);
        assertThat(desk.evening().outcome(clean).kind()).isEqualTo(Outcome.Kind.EXACT);
        assertThat(LandingEnd.of(clean, List.of())).isEqualTo(LandingEnd.MOTOR_TURNING);
    }

    @Test
    void everyAnswerAtLandingIsReadBackAsItself() {
        Model model = desk.addModel("Teasel");
        Launch launch = launch(model.id());
        landed(launch, 400);
        for (LandingEnd end : LandingEnd.values()) {
            Flight flight = desk.answers().end(launch.flightId(), end);
            assertThat(LandingEnd.of(flight, desk.evening().eventsOf(flight.id())))
                    .isEqualTo(end);
        }
        // caught by hand is a steer at the end, so the flight lasted at least its time
        assertThat(desk.evening().outcome(stored(launch.flightId())))
                .isEqualTo(new Outcome(
                        Outcome.Kind.AT_LEAST, 400, Ending.STEERED, "steered: at least the time of its first steer"));
    }

    @Test
    void whatItDoesIsKeptWithItsSecond() {
        Launch launch = launch(desk.addModel("Teasel").id());
        desk.flying().launch(launch);
        String id = launch.flightId();

        desk.flying().note(id, FlightEventKind.STALLED, 193.0, null, null, null);
        desk.flying().note(id, FlightEventKind.STALLED, 199.0, null, null, null);
        desk.flying().note(id, FlightEventKind.RECOVERED, 201.5, null, null, null);
        desk.answers().leaveOut(id, "propeller loose");
        desk.answers().notes(id, " slid off the lamp ");
        desk.answers().peak(id, range("7.9 to 9.4"));

        Flight flight = stored(id);
        assertThat(flight.stalls()).isEqualTo(2);
        assertThat(flight.recovered()).isEqualTo(Recovered.YES);
        assertThat(flight.leftOutBeforeTime()).isTrue();
        assertThat(flight.notes()).isEqualTo("slid off the lamp");
        assertThat(flight.peakLowM()).isEqualTo(7.9);
        assertThat(flight.peakHighM()).isEqualTo(9.4);
        assertThat(desk.evening().eventsOf(id)).extracting(e -> e.atS()).containsExactly(193.0, 199.0, 201.5);
    }

    @Test
    void anAbortedLaunchHasNoTimeAndIsNotInTheAir() {
        Launch launch = launch(desk.addModel("Teasel").id());
        desk.flying().launch(launch);

        desk.flying().didNotLaunch(launch.flightId(), null);

        assertThat(desk.evening().inTheAir()).isEmpty();
        assertThat(stored(launch.flightId()).ending()).isEqualTo(Ending.ABORTED);
    }

    @Test
    void airWithoutABarometerTakesThePressureFromTheHeightOfTheSite() {
        desk.visit().add("Saltmarsh Sports Hall", null, typed(Quantity.HEIGHT, "0 m"));

        desk.visit().air(typed(Quantity.TEMPERATURE, "20"), typed(Quantity.HUMIDITY, "50"), null);

        Evening evening = desk.evening();
        assertThat(Objects.requireNonNull(evening.air()).pressureSource()).isEqualTo(PressureSource.FROM_HEIGHT);
        // CIPM-2007 at 20 °C, 50 %, 1013.25 hPa: 1.1992 kg/m3 (check value of the air room)
        assertThat(evening.densityKgPerM3()).isCloseTo(1.1992, within(2e-4));
    }
}
