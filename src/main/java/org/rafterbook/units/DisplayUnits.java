package org.rafterbook.units;

/** The flyer's choice of units on screens and in fields; masses are grams in both, as scales are. */
public enum DisplayUnits {
    METRIC("mm, g, N·mm"),
    INCH("in, g, in-oz");

    private final String label;

    DisplayUnits(String label) {
        this.label = label;
    }

    /** How the choice is named in a list. */
    public String label() {
        return label;
    }

    DisplayUnits other() {
        return this == METRIC ? INCH : METRIC;
    }
}
