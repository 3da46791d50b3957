package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.WingGeometry;
import org.rafterbook.stability.PlacementAnswer;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Placements;
import org.rafterbook.work.Progress;

/** Every way to a wished margin in words: the place or size, or why there is none. */
final class PlacementWays {

    private PlacementWays() {}

    /** One way, as a sentence of its answer. */
    record Way(String name, PlacementAnswer answer, String says) {}

    /** The ways that this airframe has; ballast only where its mass or its place is given. */
    static List<Way> of(
            Placements placements,
            @Nullable Airframe airframe,
            @Nullable Double mass,
            @Nullable Double at,
            @Nullable Double minimum,
            QuantityFormat format,
            Progress steps) {
        WingGeometry wings = airframe == null ? null : WingGeometry.of(airframe);
        boolean two = wings != null && wings.wings().size() == 2;
        List<Way> ways = new ArrayList<>();
        steps.step(0, 5, "ways");
        ways.add(way(
                two ? "Wings, slid together" : "Wing",
                placements.wings(),
                v -> "leading edge "
                        + (two && wings != null ? "of " + wings.wings().get(0).name() + " " : "") + "at "
                        + format.text(Quantity.LENGTH, v) + range(placements.slider(), format)));
        steps.step(1, 5, "ways");
        ways.add(way(
                "Tailplane further back or nearer",
                placements.tailArm(),
                v -> "leading edge at " + format.text(Quantity.LENGTH, v)));
        steps.step(2, 5, "ways");
        ways.add(way(
                "Tailplane larger or smaller",
                placements.tailArea(),
                v -> BenchWords.number(v, 2) + " times the area, span and chord alike"));
        steps.step(3, 5, "ways");
        if (two && wings != null) {
            double chord = wings.meanChordM();
            ways.add(way(
                    "Gap",
                    placements.gap(),
                    v -> format.text(Quantity.LENGTH, v) + ", " + BenchWords.number(v / chord, 2) + " chords"));
        }
        steps.step(4, 5, "ways");
        if (mass != null) {
            ways.add(way(
                    "Ballast of " + BenchWords.grams(mass),
                    placements.ballast(mass),
                    v -> "at " + format.text(Quantity.LENGTH, v)));
        }
        if (at != null) {
            ways.add(way(
                    "Ballast at " + format.text(Quantity.LENGTH, at),
                    placements.ballastAt(at),
                    v -> BenchWords.number(v * 1000, 3) + " g"));
        }
        if (minimum != null) {
            ways.add(way(
                    "Ballast up to the class's minimum of " + BenchWords.grams(minimum),
                    placements.ballastToMinimum(minimum),
                    v -> "at " + format.text(Quantity.LENGTH, v)));
        }
        return ways;
    }

    private static String range(Placements.@Nullable Range range, QuantityFormat format) {
        return range == null
                ? ""
                : ", " + (range.ofSlider() ? "inside the slider's " : "looked for in ")
                        + format.range(Quantity.LENGTH, range.fromM(), range.toM());
    }

    private static Way way(String name, PlacementAnswer answer, Function<Double, String> says) {
        Double value = answer.value();
        String reason = answer.reason() == null ? "No answer." : answer.reason();
        return new Way(name, answer, value == null ? reason : says.apply(value));
    }
}
