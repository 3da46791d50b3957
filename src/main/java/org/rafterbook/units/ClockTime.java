package org.rafterbook.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Durations as flyers write them: {@code m:ss}. Times flown are cut to the last whole second or tenth, as a watch
 * shows them, never rounded up; differences are rounded.
 */
public final class ClockTime {

    private static final Pattern CLOCK = Pattern.compile("(?:(\\d{1,4}):)?(\\d{1,6}):(\\d+)(?:([.,])(\\d+))?");
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    /** Below this a double's rounding, not the watch, decides the digit. */
    private static final int MICROSECONDS = 6;

    private ClockTime() {}

    /** {@code 10:41} of 641.7 s. */
    public static String minutesSeconds(double seconds) {
        return clock(cut(seconds, 0));
    }

    /** {@code 10:41.7} of 641.78 s, for the watch. */
    public static String tenths(double seconds) {
        return clock(cut(seconds, 1));
    }

    /** {@code ≥ 8:47}: a flight that was cut short lasted at least this long. */
    public static String atLeast(double seconds) {
        return "≥ " + minutesSeconds(seconds);
    }

    /** A difference of times with its sign: {@code +0:46}, {@code −1:05}, {@code 0:00}. */
    public static String difference(double seconds) {
        BigDecimal rounded = BigDecimal.valueOf(seconds).setScale(0, RoundingMode.HALF_UP);
        return (rounded.signum() > 0 ? "+" : "") + clock(rounded);
    }

    /** All digits, for reading back what was typed: {@code 10:41.75}. */
    static String full(double seconds) {
        BigDecimal all = BigDecimal.valueOf(seconds).stripTrailingZeros();
        return clock(all.scale() < 0 ? all.setScale(0) : all);
    }

    static boolean looksLikeClock(String text) {
        return text.indexOf(':') >= 0;
    }

    /** Seconds of {@code m:ss}, {@code m:ss.t} or {@code h:mm:ss}. */
    static Parsed<BigDecimal> read(String text, DecimalMark mark) {
        Matcher clock = CLOCK.matcher(text);
        if (!clock.matches()) {
            return Parsed.refused("“" + text + "” is not a time; type for example 10:50, 10.5 min or 650 s.");
        }
        if (clock.group(4) != null && !mark.allows(clock.group(4).charAt(0))) {
            return Parsed.refused("“" + text + "” has the other decimal mark than this column.");
        }
        String minutes = clock.group(2);
        String seconds = clock.group(3);
        if (seconds.length() != 2) {
            return Parsed.refused("“" + text + "” needs two digits for its seconds, such as 10:05 or 10:50.");
        }
        if (Integer.parseInt(seconds) >= 60) {
            return Parsed.refused("“" + text + "” has " + seconds + " seconds; a minute ends at 59.");
        }
        boolean withHours = clock.group(1) != null;
        if (withHours && (minutes.length() != 2 || Integer.parseInt(minutes) >= 60)) {
            return Parsed.refused("“" + text + "” needs its minutes as two digits from 00 to 59 after the hours.");
        }
        BigDecimal hours = withHours ? new BigDecimal(clock.group(1)) : BigDecimal.ZERO;
        String decimals = clock.group(5) == null ? "" : "." + clock.group(5);
        return Parsed.accepted(hours.multiply(SIXTY)
                .add(new BigDecimal(minutes))
                .multiply(SIXTY)
                .add(new BigDecimal(seconds + decimals)));
    }

    private static BigDecimal cut(double seconds, int decimals) {
        return BigDecimal.valueOf(seconds)
                .setScale(MICROSECONDS, RoundingMode.HALF_UP)
                .setScale(decimals, RoundingMode.DOWN);
    }

    private static String clock(BigDecimal seconds) {
        BigDecimal[] parts = seconds.abs().divideAndRemainder(SIXTY);
        String rest = parts[1].toPlainString();
        int whole = rest.indexOf('.') < 0 ? rest.length() : rest.indexOf('.');
        return (seconds.signum() < 0 ? "−" : "") + parts[0].toBigInteger() + (whole < 2 ? ":0" : ":") + rest;
    }
}
