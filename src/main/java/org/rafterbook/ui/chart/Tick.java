package org.rafterbook.ui.chart;

/**
 * One graduation of a rule or axis.
 *
 * @param label what stands at it, empty for none
 */
public record Tick(double value, Level level, String label) {

    /** How long a graduation is: every one, every fifth, every tenth. */
    public enum Level {
        ONE,
        FIVE,
        TEN
    }
}
