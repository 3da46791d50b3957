package org.rafterbook.review;

import java.util.Locale;

/** Numbers inside the sentences of this room. */
final class Figures {

    /** Customary odds, as hits and tries. */
    private static final int[][] ODDS = {
        {1, 100}, {1, 50}, {1, 20}, {1, 10}, {1, 5}, {1, 4}, {1, 3}, {2, 5}, {1, 2}, {3, 5}, {2, 3}, {3, 4}, {4, 5},
        {9, 10}
    };

    private Figures() {}

    /** A value with as many decimals as its resolution deserves, trailing zeros cut. */
    static String value(double x, double resolution) {
        int decimals = 0;
        // A step of 0.25 needs the two decimals it is written with, not only its power of ten.
        for (double unit = 1; decimals < 4 && Math.abs(resolution / unit - Math.rint(resolution / unit)) > 1e-6; ) {
            unit /= 10;
            decimals++;
        }
        String text = String.format(Locale.ROOT, "%." + decimals + "f", x);
        if (text.contains(".")) {
            text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        }
        return (text.equals("-0") ? "0" : text).replace('-', '−');
    }

    /** The power of ten at or below a positive resolution. */
    static double decade(double resolution) {
        double unit = 1;
        while (unit > resolution * (1 + 1e-9)) {
            unit /= 10;
        }
        while (unit * 10 <= resolution * (1 + 1e-9)) {
            unit *= 10;
        }
        return unit;
    }

    /** A chance in the customary odds next to it, such as "about 2 in 3". */
    static String odds(double chance) {
        if (chance < 0.005) {
            return "less than 1 in 100";
        }
        if (chance > 0.95) {
            return "more than 19 in 20";
        }
        int[] best = ODDS[0];
        for (int[] odds : ODDS) {
            if (distance(odds, chance) < distance(best, chance)) {
                best = odds;
            }
        }
        return "about " + best[0] + " in " + best[1];
    }

    /** The customary odds at or below a chance, such as "about 1 in 2" for 0.59. */
    static String oddsAtLeast(double chance) {
        int[] below = ODDS[0];
        for (int[] odds : ODDS) {
            below = chance * odds[1] >= odds[0] ? odds : below;
        }
        return "about " + below[0] + " in " + below[1];
    }

    /** Nearness on the logit scale, where 1 in 20 and 1 in 10 lie as far apart as 19 in 20 and 9 in 10. */
    private static double distance(int[] odds, double chance) {
        double p = (double) odds[0] / odds[1];
        return Math.abs(StrictMath.log(p / (1 - p)) - StrictMath.log(chance / (1 - chance)));
    }
}
