package org.rafterbook.work;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Version;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.exchange.AirframeSheets;

/** A version's geometry between its airframe sheet, as stored, and the airframe the domain computes with. */
final class Geometry {

    private static final int KEPT = 256;

    /** Read once, since many flights share a version; the text tells one from another. */
    private static final Map<String, Airframe> READ =
            Collections.synchronizedMap(new LinkedHashMap<>(KEPT, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<String, Airframe> eldest) {
                    return size() > KEPT;
                }
            });

    private Geometry() {}

    static String write(String model, String version, Airframe airframe) {
        return AirframeSheets.write(new AirframeSheet(model, version, airframe));
    }

    static @Nullable Airframe of(Version version) {
        String sheet = version.geometry();
        return sheet == null
                ? null
                : READ.computeIfAbsent(
                        sheet,
                        text -> AirframeSheets.read(text, "the geometry of version " + version.number())
                                .airframe());
    }
}
