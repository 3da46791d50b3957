package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.power.Motor;

/** Tells the stability margin of a model as it is rigged, or what is missing for it. */
@FunctionalInterface
public interface MarginText {

    /**
     * A margin or the reason why there is none.
     *
     * @param fraction margin as a fraction of the mean chord, null where it cannot be told
     * @param missing what is missing, empty where the margin is known
     */
    record Answer(@Nullable Double fraction, String missing) {

        public static Answer of(double fraction) {
            return new Answer(fraction, "");
        }

        public static Answer missing(String what) {
            return new Answer(null, what);
        }
    }

    /** What a model without geometry lacks. */
    Answer NO_GEOMETRY = Answer.missing("margin needs span, chord and balance");

    /** Stands for a margin that is still being worked out. */
    Answer LATER = Answer.missing("");

    /** The margin with this motor on board; null stands for the motor last flown or the sheet's. */
    Answer of(Rigged rigged, @Nullable Motor motor);
}
