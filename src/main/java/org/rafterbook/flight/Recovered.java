package org.rafterbook.flight;

import java.util.Locale;
import org.rafterbook.units.Worded;

/** Whether the model recovered from an upset. */
public enum Recovered implements Worded {
    YES,
    NO,
    NOT_TRIED;

    @Override
    public String word() {
        return this == NOT_TRIED ? "not tried" : name().toLowerCase(Locale.ROOT);
    }
}
