package org.rafterbook.ui.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Arithmetic of graduations. */
final class Steps {

    /** Room a label needs, in pixels of the design. */
    static final double LABEL_PX = 46;

    /** Room a label of four figures needs. */
    static final double LONG_LABEL_PX = 62;

    /** Room between two graduations, in pixels of the design. */
    static final double TICK_PX = 3.6;

    private Steps() {}

    /** The smallest of 1, 2, 5 times a power of ten that is not below {@code least}. */
    static double nice(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= least * (1 - 1e-9)) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    /** Into how many parts a labelled step is divided. */
    static int parts(double step) {
        double leading = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
        return Math.round(leading) == 2 ? 4 : Math.round(leading) == 5 ? 5 : 10;
    }

    static List<Tick> regular(
            double low, double high, double pxPerUnit, double step, int parts, DoubleFunction<String> label) {
        int fine = parts;
        while (fine > 1 && step / fine * pxPerUnit < TICK_PX) {
            fine = fine % 5 == 0 && fine > 5 ? fine / 5 : fine % 2 == 0 ? fine / 2 : 1;
        }
        double minor = step / fine;
        int five = fine % 10 == 0 ? fine / 2 : fine % 5 == 0 && fine > 5 ? 5 : fine % 4 == 0 ? fine / 2 : fine;
        List<Tick> ticks = new ArrayList<>();
        long last = (long) Math.floor(high / minor + 1e-6);
        for (long i = (long) Math.ceil(low / minor - 1e-6); i <= last; i++) {
            double value = i * minor;
            if (Math.floorMod(i, fine) == 0) {
                ticks.add(new Tick(value, Tick.Level.TEN, label.apply(value)));
            } else {
                ticks.add(new Tick(value, Math.floorMod(i, five) == 0 ? Tick.Level.FIVE : Tick.Level.ONE, ""));
            }
        }
        return ticks;
    }
}
