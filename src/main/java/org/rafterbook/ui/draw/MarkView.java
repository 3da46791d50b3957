package org.rafterbook.ui.draw;

import javafx.scene.AccessibleRole;

/** A version's mark beside its name, in tables and lists. */
public final class MarkView extends Drawing {

    private static final double FLIGHT = 9;
    private static final double TALL = 2.0;
    private VersionMark mark;
    private MarkStyle style;
    private double size = FLIGHT;

    public MarkView(VersionMark mark, MarkStyle style) {
        this.mark = mark;
        this.style = style;
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        wishFor();
        describe();
    }

    /** A filled mark. */
    public MarkView(VersionMark mark) {
        this(mark, MarkStyle.CLEAN);
    }

    /** Draws it larger or smaller; 9 is the size of a flight. */
    public MarkView size(double design) {
        size = design;
        wishFor();
        repaint();
        return this;
    }

    /** Shows another mark. */
    public void show(VersionMark newMark, MarkStyle newStyle) {
        mark = newMark;
        style = newStyle;
        describe();
        wishFor();
        repaint();
    }

    private void wishFor() {
        double across = (size + 4) / 12.5;
        wish(across, style == MarkStyle.AT_LEAST ? across * TALL : across);
    }

    private void describe() {
        setAccessibleText(
                switch (style) {
                    case CLEAN, HALF -> mark.shape().word();
                    case AT_LEAST -> "open " + mark.shape().word() + ", at least";
                    case OPEN -> "open " + mark.shape().word();
                });
    }

    @Override
    protected void paint(Pen pen) {
        double y = style == MarkStyle.AT_LEAST ? pen.height() - pen.px(size / 2 + 4) : pen.height() / 2;
        pen.mark(mark, style, pen.width() / 2, y, size);
    }
}
