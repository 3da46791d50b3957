package org.rafterbook.ui.look;

import java.util.Locale;

/** A named colour of the theme; in stylesheets it is the looked-up colour {@code -rb-} plus {@link #css()}. */
public enum Token {
    /** Ground of window and rail. */
    DESK,
    /** Sheets, tables, plots. */
    SHEET,
    /** Inside of fields. */
    WELL,
    /** Buttons, rules, pop-ups, ground never flown. */
    RAISED,
    /** Hairlines that bear no meaning. */
    LINE,
    /** Borders of controls, axes, ticks; not on {@link #SOFT}. */
    EDGE,
    /** Graph paper, each line. */
    GRID,
    /** Graph paper, every fifth line. */
    GRID_5,
    /** Text and values. */
    INK,
    /** Labels, prose beside a verdict. */
    INK_2,
    /** Hints and old values; in the dim theme never on {@link #SOFT}. */
    INK_3,
    /** What may be acted on or has just been changed, now, the wished range, the answer; never a data series. */
    ACCENT,
    /** Text on {@link #ACCENT}. */
    ON,
    /** Selected row, changed setting, wished range. */
    SOFT,
    /** With an up-triangle or tick, never alone. */
    GOOD,
    /** With a warning or down-triangle, never alone. */
    CAUTION,
    /** With × or hatching, never alone. */
    STOP,
    /** Zone of caution in a chart. */
    CAUTION_SOFT,
    /** Zone beyond a limit in a chart. */
    STOP_SOFT,
    /** Covering of airframes. */
    TISSUE,
    /** Wooden faces of airframes. */
    TISSUE_2,
    /** Outlines, spars and ribs of airframes. */
    WOOD,
    CHART_1,
    CHART_2,
    CHART_3,
    CHART_4,
    CHART_5,
    CHART_6;

    /** The token's name in a stylesheet, such as {@code ink-2}. */
    public String css() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The chart colour with the given number, 0 to 5. */
    public static Token chart(int number) {
        return values()[CHART_1.ordinal() + Math.floorMod(number, 6)];
    }
}
