package org.rafterbook.ui.hall;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Version;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.VersionMark;

/** The mark of a version beside its name. */
final class VersionSign extends Drawing {

    private @Nullable Version version;
    private MarkStyle style = MarkStyle.CLEAN;

    VersionSign() {
        wish(1.2, 1.2);
    }

    VersionSign show(@Nullable Version newVersion, MarkStyle newStyle) {
        version = newVersion;
        style = newStyle;
        repaint();
        return this;
    }

    @Override
    protected void paint(Pen pen) {
        if (version != null) {
            VersionMark mark = VersionMark.dealt(version.number() - 1);
            pen.mark(mark, style, pen.width() / 2, pen.height() / 2, 9);
        }
    }
}
