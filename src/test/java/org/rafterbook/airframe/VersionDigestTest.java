package org.rafterbook.airframe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VersionDigestTest {

    private static final SettingDef POSITION = new SettingDef(
            "s1", "m", "Wing position", "LENGTH", "mm", 0.001, 0.0002, null, null, "P", "wing.edge_aft_mm", 1);
    private static final SettingDef PITCH =
            new SettingDef("s2", "m", "Pitch", "LENGTH", "mm", null, null, null, null, "I", null, 2);

    private static Airframe plane(double edge, double chord) {
        List<Rib> ribs = List.of(new Rib(0, 0, chord, 0, 0), new Rib(0.21, 0, chord, 0, 0));
        return new Airframe(
                List.of(Surface.symmetric("wing", Role.WING, edge, 0, 0, 0, ribs)),
                List.of(new MassItem("wing", 0.0009, edge + 0.05, 0)),
                null,
                null);
    }

    private static String digest(Map<String, Setting> values, Airframe geometry) {
        return VersionDigest.of("m", 1, List.of(POSITION, PITCH), values, geometry);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.0033, 0.0107, 0.7777})
    void slidingThereAndBackIsTheSameVersion(double slide) {
        SheetPath path = new SheetPath("wing", SheetPath.Key.EDGE_AFT);
        Airframe back = path.set(path.set(plane(0.14, 0.11), 0.14 + slide), 0.14);
        Map<String, Setting> values = Map.of("s1", Setting.of(0.14));
        assertThat(digest(values, back)).isEqualTo(digest(values, plane(0.14, 0.11)));
    }

    @Test
    void arithmeticNoiseMakesNoNewVersion() {
        assertThat(digest(Map.of("s1", Setting.of(0.1 + 0.2)), plane(0.14, 0.11)))
                .isEqualTo(digest(Map.of("s1", Setting.of(0.3)), plane(0.14, 0.11)));
    }

    @Test
    void anotherSettingOrPlanformIsAnotherVersion() {
        String one = digest(Map.of("s1", Setting.of(0.14)), plane(0.14, 0.11));
        assertThat(digest(Map.of("s1", Setting.of(0.141)), plane(0.141, 0.11))).isNotEqualTo(one);
        assertThat(digest(Map.of("s1", Setting.of(0.14)), plane(0.14, 0.12))).isNotEqualTo(one);
        assertThat(digest(Map.of("s1", Setting.of(0.14), "s2", Setting.of("carved")), plane(0.14, 0.11)))
                .isNotEqualTo(one);
    }

    @Test
    void whatWasTypedDoesNotCount() {
        assertThat(digest(Map.of("s1", new Setting(0.14, null, "14 cm")), plane(0.14, 0.11)))
                .isEqualTo(digest(Map.of("s1", Setting.of(0.14)), plane(0.14, 0.11)));
    }

    @Test
    void aSlideIsOneChange() {
        List<TrimChange> changes = TrimChange.between(
                List.of(POSITION, PITCH),
                Map.of("s1", Setting.of(0.14), "s2", Setting.of(0.4)),
                Map.of("s1", Setting.of(0.15), "s2", Setting.of(0.4)));
        assertThat(changes).hasSize(1);
        assertThat(changes.get(0).setting().label()).isEqualTo("Wing position");
    }

    @Test
    void lettersAreDealtOnceAndNeverThoseOfCommands() {
        String first = SettingLetters.deal("Wing position", List.of());
        String second = SettingLetters.deal("Wing incidence", List.of("W"));
        assertThat(first).isEqualTo("W");
        assertThat(second).isNotEqualTo("W").isNotNull();
        assertThat("ACDEFHKMNOQVXYZ").doesNotContain(String.valueOf(second));
    }
}
