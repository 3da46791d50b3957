package org.rafterbook.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Every flight of a stretch of time with what it was flown on. All else, each model's season, the evenings, the bests,
 * follows from the flights.
 *
 * @param flights in flying order
 * @param visits the sessions of these flights, keyed by id
 * @param models the models of these flights, keyed by id
 */
public record Season(List<Flown> flights, Map<String, Visit> visits, Map<String, Flyer> models) {

    private static final int FIRST_MONTH = 7;

    public Season {
        flights = List.copyOf(flights);
        visits = Map.copyOf(visits);
        models = Map.copyOf(models);
    }

    /**
     * One flight.
     *
     * @param modelId null for a flight without a model
     * @param version its version's name, empty where it has no model
     * @param versionNumber counted from 1, 0 where it has no model
     * @param turn how the model was changed before it, null where it flew as before
     * @param durationS s; null for a flight that has no time
     * @param atLeast true where the time is only a lower bound
     * @param counts false where the flight says nothing about the model
     * @param margin stability margin, fraction of the mean chord
     * @param marginBand what the margin is uncertain by on its own, fraction of the mean chord
     * @param torqueNm torque at launch, N m
     * @param fraction part of a full motor, 1 for a full one
     */
    public record Flown(
            String flightId,
            String sessionId,
            LocalDate date,
            String venue,
            @Nullable String modelId,
            String model,
            String version,
            int versionNumber,
            @Nullable Turn turn,
            @Nullable Double durationS,
            boolean atLeast,
            boolean counts,
            @Nullable Double margin,
            @Nullable Double marginBand,
            @Nullable Double torqueNm,
            @Nullable String motorId,
            double fraction,
            @Nullable String notes) {

        /** Whether its time may stand as a best: the time itself, and one that counts. */
        public boolean clean() {
            return durationS != null && counts && !atLeast;
        }

        /** Seconds the full motor would have given; 0 without a time. */
        public double fullS() {
            return durationS == null ? 0 : durationS / fraction;
        }
    }

    /**
     * The rigging before a flight, where it changed the model.
     *
     * @param changes in words such as "wing edge 146 mm, was 149"; empty at the model's first flight
     * @param back true where the version had flown before
     */
    public record Turn(List<String> changes, boolean back, boolean trial) {
        public Turn {
            changes = List.copyOf(changes);
        }
    }

    /**
     * One session.
     *
     * @param ceilingM height of the hall, m
     * @param broken motors that broke while being wound
     */
    public record Visit(
            LocalDate date,
            String venue,
            @Nullable Double ceilingM,
            @Nullable Double temperatureK,
            @Nullable String goal,
            int broken) {}

    /**
     * A model as it flew last.
     *
     * @param wings its wings from the uppermost down, none where it has no airframe sheet
     * @param className its class, null where none was said
     */
    public record Flyer(
            String name, List<Wing> wings, @Nullable String className) {
        public Flyer {
            wings = List.copyOf(wings);
        }
    }

    /** Span and widest chord of a wing, m. */
    public record Wing(double spanM, double chordM) {}

    /** A model's flights in flying order. */
    public record ModelSeason(
            @Nullable String modelId, String model, List<Flown> flights, int versions, int sessions) {}

    /** One visit with its flights. */
    public record Evening(
            String sessionId,
            Visit visit,
            int flights,
            @Nullable Double bestS,
            int changes) {}

    /** The longest clean flight of a model with this part of a motor under this ceiling: diary, never evidence. */
    public record Best(
            Flown flight,
            @Nullable Double ceilingM,
            @Nullable String className) {}

    /**
     * A version of a model that flew.
     *
     * @param changes what made it, at its first rigging in this season
     * @param margin of its last flight
     * @param marginBand what that is uncertain by on its own
     */
    public record VersionSeason(
            String version,
            int number,
            List<String> changes,
            LocalDate first,
            LocalDate last,
            int flights,
            int sessions,
            @Nullable Double margin,
            @Nullable Double marginBand) {}

    /** The year in which the season of a day begins: in July, so that a winter is one season. */
    public static int year(LocalDate day) {
        return day.getMonthValue() >= FIRST_MONTH ? day.getYear() : day.getYear() - 1;
    }

    /** Each model's season, the model flown most first. */
    public List<ModelSeason> byModel() {
        Map<String, List<Flown>> byModel = new LinkedHashMap<>();
        flights.forEach(f -> byModel.computeIfAbsent(String.valueOf(f.modelId()), m -> new ArrayList<>())
                .add(f));
        return byModel.values().stream()
                .map(own -> new ModelSeason(
                        own.get(0).modelId(),
                        own.get(0).model(),
                        own,
                        (int) own.stream()
                                .map(Flown::versionNumber)
                                .filter(n -> n > 0)
                                .distinct()
                                .count(),
                        (int) own.stream().map(Flown::sessionId).distinct().count()))
                .sorted(Comparator.comparingInt((ModelSeason m) -> -m.flights().size()))
                .toList();
    }

    /** The evenings, the newest first. */
    public List<Evening> evenings() {
        Map<String, List<Flown>> bySession = new LinkedHashMap<>();
        flights.forEach(f ->
                bySession.computeIfAbsent(f.sessionId(), s -> new ArrayList<>()).add(f));
        List<Evening> evenings = new ArrayList<>();
        bySession.forEach((id, own) -> evenings.add(new Evening(
                id,
                Objects.requireNonNull(visits.get(id)),
                own.size(),
                own.stream()
                        .filter(f -> f.clean() && f.fraction() == 1)
                        .map(Flown::durationS)
                        .filter(Objects::nonNull)
                        .max(Double::compare)
                        .orElse(null),
                changes(own))));
        evenings.sort(Comparator.comparing((Evening e) -> e.visit().date()).reversed());
        return evenings;
    }

    /** How often a model's version changed within the evening. */
    private static int changes(List<Flown> evening) {
        Map<String, Integer> standing = new HashMap<>();
        int changes = 0;
        for (Flown flown : evening) {
            Integer before = flown.modelId() == null ? null : standing.put(flown.modelId(), flown.versionNumber());
            changes += before == null || before == flown.versionNumber() ? 0 : 1;
        }
        return changes;
    }

    /** The bests by model, part of a motor, ceiling: full motors first, the longest first. */
    public List<Best> bests() {
        record Category(
                String model, double fraction, @Nullable Double ceilingM) {}
        Map<Category, Best> bests = new HashMap<>();
        for (Flown flown : flights) {
            if (flown.clean() && flown.modelId() != null) {
                Visit visit = Objects.requireNonNull(visits.get(flown.sessionId()));
                Flyer flyer = models.get(flown.modelId());
                Best best = new Best(flown, visit.ceilingM(), flyer == null ? null : flyer.className());
                bests.merge(
                        new Category(flown.modelId(), flown.fraction(), visit.ceilingM()),
                        best,
                        (a, b) -> b.flight().fullS() > a.flight().fullS() ? b : a);
            }
        }
        return bests.values().stream()
                .sorted(Comparator.comparingDouble((Best b) -> -b.flight().fraction())
                        .thenComparingDouble(b -> -b.flight().fullS()))
                .toList();
    }

    /** The versions of a model that flew, the newest first. */
    public List<VersionSeason> versions(String modelId) {
        Map<Integer, List<Flown>> byVersion = new LinkedHashMap<>();
        flights.stream()
                .filter(f -> modelId.equals(f.modelId()))
                .forEach(f -> byVersion
                        .computeIfAbsent(f.versionNumber(), v -> new ArrayList<>())
                        .add(f));
        List<VersionSeason> versions = new ArrayList<>();
        byVersion.forEach((number, own) -> {
            Flown first = own.get(0);
            Flown last = own.get(own.size() - 1);
            versions.add(new VersionSeason(
                    first.version(),
                    number,
                    first.turn() == null ? List.of() : first.turn().changes(),
                    first.date(),
                    last.date(),
                    own.size(),
                    (int) own.stream().map(Flown::sessionId).distinct().count(),
                    last.margin(),
                    last.marginBand()));
        });
        versions.sort(Comparator.comparingInt(VersionSeason::number).reversed());
        return versions;
    }

    /** Seconds in the air, all flights together. */
    public double aloftS() {
        return flights.stream()
                .mapToDouble(f -> f.durationS() == null ? 0 : f.durationS())
                .sum();
    }

    /** How many motors were flown. */
    public int motors() {
        return (int) flights.stream()
                .map(Flown::motorId)
                .filter(Objects::nonNull)
                .distinct()
                .count();
    }

    /** How many motors broke while being wound at these sessions. */
    public int broken() {
        Set<String> sessions = new HashSet<>();
        flights.forEach(f -> sessions.add(f.sessionId()));
        return sessions.stream()
                .map(visits::get)
                .filter(Objects::nonNull)
                .mapToInt(Visit::broken)
                .sum();
    }

    /** The venues, the one flown at most first. */
    public List<String> venues() {
        Map<String, Integer> counts = new HashMap<>();
        flights.forEach(f -> counts.merge(f.venue(), 1, Integer::sum));
        return counts.entrySet().stream()
                .filter(e -> !e.getKey().isEmpty())
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }
}
