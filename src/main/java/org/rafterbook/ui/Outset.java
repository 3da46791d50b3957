package org.rafterbook.ui;

import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.hall.FirstReading;
import org.rafterbook.units.UserError;
import org.rafterbook.work.OpenedBook;
import org.rafterbook.work.Shelf;

/**
 * What a window begins with.
 *
 * @param own the flyer's own logbook, null where it is not open
 * @param refused why it is not open, null where it is still to be made
 */
record Outset(@Nullable Own own, @Nullable UserError refused) {

    /** The flyer's own logbook, and what its Hall shows first. */
    record Own(OpenedBook opened, FirstReading today) {

        Own(OpenedBook opened) {
            this(opened, new FirstReading(opened.book().hall()));
        }
    }

    /** No logbook yet. */
    static final Outset NOTHING = new Outset(null, null);

    /** Opens the flyer's own logbook where there is one. */
    static Outset of(Shelf shelf) {
        if (!shelf.ownIsThere()) {
            return NOTHING;
        }
        try {
            return new Outset(new Own(shelf.openOwn()), null);
        } catch (UserError e) {
            return new Outset(null, e);
        }
    }

    /** Reads today's session, while the window is being built on its own thread. */
    void readToday() {
        if (own != null) {
            try {
                own.today().get();
            } catch (RuntimeException unreadable) {
                // the Hall reads it again, and shows what is wrong
            }
        }
    }
}
