package org.rafterbook.exchange;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Moments as tables write them: ISO, local, with seconds, and milliseconds only where there are some. */
final class Moments {

    private static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT);
    private static final DateTimeFormatter MILLIS =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS", Locale.ROOT);

    private Moments() {}

    static String text(LocalDateTime at) {
        return (at.getNano() < 1_000_000 ? SECONDS : MILLIS).format(at);
    }
}
