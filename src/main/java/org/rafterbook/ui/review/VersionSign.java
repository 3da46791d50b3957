package org.rafterbook.ui.review;

import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;

/** A version's mark beside its name. */
final class VersionSign extends Drawing {

    private final int versionNumber;

    VersionSign(int versionNumber) {
        this.versionNumber = versionNumber;
        wish(1, 1.2);
    }

    @Override
    protected void paint(Pen pen) {
        pen.mark(FlightMarks.of(versionNumber), MarkStyle.CLEAN, pen.width() / 2, pen.height() / 2, FlightMarks.SIZE);
    }
}
