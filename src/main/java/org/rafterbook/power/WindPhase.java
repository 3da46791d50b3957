package org.rafterbook.power;

import org.rafterbook.units.Worded;

/** Whether a reading was taken on the way in or on the way out. */
public enum WindPhase implements Worded {
    WINDING,
    BACKING_OFF
}
