package org.rafterbook.units;

/**
 * A kind of figure the program reads and shows: what it measures, in which units and with how many decimals it is
 * shown, and between which values it can lie at all.
 */
public enum Quantity {
    LENGTH("length", Dimension.LENGTH, Shown.in(Unit.MM, 1), Shown.in(Unit.IN, 2), Span.ANY),
    HEIGHT("height", Dimension.LENGTH, Shown.in(Unit.M, 1), Shown.in(Unit.FT, 1), Span.ANY),
    STRIP_WIDTH("strip width", Dimension.LENGTH, Shown.in(Unit.MM, 2), Shown.in(Unit.THOU, 0), Span.NOT_NEGATIVE),
    AREA("area", Dimension.AREA, Shown.in(Unit.DM2, 2), Shown.in(Unit.IN2, 1), Span.NOT_NEGATIVE),
    MASS("mass", Dimension.MASS, Shown.in(Unit.G, 2), Shown.in(Unit.G, 2), Span.NOT_NEGATIVE),
    LINEAR_DENSITY(
            "mass per length",
            Dimension.LINEAR_DENSITY,
            Shown.in(Unit.G_PER_M, 2),
            Shown.in(Unit.G_PER_IN, 4),
            Span.NOT_NEGATIVE),
    TORQUE("torque", Dimension.TORQUE, Shown.in(Unit.N_MM, 1), Shown.in(Unit.IN_OZ, 2), Span.NOT_NEGATIVE),
    ANGLE("angle", Dimension.ANGLE, Shown.in(Unit.DEG, 2), Shown.in(Unit.DEG, 2), Span.ANY),
    TIME("time", Dimension.TIME, Shown.in(Unit.S, 1), Shown.in(Unit.S, 1), Span.NOT_NEGATIVE),
    TEMPERATURE(
            "temperature",
            Dimension.TEMPERATURE,
            Shown.in(Unit.CELSIUS, 1),
            Shown.in(Unit.CELSIUS, 1),
            Span.NOT_NEGATIVE),
    PRESSURE("pressure", Dimension.PRESSURE, Shown.in(Unit.HPA, 0), Shown.in(Unit.HPA, 0), Span.NOT_NEGATIVE),
    HUMIDITY("humidity", Dimension.FRACTION, Shown.in(Unit.PERCENT, 0), Shown.in(Unit.PERCENT, 0), Span.SHARE),
    FRACTION("share", Dimension.FRACTION, Shown.in(Unit.PERCENT, 1), Shown.in(Unit.PERCENT, 1), Span.ANY),
    TURNS("number of turns", Dimension.TURNS, Shown.in(Unit.TURNS, 0), Shown.in(Unit.TURNS, 0), Span.NOT_NEGATIVE),
    ROTATION("rate of turns", Dimension.ROTATION, Shown.in(Unit.RPM, 0), Shown.in(Unit.RPM, 0), Span.NOT_NEGATIVE),
    SPEED("speed", Dimension.SPEED, Shown.in(Unit.M_PER_S, 2), Shown.in(Unit.FT_PER_S, 2), Span.NOT_NEGATIVE),
    DENSITY("density", Dimension.DENSITY, Shown.in(Unit.KG_PER_M3, 3), Shown.in(Unit.KG_PER_M3, 3), Span.NOT_NEGATIVE),
    ENERGY("energy", Dimension.ENERGY, Shown.in(Unit.J, 1), Shown.in(Unit.J, 1), Span.NOT_NEGATIVE),
    SPECIFIC_ENERGY(
            "energy per mass",
            Dimension.SPECIFIC_ENERGY,
            Shown.in(Unit.J_PER_G, 1),
            Shown.in(Unit.FT_LB_PER_LB, 0),
            Span.NOT_NEGATIVE),
    POWER("power", Dimension.POWER, Shown.in(Unit.MILLI_W, 2), Shown.in(Unit.MILLI_W, 2), Span.NOT_NEGATIVE),
    COUNT("count", Dimension.NUMBER, Shown.in(Unit.ONE, 0), Shown.in(Unit.ONE, 0), Span.NOT_NEGATIVE),
    PLAIN("number", Dimension.NUMBER, Shown.in(Unit.ONE, 2), Shown.in(Unit.ONE, 2), Span.ANY);

    /** A unit and the decimals a screen shows in it. */
    record Shown(Unit unit, int decimals) {
        static Shown in(Unit unit, int decimals) {
            return new Shown(unit, decimals);
        }
    }

    /** The values a quantity can have at all, in SI; closer limits are the business of the field. */
    enum Span {
        ANY(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
        NOT_NEGATIVE(0, Double.POSITIVE_INFINITY),
        SHARE(0, 1);

        final double lowest;
        final double highest;

        Span(double lowest, double highest) {
            this.lowest = lowest;
            this.highest = highest;
        }
    }

    private final String noun;
    private final Dimension dimension;
    private final Shown metric;
    private final Shown inch;
    private final Span span;

    Quantity(String noun, Dimension dimension, Shown metric, Shown inch, Span span) {
        this.noun = noun;
        this.dimension = dimension;
        this.metric = metric;
        this.inch = inch;
        this.span = span;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The name used in sentences: "torque". */
    public String noun() {
        return noun;
    }

    /** The unit a field of this quantity shows at its end, and a number without a unit is read in. */
    public Unit unit(DisplayUnits units) {
        return shown(units).unit();
    }

    Shown shown(DisplayUnits units) {
        return units == DisplayUnits.INCH ? inch : metric;
    }

    Span span() {
        return span;
    }

    /** True where people group thousands, so that "1,050" may mean a thousand and fifty. */
    boolean isUsuallyGrouped(Unit typed) {
        return switch (this) {
            case TURNS, COUNT, HEIGHT -> true;
            case PRESSURE -> typed == Unit.PA || typed == Unit.HPA || typed == Unit.MBAR;
            default -> false;
        };
    }
}
