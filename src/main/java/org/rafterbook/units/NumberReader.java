package org.rafterbook.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one number without a unit: decimal with one mark, fraction, or whole number with fraction. */
final class NumberReader {

    private static final Pattern DECIMAL = Pattern.compile("(?:\\d+(?:[.,]\\d+)?|[.,]\\d+)(?:[eE][+-]?\\d{1,3})?");
    private static final Pattern FRACTION = Pattern.compile("(?:(\\d+)(?:\\s+|-))?(\\d+)\\s*/\\s*(\\d+)");
    private static final Pattern THREE_DECIMALS = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");

    private NumberReader() {}

    /** Reads a text that has been through {@link #tidy}. */
    static Parsed<BigDecimal> read(String text, DecimalMark mark) {
        boolean negative = text.startsWith("-");
        String digits = negative || text.startsWith("+") ? text.substring(1).strip() : text;
        Matcher fraction = FRACTION.matcher(digits);
        Parsed<BigDecimal> size = fraction.matches() ? ofFraction(text, fraction) : ofDecimal(text, digits, mark);
        return negative ? size.then(value -> Parsed.accepted(value.negate())) : size;
    }

    /** True where a single mark before three digits may as well group thousands. */
    static boolean mayBeGrouped(String text) {
        return THREE_DECIMALS.matcher(text).matches();
    }

    /** One kind of blank, minus, fraction stroke and prime, so that the patterns need to know only one. */
    static String tidy(String text) {
        StringBuilder tidy = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '\u2212', '\u2013', '\u2011', '\uFE63', '\uFF0D' -> tidy.append('-');
                case '\u2044', '\u2215' -> tidy.append('/');
                case '\u2032', '\u2019' -> tidy.append('\'');
                case '\u2033', '\u201D' -> tidy.append('"');
                case '\u00BD' -> tidy.append(" 1/2");
                case '\u00BC' -> tidy.append(" 1/4");
                case '\u00BE' -> tidy.append(" 3/4");
                case '\u215B' -> tidy.append(" 1/8");
                case '\u215C' -> tidy.append(" 3/8");
                case '\u215D' -> tidy.append(" 5/8");
                case '\u215E' -> tidy.append(" 7/8");
                default -> tidy.appendCodePoint(Character.isWhitespace(c) || Character.isSpaceChar(c) ? ' ' : c);
            }
        });
        return tidy.toString().strip();
    }

    private static Parsed<BigDecimal> ofFraction(String text, Matcher fraction) {
        BigDecimal over = new BigDecimal(fraction.group(2));
        BigDecimal under = new BigDecimal(fraction.group(3));
        if (under.signum() == 0) {
            return Parsed.refused("“" + text + "” divides by zero.");
        }
        BigDecimal part = over.divide(under, MathContext.DECIMAL128);
        if (fraction.group(1) == null) {
            return Parsed.accepted(part);
        }
        if (over.compareTo(under) >= 0) {
            return Parsed.refused("“" + text + "” adds a fraction of one or more to a whole number.");
        }
        return Parsed.accepted(part.add(new BigDecimal(fraction.group(1))));
    }

    private static Parsed<BigDecimal> ofDecimal(String text, String digits, DecimalMark mark) {
        if (!DECIMAL.matcher(digits).matches()) {
            return Parsed.refused(whatIsWrong(text, digits));
        }
        int at = Math.max(digits.indexOf('.'), digits.indexOf(','));
        if (at >= 0 && !mark.allows(digits.charAt(at))) {
            return Parsed.refused("“" + text + "” has the other decimal mark than this column.");
        }
        return Parsed.accepted(new BigDecimal(digits.replace(',', '.')));
    }

    private static String whatIsWrong(String text, String digits) {
        long points = digits.chars().filter(c -> c == '.').count();
        long commas = digits.chars().filter(c -> c == ',').count();
        String shown = "“" + text + "”";
        if (points > 0 && commas > 0) {
            return shown + " has a comma and a point; type one decimal mark and no thousands mark.";
        }
        if (points + commas > 1) {
            return shown + " has more than one decimal mark.";
        }
        if (digits.endsWith(".") || digits.endsWith(",")) {
            return shown + " has no digits after its decimal mark.";
        }
        return shown + " is not one number.";
    }
}
