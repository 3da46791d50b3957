package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Surface;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.exchange.AirframeSheets;
import org.rafterbook.flight.DurationSource;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Mode;
import org.rafterbook.rules.ClassFinding;
import org.rafterbook.rules.ClassSheet;
import org.rafterbook.stability.SketchComparison;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.UserError;

class BenchEntriesTest {

    private static final Surroundings AIR = new Surroundings(1.2, "", 6, null);
    private static final List<Rib> WING = Planforms.rectangle(0.42, 0.11);
    private static final List<Rib> TAIL = Planforms.rectangle(0.24, 0.07);

    @TempDir
    Path folder;

    private Book book;
    private int flown;

    @BeforeEach
    void open() {
        Clock clock = Clock.fixed(Instant.parse("2026-01-20T19:00:00Z"), ZoneOffset.UTC);
        book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, clock);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private static Airframe plane() {
        return new Airframe(
                List.of(
                        Surface.symmetric("wing", Role.WING, 0.10, 0.04, Math.toRadians(3), 0.04, WING),
                        Surface.symmetric("tail", Role.TAILPLANE, 0.44, 0.01, 0, 0, TAIL)),
                List.of(new MassItem("wing", 0.0005, 0.15, 0.04), new MassItem("stick", 0.0013, 0.17, 0)),
                null,
                new MotorPlace(0.001, 0.165));
    }

    private Rigged teasel() {
        return book.sheets().take(new AirframeSheet("Teasel", "", plane()));
    }

    private void fly(Rigged rigged) {
        String rigging = Objects.requireNonNull(rigged.rigging()).id();
        book.logbook().change("flight", w -> {
            Session session = w.all(Session.class).stream()
                    .findFirst()
                    .orElseGet(() -> w.insert(new Session(
                            Logbook.newId(), null, LocalDate.parse("2026-01-20"), ZoneId.of("UTC"), null, null)));
            w.insert(new Flight(
                    Logbook.newId(),
                    session.id(),
                    rigging,
                    null,
                    ++flown,
                    1,
                    null,
                    null,
                    500.0,
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

    private Rigged slide(Rigged rigged, double edgeM) {
        return book.riggings()
                .trim(
                        rigged.model().id(),
                        Map.of(setting(rigged, "wing.edge_aft_mm").id(), Setting.of(edgeM)),
                        "",
                        null);
    }

    private static SettingDef setting(Rigged rigged, String path) {
        return rigged.settings().stream()
                .filter(s -> path.equals(s.path()))
                .findFirst()
                .orElseThrow();
    }

    private static Surface wing(Rigged rigged) {
        return Objects.requireNonNull(AirframeEdit.surface(Objects.requireNonNull(rigged.geometry()), "wing"));
    }

    private static Surface with(Surface s, double edgeM, double incidenceRad, List<Rib> ribs) {
        return new Surface(
                s.name(), s.role(), edgeM, s.riseM(), incidenceRad, s.camber(), ribs, null, 0, 0, null, null);
    }

    private static TypedValue typed(Quantity quantity, String text) {
        return QuantityParser.typed(quantity, DisplayUnits.METRIC).read(text).orThrow();
    }

    @Test
    void theFirstSurfaceGivesAModelWithFlightsItsGeometryAndSettings() {
        book.riggings().addModel("Teasel");
        Rigged bare = book.riggings().now(book.riggings().models().get(0).id());
        fly(bare);
        Surface wing = Surface.symmetric("wing", Role.WING, 0.10, 0.04, 0.05, 0.04, WING);
        Rigged now = book.bench().airframes().surface(bare.version().id(), null, wing, Airframes.Since.ALWAYS);
        assertThat(now.version().id()).isEqualTo(bare.version().id());
        assertThat(now.geometry()).isNotNull();
        assertThat(now.settings()).extracting(SettingDef::label).containsExactly("Wing position", "Wing incidence");
        assertThat(now.values()).hasSize(2);
        assertThat(book.riggings().strip(now.model().id())).hasSize(1);
    }

    @Test
    void aChordPutRightIsRightInEveryVersionAndTheirPlacesStay() {
        Rigged first = teasel();
        fly(first);
        Rigged second = slide(first, 0.106);
        fly(second);
        Surface now = wing(second);
        Surface right = with(now, now.edgeAftM(), now.incidenceRad(), Planforms.rectangle(0.42, 0.112));
        book.bench().airframes().surface(second.version().id(), now, right, Airframes.Since.ALWAYS);
        List<Rigged> strip = book.riggings().strip(first.model().id());
        assertThat(strip).extracting(Rigged::name).containsExactly("t1", "t2");
        assertThat(strip)
                .allSatisfy(r -> assertThat(wing(r).ribs().get(0).chordM()).isEqualTo(0.112));
        assertThat(strip).extracting(r -> wing(r).edgeAftM()).containsExactly(0.10, 0.106);
    }

    @Test
    void aChangedChordFromNowOnStartsANewVersion() {
        Rigged first = teasel();
        fly(first);
        Surface now = wing(first);
        Surface other = with(now, now.edgeAftM(), now.incidenceRad(), Planforms.rectangle(0.42, 0.1));
        Rigged next = book.bench().airframes().surface(first.version().id(), now, other, Airframes.Since.NOW);
        assertThat(next.name()).isEqualTo("t2");
        List<Rigged> strip = book.riggings().strip(first.model().id());
        assertThat(strip).extracting(r -> wing(r).ribs().get(0).chordM()).containsExactly(0.11, 0.1);
    }

    @Test
    void aPlaceTypedFromNowOnIsATrimChangeAndTakesTheMassAlong() {
        Rigged first = teasel();
        fly(first);
        Surface now = wing(first);
        Surface back = with(now, 0.11, now.incidenceRad(), now.ribs());
        Rigged next = book.bench().airframes().surface(first.version().id(), now, back, Airframes.Since.NOW);
        assertThat(next.values())
                .containsEntry(setting(next, "wing.edge_aft_mm").id(), Setting.of(0.11));
        assertThat(Objects.requireNonNull(next.geometry()).masses().get(0).aftM())
                .isCloseTo(0.16, within(1e-12));
        fly(next);
        // the same change by the setting is the same version
        assertThat(slide(book.riggings().backTo(first.version().id(), "", null), 0.11)
                        .version()
                        .id())
                .isEqualTo(next.version().id());
    }

    @Test
    void aSurfaceTakenAwayTakesItsSettingsAlong() {
        Rigged first = teasel();
        Surface tail = Objects.requireNonNull(AirframeEdit.surface(Objects.requireNonNull(first.geometry()), "tail"));
        Rigged now = book.bench().airframes().surface(first.version().id(), tail, null, Airframes.Since.ALWAYS);
        assertThat(now.settings()).extracting(SettingDef::label).containsExactly("Wing position", "Wing incidence");
        book.undo();
        assertThat(book.riggings().now(first.model().id()).settings()).hasSize(3);
    }

    @Test
    void crossedRibsAreRefusedAndNothingIsKept() {
        Rigged first = teasel();
        Surface now = wing(first);
        List<Rib> crossed = List.of(new Rib(0, 0, 0.1, 0, 0), new Rib(0.2, 0, 0.1, 0, 0), new Rib(0.1, 0, 0.1, 0, 0));
        assertThatThrownBy(() -> book.bench()
                        .airframes()
                        .surface(first.version().id(), now, with(now, 0.1, 0, crossed), Airframes.Since.ALWAYS))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("cross");
        assertThat(book.riggings().now(first.model().id())).isEqualTo(first);
    }

    @Test
    void aMassWeighedAgainIsRightInEveryVersionWithoutANewOne() {
        Rigged first = teasel();
        fly(first);
        Rigged second = slide(first, 0.106);
        fly(second);
        MassItem wing = Objects.requireNonNull(second.geometry()).masses().get(0);
        book.bench()
                .airframes()
                .mass(
                        second.version().id(),
                        wing,
                        new MassItem("wing", 0.0006, wing.aftM(), wing.riseM()),
                        Airframes.Since.ALWAYS);
        List<Rigged> strip = book.riggings().strip(first.model().id());
        assertThat(strip).extracting(Rigged::name).containsExactly("t1", "t2");
        assertThat(strip)
                .allSatisfy(r -> assertThat(Objects.requireNonNull(r.geometry())
                                .masses()
                                .get(0)
                                .massKg())
                        .isEqualTo(0.0006));
        assertThat(strip)
                .extracting(r ->
                        Objects.requireNonNull(r.geometry()).masses().get(0).aftM())
                .satisfiesExactly(
                        a -> assertThat(a).isCloseTo(0.15, within(1e-12)),
                        b -> assertThat(b).isCloseTo(0.156, within(1e-12)));
    }

    @Test
    void aSharedPartWeighedAgainChangesInBothModels() {
        Rigged teasel = teasel();
        Rigged marram = book.sheets().take(new AirframeSheet("Marram", "", plane()));
        book.bench().parts().share(marram.model().id(), "stick", teasel.model().id());
        MassItem stick = Objects.requireNonNull(teasel.geometry()).masses().get(1);
        book.bench()
                .airframes()
                .mass(
                        teasel.version().id(),
                        stick,
                        new MassItem("stick", 0.0015, stick.aftM(), 0),
                        Airframes.Since.ALWAYS);
        Airframe other =
                Objects.requireNonNull(book.riggings().now(marram.model().id()).geometry());
        assertThat(Objects.requireNonNull(AirframeEdit.mass(other, "stick")).massKg())
                .isEqualTo(0.0015);
        assertThat(book.bench().parts().shared(teasel.model().id())).containsEntry("stick", List.of("Marram"));
    }

    @Test
    void aWeighingIsNoTrimChangeAndMovesTheMargin() {
        Rigged first = teasel();
        fly(first);
        MarginAnswer before = book.margins().ofVersion(first.version().id(), null, 1);
        book.bench()
                .weighings()
                .add(
                        first.version().id(),
                        new Weighings.Form(
                                typed(Quantity.MASS, "2.9"),
                                typed(Quantity.LENGTH, "163"),
                                typed(Quantity.MASS, "1 g"),
                                null,
                                typed(Quantity.LENGTH, "0.5"),
                                ""));
        MarginAnswer after = book.margins().ofVersion(first.version().id(), null, 1);
        assertThat(after.balanceM()).isCloseTo(0.163, within(1e-9));
        assertThat(after.massKg()).isCloseTo(0.0029, within(1e-9));
        assertThat(after.margin()).isNotEqualTo(before.margin());
        assertThat(book.riggings().strip(first.model().id())).hasSize(1);
    }

    @Test
    void aMotorHeavierThanTheScaleSaysIsRefused() {
        Rigged first = teasel();
        Weighings.Form wrong =
                new Weighings.Form(typed(Quantity.MASS, "1"), null, typed(Quantity.MASS, "1.2"), null, null, "");
        assertThatThrownBy(() -> book.bench().weighings().add(first.version().id(), wrong))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("motor");
    }

    @Test
    void aRepairRaisesTheBuildUnlessTheModelIsSameAsBefore() {
        Rigged first = teasel();
        fly(first);
        Rigged same = book.bench().builds().happened(first.model().id(), Builds.Kind.REPAIRED, null, true);
        assertThat(same.version()).isEqualTo(first.version());
        Rigged rebuilt = book.bench().builds().happened(first.model().id(), Builds.Kind.RE_COVERED, "tissue", false);
        assertThat(rebuilt.version().build()).isEqualTo(2);
        assertThat(rebuilt.version().id()).isNotEqualTo(first.version().id());
        assertThat(rebuilt.values()).isEqualTo(first.values());
        assertThat(book.riggings().strip(first.model().id())).hasSize(2);
        assertThat(book.bench().builds().of(first.model().id())).hasSize(2);
    }

    @Test
    void aFreeSettingTiedToTheSheetKeepsItsValuesAndSetsTheGeometry() {
        book.riggings().addModel("Teasel");
        String model = book.riggings().models().get(0).id();
        SettingDef own = book.riggings().addSetting(model, "Wing angle", "ANGLE", "°", null, null, null);
        Rigged flown = book.riggings().trim(model, Map.of(own.id(), Setting.of(0.06)), "", null);
        fly(flown);
        Rigged sheet = teasel();
        assertThat(sheet.version().id()).isEqualTo(flown.version().id());
        book.bench()
                .settings()
                .change(
                        own.id(),
                        new SettingList.Form("Wing angle", "ANGLE", "°", null, null, null, null, "wing.incidence_deg"));
        Rigged now = book.riggings().now(model);
        assertThat(now.version().id()).isEqualTo(flown.version().id());
        assertThat(wing(now).incidenceRad()).isEqualTo(0.06);
        assertThat(now.settings()).extracting(SettingDef::label).doesNotContain("Wing incidence");
    }

    @Test
    void aSheetTiesTheFreeSettingOfItsOwnName() {
        book.riggings().addModel("Teasel");
        String model = book.riggings().models().get(0).id();
        SettingDef own = book.riggings().addSetting(model, "wing incidence", "ANGLE", "°", null, null, null);
        fly(book.riggings().trim(model, Map.of(own.id(), Setting.of(0.06)), "", null));
        Rigged now = teasel();
        assertThat(now.settings())
                .extracting(SettingDef::label)
                .contains("wing incidence")
                .doesNotContain("Wing incidence");
        assertThat(wing(now).incidenceRad()).isEqualTo(0.06);
    }

    @Test
    void aNewSettingStandsInEveryVersionWhereItAlwaysStood() {
        Rigged first = teasel();
        fly(first);
        SettingDef rudder = book.bench()
                .settings()
                .add(
                        first.model().id(),
                        new SettingList.Form("Rudder", "ANGLE", "°", 0.01, 0.002, -0.2, 0.2, null),
                        Setting.of(0.05));
        Rigged now = book.riggings().now(first.model().id());
        assertThat(now.version().id()).isEqualTo(first.version().id());
        assertThat(now.values()).containsEntry(rudder.id(), Setting.of(0.05));
        assertThat(rudder.high()).isEqualTo(0.2);
        assertThat(rudder.keyLetter()).isEqualTo("R");
    }

    @Test
    void aClassSheetSaysWhatIsToSpareAndWhatBreaksIt() {
        Rigged first = teasel();
        book.bench()
                .classes()
                .keep(
                        first.model().id(),
                        new ClassSheet("", "Hall", "club", 2026, 0.002, null, 0.40, null, null, null, null));
        List<ClassFinding> findings =
                book.bench().classes().check(first.version().id(), DisplayUnits.METRIC);
        assertThat(findings)
                .extracting(ClassFinding::standing)
                .containsExactly(ClassFinding.Standing.BROKEN, ClassFinding.Standing.BROKEN);
        assertThat(findings.get(0).toSpare()).isCloseTo(-0.0002, within(1e-9));
    }

    @Test
    void aSheetWrittenIsReadBackToTheSameVersion() {
        Rigged first = teasel();
        Path file = folder.resolve("t.json");
        book.sheets().write(first.version().id(), file);
        assertThat(book.sheets().take(AirframeSheets.read(file)).version()).isEqualTo(first.version());
    }

    @Test
    void aSketchIsChangedItselfAndFliesWhenItIsTaken() {
        Rigged first = teasel();
        fly(first);
        Rigged sketch = book.riggings()
                .sketch(
                        first.version().id(),
                        Map.of(setting(first, "wing.edge_aft_mm").id(), Setting.of(0.12)),
                        null);
        Surface now = wing(sketch);
        Surface wider = with(now, now.edgeAftM(), now.incidenceRad(), Planforms.rectangle(0.46, 0.11));
        Rigged changed = book.bench().airframes().surface(sketch.version().id(), now, wider, Airframes.Since.ALWAYS);
        assertThat(changed.version().id()).isEqualTo(sketch.version().id());
        assertThat(book.riggings().strip(first.model().id())).hasSize(1);
        assertThat(wing(book.riggings().now(first.model().id())).ribs()).isEqualTo(WING);
        Rigged taken = book.riggings().from(sketch.version().id(), Map.of(), "flies", null);
        assertThat(taken.version().sketch()).isFalse();
        assertThat(wing(taken).ribs().get(1).outM()).isEqualTo(0.23);
    }

    @Test
    void theWingPlacedForAWishedMarginHasIt() {
        Rigged first = teasel();
        Looked looked = book.bench().look(first, AIR);
        double wished = 0.10;
        Placements placements = new Placements(looked, wished);
        var answer = placements.wings();
        assertThat(answer.reason()).isNull();
        Map<String, Setting> settings = placements.asSettings(Objects.requireNonNull(answer.airframe()));
        assertThat(settings).hasSize(1);
        Rigged slid = book.riggings().trim(first.model().id(), settings, "", null);
        assertThat(book.margins().ofVersion(slid.version().id(), null, 1).margin())
                .isCloseTo(wished, within(0.001));
    }

    private void weigh(Rigged version, String balanceMm) {
        book.bench()
                .weighings()
                .add(
                        version.version().id(),
                        new Weighings.Form(
                                typed(Quantity.MASS, "3.1"),
                                typed(Quantity.LENGTH, balanceMm),
                                typed(Quantity.MASS, "1"),
                                null,
                                null,
                                ""));
    }

    @Test
    void aMeasurementHoldsForWhatWasFlownUntilItWasMeasuredAgain() {
        Rigged first = teasel();
        weigh(first, "166");
        fly(first);
        Rigged second = slide(first, 0.106);
        fly(second);
        Double then = book.margins().ofVersion(second.version().id(), null, 1).margin();
        book.close();
        Clock later = Clock.fixed(Instant.parse("2026-01-27T19:00:00Z"), ZoneOffset.UTC);
        book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, later);
        Rigged third = slide(second, 0.112);
        weigh(third, "172");
        fly(third);
        assertThat(book.margins().ofVersion(second.version().id(), null, 1).margin())
                .isEqualTo(then);
        Rigged fourth = slide(third, 0.108);
        assertThat(book.margins().ofVersion(fourth.version().id(), null, 1).balanceM())
                .isGreaterThan(0.17);
    }

    private void weighAndMoveTheZero(Rigged first) {
        weigh(first, "166");
        book.bench().zero(first.version().id(), 0.004, "held every speed");
    }

    @Test
    void aWeighingAndAZeroEnterThePlacement() {
        Rigged first = teasel();
        weighAndMoveTheZero(first);
        Looked looked = book.bench().look(first, AIR);
        Placements placements = new Placements(looked, 0.08);
        Map<String, Setting> settings =
                placements.asSettings(Objects.requireNonNull(placements.wings().airframe()));
        Rigged slid = book.riggings().trim(first.model().id(), settings, "", null);
        assertThat(book.margins().ofVersion(slid.version().id(), null, 1).margin())
                .isCloseTo(0.08, within(0.001));
    }

    @Test
    void theSheetOfAVersionThatWasNotWeighedItselfCarriesTheMeasuredBalance() {
        Rigged first = teasel();
        weigh(first, "166");
        fly(first);
        Rigged second = slide(first, 0.106);
        Path file = folder.resolve("t2.json");
        book.sheets().write(second.version().id(), file);
        MarginAnswer shown = book.margins().ofVersion(second.version().id(), null, 1);
        MarginAnswer written = Margins.of(
                AirframeSheets.read(ImportFile.of(file).text(), "t2.json").airframe());
        assertThat(written.margin()).isCloseTo(Objects.requireNonNull(shown.margin()), within(1e-6));
    }

    @Test
    void aKnownNeutralPointIsSaidAndCountedFrom() {
        Rigged first = teasel();
        fly(first);
        Rigged second = slide(first, 0.106);
        double alone = Objects.requireNonNull(
                book.margins().ofVersion(second.version().id(), null, 1).band());
        weighAndMoveTheZero(first);
        MarginAnswer known = book.margins().ofVersion(first.version().id(), null, 1);
        assertThat(known.band()).isZero();
        assertThat(MarginWords.trust(known)).isEqualTo("Zero by t1: held every speed");
        MarginAnswer other = book.margins().ofVersion(second.version().id(), null, 1);
        assertThat(other.band()).isPositive().isLessThan(alone / 5);
        assertThat(MarginWords.trust(other)).startsWith("Zero by t1: held every speed; ± ");
        assertThat(other.closedFormDifferenceM())
                .isEqualTo(Objects.requireNonNull(other.closedFormM()) - Objects.requireNonNull(other.neutralPointM()));
    }

    @Test
    void aWeighingAndAZeroEnterTheDesignsSideBySide() {
        Rigged first = teasel();
        weighAndMoveTheZero(first);
        Double place =
                new Placements(book.bench().look(first, AIR), 0.08).wings().value();
        Comparison comparison = book.bench().comparison();
        SketchComparison.Row row = comparison
                .of(comparison.designs(first), 0.08, 0.002, 0.9, AIR, Progress.none())
                .get(0);
        assertThat(row.wingMovedM())
                .isCloseTo(Objects.requireNonNull(place) - wing(first).edgeAftM(), within(1e-5));
    }

    @Test
    void whatBecomesEqualIsSaidBeforeItIsPutRight() {
        Rigged first = teasel();
        fly(first);
        Rigged second = slide(first, 0.106);
        fly(second);
        SettingDef position = setting(first, "wing.edge_aft_mm");
        List<Recordings.Equal> equal = book.recordings()
                .becomeEqual(
                        first.model().id(), position.id(), Setting.of(0.106), Setting.of(0.10), DisplayUnits.METRIC);
        assertThat(equal).containsExactly(new Recordings.Equal("t2", "t1", List.of()));
        book.corrections().alwaysSo(first.model().id(), position.id(), Setting.of(0.106), Setting.of(0.10));
        assertThat(book.riggings().strip(first.model().id()))
                .extracting(r -> r.version().id())
                .containsOnly(first.version().id());
    }

    @Test
    void flightsOfTwoRiggingsMoveInOneCorrection() {
        Rigged first = teasel();
        fly(first);
        fly(slide(first, 0.106));
        Rigged back = slide(first, 0.10);
        fly(back);
        SettingDef tail = setting(first, "tail.incidence_deg");
        List<String> ids = book.recordings().ofVersion(first.version().id()).flights().stream()
                .map(l -> l.flight().id())
                .toList();
        assertThat(ids).hasSize(2);
        book.corrections().thatTime(ids, Map.of(tail.id(), Setting.of(0.01)));
        List<Rigged> strip = book.riggings().strip(first.model().id());
        assertThat(strip).hasSize(3);
        assertThat(strip.get(0).values()).containsEntry(tail.id(), Setting.of(0.01));
        assertThat(strip.get(2).values()).containsEntry(tail.id(), Setting.of(0.01));
        assertThat(book.undo().why()).contains("that time");
    }

    @Test
    void aMassAndWhereElseItFliesAreOneEntry() {
        Rigged teasel = teasel();
        Rigged marram = book.sheets().take(new AirframeSheet("Marram", "", plane()));
        MassItem stick = Objects.requireNonNull(teasel.geometry()).masses().get(1);
        Parts parts = book.bench().parts();
        parts.mass(
                teasel.version().id(),
                stick,
                new MassItem("stick", 0.0013, 0.18, 0),
                Airframes.Since.ALWAYS,
                new Parts.Sharing(true, marram.model().id()));
        assertThat(parts.shared(teasel.model().id())).containsEntry("stick", List.of("Marram"));
        assertThat(book.undo().why()).isEqualTo("mass of stick");
        assertThat(parts.shared(teasel.model().id())).isEmpty();
        Airframe now =
                Objects.requireNonNull(book.riggings().now(teasel.model().id()).geometry());
        assertThat(now.masses().get(1).aftM()).isEqualTo(stick.aftM());
    }

    @Test
    void aSurfaceCannotTakeTheNameOfAnother() {
        Rigged first = teasel();
        Surface wing = wing(first);
        assertThatThrownBy(() -> book.bench()
                        .airframes()
                        .surface(first.version().id(), wing, wing.named("stick"), Airframes.Since.ALWAYS))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("something named \"stick\" already");
    }

    @Test
    void aFormThatIsOutOfDateIsRefusedAsSuch() {
        Rigged first = teasel();
        Surface stale = with(wing(first), 0.10, 0.05, Planforms.rectangle(0.40, 0.11));
        assertThatThrownBy(() -> book.bench()
                        .airframes()
                        .surface(first.version().id(), stale, wing(first), Airframes.Since.ALWAYS))
                .hasMessage("\"wing\" was changed meanwhile: leave the form and open it again.");
        assertThatThrownBy(() -> book.bench()
                        .airframes()
                        .surface(first.version().id(), null, wing(first), Airframes.Since.ALWAYS))
                .hasMessage("There is something named \"wing\" already.");
    }
}
