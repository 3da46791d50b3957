package org.rafterbook.work;

import org.rafterbook.logbook.Reader;

/** Who flies, for what is noted with a name. */
final class FlyerName {

    private FlyerName() {}

    /** The flyer's name as given at the first start; without one that of the computer's user. */
    static String of(Reader reader) {
        String given = reader.preference(ScreenChoices.Name.FLYER.key());
        return given == null || given.isBlank() ? System.getProperty("user.name", "") : given.strip();
    }
}
