package org.rafterbook.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.review.OutcomeRule;

/** The season's memory, read-only: every model's flights, versions and sessions. */
public final class SeasonDesk {

    private final Logbook logbook;
    private final Margins margins;

    SeasonDesk(Logbook logbook, Margins margins) {
        this.logbook = logbook;
        this.margins = margins;
    }

    /**
     * One flight of the season.
     *
     * @param versionNumber counted from 1
     * @param atLeast true where the time is only a lower bound
     */
    public record Flown(
            String flightId,
            LocalDate date,
            String venue,
            String model,
            String version,
            int versionNumber,
            @Nullable Double durationS,
            boolean atLeast,
            @Nullable Double margin,
            double partialFraction,
            @Nullable String notes) {}

    /**
     * A model's season.
     *
     * @param bestS longest clean flight on a full motor, s; diary only
     */
    public record ModelSeason(
            String model,
            int flights,
            int versions,
            int sessions,
            @Nullable Double bestS) {}

    /** One visit to a venue. */
    public record Evening(
            LocalDate date,
            String venue,
            int flights,
            @Nullable Double bestS,
            int changes,
            @Nullable String goal) {}

    /** All of it, newest evening first, flights in flying order. */
    public record Season(List<ModelSeason> models, List<Evening> evenings, List<Flown> flights) {}

    public Season load() {
        List<FlightLine> lines = logbook.read(r -> r.flights().all());
        List<Flown> flown = lines.stream().map(this::flown).toList();
        Map<String, List<Flown>> byModel = new LinkedHashMap<>();
        flown.forEach(
                f -> byModel.computeIfAbsent(f.model(), m -> new ArrayList<>()).add(f));
        List<ModelSeason> models = new ArrayList<>();
        byModel.forEach((model, flights) -> models.add(new ModelSeason(
                model,
                flights.size(),
                (int) flights.stream().map(Flown::version).distinct().count(),
                (int) flights.stream().map(f -> f.date() + f.venue()).distinct().count(),
                best(flights))));
        return new Season(models, evenings(lines, flown), flown);
    }

    private Flown flown(FlightLine line) {
        Flight flight = line.flight();
        Model model = line.model();
        Version version = line.version();
        Venue venue = line.venue();
        MarginAnswer margin = margins.ofFlight(line);
        return new Flown(
                flight.id(),
                line.session().localDate(),
                venue == null ? "" : venue.name(),
                model == null ? "no model" : model.name(),
                model == null || version == null ? "" : model.letter() + version.number(),
                version == null ? 0 : version.number(),
                flight.durationS(),
                atLeast(flight),
                margin == null ? null : margin.margin(),
                flight.partialFraction(),
                flight.notes());
    }

    /** Touched, mid-air and hung flights are lower bounds unless the flyer said the ending cost no time. */
    static boolean atLeast(Flight flight) {
        Double duration = flight.durationS();
        return duration != null
                && OutcomeRule.of(duration, flight.ending(), flight.cutShort())
                                .outcome()
                                .kind()
                        == org.rafterbook.review.Outcome.Kind.AT_LEAST;
    }

    private static @Nullable Double best(List<Flown> flights) {
        return flights.stream()
                .filter(f -> !f.atLeast() && f.partialFraction() == 1 && f.durationS() != null)
                .map(Flown::durationS)
                .max(Double::compare)
                .orElse(null);
    }

    private static List<Evening> evenings(List<FlightLine> lines, List<Flown> flown) {
        Map<String, List<Integer>> bySession = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            bySession
                    .computeIfAbsent(lines.get(i).session().id(), s -> new ArrayList<>())
                    .add(i);
        }
        List<Evening> evenings = new ArrayList<>();
        for (List<Integer> ofSession : bySession.values()) {
            Session session = lines.get(ofSession.get(0)).session();
            List<Flown> flights = ofSession.stream().map(flown::get).toList();
            Map<String, String> standing = new HashMap<>();
            int changes = 0;
            for (int index : ofSession) {
                Version now = lines.get(index).version();
                if (now != null) {
                    String before = standing.put(now.modelId(), now.id());
                    changes += before == null || before.equals(now.id()) ? 0 : 1;
                }
            }
            evenings.add(new Evening(
                    session.localDate(),
                    flights.get(0).venue(),
                    flights.size(),
                    best(flights),
                    changes,
                    session.goal()));
        }
        evenings.sort(java.util.Comparator.comparing(Evening::date).reversed());
        return evenings;
    }
}
