package org.rafterbook.airframe;

import org.jspecify.annotations.Nullable;

/**
 * Something of an airframe that is missing or cannot be.
 *
 * @param kind what is wrong, for programs
 * @param surface the surface or mass concerned; null where it is the whole model
 * @param sentence what is missing and where
 * @param stillShown what can be shown all the same
 */
public record AirframeProblem(Kind kind, @Nullable String surface, String sentence, String stillShown) {

    /** What is wrong with an airframe. */
    public enum Kind {
        NO_WING(true),
        ZERO_SPAN(true),
        ZERO_CHORD(true),
        CROSSED_RIBS(true),
        NOT_A_NUMBER(true),
        SAME_NAME(true),
        SAME_PLACE(true),
        TOO_STEEP(true),
        NO_TAIL(false),
        SLOT(false),
        NO_MASS(false),
        BAD_MASS(false),
        NO_BALANCE(false);

        private final boolean hidesNeutralPoint;

        Kind(boolean hidesNeutralPoint) {
            this.hidesNeutralPoint = hidesNeutralPoint;
        }

        /** True where no neutral point can be computed. */
        public boolean hidesNeutralPoint() {
            return hidesNeutralPoint;
        }
    }
}
