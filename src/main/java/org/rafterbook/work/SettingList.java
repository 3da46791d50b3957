package org.rafterbook.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Trial;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.UserError;

/** The settings a flyer lists for a model: added, renamed, limited, tied to the airframe sheet or set free from it. */
public final class SettingList {

    private final Logbook logbook;

    SettingList(Logbook logbook) {
        this.logbook = logbook;
    }

    /**
     * A setting as it is entered, SI.
     *
     * @param quantity name of the {@code units.Quantity}; TEXT for words
     * @param low lower end of the slider or post, null where nothing limits it
     * @param path key of the airframe sheet it sets, null for a free setting
     */
    public record Form(
            String label,
            String quantity,
            String unit,
            @Nullable Double step,
            @Nullable Double tolerance,
            @Nullable Double low,
            @Nullable Double high,
            @Nullable String path) {}

    /** The keys of the sheet that a setting of this kind can be tied to. */
    public static List<SheetPath> paths(@Nullable Airframe airframe, String quantity) {
        List<SheetPath> paths = new ArrayList<>();
        if (airframe != null) {
            List<String> items = new ArrayList<>();
            airframe.surfaces().stream()
                    .filter(s -> s.role() != Role.FIN)
                    .map(Surface::name)
                    .forEach(items::add);
            airframe.masses().stream()
                    .map(MassItem::name)
                    .filter(n -> !items.contains(n))
                    .forEach(items::add);
            for (String item : items) {
                for (SheetPath.Key key : SheetPath.Key.values()) {
                    SheetPath path = new SheetPath(item, key);
                    if (key.quantity().equals(quantity) && path.isIn(airframe)) {
                        paths.add(path);
                    }
                }
            }
        }
        return paths;
    }

    /**
     * Adds a setting.
     *
     * @param stands what it has stood at in every version so far; null leaves it unrecorded there
     */
    public SettingDef add(String modelId, Form form, @Nullable Setting stands) {
        return logbook.enter("setting " + form.label().strip(), w -> {
            checked(form);
            SettingDef made = NewSetting.add(
                    w, modelId, form.label(), form.quantity(), form.unit(), form.step(), form.tolerance(), null);
            if (stands != null) {
                for (Version version : w.where(Version.class, "modelId", modelId)) {
                    w.insert(new SettingValue(
                            Logbook.newId(),
                            version.id(),
                            made.id(),
                            stands.number(),
                            stands.word(),
                            stands.asTyped()));
                }
            }
            return put(w, made, form);
        });
    }

    /** Changes a setting; its letter and its values stay. */
    public SettingDef change(String settingId, Form form) {
        return logbook.enter("setting " + form.label().strip(), w -> {
            checked(form);
            SettingDef was = w.get(SettingDef.class, settingId);
            boolean taken = VersionBook.definitions(w, was.modelId()).stream()
                    .anyMatch(d -> !d.id().equals(settingId)
                            && d.label().equalsIgnoreCase(form.label().strip()));
            if (taken) {
                throw UserError.badInput(
                        "This model has a setting named '" + form.label().strip() + "' already.");
            }
            boolean recorded =
                    !w.where(SettingValue.class, "settingId", settingId).isEmpty();
            if (recorded && !was.quantity().equals(form.quantity())) {
                throw UserError.badInput("What is recorded of " + was.label() + " keeps its kind; add a new setting.");
            }
            return put(w, was, form);
        });
    }

    private static void checked(Form form) {
        if (form.label().isBlank()) {
            throw UserError.badInput("A setting needs a name.");
        }
        Double low = form.low();
        Double high = form.high();
        if (low != null && high != null && low > high) {
            throw UserError.badInput("The upper end lies below the lower end.");
        }
    }

    private static SettingDef put(Writer writer, SettingDef was, Form form) {
        if (form.path() != null && !form.path().equals(was.path())) {
            absorb(writer, was, form.path());
        }
        SettingDef def = writer.update(new SettingDef(
                was.id(),
                was.modelId(),
                form.label().strip(),
                form.quantity(),
                form.unit(),
                form.step(),
                form.tolerance(),
                form.low(),
                form.high(),
                was.keyLetter(),
                form.path(),
                was.ordinal()));
        SheetPath path = form.path() == null ? null : SheetPath.parse(form.path());
        if (path != null && !Objects.equals(was.path(), form.path())) {
            NewSetting.tie(writer, was.modelId(), def, path);
        }
        recount(writer, was.modelId());
        return def;
    }

    /** The setting that sets the same key so far gives up its values and trials to this one and goes. */
    private static void absorb(Writer writer, SettingDef into, String path) {
        for (SettingDef other : VersionBook.definitions(writer, into.modelId())) {
            if (!path.equals(other.path()) || other.id().equals(into.id())) {
                continue;
            }
            for (SettingValue value : writer.where(SettingValue.class, "settingId", other.id())) {
                boolean own = writer.where(SettingValue.class, "versionId", value.versionId()).stream()
                        .anyMatch(v -> v.settingId().equals(into.id()));
                writer.remove(SettingValue.class, value.id());
                if (!own) {
                    writer.insert(new SettingValue(
                            Logbook.newId(),
                            value.versionId(),
                            into.id(),
                            value.number(),
                            value.word(),
                            value.asTyped()));
                }
            }
            for (Trial trial : writer.where(Trial.class, "settingId", other.id())) {
                writer.update(trial.of(into.id()));
            }
            writer.remove(SettingDef.class, other.id());
        }
    }

    /** Digests count settings and the geometry they do not set: both may have changed. */
    private static void recount(Writer writer, String modelId) {
        Model model = writer.get(Model.class, modelId);
        List<SettingDef> settings = VersionBook.definitions(writer, modelId);
        for (Version version : writer.where(Version.class, "modelId", modelId)) {
            Map<String, Setting> values = new HashMap<>();
            writer.where(SettingValue.class, "versionId", version.id())
                    .forEach(v -> values.put(v.settingId(), new Setting(v.number(), v.word(), v.asTyped())));
            Corrections.rebuild(writer, model, settings, version, values, Geometry.of(version));
        }
    }
}
