package org.rafterbook.ui.season;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.rafterbook.work.Season;

/**
 * Where the flights of a season stand along its days: each model's flights of an evening follow each other from that day
 * on, in less room than there is to the next evening.
 *
 * @param places in epoch days, keyed by flight
 * @param low first day shown
 * @param high last day shown
 */
record DayPlaces(Map<String, Double> places, double low, double high) {

    private static final double MOST_DAYS = 3.4;
    private static final double SHARE_OF_GAP = 0.5;
    private static final double STEP_DAYS = 0.4;
    private static final int BEFORE = 4;
    private static final int AFTER = 14;
    private static final int LEAST_DAYS = 45;

    /** How many days after the last flight today is still shown. */
    private static final int STILL_THIS_SEASON = 60;

    static DayPlaces of(Season season, LocalDate today) {
        TreeSet<Long> days = new TreeSet<>();
        Map<String, List<Season.Flown>> groups = new LinkedHashMap<>();
        for (Season.Flown flown : season.flights()) {
            days.add(flown.date().toEpochDay());
            groups.computeIfAbsent(flown.sessionId() + " " + flown.modelId(), g -> new java.util.ArrayList<>())
                    .add(flown);
        }
        Map<String, Double> places = new HashMap<>();
        groups.values().forEach(own -> {
            long day = own.get(0).date().toEpochDay();
            Long next = days.higher(day);
            double room = next == null ? MOST_DAYS : Math.min(MOST_DAYS, (next - day) * SHARE_OF_GAP);
            double step = Math.min(STEP_DAYS, room / own.size());
            for (int i = 0; i < own.size(); i++) {
                places.put(own.get(i).flightId(), day + i * step);
            }
        });
        double now = today.toEpochDay();
        double first = days.isEmpty() ? now : days.first();
        double last = days.isEmpty() ? now : days.last();
        double high = now > last && now - last <= STILL_THIS_SEASON ? now : last;
        double low = first - BEFORE;
        return new DayPlaces(places, low, Math.max(high + AFTER, low + LEAST_DAYS));
    }

    double of(Season.Flown flown) {
        return places.getOrDefault(flown.flightId(), (double) flown.date().toEpochDay());
    }
}
