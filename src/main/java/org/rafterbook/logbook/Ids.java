package org.rafterbook.logbook;

import java.security.SecureRandom;
import java.util.UUID;

/**
 * Makes UUIDs of version 7 (RFC 9562, section 5.7): milliseconds, a counter of 12 bits, 62 random bits. Within one
 * process each is greater as text than those before it, also when the clock stands still or steps back.
 */
final class Ids {

    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int COUNTER_BITS = 12;

    /** Milliseconds and counter of the last id; counting on from it carries into the milliseconds. */
    private static long last;

    private Ids() {}

    static String next() {
        return at(System.currentTimeMillis());
    }

    static synchronized String at(long millis) {
        last = Math.max(last + 1, millis << COUNTER_BITS);
        long head = (last >>> COUNTER_BITS) << 16 | 0x7000 | (last & 0xFFF);
        long tail = RANDOM.nextLong() >>> 2 | 0x8000_0000_0000_0000L;
        return new UUID(head, tail).toString();
    }
}
