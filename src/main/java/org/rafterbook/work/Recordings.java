package org.rafterbook.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.VersionDigest;
import org.rafterbook.flight.Flight;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.UserError;

/** What is recorded of a model's settings and flights: what the flyer is shown before a correction is made. */
public final class Recordings {

    private final Logbook logbook;

    Recordings(Logbook logbook) {
        this.logbook = logbook;
    }

    /**
     * Two versions that a correction would make one.
     *
     * @param carried what becomes of the marks, zeros and figures on the one that goes, in sentences
     */
    public record Equal(String gone, String kept, List<String> carried) {}

    /** Which versions become equal when the value is put right, by name. */
    public List<Equal> becomeEqual(String modelId, String settingId, Setting wrong, Setting right, DisplayUnits units) {
        return logbook.read(r -> {
            Model model = r.get(Model.class, modelId);
            List<SettingDef> settings = VersionBook.definitions(r, modelId);
            Map<String, Version> there = new LinkedHashMap<>();
            List<Version> carriers = Corrections.carrying(r, modelId, settingId, wrong);
            r.where(Version.class, "modelId", modelId).stream()
                    .filter(v -> !carriers.contains(v))
                    .forEach(v -> there.put(v.digest(), v));
            List<Equal> equal = new ArrayList<>();
            for (Version version : carriers) {
                Map<String, Setting> values =
                        new HashMap<>(Riggings.rigged(r, model, null, version).values());
                values.put(settingId, right);
                Airframe base = Geometry.of(version);
                Airframe geometry = base == null ? null : VersionBook.applied(settings, values, base);
                String digest = VersionDigest.of(modelId, version.build(), settings, values, geometry);
                Version kept = there.putIfAbsent(digest, version);
                if (kept != null) {
                    equal.add(new Equal(
                            model.letter() + version.number(),
                            model.letter() + kept.number(),
                            new Merging(model, version, kept).sentences(units)));
                }
            }
            return equal;
        });
    }

    /** The values at which a setting is recorded in any version of its model. */
    public List<Setting> recorded(String settingId) {
        return logbook.read(r -> {
            List<Setting> values = new ArrayList<>();
            for (SettingValue value : r.where(SettingValue.class, "settingId", settingId)) {
                Setting stands = new Setting(value.number(), value.word(), value.asTyped());
                if (values.stream().noneMatch(v -> v.same(stands, 0))) {
                    values.add(stands);
                }
            }
            values.sort(Comparator.comparing(Setting::number, Comparator.nullsLast(Comparator.<Double>naturalOrder()))
                    .thenComparing(Setting::word, Comparator.nullsLast(Comparator.<String>naturalOrder())));
            return values;
        });
    }

    /**
     * Flights of one model as they are recorded, and every rigging they could have been flown on.
     *
     * @param flights in flying order
     */
    public record Recorded(Model model, List<FlightLine> flights, List<Rigged> strip) {}

    /** The flights of the rigging that a flight was flown on; a UserError where it has no model. */
    public Recorded around(String flightId) {
        return logbook.read(r -> {
            String rigging = r.get(Flight.class, flightId).riggingId();
            if (rigging == null) {
                throw UserError.badInput("That flight has no model, so there are no settings to put right.");
            }
            Model model = r.get(Model.class, r.get(Rigging.class, rigging).modelId());
            return new Recorded(model, r.flights().ofRigging(rigging), strip(r, model));
        });
    }

    /** The flights of a version; of the model's version flown last where that one has not flown. */
    public Recorded ofVersion(String versionId) {
        return logbook.read(r -> {
            Model model = r.get(Model.class, r.get(Version.class, versionId).modelId());
            List<FlightLine> all = r.flights().ofModel(model.id());
            List<FlightLine> own = of(all, versionId);
            Version last = all.isEmpty() ? null : all.get(all.size() - 1).version();
            return new Recorded(model, own.isEmpty() && last != null ? of(all, last.id()) : own, strip(r, model));
        });
    }

    private static List<FlightLine> of(List<FlightLine> lines, String versionId) {
        return lines.stream()
                .filter(l -> l.version() != null && l.version().id().equals(versionId))
                .toList();
    }

    private static List<Rigged> strip(Reader reader, Model model) {
        return Riggings.ordered(reader, model.id()).stream()
                .map(x -> Riggings.rigged(reader, model, x, reader.get(Version.class, x.versionId())))
                .toList();
    }
}
