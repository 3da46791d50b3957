package org.rafterbook.work;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Unit;

/** The answer of {@code season}: what the Season screen shows, units in the keys, numbers in full precision. */
public final class SeasonDocument {

    private SeasonDocument() {}

    /** The document of one of the seasons there are. */
    public static Map<String, @Nullable Object> of(SeasonDesk.Seasons seasons) {
        Season season = seasons.season();
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("season", seasons.year());
        document.put("seasons", seasons.years());
        document.put("flights", season.flights().size());
        document.put(
                "flights_at_least",
                season.flights().stream().filter(Season.Flown::atLeast).count());
        document.put("aloft_s", season.aloftS());
        document.put("motors", season.motors());
        document.put("motors_broken", season.broken());
        document.put("venues", season.venues());
        document.put(
                "models", season.byModel().stream().map(m -> model(season, m)).toList());
        document.put(
                "sessions",
                season.evenings().stream().map(SeasonDocument::session).toList());
        document.put("bests", season.bests().stream().map(SeasonDocument::best).toList());
        if (season.flights().isEmpty()) {
            document.put("missing", "No flights yet.");
        }
        return document;
    }

    private static Map<String, @Nullable Object> model(Season season, Season.ModelSeason model) {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("model", model.modelId() == null ? null : model.model());
        entry.put("flights", model.flights().size());
        entry.put("versions_flown", model.versions());
        entry.put("sessions", model.sessions());
        entry.put(
                "versions",
                model.modelId() == null
                        ? List.of()
                        : season.versions(model.modelId()).stream()
                                .map(SeasonDocument::version)
                                .toList());
        if (model.modelId() == null) {
            entry.put("missing", "These flights have no model.");
        }
        return entry;
    }

    private static Map<String, @Nullable Object> version(Season.VersionSeason version) {
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("version", version.version());
        entry.put("changes", version.changes());
        entry.put("first_flown", version.first().toString());
        entry.put("last_flown", version.last().toString());
        entry.put("flights", version.flights());
        entry.put("sessions", version.sessions());
        margin(entry, version.margin(), version.marginBand());
        return entry;
    }

    private static Map<String, @Nullable Object> session(Season.Evening evening) {
        Season.Visit visit = evening.visit();
        Double kelvin = visit.temperatureK();
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("session_date", visit.date().toString());
        entry.put("venue", visit.venue().isEmpty() ? null : visit.venue());
        entry.put("ceiling_m", visit.ceilingM());
        entry.put("temperature_c", kelvin == null ? null : (Double) Unit.CELSIUS.fromSi(kelvin));
        entry.put("goal", visit.goal());
        entry.put("flights", evening.flights());
        entry.put("best_s", evening.bestS());
        entry.put("changes", evening.changes());
        entry.put("motors_broken", visit.broken());
        if (evening.bestS() == null) {
            entry.put("missing", "No clean flight with a full motor.");
        }
        return entry;
    }

    private static Map<String, @Nullable Object> best(Season.Best best) {
        Season.Flown flight = best.flight();
        Map<String, @Nullable Object> entry = new LinkedHashMap<>();
        entry.put("model", flight.model());
        entry.put("version", flight.version());
        entry.put("session_date", flight.date().toString());
        entry.put("duration_s", flight.durationS());
        entry.put("partial_fraction", flight.fraction());
        entry.put("ceiling_m", best.ceilingM());
        entry.put("class", best.className());
        margin(entry, flight.margin(), flight.marginBand());
        return entry;
    }

    private static void margin(Map<String, @Nullable Object> entry, @Nullable Double fraction, @Nullable Double band) {
        entry.put("margin_percent", fraction == null ? null : (Double) (fraction * 100));
        entry.put("band_percent", fraction == null || band == null ? null : (Double) (band * 100));
        if (fraction == null) {
            entry.put("missing", "The margin of this version is not known.");
        }
    }
}
