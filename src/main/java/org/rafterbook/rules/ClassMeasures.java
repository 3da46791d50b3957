package org.rafterbook.rules;

import java.util.Comparator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.Planform;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;

/**
 * What a class sheet judges of a model, kg and m; null where it is not known.
 *
 * @param airframeKg mass without the motor
 * @param motorKg mass of the motor
 * @param spanM span of the longest wing, tip to tip, as projected
 * @param chordM greatest chord of any wing
 * @param tailSpanM span of the longest tailplane
 * @param propellerM diameter of the propeller
 */
public record ClassMeasures(
        @Nullable Double airframeKg,
        @Nullable Double motorKg,
        @Nullable Double spanM,
        @Nullable Double chordM,
        @Nullable Double tailSpanM,
        @Nullable Double propellerM) {

    /**
     * The measures of an airframe.
     *
     * @param weighedKg the whole airframe on the scale; wins over the sum of its parts
     * @param propellerM diameter of its propeller
     */
    public static ClassMeasures of(Airframe airframe, @Nullable Double weighedKg, @Nullable Double propellerM) {
        Double partsKg = airframe.masses().isEmpty()
                ? null
                : (Double)
                        airframe.masses().stream().mapToDouble(MassItem::massKg).sum();
        return new ClassMeasures(
                weighedKg == null ? partsKg : weighedKg,
                airframe.motor() == null ? null : (Double) airframe.motor().massKg(),
                greatest(spans(airframe, Role.WING)),
                greatest(chords(airframe)),
                greatest(spans(airframe, Role.TAILPLANE)),
                propellerM);
    }

    private static Stream<Double> spans(Airframe airframe, Role role) {
        return having(airframe, role).map(surface -> Planform.of(surface).spanM());
    }

    private static Stream<Double> chords(Airframe airframe) {
        return having(airframe, Role.WING)
                .flatMap(wing -> Stream.concat(wing.ribs().stream(), wing.leftRibs().stream()))
                .map(Rib::chordM);
    }

    private static Stream<Surface> having(Airframe airframe, Role role) {
        return airframe.surfaces().stream().filter(surface -> surface.role() == role);
    }

    private static @Nullable Double greatest(Stream<Double> values) {
        return values.max(Comparator.naturalOrder()).orElse(null);
    }
}
