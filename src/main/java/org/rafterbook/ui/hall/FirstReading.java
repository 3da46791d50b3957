package org.rafterbook.ui.hall;

import org.jspecify.annotations.Nullable;
import org.rafterbook.work.HallDesk;

/** What the Hall shows first, without what takes long: read once, by whichever thread comes first. */
public final class FirstReading {

    private final HallDesk desk;
    private @Nullable HallData read;

    public FirstReading(HallDesk desk) {
        this.desk = desk;
    }

    /** Reads it, or waits for the thread that does. */
    public synchronized HallData get() {
        HallData data = read;
        if (data == null) {
            data = HallData.read(desk.withoutMargins());
            read = data;
        }
        return data;
    }
}
