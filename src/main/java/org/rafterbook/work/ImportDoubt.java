package org.rafterbook.work;

import java.util.Objects;
import org.rafterbook.exchange.FlightField;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;

/**
 * A figure that was taken in but is hardly meant, such as a torque in another unit: for the flyer to look at.
 *
 * @param line of the file, from 1
 * @param value as it was read, SI
 * @param against what it is held against, SI
 */
public record ImportDoubt(String file, int line, FlightField field, Kind kind, double value, double against) {

    /** Why a figure is doubted. */
    public enum Kind {
        ENDLESS("%s aloft, more than %s: is the time in minutes or in seconds?"),
        LONG("%s aloft; usual for this model is %s."),
        BEYOND_BREAKING("%s; this motor breaks at about %s."),
        TORQUE_BEYOND_BREAKING("%s; this motor breaks at about %s. Is the unit right?"),
        HIGH("%s; usual for this model is %s. Is the unit right?"),
        OTHER_THAN_BEFORE("About %s in this table, about %s in the logbook for this model. Is the unit right?");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    /** What is doubtful about it. */
    public String sentence(QuantityFormat format) {
        return String.format(kind.words, text(format, value), text(format, against));
    }

    private String text(QuantityFormat format, double si) {
        return format.text(Objects.requireNonNull(field.quantity()), si);
    }

    /** The sentence with its place. */
    @Override
    public String toString() {
        return file + ", line " + line + ", " + field.meaning() + ": "
                + sentence(new QuantityFormat(DisplayUnits.METRIC));
    }
}
