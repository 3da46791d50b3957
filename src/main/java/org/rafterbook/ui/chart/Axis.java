package org.rafterbook.ui.chart;

/**
 * An axis of a chart: what it measures, in which unit, from where to where.
 *
 * @param name what it measures; empty where the unit says it (time)
 */
public record Axis(String name, String unit, double low, double high, Graduation graduation) {

    /** Plain numbers. */
    public static Axis of(String name, String unit, double low, double high) {
        return new Axis(name, unit, low, high, Graduation.numbers());
    }

    /** Seconds shown in minutes. */
    public static Axis minutes(double lowS, double highS) {
        return new Axis("", "min", lowS, highS, Graduation.minutes());
    }

    /** An axis round the values with a little room at the ends; around zero width there is room all the same. */
    public static Axis around(String name, String unit, double lowest, double highest) {
        double width = highest - lowest;
        double room = width > 0 ? width * 0.06 : Math.max(Math.abs(lowest) * 0.1, 1);
        return of(name, unit, lowest - room, highest + room);
    }

    String title() {
        return name.isEmpty() ? unit : unit.isEmpty() ? name : name + ", " + unit;
    }
}
