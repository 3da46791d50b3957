package org.rafterbook.ui.hall;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.review.Outcome;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.look.Token;
import org.rafterbook.work.Evening;

/** The clock of the evening: each flight from launch to landing, under its version's mark. */
final class EveningRule extends Drawing {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final int QUARTER = 15;
    private static final double EDGE = 26;

    private final ZoneId zone;
    private @Nullable Evening evening;
    private Instant now = Instant.EPOCH;

    EveningRule(ZoneId zone) {
        this.zone = zone;
        wish(-1, 3.68);
        setMinWidth(0);
    }

    void show(Evening newEvening, Instant newNow) {
        evening = newEvening;
        now = newNow;
        setAccessibleText("Clock of the evening, " + newEvening.flights().size() + " flights");
        repaint();
    }

    @Override
    protected void paint(Pen pen) {
        if (evening == null) {
            return;
        }
        Instant first = now;
        for (FlightLine line : evening.flights()) {
            Instant launched = line.flight().launchedAt();
            if (launched != null && launched.isBefore(first)) {
                first = launched;
            }
        }
        ZonedDateTime from = quarter(first.minus(Duration.ofMinutes(QUARTER)));
        ZonedDateTime to = quarter(now).plusMinutes(5L * QUARTER);
        double left = pen.px(EDGE);
        double scale = (pen.width() - 2 * left)
                / Math.max(1, Duration.between(from, to).toSeconds());
        double foot = pen.height() - 1;
        pen.stroke(Token.EDGE, 1).line(0, foot, pen.width(), foot);
        long minutes = Duration.between(from, to).toMinutes();
        int every = minutes > 400 ? 4 * QUARTER : minutes > 220 ? 2 * QUARTER : QUARTER;
        for (int minute = 0; minute <= minutes; minute += 1) {
            ZonedDateTime at = from.plusMinutes(minute);
            double x = left + minute * 60 * scale;
            boolean named = at.getMinute() % every == 0 && (every < 60 || at.getMinute() == 0);
            if (named) {
                pen.stroke(Token.EDGE, 1).line(x, foot - pen.px(12), x, foot);
                pen.text(CLOCK.format(at), x, foot - pen.px(13), TextRole.MICRO, Token.INK_2, HPos.CENTER, VPos.BOTTOM);
            } else if (minute % 5 == 0 || every == QUARTER) {
                pen.stroke(Token.EDGE, 1).line(x, foot - pen.px(minute % 5 == 0 ? 8 : 5), x, foot);
            }
        }
        for (FlightLine line : evening.flights()) {
            flight(pen, evening, line, from.toInstant(), left, scale);
        }
        double here = left + Duration.between(from.toInstant(), now).toSeconds() * scale;
        pen.stroke(Token.ACCENT, 2).line(here, 0, here, foot);
        pen.text("now", here + pen.px(6), pen.px(4), TextRole.SMALL_BOLD, Token.ACCENT, HPos.LEFT, VPos.TOP);
    }

    private void flight(Pen pen, Evening shown, FlightLine line, Instant from, double left, double scale) {
        Instant launched = line.flight().launchedAt();
        if (launched == null) {
            return;
        }
        Double duration = line.flight().durationS();
        double seconds = duration == null
                ? line.flight().ending() == null
                        ? Math.max(0, Duration.between(launched, now).toSeconds())
                        : 0
                : duration;
        double x = left + Duration.between(from, launched).toSeconds() * scale;
        double y = pen.px(11);
        VersionMark mark =
                VersionMark.dealt(line.version() == null ? 0 : line.version().number() - 1);
        boolean atLeast = duration != null && shown.outcome(line.flight()).kind() == Outcome.Kind.AT_LEAST;
        pen.area(x, y - pen.px(2.5), Math.max(pen.px(2), seconds * scale), pen.px(5), mark.token());
        pen.mark(mark, atLeast ? MarkStyle.AT_LEAST : MarkStyle.CLEAN, x, y, 8);
    }

    private ZonedDateTime quarter(Instant at) {
        ZonedDateTime hour = at.atZone(zone).truncatedTo(ChronoUnit.HOURS);
        return hour.plusMinutes(at.atZone(zone).getMinute() / QUARTER * QUARTER);
    }
}
