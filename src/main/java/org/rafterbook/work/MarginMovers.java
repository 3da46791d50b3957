package org.rafterbook.work;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.TrimChange;

/**
 * Which settings move the stability margin: places, sizes and masses of the sheet, and any other with which the margin of
 * one and the same motor went from version to version, as a balance measured anew shows it.
 */
final class MarginMovers {

    /** What moves the balance point or the neutral point by more than the lattice can tell. */
    private static final Set<SheetPath.Key> ON_THE_SHEET = EnumSet.of(
            SheetPath.Key.EDGE_AFT, SheetPath.Key.SPAN, SheetPath.Key.CHORD, SheetPath.Key.MASS, SheetPath.Key.AFT);

    /** Points of margin below which two versions are alike. */
    private static final double ALIKE = 0.1;

    private MarginMovers() {}

    /**
     * Ids of the settings, sorted.
     *
     * @param versions versions of one model
     * @param motorId the motor all are taken with, null for the one of each sheet
     */
    static Set<String> of(List<Rigged> versions, MarginPercent margins, @Nullable String motorId) {
        Set<String> movers = new TreeSet<>();
        for (SettingDef def : versions.get(0).settings()) {
            SheetPath path = def.path() == null ? null : SheetPath.parse(def.path());
            if (path != null && ON_THE_SHEET.contains(path.key())) {
                movers.add(def.id());
            }
        }
        List<@Nullable Double> percent = new ArrayList<>();
        versions.forEach(v -> percent.add(margins.percent(v.version().id(), motorId, 1)));
        for (int i = 1; i < versions.size(); i++) {
            for (int j = 0; j < i; j++) {
                Double one = percent.get(i);
                Double other = percent.get(j);
                if (one != null && other != null && Math.abs(one - other) > ALIKE) {
                    movers.addAll(unexplained(versions.get(i), versions.get(j), movers));
                }
            }
        }
        return movers;
    }

    /** The settings that differ, none where one that is known to move the margin is among them. */
    private static List<String> unexplained(Rigged one, Rigged other, Set<String> movers) {
        List<String> differ = TrimChange.between(one.settings(), other.values(), one.values()).stream()
                .map(c -> c.setting().id())
                .toList();
        return differ.stream().anyMatch(movers::contains) ? List.of() : differ;
    }
}
