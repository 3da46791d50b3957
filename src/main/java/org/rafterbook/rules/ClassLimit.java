package org.rafterbook.rules;

import org.rafterbook.units.Quantity;

/** The limits a class sheet can hold. */
public enum ClassLimit {
    AIRFRAME_MASS("airframe", Quantity.MASS, true),
    MOTOR_MASS("motor", Quantity.MASS, false),
    SPAN("span", Quantity.LENGTH, false),
    CHORD("wing chord", Quantity.LENGTH, false),
    TAIL_SPAN("tailplane span", Quantity.LENGTH, false),
    PROPELLER("propeller", Quantity.LENGTH, false);

    private final String noun;
    private final Quantity quantity;
    private final boolean least;

    ClassLimit(String noun, Quantity quantity, boolean least) {
        this.noun = noun;
        this.quantity = quantity;
        this.least = least;
    }

    /** What the limit is about: "tailplane span". */
    public String noun() {
        return noun;
    }

    public Quantity quantity() {
        return quantity;
    }

    /** True where the limit is a least value, false where it is a greatest. */
    public boolean isLeast() {
        return least;
    }
}
