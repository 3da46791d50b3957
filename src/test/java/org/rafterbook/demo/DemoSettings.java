package org.rafterbook.demo;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.SideRows.SettingRow;

/** How the flyer calls and steps the settings that are not on the sheet, and between which posts the wings slide. */
final class DemoSettings {

    private DemoSettings() {}

    static List<SettingRow> rows() {
        String teasel = DemoModel.TEASEL.title;
        String marram = DemoModel.MARRAM.title;
        String quire = DemoModel.QUIRE.title;
        return List.of(
                row(teasel, "wing.edge_aft_mm", "Wing position", "mm", 1, 0.2, 90.0, 112.0, "P"),
                row(teasel, "ballast.mass_g", "Ballast at the nose", "g", 0.01, 0.004, null, null, "B"),
                row(teasel, "Rudder", null, "deg", 0.5, 0.2, null, null, "R"),
                row(teasel, "Wash-in", null, "deg", 0.5, 0.2, null, null, "W"),
                row(teasel, "Left thrust", null, "deg", 0.5, 0.2, null, null, "L"),
                row(marram, "wing.edge_aft_mm", "Wing position", "mm", 1, 0.2, 76.0, 96.0, "P"),
                row(marram, "Rudder", null, "deg", 0.5, 0.2, null, null, "R"),
                row(marram, "Wash-in", null, "deg", 0.5, 0.2, null, null, "W"),
                row(quire, "ballast.mass_g", "Ballast at the nose", "g", 0.01, 0.004, null, null, "B"),
                row(quire, "Rudder", null, "deg", 0.5, 0.2, null, null, "R"));
    }

    private static SettingRow row(
            String model,
            String setting,
            @Nullable String label,
            String unit,
            double step,
            double tolerance,
            @Nullable Double low,
            @Nullable Double high,
            String letter) {
        return new SettingRow(0, model, setting, label, unit, step, tolerance, low, high, letter);
    }
}
