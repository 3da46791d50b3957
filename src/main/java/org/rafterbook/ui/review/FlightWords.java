package org.rafterbook.ui.review;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.ReviewPoint;

/** One flight in words. */
final class FlightWords {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private FlightWords() {}

    /** When it flew, such as "9 Dec, 19:44". */
    static String when(ReviewPoint point) {
        String day = DAY.format(point.flight().sessionDate());
        return point.launchedAt() == null
                ? day + ", flight " + point.flight().orderInSession()
                : day + ", " + CLOCK.format(point.launchedAt().atZone(point.zone()));
    }

    /** Its time, with "at least" as a sign where it was cut short. */
    static String time(ReviewPoint point) {
        double seconds = point.flight().durationS();
        return point.atLeast() ? ClockTime.atLeast(seconds) : ClockTime.minutesSeconds(seconds);
    }

    /** All of it in a line: when, version, time, margin, why it is taken as it is. */
    static String line(ReviewPoint point) {
        Double margin = point.flight().marginPercent();
        String reason = point.flight().outcome().reason();
        return when(point) + ", " + point.version() + ", " + time(point)
                + (margin == null ? "" : ", margin " + QuantityFormat.rounded(margin, 1) + " %")
                + (point.flight().motor().isPartial() ? ", partial motor" : "")
                + (point.waiting() ? ", of the open trial" : "")
                + (reason == null ? "" : ", " + reason);
    }
}
