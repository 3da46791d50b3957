package org.rafterbook.ui.hall;

/** What the Hall is about at the moment. */
public enum HallState {
    PREPARING,
    WINDING,
    VISIT,
    IN_THE_AIR,
    LANDING
}
