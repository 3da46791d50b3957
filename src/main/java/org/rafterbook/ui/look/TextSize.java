package org.rafterbook.ui.look;

/** The size of all text and, since every size is in em, of everything else. */
public enum TextSize {
    NORMAL(100),
    LARGER(125),
    LARGEST(150);

    /** Pixels of 1 em at 100 %. */
    public static final double EM_PX = 12.5;

    private final int percent;

    TextSize(int percent) {
        this.percent = percent;
    }

    public int percent() {
        return percent;
    }

    /** Pixels of 1 em. */
    public double emPx() {
        return EM_PX * percent / 100;
    }

    /** The size that Ctrl+Shift+S turns to from this one. */
    public TextSize next() {
        return values()[(ordinal() + 1) % values().length];
    }

    String styleClass() {
        return "text-" + percent;
    }

    public String label() {
        return percent + " %";
    }
}
