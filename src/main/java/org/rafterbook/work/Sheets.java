package org.rafterbook.work;

import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.SheetSettings;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.exchange.AirframeSheets;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.UserError;

/** Takes airframe sheets into the logbook: geometry for a model, and the settings that go with it. */
public final class Sheets {

    private final Logbook logbook;
    private final Clock clock;
    private final Riggings riggings;

    Sheets(Logbook logbook, Clock clock, Riggings riggings) {
        this.logbook = logbook;
        this.clock = clock;
        this.riggings = riggings;
    }

    /** Takes a sheet in as one entry. */
    public Rigged take(AirframeSheet sheet) {
        return logbook.enter("airframe sheet of " + sheet.model(), w -> take(w, sheet));
    }

    /**
     * Writes a version as a sheet, with the balance measured of it as it would be with the sheet's own motor.
     *
     * @return the file's name
     */
    public String write(String versionId, Path file) {
        AirframeSheet sheet = logbook.read(r -> {
            Version version = r.get(Version.class, versionId);
            Model model = r.get(Model.class, version.modelId());
            Airframe geometry = Geometry.of(version);
            if (geometry == null) {
                throw UserError.badInput("This version has no geometry to write: enter its surfaces first.");
            }
            return new AirframeSheet(
                    model.name(), model.letter() + version.number(), Margins.asSheet(r, version, geometry));
        });
        AirframeSheets.write(sheet, file);
        return String.valueOf(file.getFileName());
    }

    /**
     * A model without geometry gets the sheet's under all its versions, whose flights stay where they are; a model with
     * geometry is set to what the sheet says, which is a new version where it differs.
     */
    Rigged take(Writer writer, AirframeSheet sheet) {
        Model model = writer.all(Model.class).stream()
                .filter(m -> m.name().equalsIgnoreCase(sheet.model().strip()))
                .findFirst()
                .orElse(null);
        if (model == null) {
            model = riggings.addModel(writer, sheet.model());
        }
        Airframe geometry = new Airframe(
                sheet.airframe().surfaces(),
                sheet.airframe().masses(),
                null,
                sheet.airframe().motor());
        Rigged now = Riggings.now(writer, model.id());
        dealSettings(writer, model, geometry);
        Rigged taken = now.geometry() == null
                ? underAllVersions(writer, model, geometry)
                : riggings.set(
                        writer, model, Airframes.valuesOn(writer, now, geometry), geometry, "airframe sheet", null);
        keepBalance(writer, taken.model(), taken.version(), sheet.airframe());
        return taken;
    }

    /** Deals the settings of a sheet; a free setting of the same name and kind is tied to the sheet instead. */
    static void dealSettings(Writer writer, Model model, Airframe geometry) {
        List<SettingDef> known = VersionBook.definitions(writer, model.id());
        for (SheetSettings.Offer offer : SheetSettings.of(geometry)) {
            SheetPath path = offer.path();
            if (known.stream().anyMatch(d -> path.toString().equals(d.path()))) {
                continue;
            }
            SettingDef free = known.stream()
                    .filter(d -> d.label().equalsIgnoreCase(offer.label()))
                    .findFirst()
                    .orElse(null);
            if (free != null
                    && free.path() == null
                    && free.quantity().equals(path.key().quantity())) {
                NewSetting.tie(writer, model.id(), writer.update(free.tiedTo(path.toString())), path);
            } else {
                NewSetting.add(
                        writer,
                        model.id(),
                        free == null ? offer.label() : offer.label() + " on the sheet",
                        path.key().quantity(),
                        path.key().unit(),
                        offer.step(),
                        offer.tolerance(),
                        path.toString());
            }
        }
    }

    static Rigged underAllVersions(Writer writer, Model model, Airframe geometry) {
        List<SettingDef> settings = VersionBook.definitions(writer, model.id());
        for (Version version : writer.where(Version.class, "modelId", model.id())) {
            Map<String, Setting> values = new HashMap<>();
            writer.where(SettingValue.class, "versionId", version.id())
                    .forEach(v -> values.put(v.settingId(), new Setting(v.number(), v.word(), v.asTyped())));
            for (SettingDef def : settings) {
                SheetPath path = def.path() == null ? null : SheetPath.parse(def.path());
                if (path != null && path.isIn(geometry) && !values.containsKey(def.id())) {
                    Setting value = Setting.of(path.read(geometry));
                    values.put(def.id(), value);
                    writer.insert(
                            new SettingValue(Logbook.newId(), version.id(), def.id(), value.number(), null, null));
                }
            }
            Corrections.rebuild(writer, model, settings, version, values, geometry);
        }
        return Riggings.now(writer, model.id());
    }

    /** A balance on the sheet is a measurement of the version the sheet describes, with the sheet's motor on board. */
    void keepBalance(Writer writer, Model model, Version version, Airframe sheet) {
        Double balance = sheet.measuredBalanceM();
        if (balance == null) {
            return;
        }
        MotorPlace motor = sheet.motor();
        @Nullable Double motorKg = motor == null ? null : motor.massKg();
        @Nullable Double motorAft = motor == null ? null : motor.aftM();
        boolean known = writer.where(Weighing.class, "versionId", version.id()).stream()
                .anyMatch(x -> balance.equals(x.balanceM())
                        && Objects.equals(motorKg, x.motorKg())
                        && Objects.equals(motorAft, x.motorAftM()));
        if (!known) {
            writer.insert(new Weighing(
                    Logbook.newId(),
                    model.id(),
                    version.id(),
                    null,
                    balance,
                    motorKg,
                    motorAft,
                    null,
                    clock.instant(),
                    "from the airframe sheet",
                    Map.of()));
        }
    }
}
