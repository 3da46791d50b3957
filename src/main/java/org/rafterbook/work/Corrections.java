package org.rafterbook.work;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.VersionDigest;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightDraft;
import org.rafterbook.flight.Trial;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.UserError;

/** The two corrections of what was recorded: 'it was always so' and 'it was different that time'. */
public final class Corrections {

    private final Logbook logbook;
    private final Clock clock;

    Corrections(Logbook logbook, Clock clock) {
        this.logbook = logbook;
        this.clock = clock;
    }

    /**
     * A version that a correction would put right.
     *
     * @param flights how many flights were flown on it
     */
    public record Carrier(Version version, String name, int flights) {}

    /** The versions of the model in which the setting stands at this value. */
    public List<Carrier> carriers(String modelId, String settingId, Setting value) {
        return logbook.read(r -> {
            Model model = r.get(Model.class, modelId);
            List<Carrier> carriers = new ArrayList<>();
            for (Version version : carrying(r, modelId, settingId, value)) {
                int flights = 0;
                for (Rigging rigging : r.where(Rigging.class, "versionId", version.id())) {
                    flights += r.where(Flight.class, "riggingId", rigging.id()).size();
                }
                carriers.add(new Carrier(version, model.letter() + version.number(), flights));
            }
            return carriers;
        });
    }

    /** The versions in which the setting stands at this value, the oldest first. */
    static List<Version> carrying(Reader reader, String modelId, String settingId, Setting value) {
        Map<String, Version> versions = new HashMap<>();
        reader.where(Version.class, "modelId", modelId).forEach(v -> versions.put(v.id(), v));
        return reader.where(SettingValue.class, "settingId", settingId).stream()
                .filter(v -> versions.containsKey(v.versionId()))
                .filter(v -> new Setting(v.number(), v.word(), v.asTyped()).same(value, 0))
                .map(v -> versions.get(v.versionId()))
                .filter(Objects::nonNull)
                .sorted(Comparator.comparingInt(Version::number))
                .toList();
    }

    /**
     * 'It was always so': puts a value right in every version of the model that carries it. Versions that become equal
     * become one; flights, riggings, weighings, marks and zeros are kept, and trials compare the right values.
     *
     * @return how many versions were put right
     */
    public int alwaysSo(String modelId, String settingId, Setting wrong, Setting right) {
        return logbook.read(r -> r.get(SettingDef.class, settingId)).modelId().equals(modelId)
                ? logbook.enter("correction, always so", w -> alwaysSo(w, modelId, settingId, wrong, right))
                : 0;
    }

    private static int alwaysSo(Writer writer, String modelId, String settingId, Setting wrong, Setting right) {
        Model model = writer.get(Model.class, modelId);
        List<SettingDef> settings = VersionBook.definitions(writer, modelId);
        List<Version> carriers = carrying(writer, modelId, settingId, wrong);
        if (carriers.isEmpty()) {
            throw UserError.badInput("No version of " + model.name() + " carries that value.");
        }
        putTrialsRight(writer, writer.get(SettingDef.class, settingId), wrong, right);
        for (Version version : carriers) {
            Map<String, Setting> values = new HashMap<>();
            for (SettingValue value : writer.where(SettingValue.class, "versionId", version.id())) {
                if (value.settingId().equals(settingId)) {
                    writer.update(new SettingValue(
                            value.id(), value.versionId(), settingId, right.number(), right.word(), right.asTyped()));
                    values.put(settingId, right);
                } else {
                    values.put(value.settingId(), new Setting(value.number(), value.word(), value.asTyped()));
                }
            }
            rebuild(writer, model, settings, version, values, Geometry.of(version));
        }
        return carriers.size();
    }

    /** Gives a version other settings or geometry under its own name; merges it into an equal one. */
    static void rebuild(
            Writer writer,
            Model model,
            List<SettingDef> settings,
            Version given,
            Map<String, Setting> values,
            @Nullable Airframe base) {
        // whoever goes through all versions may hold one that has taken over another's marks since
        Version version = writer.get(Version.class, given.id());
        Airframe geometry = base == null ? null : VersionBook.applied(settings, values, base);
        String digest = VersionDigest.of(model.id(), version.build(), settings, values, geometry);
        Version equal = writer.where(Version.class, "digest", digest).stream()
                .filter(v -> !v.id().equals(version.id()))
                .findFirst()
                .orElse(null);
        if (equal == null) {
            writer.update(version.withGeometry(
                    digest,
                    geometry == null
                            ? null
                            : Geometry.write(model.name(), model.letter() + version.number(), geometry)));
        } else {
            new Merging(model, version, equal).make(writer);
        }
    }

    /**
     * Lets the trials of a setting compare what its values were put right to. A judged one whose two values became equal
     * stays as it was flown.
     *
     * @throws UserError where that is the open one
     */
    static void putTrialsRight(Writer writer, SettingDef setting, Setting wrong, Setting right) {
        double tolerance = Objects.requireNonNullElse(setting.tolerance(), 0.0);
        for (Trial trial : writer.where(Trial.class, "settingId", setting.id())) {
            Setting a = TrialReading.valueA(trial).same(wrong, tolerance) ? right : TrialReading.valueA(trial);
            Setting b = TrialReading.valueB(trial).same(wrong, tolerance) ? right : TrialReading.valueB(trial);
            if (!a.same(b, tolerance)) {
                writer.update(trial.comparing(a.number(), a.word(), b.number(), b.word()));
            } else if (trial.judgedAt() == null) {
                throw UserError.badInput("The open trial compares two values of " + setting.label()
                        + " that would be one then. End the trial first.");
            }
        }
    }

    /** 'It was different that time': these flights were flown on another rigging that is there already. */
    public void thatTime(Collection<String> flightIds, String riggingId) {
        logbook.enter("correction, that time", w -> {
            Rigging to = w.get(Rigging.class, riggingId);
            for (String id : flightIds) {
                Flight flight = w.get(Flight.class, id);
                String from = flight.riggingId();
                if (from != null && !w.get(Rigging.class, from).modelId().equals(to.modelId())) {
                    throw UserError.badInput("That rigging belongs to another model.");
                }
                w.update(FlightDraft.of(flight).riggingId(riggingId).done());
            }
            return flightIds.size();
        });
    }

    /**
     * 'It was different that time': these flights were flown on other settings. The strip is re-laid: riggings begin where
     * the settings change in flying order, and a neighbour that has the settings already takes the flights.
     *
     * @param flightIds flights of one model
     * @param changed settings that were different, keyed by setting id
     */
    public void thatTime(Collection<String> flightIds, Map<String, Setting> changed) {
        logbook.enter("correction, that time", w -> {
            Map<String, Set<String>> byRigging = new LinkedHashMap<>();
            for (String id : flightIds) {
                String source = w.get(Flight.class, id).riggingId();
                if (source == null) {
                    throw UserError.badInput("A flight without a model has no settings to put right.");
                }
                byRigging.computeIfAbsent(source, r -> new HashSet<>()).add(id);
            }
            long models = byRigging.keySet().stream()
                    .map(r -> w.get(Rigging.class, r).modelId())
                    .distinct()
                    .count();
            if (models != 1) {
                throw UserError.badInput("Pick flights of one model.");
            }
            Relay relay = new Relay(w, clock);
            byRigging.forEach((source, moved) -> relay.lay(w.get(Rigging.class, source), moved, changed));
            return flightIds.size();
        });
    }

    /** Counts the riggings of a model anew in the order given, each after the one before it. */
    static void renumber(Writer writer, List<Rigging> strip) {
        String previous = null;
        int ordinal = 0;
        for (Rigging r : strip) {
            ordinal++;
            Rigging counted = r.withPlace(ordinal, previous);
            if (!counted.equals(r)) {
                writer.update(counted);
            }
            previous = r.id();
        }
    }
}
