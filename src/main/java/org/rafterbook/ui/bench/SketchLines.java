package org.rafterbook.ui.bench;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.rafterbook.stability.SketchComparison;
import org.rafterbook.stability.TrimAnswer;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;

/** What designs are compared by, line by line. */
final class SketchLines {

    /** One row of the table: what it is and how to tell it of a design. */
    record Line(String name, Function<SketchComparison.Row, String> value) {}

    private SketchLines() {}

    /** The lines in the flyer's units. */
    static List<Line> in(QuantityFormat format) {
        return List.of(
                new Line(
                        "Wing moved, " + format.unitOf(Quantity.LENGTH),
                        r -> BenchWords.signedLength(format, r.wingMovedM())),
                new Line("Slider allows it", r -> r.wingMovedM() == null ? "–" : r.sliderAllows() ? "yes" : "no"),
                new Line("Lift slope kept, %", SketchLines::kept),
                new Line("Gap, chords", r -> BenchWords.number(r.gapInChords(), 2)),
                new Line("All-up mass, g", r -> BenchWords.number(grams(r.massKg()), 2)),
                new Line("Tailplane at, °", r -> BenchWords.number(degrees(r.tailIncidenceRad()), 1)),
                new Line(
                        "Speed, " + format.unitOf(Quantity.SPEED),
                        r -> format.number(Quantity.SPEED, trim(r, TrimAnswer::speed))),
                new Line("Induced power, mW", r -> BenchWords.number(milli(trim(r, TrimAnswer::inducedPowerW)), 2)),
                new Line("½° of tail, speed, %", SketchLines::touchy),
                new Line("An upset halves in, s", SketchLines::halves));
    }

    private static @Nullable Double grams(@Nullable Double kg) {
        return kg == null ? null : (Double) (kg * 1000);
    }

    private static @Nullable Double milli(@Nullable Double w) {
        return w == null ? null : (Double) (w * 1000);
    }

    private static @Nullable Double degrees(@Nullable Double rad) {
        return rad == null ? null : (Double) Math.toDegrees(rad);
    }

    private static @Nullable Double trim(SketchComparison.Row row, Function<TrimAnswer, @Nullable Double> figure) {
        TrimAnswer trim = row.trim();
        return trim == null ? null : figure.apply(trim);
    }

    private static String kept(SketchComparison.Row row) {
        return row.slopeKept().isEmpty()
                ? "–"
                : String.join(
                        ", ",
                        row.slopeKept().values().stream()
                                .map(k -> QuantityFormat.rounded(k * 100, 0))
                                .toList());
    }

    private static String touchy(SketchComparison.Row row) {
        TrimAnswer trim = row.trim();
        if (trim == null || trim.touchiness().isEmpty()) {
            return "–";
        }
        Double share = trim.touchiness().get(trim.touchiness().size() - 1).speedShare();
        return BenchWords.number(share == null ? null : (Double) Math.abs(share * 100), 1);
    }

    private static String halves(SketchComparison.Row row) {
        TrimAnswer trim = row.trim();
        if (trim == null || trim.slowMode() == null) {
            return "–";
        }
        return (trim.slowMode().grows() ? "doubles\n" : "")
                + BenchWords.number(trim.slowMode().seconds(), 1);
    }
}
