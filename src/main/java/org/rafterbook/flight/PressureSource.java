package org.rafterbook.flight;

import org.rafterbook.units.Worded;

/** Where a station pressure comes from. */
public enum PressureSource implements Worded {
    MEASURED,
    FROM_HEIGHT
}
