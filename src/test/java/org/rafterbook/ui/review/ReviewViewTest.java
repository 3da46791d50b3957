package org.rafterbook.ui.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.OnShow;
import org.rafterbook.ui.ReviewScreens;
import org.rafterbook.ui.WaitingBackground;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.chart.Chart;
import org.rafterbook.ui.chart.Tick;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.ui.shell.Shell;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewDesk;
import org.rafterbook.work.ReviewEvenings;
import org.rafterbook.work.ReviewPoint;
import org.rafterbook.work.Running;
import org.rafterbook.work.Step;

@FxTest
class ReviewViewTest {

    @TempDir
    Path folder;

    private ReviewEvenings evenings;
    private Tools tools;

    @BeforeEach
    void open() {
        evenings = new ReviewEvenings(folder.resolve("a.rafterbook"));
        tools = Fx.tools();
    }

    @AfterEach
    void close() {
        evenings.close();
    }

    private ReviewModel model() {
        return model(tools.background());
    }

    private ReviewModel model(FxBackground background) {
        FxBackground.Display nobody = new FxBackground.Display() {
            @Override
            public void started(Running running) {}

            @Override
            public void at(Running running, Step step) {}

            @Override
            public void ended(Running running) {}
        };
        ReviewModel model = new ReviewModel(new ReviewDesk(evenings.book(), (v, m, f) -> 5.0), background, nobody);
        model.attach();
        return model;
    }

    private static String flight(ReviewModel model, int at) {
        return Objects.requireNonNull(model.answer()).points().get(at).flight().id();
    }

    private static List<ReviewPoint> notes(ReviewModel model) {
        return NotesFound.in(
                        model.answer(),
                        model.searchProperty().get(),
                        model.notedVersion().orElse(null))
                .flights();
    }

    private Scene shown() {
        Shell shell = ReviewScreens.shell(tools, evenings);
        return Fx.show(shell);
    }

    @Test
    void withoutFlightsTheScreenSaysWhatToDoFirst() {
        assertThat(OnShow.words(shown())).contains("No flight yet");
        assertThat(tools.errors().shownProperty().get()).isNull();
    }

    @Test
    void withoutATrimChangeTheTableSaysWhatIsNeeded() {
        evenings.fly(512);
        assertThat(OnShow.words(shown())).contains("No setting was changed yet").contains("No flight has a margin");
        assertThat(tools.errors().shownProperty().get()).isNull();
    }

    @Test
    void anEntryMadeWhileItIsComputedStartsAnewAndIsNoStop() {
        ReviewScreens.evening(evenings);
        WaitingBackground waiting = new WaitingBackground();
        ReviewModel model = model(new FxBackground(waiting, Runnable::run, tools.errors()));
        evenings.fly(530);
        waiting.run();
        assertThat(Objects.requireNonNull(model.answer()).isComplete()).isTrue();
        assertThat(model.answer().points()).hasSize(9);
        assertThat(model.stoppedProperty().get()).isFalse();
    }

    @Test
    void stoppedBeforeAnythingIsReadItSaysSoAndOffersToGoOn() {
        ReviewScreens.evening(evenings);
        WaitingBackground waiting = new WaitingBackground();
        Tools waited = tools.on(new FxBackground(waiting, Runnable::run, tools.errors()));
        Scene scene = Fx.show(ReviewScreens.shell(waited, evenings));
        ProgressRule rule = (ProgressRule) scene.lookup(".progress");
        Node esc = rule.getChildren().get(rule.getChildren().size() - 1);
        Fx.click(esc, 1, 1);
        waiting.run();
        Fx.layOut(scene);
        assertThat(OnShow.words(scene))
                .contains("stopped", "Compute the effects")
                .doesNotContain("reading the flights");
        Fx.key(scene, KeyCode.C, "c");
        waiting.run();
        Fx.layOut(scene);
        assertThat(OnShow.words(scene)).contains("4 and 3 flights").doesNotContain("stopped");
    }

    @Test
    void theEveningShowsItsComparisonWithIntervalAndCounts() {
        ReviewScreens.evening(evenings);
        Scene scene = shown();
        assertThat(((TableView<?>) Objects.requireNonNull(scene.lookup(".change-table"))).getItems())
                .hasSize(1);
        assertThat(OnShow.words(scene))
                .contains("+8 % (90 % interval +7 to +10 %)")
                .contains("4 and 3 flights")
                .contains("8 flights, 1 of them \"at least\"");
        Fx.key(scene, KeyCode.R, "r");
        assertThat(OnShow.words(scene)).contains("8 flights on 2 versions, 4 riggings, 3 changes.");
    }

    @Test
    void theTableHoldsTheSameDayComparisonBeforeTheEffectsAreComputed() {
        ReviewScreens.evening(evenings);
        WaitingBackground waiting = new WaitingBackground();
        Tools waited = tools.on(new FxBackground(waiting, Runnable::run, tools.errors()));
        Scene scene = Fx.show(ReviewScreens.shell(waited, evenings));
        assertThat(OnShow.words(scene)).doesNotContain("No setting was changed yet");
        while (!OnShow.words(scene).contains("effect to come")) {
            waiting.runOne();
            Fx.layOut(scene);
        }
        assertThat(OnShow.words(scene)).contains("+8 %", "same day, 4 and 3").doesNotContain("judged");
        waiting.run();
        Fx.layOut(scene);
        assertThat(OnShow.words(scene)).contains("1 change judged").doesNotContain("to come");
    }

    @Test
    void theArrowKeysPickAChangeAtOnceAndRollWhatIsLargeInFront() {
        ReviewScreens.evening(evenings);
        WaitingBackground waiting = new WaitingBackground();
        Tools waited = tools.on(new FxBackground(waiting, Runnable::run, tools.errors()));
        Scene scene = Fx.window(ReviewScreens.shell(waited, evenings)).getScene();
        Fx.layOut(scene);
        waiting.run();
        assertThat(scene.getFocusOwner()).isInstanceOf(TableView.class);
        Fx.key(scene, KeyCode.B, "b");
        assertThat(scene.getFocusOwner()).isInstanceOf(TableView.class);
        Fx.key(scene, KeyCode.R, "r");
        assertThat(scene.getFocusOwner()).isInstanceOf(Sentences.class);
        Fx.key(scene, KeyCode.ESCAPE, "");
        assertThat(scene.getFocusOwner()).isInstanceOf(TableView.class);
    }

    @Test
    void noMeanOrBestBeforeAndAfterStandsBesideAChange() {
        ReviewScreens.evening(evenings);
        assertThat(OnShow.words(shown()).toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("mean")
                .doesNotContain("median")
                .doesNotContain("average")
                .doesNotContain("best flight");
    }

    @Test
    void theNotesOfThePickedFlightsVersionAreShown() {
        ReviewScreens.evening(evenings);
        ReviewModel model = model();
        model.pickFlight(flight(model, 7));
        ReviewPoint last = Objects.requireNonNull(model.flightProperty().get());
        assertThat(last.atLeast()).isTrue();
        assertThat(FlightWords.line(last)).contains("≥ 9:20").contains("touched, cut short");
        model.pickFlight(flight(model, 5));
        assertThat(model.notedVersion())
                .isEqualTo(Optional.of(
                        Objects.requireNonNull(model.flightProperty().get()).versionNumber()));
        assertThat(notes(model))
                .extracting(p -> p.flight().notes())
                .containsExactly("Dropped a wing and did not come out.", "Floats at the top.");
        model.detach();
    }

    @Test
    void searchFindsNotesOfEveryVersion() {
        ReviewScreens.evening(evenings);
        ReviewModel model = model();
        model.searchProperty().set("LAMP");
        assertThat(notes(model)).extracting(p -> p.flight().notes()).containsExactly("Touched the lamp.");
        model.detach();
    }

    @Test
    void enterBringsTheFlightsOfTheChangeToTheFrontAndEscapeLeaves() {
        ReviewScreens.evening(evenings);
        Shell shell = ReviewScreens.shell(tools, evenings);
        var stage = Fx.window(shell);
        Scene scene = stage.getScene();
        Fx.layOut(scene);
        Fx.key(scene, KeyCode.W, "w");
        assertThat(scene.getFocusOwner()).isInstanceOf(TableView.class);
        Fx.key(scene, KeyCode.H, "h");
        assertThat(scene.getFocusOwner()).isInstanceOf(Chart.class);
        Fx.key(scene, KeyCode.LEFT, "");
        assertThat(OnShow.words(scene)).contains("20 Jan, 21:00, t3, ≥ 9:20");
        Fx.key(scene, KeyCode.SLASH, "/");
        assertThat(scene.getFocusOwner()).isInstanceOf(javafx.scene.control.TextField.class);
        assertThat(tools.errors().shownProperty().get()).isNull();
        stage.close();
    }

    @Test
    void aPickedFlightIsPutRightBesideItsNotesAndEscGoesBack() {
        ReviewScreens.evening(evenings);
        Shell shell = ReviewScreens.shell(tools, evenings);
        var stage = Fx.window(shell);
        Scene scene = stage.getScene();
        Fx.layOut(scene);
        Fx.key(scene, KeyCode.D, "d");
        assertThat(OnShow.words(scene)).doesNotContain("Move the flights");
        Fx.key(scene, KeyCode.H, "h");
        Fx.key(scene, KeyCode.LEFT, "");
        assertThat(OnShow.words(scene)).contains("It was different that time");
        Fx.key(scene, KeyCode.W, "w");
        Fx.key(scene, KeyCode.D, "d");
        Fx.layOut(scene);
        assertThat(OnShow.words(scene)).contains("Which flights").contains("Move the flights");
        Fx.key(scene, KeyCode.ESCAPE, "");
        Fx.layOut(scene);
        assertThat(OnShow.words(scene)).doesNotContain("Which flights").contains("stability margin");
        assertThat(tools.errors().shownProperty().get()).isNull();
        stage.close();
    }

    @Test
    void theStripPlacesEachFlightAndMarksThreeChanges() {
        ReviewScreens.evening(evenings);
        ReviewModel model = model();
        ModelReview answer = Objects.requireNonNull(model.answer());
        StripPlan plan = StripPlan.of(answer);
        assertThat(plan.places()).hasSize(8).isSorted();
        assertThat(plan.turns()).hasSize(4);
        assertThat(plan.turns().get(1).label()).isEqualTo("t3 wing edge 146 mm");
        assertThat(plan.turns().get(2).back()).isTrue();
        assertThat(plan.days()).hasSize(1);
        model.detach();
    }

    @Test
    void theHistoryNamesTheYearWhereItChanges() {
        ReviewScreens.evening(evenings);
        evenings.evening("2026-12-30");
        evenings.fly(500);
        evenings.evening("2027-01-06");
        evenings.fly(505);
        evenings.evening("2027-01-13");
        evenings.fly(510);
        ReviewModel model = model();
        StripPlan plan = StripPlan.of(Objects.requireNonNull(model.answer()));

        assertThat(plan.graduation().ticks(0, plan.width(), 1000))
                .extracting(Tick::label)
                .filteredOn(label -> !label.isEmpty())
                .containsExactly("20 Jan 2026", "30 Dec", "6 Jan 2027", "13 Jan");
        model.detach();
    }

    @Test
    void anEntryElsewhereIsSeenWhileShown() {
        ReviewScreens.evening(evenings);
        ReviewModel model = model();
        evenings.fly(530);
        model.load();
        assertThat(Objects.requireNonNull(model.answer()).points()).hasSize(9);
        assertThat(model.changeProperty().get()).isNotNull();
        model.detach();
    }
}
