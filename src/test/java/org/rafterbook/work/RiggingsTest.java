package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.UserError;

class RiggingsTest {

    @TempDir
    Path folder;

    private Book book;

    @BeforeEach
    void open() {
        Clock clock = Clock.fixed(Instant.parse("2026-01-20T19:00:00Z"), ZoneOffset.UTC);
        book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, clock);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private Flight fly(String riggingId, int ordinal) {
        return book.logbook().enter("flight", w -> {
            Session session = w.all(Session.class).stream()
                    .findFirst()
                    .orElseGet(() -> w.insert(new Session(
                            Logbook.newId(), null, LocalDate.parse("2026-01-20"), ZoneId.of("UTC"), null, null)));
            return w.insert(new Flight(
                    Logbook.newId(),
                    session.id(),
                    riggingId,
                    null,
                    ordinal,
                    1,
                    null,
                    null,
                    500.0 + ordinal,
                    DurationSource.TYPED,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    1,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    Map.of()));
        });
    }

    private String riggingId(Rigged rigged) {
        assertThat(rigged.rigging()).isNotNull();
        return rigged.rigging().id();
    }

    private static AirframeSheet quire(double lowerEdgeM) {
        List<Rib> ribs = List.of(new Rib(0, 0, 0.1, 0, 0), new Rib(0.19, 0, 0.1, 0, 0));
        return new AirframeSheet(
                "Quire",
                "q1",
                new Airframe(
                        List.of(
                                Surface.symmetric("lower", Role.WING, lowerEdgeM, 0.02, 0.035, 0.04, ribs),
                                Surface.symmetric("upper", Role.WING, 0.10, 0.11, 0.045, 0.04, ribs),
                                Surface.symmetric("tail", Role.TAILPLANE, 0.42, 0.03, 0, 0, ribs)),
                        List.of(new MassItem("lower", 0.0009, lowerEdgeM + 0.05, 0.02)),
                        null,
                        new MotorPlace(0.0016, 0.12)));
    }

    @Test
    void aModelWithOnlyANameCanFly() {
        Model model = book.riggings().addModel("  Teasel ");
        Rigged now = book.riggings().now(model.id());
        assertThat(now.name()).isEqualTo("t1");
        assertThat(now.geometry()).isNull();
        assertThatThrownBy(() -> book.riggings().addModel("teasel")).isInstanceOf(UserError.class);
    }

    @Test
    void abaIsThreeRiggingsAndTwoVersions() {
        Model model = book.riggings().addModel("Teasel");
        SettingDef pitch = book.riggings().addSetting(model.id(), "Pitch", "LENGTH", "mm", 0.005, 0.002, null);
        book.riggings().trim(model.id(), Map.of(pitch.id(), Setting.of(0.6)), "pitch 600", null);
        fly(riggingId(book.riggings().now(model.id())), 1);
        book.riggings().trim(model.id(), Map.of(pitch.id(), Setting.of(0.62)), "pitch 620", null);
        fly(riggingId(book.riggings().now(model.id())), 2);
        // within half the tolerance of what was flown: the same version
        book.riggings().trim(model.id(), Map.of(pitch.id(), Setting.of(0.6008)), "pitch 600.8", null);
        fly(riggingId(book.riggings().now(model.id())), 3);

        List<Rigged> strip = book.riggings().strip(model.id());
        assertThat(strip).extracting(Rigged::name).containsExactly("t2", "t3", "t2");
        Map<String, List<TrimChange>> changes = Riggings.changes(strip);
        assertThat(strip.stream()
                        .map(r -> changes.getOrDefault(riggingId(r), List.of()).size()))
                .containsExactly(0, 1, 1);
    }

    @Test
    void aRiggingThatHasNotFlownIsChangedInPlace() {
        Model model = book.riggings().addModel("Teasel");
        SettingDef pitch = book.riggings().addSetting(model.id(), "Pitch", "LENGTH", "mm", null, null, null);
        book.riggings().trim(model.id(), Map.of(pitch.id(), Setting.of(0.6)), "pitch", null);
        fly(riggingId(book.riggings().now(model.id())), 1);
        for (double turned : new double[] {0.61, 0.62, 0.63}) {
            book.riggings().trim(model.id(), Map.of(pitch.id(), Setting.of(turned)), "pitch", null);
        }
        assertThat(book.riggings().strip(model.id())).hasSize(2);
        book.riggings().trim(model.id(), Map.of(pitch.id(), Setting.of(0.6)), "pitch", null);
        assertThat(book.riggings().strip(model.id())).hasSize(1);
    }

    @Test
    void undoTakesATrimChangeBack() {
        Model model = book.riggings().addModel("Teasel");
        SettingDef pitch = book.riggings().addSetting(model.id(), "Pitch", "LENGTH", "mm", null, null, null);
        book.riggings().trim(model.id(), Map.of(pitch.id(), Setting.of(0.6)), "pitch 600", null);
        fly(riggingId(book.riggings().now(model.id())), 1);
        book.riggings().trim(model.id(), Map.of(pitch.id(), Setting.of(0.7)), "pitch 700", null);
        assertThat(book.undo().why()).isEqualTo("pitch 700");
        assertThat(book.riggings().now(model.id()).values()).containsEntry(pitch.id(), Setting.of(0.6));
        assertThat(book.riggings().strip(model.id())).hasSize(1);
    }

    @Test
    void slidingAWingIsOneChangeAndTakesItsMassAlong() {
        Rigged taken = book.sheets().take(quire(0.12));
        fly(riggingId(taken), 1);
        SettingDef position = taken.settings().stream()
                .filter(d -> "lower.edge_aft_mm".equals(d.path()))
                .findFirst()
                .orElseThrow();
        Rigged slid = book.riggings()
                .trim(taken.model().id(), Map.of(position.id(), Setting.of(0.13)), "lower 10 mm back", null);
        assertThat(TrimChange.between(slid.settings(), taken.values(), slid.values()))
                .singleElement()
                .extracting(c -> c.setting().label())
                .isEqualTo("Lower position");
        assertThat(slid.geometry()).isNotNull();
        assertThat(slid.geometry().masses().get(0).aftM()).isEqualTo(0.18);
    }

    @Test
    void aSheetGoesUnderFlightsFlownWithoutGeometry() {
        Model model = book.riggings().addModel("Quire");
        Flight flight = fly(riggingId(book.riggings().now(model.id())), 1);
        Rigged taken = book.sheets().take(quire(0.12));
        assertThat(riggingId(taken)).isEqualTo(flight.riggingId());
        assertThat(taken.geometry()).isNotNull();
        assertThat(book.riggings().strip(model.id())).hasSize(1);
        // the same sheet again changes nothing
        assertThat(book.sheets().take(quire(0.12)).version()).isEqualTo(taken.version());
    }

    @Test
    void whatASheetNoLongerHasCannotBeSetAndMakesNoVersions() {
        Rigged two = book.sheets().take(quire(0.12));
        fly(riggingId(two), 1);
        SettingDef lower = two.settings().stream()
                .filter(d -> "lower.edge_aft_mm".equals(d.path()))
                .findFirst()
                .orElseThrow();
        AirframeSheet one = withoutLower();
        Rigged taken = book.sheets().take(one);
        fly(riggingId(taken), 2);
        assertThat(taken.ownSettings()).isNotEmpty().doesNotContain(lower);
        assertThat(taken.values()).doesNotContainKey(lower.id());
        Map<String, Setting> moved = Map.of(lower.id(), Setting.of(0.13));
        String id = two.model().id();
        assertThatThrownBy(() -> book.riggings().trim(id, moved, "lower back", null))
                .isInstanceOf(UserError.class)
                .hasMessage("The airframe of q2 has nothing that Lower position could be set on.");
        // whichever version the sheet is read over, it is the same one
        book.riggings().from(two.version().id(), moved, "lower back", null);
        assertThat(book.sheets().take(one).version()).isEqualTo(taken.version());
    }

    private static AirframeSheet withoutLower() {
        AirframeSheet two = quire(0.12);
        return new AirframeSheet(
                two.model(),
                two.version(),
                new Airframe(two.airframe().surfaces().subList(1, 3), List.of(), null, null));
    }

    @Test
    void alwaysSoPutsAValueRightInEveryVersionThatCarriesIt() {
        Model model = book.riggings().addModel("Teasel");
        SettingDef incidence = book.riggings().addSetting(model.id(), "Incidence", "ANGLE", "°", null, null, null);
        SettingDef pitch = book.riggings().addSetting(model.id(), "Pitch", "LENGTH", "mm", null, null, null);
        for (double p : new double[] {0.6, 0.7}) {
            book.riggings()
                    .trim(model.id(), Map.of(incidence.id(), Setting.of(0.05), pitch.id(), Setting.of(p)), "set", null);
            fly(riggingId(book.riggings().now(model.id())), 1);
        }
        assertThat(book.corrections().carriers(model.id(), incidence.id(), Setting.of(0.05)))
                .extracting(Corrections.Carrier::flights)
                .containsExactly(1, 1);
        assertThat(book.corrections().alwaysSo(model.id(), incidence.id(), Setting.of(0.05), Setting.of(0.06)))
                .isEqualTo(2);
        assertThat(book.riggings().strip(model.id()))
                .hasSize(2)
                .allSatisfy(r -> assertThat(r.values()).containsEntry(incidence.id(), Setting.of(0.06)));
    }

    @Test
    void versionsThatBecomeEqualBecomeOneAndKeepTheirFlights() {
        Model model = book.riggings().addModel("Teasel");
        SettingDef pitch = book.riggings().addSetting(model.id(), "Pitch", "LENGTH", "mm", null, null, null);
        for (double p : new double[] {0.6, 0.7, 0.6}) {
            book.riggings().trim(model.id(), Map.of(pitch.id(), Setting.of(p)), "set", null);
            fly(riggingId(book.riggings().now(model.id())), 1);
        }
        book.corrections().alwaysSo(model.id(), pitch.id(), Setting.of(0.7), Setting.of(0.6));
        List<Rigged> strip = book.riggings().strip(model.id());
        assertThat(strip).hasSize(3);
        assertThat(strip.stream().map(r -> r.version().id()).distinct()).hasSize(1);
    }

    @Test
    void oneFlightMovesToTheNextRiggingThatTime() {
        Model model = book.riggings().addModel("Teasel");
        SettingDef pitch = book.riggings().addSetting(model.id(), "Pitch", "LENGTH", "mm", null, null, null);
        List<Flight> flights = new ArrayList<>();
        int ordinal = 0;
        for (double p : new double[] {0.6, 0.7}) {
            book.riggings().trim(model.id(), Map.of(pitch.id(), Setting.of(p)), "set", null);
            flights.add(fly(riggingId(book.riggings().now(model.id())), ++ordinal));
            flights.add(fly(riggingId(book.riggings().now(model.id())), ++ordinal));
        }
        book.corrections().thatTime(List.of(flights.get(1).id()), Map.of(pitch.id(), Setting.of(0.7)));
        List<Rigged> strip = book.riggings().strip(model.id());
        assertThat(strip).hasSize(2);
        assertThat(book.logbook()
                        .read(r -> r.get(Flight.class, flights.get(1).id()))
                        .riggingId())
                .isEqualTo(flights.get(2).riggingId());
    }

    @Test
    void aFlightInTheMiddleThatWasDifferentSplitsItsRigging() {
        Model model = book.riggings().addModel("Teasel");
        SettingDef pitch = book.riggings().addSetting(model.id(), "Pitch", "LENGTH", "mm", null, null, null);
        book.riggings().trim(model.id(), Map.of(pitch.id(), Setting.of(0.6)), "set", null);
        String rigging = riggingId(book.riggings().now(model.id()));
        List<Flight> flights = List.of(fly(rigging, 1), fly(rigging, 2), fly(rigging, 3));
        book.corrections().thatTime(List.of(flights.get(1).id()), Map.of(pitch.id(), Setting.of(0.65)));
        List<Rigged> strip = book.riggings().strip(model.id());
        assertThat(strip).hasSize(3);
        assertThat(strip.get(0).version()).isEqualTo(strip.get(2).version());
        assertThat(strip.get(1).values()).containsEntry(pitch.id(), Setting.of(0.65));
    }
}
