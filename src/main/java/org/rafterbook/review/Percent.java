package org.rafterbook.review;

/** Effects on the logarithm of duration, in per cent of duration. */
final class Percent {

    private Percent() {}

    /** 100 (exp(effect) - 1). */
    static double of(double lnEffect) {
        return 100 * StrictMath.expm1(lnEffect);
    }

    /** Whole per cent with its sign: +4 %, 0 %, −3 %. */
    static String signed(double percent) {
        return signedNumber(percent) + " %";
    }

    /** Whole per cent without sign: 4 %. */
    static String plain(double percent) {
        return Math.round(percent) + " %";
    }

    /** True where it is 0 % as it is printed. */
    static boolean isNothing(double percent) {
        return Math.round(percent) == 0;
    }

    /** What is left of an interval to either side: "about ± 3 %", or "less than ± 1 %". */
    static String halfWidth(double lnHalfWidth) {
        double percent = of(lnHalfWidth);
        return isNothing(percent) ? "less than ± 1 %" : "about ± " + plain(percent);
    }

    /** A scatter to the nearest half per cent, from 10 % on to the nearest whole one, at least 0.5 %: 3.5 %. */
    static String scatter(double lnDeviation) {
        return Figures.value(100 * asPrinted(lnDeviation), 0.5) + " %";
    }

    /** A scatter as it is printed, so that what is said to follow from it does. */
    static double asPrinted(double lnDeviation) {
        return lnDeviation < 0.0975
                ? Math.max(1, Math.round(200 * lnDeviation)) / 200.0
                : Math.round(100 * lnDeviation) / 100.0;
    }

    /** A band: −1 to +9 %. */
    static String band(double low, double high) {
        return signedNumber(low) + " to " + signed(high);
    }

    private static String signedNumber(double percent) {
        long whole = Math.round(percent);
        return whole > 0 ? "+" + whole : whole < 0 ? "\u2212" + -whole : "0";
    }
}
