package org.rafterbook.ui.look;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.Test;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;

@FxTest
class LookTest {

    private static final class Probe extends EmRegion {
        private int restyled;

        @Override
        protected void restyled() {
            restyled++;
        }
    }

    private final Look look = new Look();
    private final Probe probe = new Probe();
    private final Scene scene = new Scene(new StackPane(probe), 200, 100);

    @Test
    void theBundledFamilyIsLoaded() {
        assertThat(Fonts.family()).isEqualTo("B612");
    }

    @Test
    void aSceneFollowsTheThemeAtOnce() {
        look.dress(scene);
        Fx.layOut(scene);
        assertThat(probe.theme()).isEqualTo(Theme.LIGHT);
        int before = probe.restyled;
        look.turn();
        Fx.layOut(scene);
        assertThat(probe.theme()).isEqualTo(Theme.DARK);
        assertThat(probe.restyled).isGreaterThan(before);
        assertThat(scene.getFill()).isEqualTo(Theme.DARK.tokens().of(Token.DESK));
        assertThat(((Region) scene.getRoot()).getBackground().getFills().get(0).getFill())
                .isEqualTo(Theme.DARK.tokens().of(Token.DESK));
    }

    @Test
    void threeTurnsComeBackToLight() {
        look.turn();
        look.turn();
        look.turn();
        assertThat(look.themeProperty().get()).isEqualTo(Theme.LIGHT);
    }

    @Test
    void oneEmGrowsWithTheTextSize() {
        look.dress(scene);
        Fx.layOut(scene);
        assertThat(probe.em()).isEqualTo(12.5);
        assertThat(probe.fontFamily()).isEqualTo("B612");
        look.textSizeProperty().set(TextSize.LARGEST);
        Fx.layOut(scene);
        assertThat(probe.em()).isEqualTo(18.75);
    }
}
