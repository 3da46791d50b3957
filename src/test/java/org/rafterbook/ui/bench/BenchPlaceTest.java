package org.rafterbook.ui.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.Surface;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.logbook.Mode;
import org.rafterbook.rules.ClassSheet;
import org.rafterbook.stability.PropellerTerm;
import org.rafterbook.ui.FxTest;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.Book;
import org.rafterbook.work.Progress;
import org.rafterbook.work.Rigged;
import org.rafterbook.work.ScreenChoices;
import org.rafterbook.work.Surroundings;

@FxTest
class BenchPlaceTest {

    @TempDir
    Path folder;

    private BenchDriver window;

    @BeforeEach
    void open() {
        window = new BenchDriver(folder.resolve("a.rafterbook"));
    }

    @AfterEach
    void close() {
        window.close();
    }

    private Rigged teasel() {
        return teasel(2);
    }

    private Rigged teasel(double wingDeg) {
        return window.take("Teasel", BenchDriver.teasel(wingDeg));
    }

    private Rigged now() {
        return window.book.riggings().now(window.book.riggings().models().get(0).id());
    }

    private void fly() {
        window.press(KeyCode.F1, KeyCode.SPACE, KeyCode.SPACE, KeyCode.ENTER);
    }

    @Test
    void anEmptyBenchSaysWhatToDoFirst() {
        assertThat(window.sees("No model yet.")).isTrue();
        assertThat(window.sees("New model")).isTrue();
        window.press(KeyCode.X, KeyCode.A, KeyCode.F, KeyCode.H);
        assertThat(window.sees("No model yet.")).isTrue();
        assertThat(window.sees("Designs side by side")).isFalse();
        assertThat(window.sees("Airframe and measurements")).isFalse();
    }

    @Test
    void aModelIsDrawnFromNothingByKeysAlone() {
        window.press(KeyCode.N);
        window.type("Teasel");
        window.press(KeyCode.ENTER);
        assertThat(window.sees("Teasel, version t1")).isTrue();
        window.press(KeyCode.A, KeyCode.S);
        window.type("Span", "16.5 in");
        window.type("Chord at the root", "110");
        window.type("Leading edge at", "100");
        window.type("or posts differ by", "3 mm");
        window.type("posts apart", "90 mm");
        window.press(KeyCode.ENTER);
        Surface wing = Objects.requireNonNull(now().geometry()).surfaces().get(0);
        assertThat(wing.ribs().get(1).outM()).isCloseTo(0.20955, within(1e-12));
        assertThat(wing.incidenceRad()).isCloseTo(Math.atan(1 / 30.0), within(1e-12));
        assertThat(now().settings()).extracting(s -> s.label()).containsExactly("Wing position", "Wing incidence");
        assertThat(window.sees("419 × 110 mm")).isTrue();
    }

    @Test
    void whatCannotBeReadIsRefusedBesideItsFieldAndNothingIsKept() {
        teasel();
        window.press(KeyCode.A, KeyCode.DIGIT1);
        window.type("Chord at the root", "eleven");
        window.press(KeyCode.ENTER);
        assertThat(window.sees("× “eleven” does not begin with a number")).isTrue();
        assertThat(Objects.requireNonNull(now().geometry())
                        .surfaces()
                        .get(0)
                        .ribs()
                        .get(0)
                        .chordM())
                .isEqualTo(0.11);
        window.press(KeyCode.ESCAPE);
        assertThat(window.sees("Airframe and measurements")).isTrue();
    }

    @Test
    void arrowKeysSlideTheWingAndTheMarginFollowsBeforeAnythingIsKept() {
        teasel();
        double before = window.margin();
        window.press(KeyCode.W, KeyCode.RIGHT, KeyCode.RIGHT);
        assertThat(window.sees("102 mm")).isTrue();
        assertThat(window.margin()).isGreaterThan(before);
        assertThat(window.sees("t1: " + before)).isTrue();
        window.press(KeyCode.ESCAPE);
        assertThat(window.margin()).isEqualTo(before);
        assertThat(window.book.riggings().strip(now().model().id())).hasSize(1);
    }

    @Test
    void aTrimBeyondStallShowsACautionAndNoSpeed() {
        teasel(12);
        assertThat(window.sees("No steady glide here")).isTrue();
        assertThat(window.sees("no glide")).isTrue();
    }

    @Test
    void theWingIsSlidToTheWishedMarginAndTheVersionFlown() {
        Rigged first = teasel();
        fly();
        window.press(KeyCode.F2, KeyCode.W);
        double wished = window.margin() + 3;
        for (int i = 0; i < 60 && window.margin() < wished; i++) {
            window.press(KeyCode.RIGHT);
        }
        double onScreen = window.margin();
        window.press(KeyCode.ENTER);
        assertThat(window.sees("Teasel, version t2")).isTrue();
        assertThat(window.margin()).isEqualTo(onScreen);
        fly();
        Rigged now = now();
        assertThat(now.name()).isEqualTo("t2");
        assertThat(window.book.bench().flightsOf(now.version().id())).hasSize(1);
        assertThat(window.book.bench().flightsOf(first.version().id())).hasSize(1);
        assertThat(Objects.requireNonNull(window.book
                                .margins()
                                .ofVersion(now.version().id(), null, 1)
                                .margin())
                        * 100)
                .isCloseTo(onScreen, within(0.051));
        window.press(KeyCode.F2);
        assertThat(window.sees("t2 has flown, so it is frozen.")).isTrue();
    }

    @Test
    void thePointerSlidesAWingFromAboveAndTurnsItFromTheSide() {
        teasel();
        AirframeDrawing drawing = window.drawing();
        double px = drawing.pxPerMm();
        double x = px * (120 - drawing.mmAt(0));
        double middle = drawing.getHeight() * 0.3;
        BenchDriver.drag(drawing, x, middle, x + 5 * px, middle);
        assertThat(window.sees("105 mm")).isTrue();
        window.press(KeyCode.ESCAPE);
        double section = yOfSection(drawing, x);
        BenchDriver.drag(drawing, x, section, x, section - 8 * px);
        assertThat(window.sees("was 2°")).isTrue();
        assertThat(now().name()).isEqualTo("t1");
    }

    private static double yOfSection(AirframeDrawing drawing, double x) {
        for (double y = drawing.getHeight() - 1; y > 0; y--) {
            AirframeDrawing.Hit hit = drawing.at(x, y);
            if (hit != null && hit.fromSide()) {
                return y - 10;
            }
        }
        throw new AssertionError("no section at " + x);
    }

    @Test
    void theDifferenceToTheWellBehavedVersionStandsFirstWithItsOwnBand() {
        teasel();
        window.press(KeyCode.V);
        assertThat(window.sees("The well-behaved version others are compared with."))
                .isTrue();
        fly();
        window.press(KeyCode.F2, KeyCode.W, KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.ENTER);
        assertThat(window.sees("more than t1, well-behaved, ± ")).isTrue();
        assertThat(window.sees("on its own")).isTrue();
    }

    @Test
    void aVersionOfTheSameMarginIsSaidToBeTheSameAsTheWellBehavedOne() {
        teasel();
        window.press(KeyCode.V);
        fly();
        window.press(KeyCode.F2, KeyCode.I, KeyCode.RIGHT, KeyCode.ENTER);
        assertThat(now().name()).isEqualTo("t2");
        assertThat(window.sees("The same as t1, well-behaved.")).isTrue();
        assertThat(window.sees("points (")).isFalse();
    }

    @Test
    void aSketchIsKeptComparedAndTakenToTheHall() {
        teasel();
        fly();
        window.press(KeyCode.F2, KeyCode.W, KeyCode.RIGHT, KeyCode.K);
        assertThat(window.sees("Teasel, sketch t2; rigged as t1")).isTrue();
        window.press(KeyCode.X);
        assertThat(window.sees("Induced power, mW")).isTrue();
        assertThat(window.sees("t2")).isTrue();
        window.press(KeyCode.ESCAPE, KeyCode.ENTER);
        assertThat(now().name()).isEqualTo("t2");
        assertThat(now().version().sketch()).isFalse();
        assertThat(window.sees("Start the watch")).isTrue();
    }

    @Test
    void fourDesignsStandSideBySideWithNothingCut() {
        Airframe geometry = Objects.requireNonNull(teasel().geometry());
        for (String other : List.of("Marram", "Quire", "Saltmarshes")) {
            window.book.sheets().take(new AirframeSheet(other, "", geometry));
        }
        window.press(KeyCode.X);
        window.tick("Marram");
        window.tick("Quire");
        window.tick("Saltmarshes");
        window.press(KeyCode.ENTER);
        assertThat(window.sees("equal margin, airframe mass, lift")).isTrue();
        assertThat(window.sees("Quire\nq1")).isTrue();
        assertThat(window.cut()).isEmpty();
    }

    @Test
    void everyWayToAWishedMarginSaysWhereOrWhyNot() {
        teasel();
        window.press(KeyCode.H);
        window.type("Wished margin", "12");
        window.type("Ballast of", "0.1");
        window.press(KeyCode.ENTER);
        assertThat(window.sees("leading edge at")).isTrue();
        assertThat(window.sees("Ballast of 0.10 g")).isTrue();
        assertThat(window.sees("times the area")).isTrue();
        window.type("Wished margin", "400");
        window.press(KeyCode.ENTER);
        assertThat(window.sees("never at 400.0 %")).isTrue();
    }

    @Test
    void aValueRecordedWronglyIsPutRightAfterItsVersionsAreListed() {
        teasel();
        fly();
        window.press(KeyCode.F2, KeyCode.W, KeyCode.RIGHT, KeyCode.ENTER);
        fly();
        window.press(KeyCode.F2, KeyCode.A, KeyCode.V);
        assertThat(window.sees("One version carries it")).isTrue();
        window.type("Was really", "100");
        assertThat(window.sees("t2 becomes equal to t1: they become one.")).isTrue();
        window.press(KeyCode.ENTER);
        assertThat(now().name()).isEqualTo("t1");
        assertThat(window.book.bench().flightsOf(now().version().id())).hasSize(2);
    }

    @Test
    void oneFlightThatWasDifferentMovesToARiggingOfItsOwn() {
        teasel();
        fly();
        fly();
        window.press(KeyCode.F2, KeyCode.F);
        assertThat(window.sees("flight 2")).isTrue();
        window.press(KeyCode.ENTER);
        assertThat(window.sees("× Tick the flights that were different.")).isTrue();
        window.tick("flight 2");
        window.type("Stood at", "103");
        window.press(KeyCode.ENTER);
        assertThat(window.book.riggings().strip(now().model().id()))
                .extracting(Rigged::name)
                .containsExactly("t1", "t2");
        assertThat(window.sees("Teasel, version t")).isTrue();
        window.book.undo();
        assertThat(window.book.riggings().strip(now().model().id())).hasSize(1);
    }

    @Test
    void versionsNobodyLookedAtYetAreComputedAndKept() {
        Rigged first = teasel();
        for (double place : new double[] {0.09, 0.095, 0.105}) {
            window.book
                    .riggings()
                    .sketch(first.version().id(), Map.of(first.settings().get(0).id(), Setting.of(place)), null);
        }
        window.press(KeyCode.F1, KeyCode.F2);
        window.close();
        try (Book again = Book.open(folder.resolve("a.rafterbook"), Mode.READ_ONLY, OneEvening.CLOCK)) {
            assertThat(again.margins().computeAll(Progress.none())).isEqualTo(4);
        }
        window = new BenchDriver(folder.resolve("b.rafterbook"));
    }

    @Test
    void roundedTipsAreEditedAsSuchAgainAndAWiderWingFromNowOnIsTheNextVersion() {
        teasel();
        fly();
        window.press(KeyCode.F2, KeyCode.A, KeyCode.DIGIT1);
        assertThat(window.sees("Length of each rounded tip")).isTrue();
        window.type("Span", "440");
        window.click("from now on");
        window.press(KeyCode.ENTER);
        assertThat(now().name()).isEqualTo("t2");
        Surface wing = Objects.requireNonNull(now().geometry()).surfaces().get(0);
        assertThat(wing.ribs()).isEqualTo(Planforms.roundedTips(0.44, 0.11, 0.08, 0.25));
    }

    @Test
    void theOwnFormulaStandsBesideTheLatticeAndAKnownMarginMovesTheZero() {
        teasel();
        window.press(KeyCode.A, KeyCode.F);
        window.type("Neutral point", "170");
        window.press(KeyCode.ENTER, KeyCode.ESCAPE);
        assertThat(window.sees("Own formula, less that, mm")).isTrue();
        window.press(KeyCode.A, KeyCode.Z);
        window.type("This version's margin was", "0");
        window.press(KeyCode.ENTER);
        assertThat(window.sees("× A shift of the zero needs its reason.")).isTrue();
        window.type("How it is known", "held every speed");
        window.press(KeyCode.ENTER, KeyCode.ESCAPE);
        assertThat(window.margin()).isZero();
    }

    @Test
    void aSettingOfTheFlyersOwnGetsItsLetterAndMayBeTurned() {
        teasel();
        window.press(KeyCode.A, KeyCode.T);
        window.type("Name", "Rudder");
        window.type("Usual step", "1");
        window.type("Has stood at", "3");
        window.press(KeyCode.ENTER, KeyCode.ESCAPE, KeyCode.R, KeyCode.RIGHT);
        assertThat(window.sees("4 mm")).isTrue();
        window.press(KeyCode.E);
        window.type("0.5 in");
        window.press(KeyCode.ENTER);
        assertThat(now().values().values())
                .anySatisfy(v -> assertThat(v.number()).isEqualTo(0.0127));
    }

    @Test
    void aModelWithoutATailSaysWhatIsStillShown() {
        window.book
                .sheets()
                .take(new AirframeSheet(
                        "Marram",
                        "",
                        new Airframe(
                                List.of(Surface.symmetric(
                                        "wing", Role.WING, 0.1, 0, 0, 0, Planforms.rectangle(0.4, 0.1))),
                                List.of(),
                                null,
                                null)));
        window.press(KeyCode.F1, KeyCode.F2);
        assertThat(window.sees("There is no tailplane. The neutral point shown is that of the wing alone."))
                .isTrue();
        assertThat(window.sees("No mass is given: enter the airframe's masses")).isTrue();
    }

    @Test
    void aWeighingIsKeptAsMeasuredAndTheBalanceFollows() {
        teasel();
        window.press(KeyCode.A, KeyCode.W);
        window.type("All on the scale", "2.9");
        window.type("Motor on board", "1");
        window.type("Balanced", "6.4 in");
        window.press(KeyCode.ENTER, KeyCode.ESCAPE);
        assertThat(window.sees("162.6 mm")).isTrue();
        assertThat(window.sees("2.90 g with motor")).isTrue();
    }

    @Test
    void aClassSheetIsCheckedWhereItIsChosen() {
        teasel();
        window.book
                .bench()
                .classes()
                .keep(
                        now().model().id(),
                        new ClassSheet("", "Hall", "club", 2026, 0.0014, null, 0.40, null, null, null, null));
        window.press(KeyCode.F1, KeyCode.F2, KeyCode.A, KeyCode.L);
        assertThat(window.sees("× Span 420 mm, at most 400 mm allowed")).isTrue();
        assertThat(window.sees("✓ Airframe 1.8 g")).isTrue();
    }

    @Test
    void theFirstQPutsTheCursorIntoTheWishedMarginAndEnterThereKeepsNoTurnedWing() {
        teasel();
        fly();
        window.press(KeyCode.F2, KeyCode.W, KeyCode.RIGHT, KeyCode.Q);
        window.type("8");
        window.press(KeyCode.ENTER);
        assertThat(now().name()).isEqualTo("t1");
        assertThat(window.sees("101 mm")).isTrue();
        window.press(KeyCode.ENTER);
        assertThat(now().name()).isEqualTo("t2");
    }

    @Test
    void anAnswerThatIsTakenIsAsFineAsTheSettingCanBeTurned() {
        teasel();
        window.press(KeyCode.H);
        window.type("Wished margin", "12");
        window.press(KeyCode.ENTER);
        window.click("Take it");
        window.press(KeyCode.ENTER);
        double edge = now().values().values().stream()
                .mapToDouble(v -> Objects.requireNonNull(v.number()))
                .max()
                .orElseThrow();
        assertThat(edge * 5000).isCloseTo(Math.rint(edge * 5000), within(1e-6));
        assertThat(window.margin()).isCloseTo(12, within(0.2));
    }

    @Test
    void theBenchFollowsTheChoiceOfUnits() {
        window.close();
        Path file = folder.resolve("inch.rafterbook");
        try (Book book = Book.open(file, Mode.CREATE, OneEvening.CLOCK)) {
            ScreenChoices.keep(book, ScreenChoices.Name.UNITS, DisplayUnits.INCH.name());
        }
        window = new BenchDriver(file);
        teasel();
        assertThat(window.sees("Neutral point")).isTrue();
        // a setting keeps the unit it has itself
        assertThat(window.texts()).filteredOn(text -> text.contains(" mm")).containsExactly("100 mm");
        window.press(KeyCode.A);
        assertThat(window.texts()).contains("16.54 × 4.33 in");
        window.press(KeyCode.P);
        assertThat(window.texts()).contains("at\nin");
    }

    @Test
    void aRowOfTheStripThatIsPickedStaysMarkedThoughAnotherHasTheSameVersion() {
        teasel();
        fly();
        window.press(KeyCode.F2, KeyCode.W, KeyCode.RIGHT, KeyCode.ENTER);
        fly();
        window.press(KeyCode.F2, KeyCode.W, KeyCode.LEFT, KeyCode.ENTER);
        fly();
        window.press(KeyCode.F2);
        assertThat(window.markedRow()).isZero();
        window.press(KeyCode.DOWN, KeyCode.DOWN);
        assertThat(window.markedRow()).isEqualTo(2);
        window.press(KeyCode.UP);
        assertThat(window.markedRow()).isEqualTo(1);
    }

    @Test
    void aPropellerThatIsTypedTakesItsPartOfTheMarginInWhatItMeans() {
        teasel();
        assertThat(window.sees("Neutral by propeller, mm")).isFalse();
        double margin = window.margin();
        window.press(KeyCode.A, KeyCode.R);
        window.type("Diameter", "230");
        window.press(KeyCode.ENTER);
        assertThat(window.sees("The propeller's term needs diameter, width and pitch."))
                .isTrue();
        window.type("Mean width of a blade", "24");
        window.type("Pitch", "390");
        window.press(KeyCode.ENTER, KeyCode.ESCAPE);
        assertThat(window.sees("Neutral by propeller, mm")).isTrue();
        assertThat(window.margin()).isEqualTo(margin);
        Surroundings in = window.book
                .bench()
                .load(null, null, DisplayUnits.METRIC)
                .orElseThrow()
                .in();
        assertThat(in.propeller()).isEqualTo(new PropellerTerm(0, 0.23, 0.024, 0.39, 2));
    }

    @Test
    void comparingTellsTheMarginOfTheOtherVersion() {
        teasel();
        fly();
        double first = window.margin();
        window.press(KeyCode.F2, KeyCode.W, KeyCode.RIGHT, KeyCode.ENTER);
        fly();
        window.press(KeyCode.F2, KeyCode.C);
        assertThat(window.sees("t1: " + first + " %")).isTrue();
        window.press(KeyCode.C);
        assertThat(window.sees("t1: " + first + " %")).isFalse();
    }

    @Test
    void fromAVersionThatHasNotFlownTheFlightsOfTheOneBeforeCanBePutRight() {
        teasel();
        fly();
        window.press(KeyCode.F2, KeyCode.W, KeyCode.RIGHT, KeyCode.ENTER, KeyCode.F);
        assertThat(window.sees("t1, 20 Jan 2026, flight 1")).isTrue();
    }

    @Test
    void aSurfaceIsRenamedInEveryVersionWithItsMassAndSettings() {
        Rigged first = teasel();
        fly();
        window.press(KeyCode.F2, KeyCode.W, KeyCode.RIGHT, KeyCode.ENTER);
        fly();
        window.press(KeyCode.F2, KeyCode.A, KeyCode.DIGIT1);
        window.type("Name", "main");
        window.press(KeyCode.ENTER);
        List<Rigged> strip = window.book.riggings().strip(now().model().id());
        assertThat(strip).extracting(Rigged::name).containsExactly("t1", "t2");
        assertThat(strip).allSatisfy(r -> {
            Airframe airframe = Objects.requireNonNull(r.geometry());
            assertThat(airframe.surfaces().get(0).name()).isEqualTo("main");
            assertThat(airframe.masses().get(0).name()).isEqualTo("main");
        });
        assertThat(now().settings())
                .extracting(d -> d.label() + " " + d.path())
                .contains("Main position main.edge_aft_mm", "Main incidence main.incidence_deg");
        assertThat(window.book.undo().why()).isEqualTo("wing renamed to main");
        assertThat(now().settings()).isEqualTo(first.settings());
    }

    @Test
    void aModelCanBeAddedWhereOneIsByAButtonInSight() {
        teasel();
        window.click("New model");
        window.type("Marram");
        window.press(KeyCode.ENTER);
        assertThat(window.sees("Marram, version m1")).isTrue();
    }
}
