package org.rafterbook.ui.review;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.rafterbook.ui.chart.Axis;
import org.rafterbook.ui.chart.FlightMark;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.Tick;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewPoint;
import org.rafterbook.work.ReviewRigging;

/**
 * Where everything of the history strip lies, in flights from the left; sessions are parted by one empty place.
 *
 * @param flights the flights with a time, in flying order
 * @param places the place of each flight
 * @param days the sessions
 * @param turns the riggings at which the version changed between two flights
 * @param width places in all
 * @param times the upright axis
 * @param marks the flights as marks, all in front
 * @param words each flight in a line, by its id
 */
@SuppressWarnings("ArrayRecordComponent") // one plan to be drawn, never compared
record StripPlan(
        List<ReviewPoint> flights,
        double[] places,
        List<Day> days,
        List<Turn> turns,
        double width,
        Axis times,
        List<FlightMark<String>> marks,
        Map<String, String> words) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    /** Room between two graduations, and for a letter of a date with some air, in pixels of the design. */
    private static final double LEAST_PX = 3;

    private static final double LETTER_PX = 8;

    /** One session from its first to its last place. */
    record Day(LocalDate date, double from, double to) {}

    /**
     * A rigging between two flights.
     *
     * @param place just before its first flight
     * @param label version and change, short and long
     * @param back true where the model went back to a version
     * @param repeated true for a return on an evening that named the version already
     */
    record Turn(double place, String version, String label, boolean back, boolean trial, boolean repeated) {}

    static StripPlan of(ModelReview answer) {
        List<ReviewPoint> flights =
                answer.points().stream().filter(ReviewPoint::timed).toList();
        double[] places = new double[flights.size()];
        List<Day> days = new ArrayList<>();
        List<Turn> turns = new ArrayList<>();
        List<String> named = new ArrayList<>();
        Map<String, ReviewRigging> riggings = new HashMap<>();
        answer.riggings().forEach(r -> riggings.put(r.id(), r));
        Map<String, String> words = new HashMap<>();
        double place = 0.5;
        double from = 0;
        for (int i = 0; i < flights.size(); i++) {
            ReviewPoint now = flights.get(i);
            ReviewPoint before = i == 0 ? null : flights.get(i - 1);
            if (before != null && !sameSession(before, now)) {
                days.add(new Day(before.flight().sessionDate(), from, place - 0.5));
                from = place - 0.5;
                place += 0.6;
                named.clear();
            }
            places[i] = place;
            words.put(now.flight().id(), FlightWords.line(now));
            if (before == null
                    || !before.flight().riggingId().equals(now.flight().riggingId())) {
                ReviewRigging rigging = riggings.get(now.flight().riggingId());
                if (rigging != null) {
                    boolean versionStays = before != null && before.versionNumber() == now.versionNumber();
                    if (!versionStays) {
                        turns.add(turn(rigging, place - 0.5, before == null, named.contains(rigging.version())));
                    }
                    named.add(rigging.version());
                }
            }
            place += 1;
        }
        if (!flights.isEmpty()) {
            days.add(new Day(flights.get(flights.size() - 1).flight().sessionDate(), from, place - 0.5));
        }
        Axis times = TimeAxis.of(flights.stream()
                .filter(p -> p.flight().counts())
                .map(FlightMarks::seconds)
                .toList());
        List<FlightMark<String>> marks = new ArrayList<>();
        for (int i = 0; i < places.length; i++) {
            ReviewPoint point = flights.get(i);
            String says = words.getOrDefault(point.flight().id(), "");
            marks.add(FlightMarks.at(places[i], FlightMarks.seconds(point), point, true, says)
                    .within(times.low(), times.high()));
        }
        return new StripPlan(flights, places, days, turns, Math.max(place - 0.5, 1), times, marks, words);
    }

    private static Turn turn(ReviewRigging rigging, double place, boolean first, boolean repeated) {
        String label = rigging.version();
        if (rigging.trial()) {
            label = "trial " + label;
        } else if (!rigging.back() && !first && !rigging.changes().isEmpty()) {
            String what = rigging.changes().get(0);
            int was = what.indexOf(", was");
            label += " " + (was < 0 ? what : what.substring(0, was));
            if (rigging.changes().size() > 1) {
                label += " and " + (rigging.changes().size() - 1) + " more";
            }
        }
        return new Turn(place, rigging.version(), label, rigging.back(), rigging.trial(), repeated);
    }

    private static boolean sameSession(ReviewPoint a, ReviewPoint b) {
        return a.flight().sessionId().equals(b.flight().sessionId());
    }

    /** A graduation for each flight, a long one where a session begins, its date where there is room for it. */
    Graduation graduation() {
        return (low, high, pxPerUnit) -> {
            List<Tick> ticks = new ArrayList<>();
            if (pxPerUnit > LEAST_PX) {
                for (double place : places) {
                    ticks.add(new Tick(place, Tick.Level.ONE, ""));
                }
            }
            double free = Double.NEGATIVE_INFINITY;
            int year = 0;
            for (Day day : days) {
                ticks.add(new Tick(day.from(), Tick.Level.TEN, ""));
                String date = (day.date().getYear() == year ? DAY : YEAR).format(day.date());
                double middle = (day.from() + day.to()) / 2;
                double half = LETTER_PX * date.length() / 2 / pxPerUnit;
                if (middle - half > free) {
                    ticks.add(new Tick(middle, Tick.Level.ONE, date));
                    free = middle + half;
                    year = day.date().getYear();
                }
            }
            return ticks;
        };
    }
}
