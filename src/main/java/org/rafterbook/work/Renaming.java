package org.rafterbook.work;

import java.util.List;
import java.util.Map;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.SheetSettings;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.Version;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.UserError;

/**
 * Another name for a surface in every version of its model: it is the same surface, so no version differs by it. The mass of
 * its name and the settings tied to it follow, and so do the settings' own names where they begin with the surface's.
 */
final class Renaming {

    private final Writer w;
    private final Model model;
    private final String from;
    private final String to;

    Renaming(Writer writer, Model model, String from, String to) {
        this.w = writer;
        this.model = model;
        this.from = from;
        this.to = to;
    }

    /** Renames it within the entry; a UserError where the name is taken or the mass is shared under the old one. */
    void make() {
        List<Version> versions = w.where(Version.class, "modelId", model.id());
        refuse(versions);
        VersionBook.definitions(w, model.id()).forEach(this::follow);
        List<SettingDef> settings = VersionBook.definitions(w, model.id());
        for (Version version : versions) {
            Airframe geometry = Geometry.of(version);
            if (geometry != null) {
                Map<String, Setting> values = Riggings.values(w, version);
                Corrections.rebuild(w, model, settings, version, values, renamed(geometry));
            }
        }
    }

    private void refuse(List<Version> versions) {
        for (Version version : versions) {
            Airframe geometry = Geometry.of(version);
            if (geometry != null
                    && (AirframeEdit.surface(geometry, to) != null || AirframeEdit.mass(geometry, to) != null)) {
                throw UserError.badInput("There is something named \"" + to + "\" already.");
            }
        }
        if (Parts.isShared(w, model.id(), from)) {
            throw UserError.badInput("The mass of \"" + from
                    + "\" flies in another model under that name. Let it be this model's alone first.");
        }
    }

    private void follow(SettingDef def) {
        SheetPath path = def.path() == null ? null : SheetPath.parse(def.path());
        if (path == null || !path.item().equals(from)) {
            return;
        }
        SheetPath moved = new SheetPath(to, path.key());
        boolean asOffered = def.label().equals(SheetSettings.offerFor(path).label());
        w.update(def.tiedTo(moved.toString())
                .named(asOffered ? SheetSettings.offerFor(moved).label() : def.label()));
    }

    private Airframe renamed(Airframe airframe) {
        List<Surface> surfaces = airframe.surfaces().stream()
                .map(s -> s.name().equals(from) ? s.named(to) : s)
                .toList();
        List<MassItem> masses = airframe.masses().stream()
                .map(m -> m.name().equals(from) ? new MassItem(to, m.massKg(), m.aftM(), m.riseM()) : m)
                .toList();
        return new Airframe(surfaces, masses, airframe.measuredBalanceM(), airframe.motor());
    }
}
