package org.rafterbook.ui.hall;

import java.util.List;
import java.util.stream.Collectors;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.TypedRange;
import org.rafterbook.work.HeightMark;

/** Heights judged against what hangs in the hall. */
final class HeightWords {

    private static final double SAME_M = 0.005;

    private HeightWords() {}

    /** Such as ", above lamps 7.9 m, below beams 9.4 m"; empty where nothing of known height lies near. */
    static String between(List<HeightMark> marks, TypedRange range, QuantityFormat format) {
        HeightMark under = marks.stream()
                .filter(m -> m.heightM() <= range.lowSi() + SAME_M)
                .reduce((one, higher) -> higher)
                .orElse(null);
        HeightMark over = marks.stream()
                .filter(m -> m.heightM() >= range.highSi() - SAME_M)
                .findFirst()
                .orElse(null);
        return (under == null ? "" : ", above " + words(under, format))
                + (over == null ? "" : ", below " + words(over, format));
    }

    /** What is at which height, such as "lamps 7.9 m, beams 9.4 m". */
    static String known(List<HeightMark> marks, QuantityFormat format) {
        return marks.stream().map(m -> words(m, format)).collect(Collectors.joining(", "));
    }

    private static String words(HeightMark mark, QuantityFormat format) {
        return mark.name() + " " + format.text(Quantity.HEIGHT, mark.heightM());
    }
}
