package org.rafterbook.units;

/** What a unit measures; quantities of one dimension may be typed in each other's units. */
public enum Dimension {
    LENGTH("a length"),
    AREA("an area"),
    MASS("a mass"),
    LINEAR_DENSITY("a mass per length"),
    TORQUE("a torque"),
    ANGLE("an angle"),
    TIME("a time"),
    TEMPERATURE("a temperature"),
    PRESSURE("a pressure"),
    FRACTION("a share"),
    TURNS("a number of turns"),
    ROTATION("turns per time"),
    SPEED("a speed"),
    DENSITY("a density"),
    ENERGY("an energy"),
    SPECIFIC_ENERGY("an energy per mass"),
    POWER("a power"),
    NUMBER("a plain number");

    private final String phrase;

    Dimension(String phrase) {
        this.phrase = phrase;
    }

    /** The dimension with its article, for sentences: "a torque". */
    public String phrase() {
        return phrase;
    }
}
