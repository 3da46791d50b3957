package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Version;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.exchange.AirframeSheets;

/** A version's geometry between its airframe sheet, as stored, and the airframe the domain computes with. */
final class Geometry {

    private Geometry() {}

    static String write(String model, String version, Airframe airframe) {
        return AirframeSheets.write(new AirframeSheet(model, version, airframe));
    }

    static @Nullable Airframe of(Version version) {
        String sheet = version.geometry();
        return sheet == null
                ? null
                : AirframeSheets.read(sheet, "the geometry of version " + version.number())
                        .airframe();
    }
}
