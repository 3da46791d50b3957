package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.OneEvening;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Surface;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.logbook.Mode;
import org.rafterbook.power.Motor;

class MarginsTest {

    @TempDir
    Path folder;

    private static final Surroundings AIR = new Surroundings(1.2, "", 6, null);

    private Book book;

    @BeforeEach
    void open() {
        book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, OneEvening.CLOCK);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private static Airframe twoWings(List<MassItem> masses, double motorKg) {
        List<Rib> lower = List.of(new Rib(0, 0, 0.1, 0, 0), new Rib(0.17, 0, 0.1, 0, 0));
        List<Rib> upper = List.of(new Rib(0, 0, 0.105, 0, 0), new Rib(0.19, 0, 0.105, 0, 0));
        List<Rib> tail = List.of(new Rib(0, 0, 0.08, 0, 0), new Rib(0.13, 0, 0.08, 0, 0));
        return new Airframe(
                List.of(
                        Surface.symmetric("lower", Role.WING, 0.13, 0.02, 0.035, 0.04, lower),
                        Surface.symmetric("upper", Role.WING, 0.11, 0.115, 0.045, 0.04, upper),
                        Surface.symmetric("tail", Role.TAILPLANE, 0.43, 0.03, 0, 0, tail)),
                masses,
                null,
                new MotorPlace(motorKg, 0.12));
    }

    private Rigged taken(List<MassItem> masses, double motorKg) {
        return book.sheets().take(new AirframeSheet("Quire", "q1", twoWings(masses, motorKg)));
    }

    @Test
    void aHeavierMotorAheadOfTheBalanceRaisesTheMargin() {
        // moments by hand: (3.40 x 150 + 1.60 x 120) / 5.00 = 140.40; (3.40 x 150 + 2.00 x 120) / 5.40 = 138.89
        Rigged quire = taken(List.of(new MassItem("airframe", 0.0034, 0.15, 0)), 0.0016);
        Motor heavy = book.motors().addMotor("M2", null, 0.34, 0.0020, Map.of());
        MarginAnswer light = book.margins().ofVersion(quire.version().id(), null, 1);
        MarginAnswer heavier = book.margins().ofVersion(quire.version().id(), heavy.id(), 1);
        assertThat(light.balanceM()).isCloseTo(0.14040, within(5e-6));
        assertThat(heavier.balanceM()).isCloseTo(0.13889, within(5e-6));
        assertThat(heavier.margin() - light.margin())
                .isCloseTo((light.balanceM() - heavier.balanceM()) / light.meanChordM(), within(1e-12));
    }

    @Test
    void slidingAWingMovesTheBalanceByItsShareOfTheMass() {
        // 0.90 g slid 10 mm at 5.00 g all-up: 1.80 mm
        Rigged quire = taken(
                List.of(new MassItem("lower", 0.0009, 0.18, 0.02), new MassItem("rest", 0.0025, 0.14, 0)), 0.0016);
        SettingDef position = position(quire);
        MarginAnswer before = book.margins().ofVersion(quire.version().id(), null, 1);
        MarginAnswer looked = book.bench()
                .look(quire, Map.of(position.id(), Setting.of(0.14)), AIR)
                .margin();
        Rigged slid = book.riggings()
                .trim(quire.model().id(), Map.of(position.id(), Setting.of(0.14)), "lower 10 mm aft", null);
        MarginAnswer after = book.margins().ofVersion(slid.version().id(), null, 1);
        assertThat(after.balanceM() - before.balanceM()).isCloseTo(0.0018, within(1e-9));
        assertThat(looked.margin()).isCloseTo(after.margin(), within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void balanceFollowsMassesAndSlidesWhateverTheyAre(long seed) {
        Random random = new Random(seed);
        double wing = 0.0005 + 0.001 * random.nextDouble();
        double rest = 0.001 + 0.003 * random.nextDouble();
        double motor = 0.001 + 0.002 * random.nextDouble();
        double slide = -0.02 + 0.04 * random.nextDouble();
        Rigged quire =
                taken(List.of(new MassItem("lower", wing, 0.18, 0.02), new MassItem("rest", rest, 0.14, 0)), motor);
        double total = wing + rest + motor;
        MarginAnswer before = book.margins().ofVersion(quire.version().id(), null, 1);
        assertThat(before.balanceM()).isCloseTo((wing * 0.18 + rest * 0.14 + motor * 0.12) / total, within(1e-9));
        Rigged slid = book.riggings()
                .trim(quire.model().id(), Map.of(position(quire).id(), Setting.of(0.13 + slide)), "slide", null);
        MarginAnswer after = book.margins().ofVersion(slid.version().id(), null, 1);
        assertThat(after.balanceM() - before.balanceM()).isCloseTo(wing * slide / total, within(1e-9));
    }

    @Test
    void aMeasuredBalanceIsCarriedWhenTheWingIsSlid() {
        Airframe plane = twoWings(
                List.of(new MassItem("lower", 0.0009, 0.18, 0.02), new MassItem("rest", 0.0025, 0.14, 0)), 0.0016);
        Airframe measured = new Airframe(plane.surfaces(), plane.masses(), 0.145, plane.motor());
        Rigged quire = book.sheets().take(new AirframeSheet("Quire", "q1", measured));
        assertThat(book.margins().ofVersion(quire.version().id(), null, 1).balanceM())
                .isCloseTo(0.145, within(1e-12));
        Rigged slid =
                book.riggings().trim(quire.model().id(), Map.of(position(quire).id(), Setting.of(0.14)), "slide", null);
        assertThat(book.margins().ofVersion(slid.version().id(), null, 1).balanceM())
                .isCloseTo(0.145 + 0.0018, within(1e-9));
    }

    @Test
    void aVersionWithoutGeometrySaysWhatTheMarginNeeds() {
        String model = book.riggings().addModel("Teasel").id();
        MarginAnswer answer =
                book.margins().ofVersion(book.riggings().now(model).version().id(), null, 1);
        assertThat(answer.margin()).isNull();
        assertThat(answer.missing()).contains("geometry");
    }

    @Test
    void theMarginOfALogbookIsThatOfItsSheetAndStaysWhenOpenedAgain() {
        Airframe plane = twoWings(List.of(new MassItem("airframe", 0.0034, 0.15, 0)), 0.0016);
        Rigged quire = book.sheets().take(new AirframeSheet("Quire", "q1", plane));
        MarginAnswer ofSheet = Margins.of(plane);
        MarginAnswer computed = book.margins().ofVersion(quire.version().id(), null, 1);
        assertThat(computed.margin()).isEqualTo(ofSheet.margin());
        assertThat(computed.band()).isEqualTo(ofSheet.band()).isBetween(0.02, 0.2);
        book.close();
        book = Book.open(folder.resolve("a.rafterbook"), Mode.EXISTING, OneEvening.CLOCK);
        assertThat(book.margins().ofVersion(quire.version().id(), null, 1)).isEqualTo(computed);
    }

    @Test
    void turningAnIncidenceLeavesTheNeutralPointAndMovesTheTrim() {
        Airframe plane = twoWings(List.of(new MassItem("airframe", 0.0034, 0.15, 0)), 0.0016);
        Rigged quire = book.sheets().take(new AirframeSheet("Quire", "q1", plane));
        SettingDef tail = quire.settings().stream()
                .filter(d -> "tail.incidence_deg".equals(d.path()))
                .findFirst()
                .orElseThrow();
        MarginAnswer before = book.margins().ofVersion(quire.version().id(), null, 1);
        Looked turned = book.bench().look(quire, Map.of(tail.id(), Setting.of(Math.toRadians(-0.5))), AIR);
        assertThat(turned.margin().neutralPointM()).isEqualTo(before.neutralPointM());
        double lift = book.margins().trim(plane, before, AIR).liftCoefficient();
        double slower =
                book.margins().trim(turned.airframe(), turned.margin(), AIR).liftCoefficient();
        assertThat(slower).isGreaterThan(lift);
    }

    @Test
    void aVersionKnownToBeNeutralMovesTheZeroOfItsModel() {
        Rigged quire = taken(
                List.of(new MassItem("lower", 0.0009, 0.18, 0.02), new MassItem("rest", 0.0025, 0.14, 0)), 0.0016);
        Map<String, Setting> slide = Map.of(position(quire).id(), Setting.of(0.14));
        MarginAnswer first = book.margins().ofVersion(quire.version().id(), null, 1);
        MarginAnswer second = book.bench().look(quire, slide, AIR).margin();
        book.bench().zero(quire.version().id(), -0.003, "flew neutral");
        double points = 0.003 / first.meanChordM();
        assertThat(book.margins().ofVersion(quire.version().id(), null, 1).margin())
                .isCloseTo(first.margin() - points, within(1e-12));
        assertThat(book.bench().look(quire, slide, AIR).margin().margin())
                .isCloseTo(second.margin() - points, within(1e-12));
        assertThat(second.differenceFrom(first).bandPoints()).isLessThan(first.band());
    }

    @Test
    void aCorrectionOfTheVersionThatWasWeighedMovesTheBalanceCarriedFromIt() {
        // weighed with the wing at 130 mm, then slid to 140: its 0.90 g of 5.00 g move the balance by 1.8 mm; had it
        // always
        // stood at 134, by 6 x 0.9 / 5 = 1.08 mm
        Airframe plane = twoWings(
                List.of(new MassItem("lower", 0.0009, 0.18, 0.02), new MassItem("rest", 0.0025, 0.14, 0)), 0.0016);
        Airframe measured = new Airframe(plane.surfaces(), plane.masses(), 0.145, plane.motor());
        Rigged weighed = book.sheets().take(new AirframeSheet("Quire", "q1", measured));
        SettingDef position = position(weighed);
        String model = weighed.model().id();
        Rigged sketch = book.riggings().sketch(weighed.version().id(), Map.of(position.id(), Setting.of(0.14)), null);
        assertThat(book.margins().ofVersion(sketch.version().id(), null, 1).balanceM())
                .isCloseTo(0.145 + 0.0018, within(1e-9));
        book.corrections().alwaysSo(model, position.id(), Setting.of(0.13), Setting.of(0.134));
        assertThat(book.margins().ofVersion(sketch.version().id(), null, 1).balanceM())
                .isCloseTo(0.145 + 0.00108, within(1e-9));
    }

    private static SettingDef position(Rigged rigged) {
        return rigged.settings().stream()
                .filter(d -> "lower.edge_aft_mm".equals(d.path()))
                .findFirst()
                .orElseThrow();
    }
}
