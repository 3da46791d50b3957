package org.rafterbook.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import javafx.scene.Scene;
import javafx.scene.image.PixelReader;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.look.Theme;
import org.rafterbook.ui.look.Token;

@FxTest
class ChartTest {

    private static final Axis X = Axis.of("stability margin", "%", 0, 10);
    private static final Axis Y = Axis.minutes(0, 600);

    private final Chart<String> chart = new Chart<>("Time against margin, n = 3");
    private final List<String> opened = new ArrayList<>();

    private static FlightMark<String> mark(String key, double x, double y, boolean atLeast) {
        return new FlightMark<>(key, x, y, VersionMark.dealt(0), atLeast, false, "flight " + key);
    }

    private Scene show(Chart.Content<String> content) {
        chart.show(content);
        chart.onOpen(opened::add);
        return Fx.show(chart, 400, 300);
    }

    private Scene showThree() {
        return show(new Chart.Content<>(
                X,
                Y,
                List.of(),
                List.of(mark("b", 5, 300, false), mark("a", 2, 100, false), mark("c", 8, 500, true)),
                List.of()));
    }

    @Test
    void aClickOnAMarkOpensItsFlight() {
        showThree();
        PlacedMark<String> middle = chart.placed().get(1);
        Fx.click(chart, middle.x() + 3, middle.y() - 2);
        assertThat(opened).containsExactly("b");
        Fx.click(chart, middle.x() + 60, middle.y() + 60);
        assertThat(opened).hasSize(1);
    }

    @Test
    void theArrowsGoFromFlightToFlightAndReadThemOut() {
        Scene scene = showThree();
        chart.requestFocus();
        Fx.key(scene, KeyCode.RIGHT, "");
        assertThat(chart.getAccessibleText()).isEqualTo("Time against margin, n = 3. flight a");
        Fx.key(scene, KeyCode.RIGHT, "");
        Fx.key(scene, KeyCode.RIGHT, "");
        Fx.key(scene, KeyCode.RIGHT, "");
        assertThat(chart.pickedProperty().get()).isEqualTo("c");
        Fx.key(scene, KeyCode.HOME, "");
        Fx.key(scene, KeyCode.ENTER, "");
        assertThat(opened).containsExactly("a");
    }

    @Test
    void whatIsPickedStaysPickedWhenTheFlightsAreReadAgain() {
        showThree();
        chart.pick("b");
        chart.show(new Chart.Content<>(X, Y, List.of(), List.of(mark("b", 6, 310, false)), List.of()));
        assertThat(chart.pickedProperty().get()).isEqualTo("b");
        chart.show(new Chart.Content<>(X, Y, List.of(), List.of(), List.of()));
        assertThat(chart.pickedProperty().get()).isNull();
    }

    @Test
    void nothingEstimatedIsDrawnBeyondWhatWasFlown() {
        double[] x = {0, 10};
        double[] y = {300, 300};
        Layer thick = frame ->
                Layers.band(x, new double[] {250, 250}, new double[] {350, 350}).paint(frame);
        Scene scene = show(
                new Chart.Content<String>(X, Y, List.of(thick, Layers.curve(x, y)), List.of(), List.of()).flown(4, 6));
        PixelReader pixels = scene.snapshot(null).getPixelReader();
        Color ink = Theme.LIGHT.tokens().of(Token.INK);
        assertThat(inked(pixels, ink, 0.5)).as("inside").isTrue();
        assertThat(inked(pixels, ink, 0.2)).as("below").isFalse();
        assertThat(inked(pixels, ink, 0.8)).as("above").isFalse();
    }

    /** Whether the curve's ink is found in the pixel column at a share of the plot's width. */
    private static boolean inked(PixelReader pixels, Color ink, double share) {
        int x = (int) (40 + share * (400 - 14 - 40));
        return IntStream.range(20, 200).anyMatch(y -> {
            Color colour = pixels.getColor(x, y);
            return Math.abs(colour.getRed() - ink.getRed()) < 0.1 && Math.abs(colour.getBlue() - ink.getBlue()) < 0.1;
        });
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void manyFlightsAreThinnedToTheBestTheWorstAndThoseCutShort(long seed) {
        Random random = new Random(seed);
        Scale x = new Scale(0, 10, 0, 100);
        List<FlightMark<String>> all = new ArrayList<>();
        for (int i = 0; i < 5000; i++) {
            all.add(mark("f" + i, random.nextDouble() * 10, random.nextDouble() * 600, random.nextInt(100) == 0));
        }
        List<FlightMark<String>> thinned = Decimation.thin(all, x);
        long cutShort = all.stream().filter(FlightMark::atLeast).count();
        assertThat(thinned).hasSizeLessThanOrEqualTo((int) (2 * 101 + cutShort));
        assertThat(thinned).containsAll(all.stream().filter(FlightMark::atLeast).toList());
        double best = all.stream().mapToDouble(FlightMark::y).max().orElseThrow();
        double worst = all.stream().mapToDouble(FlightMark::y).min().orElseThrow();
        assertThat(thinned.stream().mapToDouble(FlightMark::y).max()).hasValue(best);
        assertThat(thinned.stream().mapToDouble(FlightMark::y).min()).hasValue(worst);
    }

    @Test
    void fewFlightsAreLeftAsTheyAre() {
        List<FlightMark<String>> few = List.of(mark("a", 1, 1, false), mark("b", 1, 2, false));
        assertThat(Decimation.thin(few, new Scale(0, 10, 0, 100))).isSameAs(few);
    }

    @Test
    void marksOfEqualXAreMovedAsideByAtMostFourPixels() {
        List<FlightMark<String>> same =
                IntStream.range(0, 9).mapToObj(i -> mark("f" + i, 5, i, false)).toList();
        double[] offsets = Spread.offsets(same);
        assertThat(offsets).doesNotHaveDuplicates();
        for (double offset : offsets) {
            assertThat(Math.abs(offset)).isLessThanOrEqualTo(Spread.MOST_PX);
        }
        assertThat(Spread.offsets(List.of(mark("a", 1, 1, false), mark("b", 2, 1, false))))
                .containsOnly(0);
    }

    @Test
    void aMarkOutsideTheAxesIsNotDrawn() {
        show(new Chart.Content<>(X, Y, List.of(), List.of(mark("far", 11, 100, false)), List.of()));
        assertThat(chart.placed()).isEmpty();
    }
}
