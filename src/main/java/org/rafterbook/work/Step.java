package org.rafterbook.work;

/** How far a job is: {@code done} of {@code total} things named {@code of}. */
public record Step(long done, long total, String of) {

    /** What the things are called where only their share is known, with 100 in all. */
    public static final String PERCENT = "%";

    /** Share done from 0 to 1; 0 where the total is not known. */
    public double fraction() {
        return total <= 0 ? 0 : Math.min(1, Math.max(0, (double) done / total));
    }

    /** The step in words, such as "128 of 200 versions" or "79 %". */
    public String sentence() {
        if (of.equals(PERCENT)) {
            return done + " " + of;
        }
        return total <= 0 ? done + " " + of : done + " of " + total + " " + of;
    }
}
