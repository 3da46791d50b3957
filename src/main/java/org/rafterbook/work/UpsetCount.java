package org.rafterbook.work;

/**
 * Upsets recovered from, of those flown into.
 *
 * @param recovered flights that recovered
 * @param upset flights on which an upset was noted
 */
public record UpsetCount(int recovered, int upset) {

    /** The count in words, such as "3 of 4"; a dash where no upset was noted. */
    public String words() {
        return upset == 0 ? "–" : recovered + " of " + upset;
    }
}
