package org.rafterbook.flight;

import org.rafterbook.units.Worded;

/** What was seen in flight. */
public enum FlightEventKind implements Worded {
    TOUCHED,
    TOP_OF_CLIMB,
    LAP,
    STEERED,
    STALLED,
    DIVED,
    MUSHED,
    RECOVERED,
    NOT_RECOVERED,
    PROPELLER_STOPPED,
    NOTE
}
