package org.rafterbook.flight;

import java.util.Locale;
import org.rafterbook.units.Worded;

/** Whether the ending cost time, asked at landing before the time is compared with anything. */
public enum CutShort implements Worded {
    YES,
    NO,
    CANNOT_SAY;

    @Override
    public String word() {
        return this == CANNOT_SAY ? "cannot say" : name().toLowerCase(Locale.ROOT);
    }
}
