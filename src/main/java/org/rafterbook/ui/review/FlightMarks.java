package org.rafterbook.ui.review;

import org.rafterbook.ui.chart.FlightMark;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.work.ReviewPoint;

/** A flight as its version's mark. */
final class FlightMarks {

    private FlightMarks() {}

    static VersionMark of(int versionNumber) {
        return VersionMark.dealt(versionNumber - 1);
    }

    /** The flight at a place of a chart with its words; pale where others are in front. */
    static FlightMark<String> at(double x, double seconds, ReviewPoint point, boolean inFront, String says) {
        return new FlightMark<>(
                point.flight().id(),
                x,
                seconds,
                of(point.versionNumber()),
                point.atLeast(),
                point.flight().motor().isPartial(),
                !point.flight().counts(),
                !inFront,
                says);
    }

    /** The time a flight is drawn at, s: the one that counts, scaled to the full motor. */
    static double seconds(ReviewPoint point) {
        return point.flight().fullDurationS();
    }
}
