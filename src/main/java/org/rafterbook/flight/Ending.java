package org.rafterbook.flight;

import org.rafterbook.units.Worded;

/** How a flight ended. */
public enum Ending implements Worded {
    CLEAN,
    TOUCHED,
    STEERED,
    MID_AIR,
    HUNG,
    ABORTED
}
