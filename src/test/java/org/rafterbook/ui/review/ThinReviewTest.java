package org.rafterbook.ui.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.OnShow;
import org.rafterbook.ui.ReviewScreens;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.work.MarginPercent;
import org.rafterbook.work.Progress;
import org.rafterbook.work.ReviewDesk;
import org.rafterbook.work.ReviewDocument;
import org.rafterbook.work.ReviewEvenings;
import org.rafterbook.work.ReviewText;

/** Where little or odd things were logged, screen, document and text say what can be told and what is needed next. */
@FxTest
class ThinReviewTest {

    /**
     * One poor log.
     *
     * @param told what must be said somewhere
     * @param next what must be said to be needed
     */
    record Poor(String name, Consumer<ReviewEvenings> fill, String told, String next) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Poor> poorLogs() {
        return Stream.of(
                new Poor(
                        "one flight",
                        e -> e.fly(500),
                        "1 flight of Teasel: 1 clean",
                        "Log a second flight, then change one setting."),
                new Poor(
                        "one version only",
                        e -> {
                            wing(e);
                            e.fly(500);
                            e.fly(510);
                            e.fly(505);
                        },
                        "All flights were made at the same settings",
                        "Change one setting and fly both values on one day"),
                new Poor(
                        "no turns logged",
                        e -> {
                            SettingDef wing = wing(e);
                            e.flyWithoutWind(500);
                            e.flyWithoutWind(505);
                            e.trim(wing, 0.146);
                            e.flyWithoutWind(530);
                            e.flyWithoutWind(535);
                        },
                        "No turns were logged",
                        "Log turns wound and left."),
                new Poor(
                        "a number once and a word once",
                        e -> {
                            SettingDef pitch = e.setting("pitch", "TEXT", "");
                            e.trim(Map.of(pitch.id(), Setting.of("steep")), null);
                            e.fly(500);
                            e.fly(505);
                            e.trim(Map.of(pitch.id(), Setting.of(24.0)), null);
                            e.fly(520);
                            e.fly(525);
                        },
                        "pitch is a number on some flights and words on others",
                        "put the value right"),
                new Poor(
                        "all cut short",
                        e -> {
                            SettingDef wing = wing(e);
                            e.fly(300, Ending.TOUCHED, CutShort.YES, "", 1400);
                            e.fly(310, Ending.HUNG, null, "", 1400);
                            e.trim(wing, 0.146);
                            e.fly(320, Ending.TOUCHED, CutShort.YES, "", 1400);
                        },
                        "Every flight was cut short",
                        "A clean flight at each value is needed next."),
                new Poor(
                        "a day with one flight",
                        e -> {
                            SettingDef wing = wing(e);
                            e.fly(500);
                            e.fly(505);
                            e.evening("2026-01-27");
                            e.trim(wing, 0.146);
                            e.fly(530);
                        },
                        "1 of 2 days holds only one flight that counts",
                        "Two or more flights a day are needed."));
    }

    private static SettingDef wing(ReviewEvenings evenings) {
        SettingDef wing = evenings.setting("wing edge", "LENGTH", "mm");
        evenings.trim(wing, 0.149);
        return wing;
    }

    @TempDir
    Path folder;

    @ParameterizedTest
    @MethodSource("poorLogs")
    void thePlaceSaysWhatCanBeToldAndWhatIsNeeded(Poor poor) {
        try (ReviewEvenings evenings = new ReviewEvenings(folder.resolve("a.rafterbook"))) {
            poor.fill().accept(evenings);
            Tools tools = Fx.tools();
            Scene scene = Fx.show(ReviewScreens.shell(tools, evenings));
            Fx.key(scene, KeyCode.R, "r");
            Fx.layOut(scene);
            assertThat(OnShow.words(scene))
                    .contains(poor.told())
                    .contains(poor.next())
                    .doesNotContain("NaN");
            for (KeyCode key : List.of(KeyCode.S, KeyCode.G, KeyCode.N, KeyCode.Y, KeyCode.B, KeyCode.K)) {
                Fx.key(scene, key, key.getName().toLowerCase(java.util.Locale.ROOT));
                Fx.layOut(scene);
                assertThat(OnShow.words(scene)).doesNotContain("NaN").doesNotContain("null");
            }
            assertThat(tools.errors().shownProperty().get()).isNull();
        }
    }

    @ParameterizedTest
    @MethodSource("poorLogs")
    void theDocumentAndTheTextSayTheSame(Poor poor) {
        try (ReviewEvenings evenings = new ReviewEvenings(folder.resolve("a.rafterbook"))) {
            poor.fill().accept(evenings);
            ReviewDesk desk = new ReviewDesk(evenings.book(), MarginPercent.NONE);
            var review = desk.review(evenings.model().id(), true, Progress.none());
            Map<String, ?> document = ReviewDocument.of(List.of(review));
            assertStrict(document);
            assertThat(document.toString()).contains(poor.told()).contains(poor.next());
            assertThat(ReviewText.of(List.of(review))).contains(poor.told()).contains(poor.next());
            for (Object change : (List<?>) document.get("changes")) {
                Map<?, ?> entry = (Map<?, ?>) change;
                assertThat(entry.get("effect_percent") != null || entry.get("missing") != null)
                        .isTrue();
            }
        }
    }

    /** Only what strict JSON can hold. */
    private static void assertStrict(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            map.values().forEach(ThinReviewTest::assertStrict);
        } else if (value instanceof List<?> list) {
            list.forEach(ThinReviewTest::assertStrict);
        } else if (value instanceof Double number) {
            assertThat(number).isFinite();
        }
    }
}
