package org.rafterbook.power;

import org.rafterbook.units.Worded;

/** How a wind ended. */
public enum WindEnd implements Worded {
    FLOWN,
    LET_DOWN,
    BROKE
}
