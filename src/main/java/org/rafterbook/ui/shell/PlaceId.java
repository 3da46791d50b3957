package org.rafterbook.ui.shell;

import org.rafterbook.ui.draw.Icon;

/** The five places of the rail, from above. */
public enum PlaceId {
    HALL("Hall", Icon.HALL),
    BENCH("Bench", Icon.BENCH),
    MOTOR_BOX("Motor box", Icon.MOTOR_BOX),
    REVIEW("Review", Icon.REVIEW),
    SEASON("Season", Icon.SEASON);

    private final String title;
    private final Icon icon;

    PlaceId(String title, Icon icon) {
        this.title = title;
        this.icon = icon;
    }

    public String title() {
        return title;
    }

    Icon icon() {
        return icon;
    }

    /** Its key, F1 to F5. */
    public String key() {
        return "F" + (ordinal() + 1);
    }
}
