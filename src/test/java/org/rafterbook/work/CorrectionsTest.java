package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Trial;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.UserError;

/** What a correction keeps of marks, zeros, figures and trials. */
class CorrectionsTest {

    @TempDir
    Path folder;

    private ReviewEvenings evenings;
    private Book book;
    private String model;
    private SettingDef wing;
    private Version first;
    private Version second;

    @BeforeEach
    void open() {
        evenings = new ReviewEvenings(folder.resolve("a.rafterbook"));
        book = evenings.book();
        model = evenings.model().id();
        wing = evenings.setting("wing edge", "LENGTH", "mm");
        evenings.trim(wing, 0.149);
        evenings.fly(500);
        first = book.riggings().now(model).version();
        evenings.trim(wing, 0.146);
        evenings.fly(510);
        second = book.riggings().now(model).version();
    }

    @AfterEach
    void close() {
        evenings.close();
    }

    private void alwaysSo(double wrong, double right) {
        book.corrections().alwaysSo(model, wing.id(), Setting.of(wrong), Setting.of(right));
    }

    private List<String> told() {
        return book.recordings()
                .becomeEqual(model, wing.id(), Setting.of(0.146), Setting.of(0.149), DisplayUnits.METRIC)
                .get(0)
                .carried();
    }

    private Version kept() {
        return book.riggings().now(model).version();
    }

    private Double ownFormula() {
        return book.bench()
                .load(model, null, DisplayUnits.METRIC)
                .orElseThrow()
                .facts()
                .ownFormulaM();
    }

    @Test
    void aVersionThatBecomesEqualHandsItsMarkZeroAndFigureOn() {
        book.bench().mark(second.id(), true);
        book.bench().zero(second.id(), -0.003, "flew neutral");
        book.bench().ownFormula(second.id(), 0.171);
        assertThat(told())
                .containsExactly(
                        "t2 is marked well-behaved, as t3 was.",
                        "The zero of t3, −3.0 mm, is t2's.",
                        "Your own formula's 171.0 mm for t3 is t2's.");
        alwaysSo(0.146, 0.149);
        assertThat(kept().id()).isEqualTo(first.id());
        assertThat(kept().markedGood()).isTrue();
        assertThat(kept().zeroShiftM()).isEqualTo(-0.003);
        assertThat(kept().zeroShiftReason()).isEqualTo("flew neutral");
        assertThat(ownFormula()).isEqualTo(0.171);
        book.undo();
        assertThat(kept()).isEqualTo(book.riggings().version(second.id()).version());
        assertThat(ownFormula()).isEqualTo(0.171);
    }

    @Test
    void whereBothHaveAZeroTheOneThatStaysKeepsItsOwnAndTellsTheOther() {
        book.bench().zero(first.id(), 0.002, "held every speed");
        book.bench().zero(second.id(), -0.003, "flew neutral");
        assertThat(told())
                .containsExactly("The zero of t2, +2.0 mm, stands; that of t3, −3.0 mm, is told in its reason.");
        alwaysSo(0.146, 0.149);
        assertThat(kept().zeroShiftM()).isEqualTo(0.002);
        assertThat(kept().zeroShiftReason()).isEqualTo("held every speed; t3 had −3.0 mm: flew neutral");
    }

    @Test
    void anUnflownVersionWithAZeroStaysAsASketch() {
        evenings.trim(wing, 0.150);
        Version unflown = kept();
        book.bench().zero(unflown.id(), 0.001, "by hand");
        evenings.trim(wing, 0.152);
        assertThat(book.riggings().sketches(model))
                .extracting(s -> s.version().zeroShiftM())
                .containsExactly(0.001);
    }

    @Test
    void anUnflownVersionWithAFigureOfTheFlyersOwnFormulaStaysAsASketch() {
        evenings.trim(wing, 0.150);
        book.bench().ownFormula(kept().id(), 0.17);
        evenings.trim(wing, 0.152);
        assertThat(book.riggings().sketches(model)).hasSize(1);
    }

    @Test
    void anUnflownVersionOfWhichNothingWasSaidIsForgotten() {
        evenings.trim(wing, 0.150);
        evenings.trim(wing, 0.152);
        assertThat(book.riggings().sketches(model)).isEmpty();
    }

    @Test
    void anOpenTrialComparesTheValueThatWasPutRight() {
        Trial trial = book.trials().open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 2);
        alwaysSo(0.146, 0.144);
        TrialNow now = book.trials().now(model).orElseThrow();
        assertThat(now.trial().id()).isEqualTo(trial.id());
        assertThat(now.a()).isEqualTo(Setting.of(0.149));
        assertThat(now.b()).isEqualTo(Setting.of(0.144));
        assertThat(now.versionB()).isNotNull();
        book.trials().setNext(model);
        assertThat(book.riggings().now(model).values().get(wing.id())).isIn(Setting.of(0.149), Setting.of(0.144));
    }

    @Test
    void aCorrectionThatWouldMakeTheValuesOfAnOpenTrialOneIsRefused() {
        book.trials().open(model, wing.id(), Setting.of(0.149), Setting.of(0.146), 2);
        assertThatThrownBy(() -> alwaysSo(0.146, 0.149))
                .isInstanceOf(UserError.class)
                .hasMessage(
                        "The open trial compares two values of wing edge that would be one then. End the trial first.");
        assertThat(kept().id()).isEqualTo(second.id());
        book.trials().judge(model, null);
        alwaysSo(0.146, 0.149);
        assertThat(kept().id()).isEqualTo(first.id());
    }

    @Test
    void aSurfaceWhoseSettingIsOnTrialCannotBeTakenAway() {
        Surface tail = Surface.symmetric("tail", Role.TAILPLANE, 0.44, 0.01, 0, 0, Planforms.rectangle(0.24, 0.07));
        Surface main = Surface.symmetric("wing", Role.WING, 0.1, 0.01, 0, 0, Planforms.rectangle(0.42, 0.11));
        book.bench().airframes().surface(second.id(), null, main, Airframes.Since.ALWAYS);
        Rigged now = book.bench().airframes().surface(second.id(), null, tail, Airframes.Since.ALWAYS);
        SettingDef incidence = now.settings().stream()
                .filter(s -> "tail.incidence_deg".equals(s.path()))
                .findFirst()
                .orElseThrow();
        book.trials().open(model, incidence.id(), Setting.of(0.0), Setting.of(0.02), 2);
        assertThatThrownBy(() -> book.bench().airframes().surface(second.id(), tail, null, Airframes.Since.ALWAYS))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("End the trial first");
        assertThat(book.trials().now(model)).isPresent();
    }

    @Test
    void aPlacePutRightWithItsSurfaceIsRightInTheOpenTrial() {
        Surface tail = Surface.symmetric("tail", Role.TAILPLANE, 0.44, 0.01, 0, 0, Planforms.rectangle(0.24, 0.07));
        Rigged now = book.bench().airframes().surface(second.id(), null, tail, Airframes.Since.ALWAYS);
        SettingDef incidence = now.settings().stream()
                .filter(s -> "tail.incidence_deg".equals(s.path()))
                .findFirst()
                .orElseThrow();
        book.trials().open(model, incidence.id(), Setting.of(0.0), Setting.of(0.02), 2);
        Surface right = Surface.symmetric("tail", Role.TAILPLANE, 0.44, 0.01, 0.01, 0, Planforms.rectangle(0.24, 0.07));
        book.bench().airframes().surface(second.id(), tail, right, Airframes.Since.ALWAYS);
        assertThat(book.trials().now(model).orElseThrow().a()).isEqualTo(Setting.of(0.01));
    }

    @Test
    void aSettingThatTakesAnothersPlaceTakesOverItsTrial() {
        Surface tail = Surface.symmetric("tail", Role.TAILPLANE, 0.44, 0.01, 0, 0, Planforms.rectangle(0.24, 0.07));
        Rigged now = book.bench().airframes().surface(second.id(), null, tail, Airframes.Since.ALWAYS);
        SettingDef dealt = now.settings().stream()
                .filter(s -> "tail.incidence_deg".equals(s.path()))
                .findFirst()
                .orElseThrow();
        book.trials().open(model, dealt.id(), Setting.of(0.0), Setting.of(0.02), 2);
        SettingDef own = evenings.setting("tail tilt", "ANGLE", "°");
        book.bench()
                .settings()
                .change(
                        own.id(),
                        new SettingList.Form("tail tilt", "ANGLE", "°", null, null, null, null, "tail.incidence_deg"));
        assertThat(book.trials().now(model).orElseThrow().trial().settingId()).isEqualTo(own.id());
    }
}
