package org.rafterbook.work;

/** How two values of a setting could be compared. */
public enum Comparison {
    /** Flights of one day, alike in everything else. */
    SAME_DAY("same day"),
    /** No day holds both, with all else equal. */
    ACROSS_DAYS("across days"),
    /** Another setting always changed with it. */
    MOVED_TOGETHER("moved together"),
    /** One of the two has no clean flight. */
    ONE_SIDE_UNFLOWN("one side unflown");

    private final String word;

    Comparison(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
