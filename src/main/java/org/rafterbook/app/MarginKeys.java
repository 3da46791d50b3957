package org.rafterbook.app;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.work.MarginAnswer;

/** A margin as the keys of {@code --json}: lengths mm, areas mm^2, full precision. */
final class MarginKeys {

    private MarginKeys() {}

    static Map<String, @Nullable Object> of(MarginAnswer m) {
        Map<String, @Nullable Object> keys = new LinkedHashMap<>();
        keys.put("neutral_point_mm", scaled(m.neutralPointM(), 1e3));
        keys.put("balance_mm", scaled(m.balanceM(), 1e3));
        keys.put("mean_chord_mm", scaled(m.meanChordM(), 1e3));
        keys.put("margin_percent", scaled(m.margin(), 100));
        keys.put("area_mm2", scaled(m.areaM2(), 1e6));
        keys.put("aspect_ratio", m.aspectRatio());
        keys.put("lift_slope_per_rad", m.liftSlopePerRad());
        keys.put("lift_share", m.liftShare());
        keys.put("band_percent", scaled(m.band(), 100));
        Map<String, @Nullable Object> closed = new LinkedHashMap<>();
        closed.put("name", MarginAnswer.CLOSED_FORM);
        closed.put("neutral_point_mm", scaled(m.closedFormM(), 1e3));
        if (m.closedFormM() == null) {
            closed.put("missing", m.closedFormNote());
        }
        keys.put("closed_form", closed);
        if (!m.remarks().isEmpty()) {
            keys.put("remarks", m.remarks());
        }
        if (m.missing() != null) {
            keys.put("missing", m.missing());
        }
        return keys;
    }

    static @Nullable Double scaled(@Nullable Double si, double factor) {
        return si == null ? null : si * factor;
    }

    /** A band in whole points, never as if there were none. */
    static String band(@Nullable Double fraction) {
        return fraction != null && fraction < 0.005 ? "<1" : text(fraction, 100, 0);
    }

    static String text(@Nullable Double si, double factor, int decimals) {
        return si == null
                ? "-"
                : String.format(Locale.ROOT, "%." + decimals + "f", si * factor).replace('-', '−');
    }
}
