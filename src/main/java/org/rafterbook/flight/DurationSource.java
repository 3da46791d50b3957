package org.rafterbook.flight;

import org.rafterbook.units.Worded;

/** Where a time comes from: this program's watch, typed from somebody's watch, or wall clocks after a restart. */
public enum DurationSource implements Worded {
    WATCH,
    TYPED,
    WALL_CLOCK
}
