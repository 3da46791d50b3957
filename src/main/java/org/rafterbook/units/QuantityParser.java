package org.rafterbook.units;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The program's one reader of numbers and quantities, for fields, command options and table columns.
 *
 * <p>Reads a decimal with either mark, a fraction or a whole number with a fraction, with or without a unit, {@code
 * m:ss}, {@code h:mm:ss} and the two-unit forms {@code 26 ft 3 in} and {@code 10 min 50 s}. Whatever can be read in two
 * ways is refused with a sentence, never guessed.
 */
public final class QuantityParser {

    private static final Pattern NUMBER_FIRST =
            Pattern.compile("([+-]?\\s*[\\d.,](?:[\\d.,/\\s-]*[\\d.,])?(?:[eE][+-]?\\d+)?)\\s*(.*)");
    private static final Pattern UNIT_FIRST = Pattern.compile("(\\D+?)\\s*(\\d.*)");
    private static final Pattern RANGE_WORD = Pattern.compile("\\s+to\\s+|\\s*(?:\\.\\.\\.?|…)\\s*");
    private static final Pattern RANGE_DASH = Pattern.compile("(?<=[\\d\\p{L}%°])\\s*-\\s*(?=[\\d.,])");

    /** In two-unit forms: which finer unit may follow, and how many of it make one of the coarser. */
    private static final Map<Unit, Finer> FINER =
            Map.of(Unit.FT, new Finer(Unit.IN, 12), Unit.H, new Finer(Unit.MIN, 60), Unit.MIN, new Finer(Unit.S, 60));

    private static final int LONGEST_QUOTED = 40;

    private record Finer(Unit unit, int perCoarser) {}

    private record Amount(BigDecimal si, Unit unit, boolean bare) {}

    private final Quantity quantity;
    private final Unit bareUnit;
    private final DecimalMark mark;

    private QuantityParser(Quantity quantity, Unit bareUnit, DecimalMark mark) {
        if (bareUnit.dimension() != quantity.dimension()) {
            throw new IllegalArgumentException(bareUnit + " is no unit of " + quantity);
        }
        this.quantity = quantity;
        this.bareUnit = bareUnit;
        this.mark = mark;
    }

    /** For a field or option; a number without a unit is read in {@code bareUnit}. */
    public static QuantityParser typed(Quantity quantity, Unit bareUnit) {
        return new QuantityParser(quantity, bareUnit, DecimalMark.EITHER);
    }

    /** For a field that shows the unit of the flyer's choice. */
    public static QuantityParser typed(Quantity quantity, DisplayUnits units) {
        return typed(quantity, quantity.unit(units));
    }

    /** For a table's column whose unit and decimal mark are fixed by its mapping. */
    public static QuantityParser column(Quantity quantity, Unit bareUnit, DecimalMark mark) {
        return new QuantityParser(quantity, bareUnit, mark);
    }

    /** Reads one value. */
    public Parsed<TypedValue> read(String text) {
        String tidy = NumberReader.tidy(text);
        if (tidy.isEmpty()) {
            return Parsed.refused("Nothing is typed here.");
        }
        if (tidy.length() > LONGEST_QUOTED) {
            return Parsed.refused("“" + tidy.substring(0, LONGEST_QUOTED) + "…” is too long for a number.");
        }
        return amount(tidy).then(amount -> within(amount, text.strip()));
    }

    /** Reads a value or a range such as {@code 7.9 to 9.4}; a unit at the end counts for both ends. */
    public Parsed<TypedRange> readRange(String text) {
        String tidy = NumberReader.tidy(text);
        String[] ends = RANGE_WORD.split(tidy, 3);
        if (ends.length == 1 && tidy.indexOf('/') < 0) {
            ends = RANGE_DASH.split(tidy, 3);
        }
        if (ends.length > 2) {
            return Parsed.refused("“" + tidy + "” has more than two ends.");
        }
        String lowText = ends[0];
        return read(ends[ends.length - 1]).then(high -> {
            QuantityParser same = high.bare() ? this : new QuantityParser(quantity, high.unit(), mark);
            return same.read(lowText).then(low -> range(low, high, text.strip()));
        });
    }

    private Parsed<TypedRange> range(TypedValue low, TypedValue high, String asTyped) {
        if (low.si() > high.si()) {
            return Parsed.refused("“" + asTyped + "” runs downward; type the lower end first.");
        }
        String lowBack = QuantityFormat.readBack(quantity, low.si(), low.unit(), bareUnit);
        String readBack = low.si() == high.si() ? high.readBack() : lowBack + " to " + high.readBack();
        return Parsed.accepted(new TypedRange(quantity, low.si(), high.si(), asTyped, readBack));
    }

    private Parsed<Amount> amount(String text) {
        if (ClockTime.looksLikeClock(text)) {
            return quantity.dimension() == Dimension.TIME
                    ? ClockTime.read(text, mark).then(s -> Parsed.accepted(new Amount(s, Unit.S, false)))
                    : Parsed.refused("“" + text + "” is a time; " + asked() + ".");
        }
        Matcher split = NUMBER_FIRST.matcher(text);
        if (!split.matches()) {
            return Parsed.refused("“" + text + "” does not begin with a number" + example() + ".");
        }
        String number = split.group(1);
        String rest = split.group(2);
        return NumberReader.read(number, mark).then(value -> withUnit(value, number, rest));
    }

    private Parsed<Amount> withUnit(BigDecimal value, String number, String rest) {
        Unit unit = rest.isEmpty() ? bareUnit : unitNamed(rest);
        if (unit == null) {
            Matcher second = UNIT_FIRST.matcher(rest);
            Unit coarse = second.matches() ? unitNamed(second.group(1)) : null;
            return coarse == null ? Parsed.refused(noSuchUnit(rest)) : twoUnits(value, coarse, second.group(2));
        }
        if (mark == DecimalMark.EITHER && NumberReader.mayBeGrouped(number) && quantity.isUsuallyGrouped(unit)) {
            return Parsed.refused("“" + number + "” could be " + number.replaceAll("[.,]", "") + " or "
                    + value.stripTrailingZeros().toPlainString() + "; type it as one of these.");
        }
        return Parsed.accepted(new Amount(unit.exactToSi(value), unit, rest.isEmpty()));
    }

    private Parsed<Amount> twoUnits(BigDecimal value, Unit coarse, String rest) {
        Finer finer = FINER.get(coarse);
        boolean whole = value.signum() >= 0 && value.stripTrailingZeros().scale() <= 0;
        if (finer == null || !whole) {
            return Parsed.refused("“" + rest + "” after " + coarse.symbol() + " cannot be read as part of one value.");
        }
        return amount(rest).then(fine -> {
            boolean fits = !fine.bare()
                    && fine.unit() == finer.unit()
                    && fine.si().compareTo(coarse.exactToSi(BigDecimal.ONE)) < 0
                    && fine.si().signum() >= 0;
            return fits
                    ? Parsed.accepted(new Amount(coarse.exactToSi(value).add(fine.si()), coarse, false))
                    : Parsed.refused("After " + coarse.symbol() + " only less than " + finer.perCoarser() + " "
                            + finer.unit().symbol() + " can follow.");
        });
    }

    private @Nullable Unit unitNamed(String name) {
        return Unit.find(name, quantity.dimension()).orElse(null);
    }

    private Parsed<TypedValue> within(Amount amount, String asTyped) {
        double si = amount.si().doubleValue();
        Quantity.Span span = quantity.span();
        if (!Double.isFinite(si)) {
            return Parsed.refused("“" + asTyped + "” is too large.");
        }
        if (si < span.lowest && quantity == Quantity.TEMPERATURE) {
            return Parsed.refused("“" + asTyped + "” lies below absolute zero.");
        }
        if (si < span.lowest) {
            return Parsed.refused("The " + quantity.noun() + " cannot be negative.");
        }
        if (si > span.highest) {
            return Parsed.refused("The " + quantity.noun() + " cannot be above 100 %.");
        }
        String readBack = QuantityFormat.readBack(quantity, si, amount.unit(), bareUnit);
        return Parsed.accepted(new TypedValue(quantity, si, amount.unit(), asTyped, readBack, amount.bare()));
    }

    private String noSuchUnit(String name) {
        List<Unit> elsewhere = Unit.find(name);
        return elsewhere.isEmpty()
                ? "“" + name + "” is not a unit known here; " + asked() + "."
                : "“" + name + "” measures " + elsewhere.get(0).dimension().phrase() + "; " + asked() + ".";
    }

    private String asked() {
        return quantity.dimension().phrase() + " is asked for here" + unitsToType();
    }

    private String unitsToType() {
        String symbols = Unit.of(quantity.dimension()).stream()
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .collect(Collectors.joining(", "));
        return symbols.isEmpty() ? ", without a unit" : ", in " + symbols;
    }

    private String example() {
        return quantity == Quantity.TIME ? "; type for example 10:50, 10.5 min or 650 s" : "";
    }
}
