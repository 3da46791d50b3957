package org.rafterbook.ui.hall;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.review.Outcome;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.Layer;
import org.rafterbook.ui.chart.Rule;
import org.rafterbook.ui.chart.RuleLayers;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.work.Evening;

/** The clock of the evening: each flight from launch to landing, under its version's mark. */
final class EveningRule {

    private static final int QUARTER = 15;
    private static final int AHEAD = 5 * QUARTER;

    private final ZoneId zone;
    private final Rule rule;

    EveningRule(ZoneId zone) {
        this.zone = zone;
        rule = new Rule("The clock of the evening", Graduation.clock(zone));
    }

    Rule node() {
        return rule;
    }

    void show(Evening evening, Instant now) {
        Instant first = now;
        List<Layer> layers = new ArrayList<>();
        for (FlightLine line : evening.flights()) {
            Instant launched = line.flight().launchedAt();
            if (launched != null) {
                first = launched.isBefore(first) ? launched : first;
                layers.add(flight(evening, line, launched, now));
            }
        }
        layers.add(RuleLayers.now(now.getEpochSecond(), "now"));
        long from = quarter(first.minus(Duration.ofMinutes(QUARTER)));
        long to = quarter(now) + 60L * AHEAD;
        rule.show(from, to, layers);
        rule.setAccessibleText("Clock of the evening, " + evening.flights().size() + " flights");
    }

    private static Layer flight(Evening evening, FlightLine line, Instant launched, Instant now) {
        Double duration = line.flight().durationS();
        double end = duration != null
                ? launched.getEpochSecond() + duration
                : line.flight().ending() == null ? now.getEpochSecond() : launched.getEpochSecond();
        boolean atLeast = duration != null && evening.outcome(line.flight()).kind() == Outcome.Kind.AT_LEAST;
        return RuleLayers.flight(
                launched.getEpochSecond(),
                Math.max(end, launched.getEpochSecond()),
                VersionMark.dealt(line.version() == null ? 0 : line.version().number() - 1),
                atLeast);
    }

    private long quarter(Instant at) {
        return at.atZone(zone).truncatedTo(ChronoUnit.HOURS).toEpochSecond()
                + at.atZone(zone).getMinute() / QUARTER * QUARTER * 60L;
    }
}
