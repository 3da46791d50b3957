package org.rafterbook.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A unit with its exact conversion to SI: {@code si = (value + offset) * factor}.
 *
 * <p>Factors are exact by definition (international inch and avoirdupois ounce of 1959, standard gravity 9.80665 m/s2,
 * conventional millimetre of mercury 133.322387415 Pa), or carried to 34 digits where they are not finite decimals.
 */
public enum Unit {
    M(Dimension.LENGTH, "m", "1", "metre", "metres", "meter", "meters"),
    CM(Dimension.LENGTH, "cm", "0.01"),
    MM(Dimension.LENGTH, "mm", "0.001"),
    IN(Dimension.LENGTH, "in", "0.0254", "\"", "inch", "inches"),
    FT(Dimension.LENGTH, "ft", "0.3048", "'", "foot", "feet"),
    THOU(Dimension.LENGTH, "thou", "0.0000254", "mil"),

    M2(Dimension.AREA, "m²", "1", "m2", "sqm"),
    DM2(Dimension.AREA, "dm²", "0.01", "dm2", "sqdm"),
    CM2(Dimension.AREA, "cm²", "0.0001", "cm2", "sqcm"),
    MM2(Dimension.AREA, "mm²", "0.000001", "mm2", "sqmm"),
    IN2(Dimension.AREA, "in²", "0.00064516", "in2", "sqin"),

    KG(Dimension.MASS, "kg", "1"),
    G(Dimension.MASS, "g", "0.001", "gram", "grams"),
    MG(Dimension.MASS, "mg", "0.000001"),
    OZ(Dimension.MASS, "oz", "0.028349523125", "ounce", "ounces"),

    G_PER_M(Dimension.LINEAR_DENSITY, "g/m", "0.001"),
    G_PER_IN(Dimension.LINEAR_DENSITY, "g/in", "0.03937007874015748031496062992125984"),

    NM(Dimension.TORQUE, "N·m", "1", "nm"),
    MILLI_NM(Dimension.TORQUE, "mN·m", "0.001", "mnm"),
    N_MM(Dimension.TORQUE, "N·mm", "0.001", "nmm"),
    IN_OZ(Dimension.TORQUE, "in-oz", "0.00706155181422604375", "inoz", "ozin"),
    GF_CM(Dimension.TORQUE, "gf·cm", "0.0000980665", "gfcm", "gcm"),

    RAD(Dimension.ANGLE, "rad", "1"),
    DEG(Dimension.ANGLE, "°", "0.01745329251994329576923690768488613", "deg", "degree", "degrees"),

    S(Dimension.TIME, "s", "1", "sec", "secs", "second", "seconds", "\""),
    MIN(Dimension.TIME, "min", "60", "mins", "minute", "minutes", "'"),
    H(Dimension.TIME, "h", "3600", "hour", "hours"),

    KELVIN(Dimension.TEMPERATURE, "K", "1"),
    CELSIUS(Dimension.TEMPERATURE, "°C", "1", new BigDecimal("273.15"), "c", "degc"),
    FAHRENHEIT(
            Dimension.TEMPERATURE, "°F", "0.5555555555555555555555555555555556", new BigDecimal("459.67"), "f", "degf"),

    PA(Dimension.PRESSURE, "Pa", "1"),
    HPA(Dimension.PRESSURE, "hPa", "100"),
    MBAR(Dimension.PRESSURE, "mbar", "100", "mb"),
    KPA(Dimension.PRESSURE, "kPa", "1000"),
    BAR(Dimension.PRESSURE, "bar", "100000"),
    MM_HG(Dimension.PRESSURE, "mmHg", "133.322387415"),
    IN_HG(Dimension.PRESSURE, "inHg", "3386.388640341"),

    FRACTION(Dimension.FRACTION, "", "1"),
    PERCENT(Dimension.FRACTION, "%", "0.01", "percent", "pct"),

    TURNS(Dimension.TURNS, "turns", "1", "turn"),

    PER_S(Dimension.ROTATION, "1/s", "1"),
    RPM(Dimension.ROTATION, "rpm", "0.01666666666666666666666666666666667", "1/min"),

    M_PER_S(Dimension.SPEED, "m/s", "1"),
    KM_PER_H(Dimension.SPEED, "km/h", "0.2777777777777777777777777777777778", "kmh"),
    FT_PER_S(Dimension.SPEED, "ft/s", "0.3048"),

    KG_PER_M3(Dimension.DENSITY, "kg/m³", "1", "kg/m3"),
    G_PER_CM3(Dimension.DENSITY, "g/cm³", "1000", "g/cm3"),

    J(Dimension.ENERGY, "J", "1"),
    MILLI_J(Dimension.ENERGY, "mJ", "0.001"),

    J_PER_KG(Dimension.SPECIFIC_ENERGY, "J/kg", "1"),
    J_PER_G(Dimension.SPECIFIC_ENERGY, "J/g", "1000"),
    FT_LB_PER_LB(Dimension.SPECIFIC_ENERGY, "ft-lb/lb", "2.98906692", "ftlbf/lb"),

    W(Dimension.POWER, "W", "1"),
    MILLI_W(Dimension.POWER, "mW", "0.001"),

    ONE(Dimension.NUMBER, "", "1");

    private static final Pattern BETWEEN = Pattern.compile("[\\s.·⋅*_-]");
    private static final Map<String, List<Unit>> BY_KEY = index();
    private static final int MOST_DIGITS = 17;

    /** How far an edge value may lie from the stored one, in steps of a double: what a few additions leave behind. */
    private static final double STEPS = 4;

    private final Dimension dimension;
    private final String symbol;
    private final BigDecimal factor;
    private final BigDecimal offset;
    private final List<String> aliases;

    Unit(Dimension dimension, String symbol, String factor, String... aliases) {
        this(dimension, symbol, factor, BigDecimal.ZERO, aliases);
    }

    Unit(Dimension dimension, String symbol, String factor, BigDecimal offset, String... aliases) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.factor = new BigDecimal(factor);
        this.offset = offset;
        this.aliases = List.of(aliases);
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The symbol shown after a number; empty for plain numbers and fractions. */
    public String symbol() {
        return symbol;
    }

    /** SI value of a decimal number in this unit, correctly rounded: 31 mm is the double nearest to 0.031. */
    public double toSi(BigDecimal value) {
        return exactToSi(value).doubleValue();
    }

    BigDecimal exactToSi(BigDecimal value) {
        return value.add(offset).multiply(factor);
    }

    /**
     * SI value of a number in this unit; the number is taken as the shortest decimal that prints it. NaN and infinities
     * pass through.
     */
    public double toSi(double value) {
        return Double.isFinite(value) ? toSi(BigDecimal.valueOf(value)) : value;
    }

    /**
     * An SI value in this unit, as the shortest decimal number that stands for it: what was typed as 2.5 degrees comes
     * back as 2.5. Agrees with the exact conversion within four steps of a double. NaN and infinities pass through.
     */
    public double fromSi(double si) {
        if (!Double.isFinite(si)) {
            return si;
        }
        BigDecimal exact = exactFromSi(si);
        BigDecimal tolerance = new BigDecimal(STEPS * Math.ulp(si)).divide(factor, MathContext.DECIMAL64);
        if (exact.abs().compareTo(tolerance) <= 0) {
            return 0;
        }
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (rounded.subtract(exact).abs().compareTo(tolerance) <= 0) {
                return rounded.doubleValue();
            }
        }
        return exact.doubleValue();
    }

    private BigDecimal exactFromSi(double si) {
        return new BigDecimal(si).divide(factor, MathContext.DECIMAL128).subtract(offset);
    }

    /** The unit of that dimension with this symbol or alias, whatever its case, dots and spaces. */
    public static Optional<Unit> find(String text, Dimension dimension) {
        return find(text).stream().filter(u -> u.dimension == dimension).findFirst();
    }

    /** All units with this symbol or alias; none where the text names no unit. */
    public static List<Unit> find(String text) {
        return BY_KEY.getOrDefault(key(text), List.of());
    }

    /** The units in which a value of that dimension may be typed. */
    public static List<Unit> of(Dimension dimension) {
        return Arrays.stream(values()).filter(u -> u.dimension == dimension).toList();
    }

    private static Map<String, List<Unit>> index() {
        Map<String, List<Unit>> index = new HashMap<>();
        for (Unit unit : values()) {
            Stream.concat(Stream.of(unit.symbol), unit.aliases.stream())
                    .map(Unit::key)
                    .filter(key -> !key.isEmpty())
                    .distinct()
                    .forEach(key ->
                            index.computeIfAbsent(key, k -> new ArrayList<>()).add(unit));
        }
        return Map.copyOf(index);
    }

    /** Spelling without case and without what stands between the parts of a product: N·mm, N.mm and Nmm are one. */
    private static String key(String text) {
        return BETWEEN.matcher(text).replaceAll("").toLowerCase(Locale.ROOT);
    }
}
