package org.rafterbook.units;

/** Numbers of things in words: "1 flight", "2 flights", "3 batches". */
public final class Counted {

    private Counted() {}

    /** The number and the thing, in the plural where there is not exactly one. */
    public static String of(long n, String thing) {
        return n + " " + (n == 1 ? thing : thing.endsWith("ch") ? thing + "es" : thing + "s");
    }
}
