package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.power.Motor;
import org.rafterbook.stability.MarginDifference;

/** Tells the stability margin of a model as it is rigged, or what is missing for it. */
@FunctionalInterface
public interface MarginText {

    /**
     * A margin or the reason why there is none.
     *
     * @param fraction margin as a fraction of the mean chord, null where it cannot be told
     * @param missing what is missing, empty where the margin is known
     * @param full all that is known of it, for the difference to another; null where only the fraction is
     */
    record Answer(
            @Nullable Double fraction,
            String missing,
            @Nullable MarginAnswer full) {

        public static Answer of(double fraction) {
            return new Answer(fraction, "", null);
        }

        public static Answer missing(String what) {
            return new Answer(null, what, null);
        }

        /** The margin as the lattice tells it, or what it lacks. */
        static Answer of(MarginAnswer answer) {
            Double margin = answer.margin();
            String missing = answer.missing();
            return new Answer(margin, margin != null ? "" : missing == null ? "cannot tell" : missing, answer);
        }

        /** How far the margin can be trusted, in words; empty where not known. */
        public String trust() {
            return full == null ? "" : MarginWords.trust(full);
        }

        /** This margin less another of the same model with the band of the difference; null where it cannot be told. */
        public @Nullable MarginDifference differenceFrom(@Nullable Answer other) {
            return full == null || other == null || other.full == null ? null : full.differenceFrom(other.full);
        }
    }

    /** What a model without geometry lacks. */
    Answer NO_GEOMETRY = Answer.missing("margin needs span, chord and balance");

    /** Stands for a margin that is still being worked out. */
    Answer LATER = Answer.missing("");

    /** The margin with this motor on board; null stands for the motor last flown or the sheet's. */
    Answer of(Rigged rigged, @Nullable Motor motor);
}
