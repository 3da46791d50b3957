package org.rafterbook.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.Test;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.look.Theme;
import org.rafterbook.ui.look.Token;

@FxTest
class BarsTest {

    @Test
    void theMarginIsReadOutWithAllItRestsOn() {
        MarginBar bar = new MarginBar();
        assertThat(bar.getAccessibleText()).isEqualTo("Stability margin not known");
        bar.show(new MarginBar.Margin(5.1, 7.1, 1.1, 4.0, 8.0));
        assertThat(bar.getAccessibleText()).isEqualTo("Stability margin 5.1 %, before 7.1 %, ± 1.1 %, wished 4 to 8");
        bar.show(new MarginBar.Margin(-1.2, null, null, null, null));
        assertThat(bar.getAccessibleText()).isEqualTo("Stability margin −1.2 %, unstable");
    }

    @Test
    void aMarginBeyondTheBarStandsAtItsEnd() {
        MarginBar bar = new MarginBar();
        bar.show(new MarginBar.Margin(40.0, -30.0, 5.0, 4.0, 8.0));
        Scene scene = Fx.show(new VBox(bar), 300, 100);
        var pixels = scene.snapshot(null).getPixelReader();
        assertThat(pixels.getColor(300 - 16, 15)).isEqualTo(Theme.LIGHT.tokens().of(Token.INK));
    }

    @Test
    void anIntervalIsReadOutInWholePerCent() {
        IntervalBar bar =
                new IntervalBar(new IntervalBar.Range(-15, 20, 5), new IntervalBar.Interval(4.6, 9.2, 13.4, false));
        assertThat(bar.getAccessibleText()).isEqualTo("9 %, from 5 to 13 %");
    }

    @Test
    void theRulesScaleIsSharedWithWhatLiesBelow() {
        Rule rule = new Rule("Turns on the motor", Graduation.numbers());
        rule.show(0, 1000, List.of());
        Fx.show(new VBox(rule), 1052, 100);
        Scale scale = rule.scaleProperty().get();
        assertThat(scale.at(0)).isEqualTo(26);
        assertThat(scale.at(1000)).isEqualTo(1026);
        assertThat(scale.value(526)).isEqualTo(500);
    }
}
