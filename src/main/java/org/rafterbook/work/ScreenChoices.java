package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.units.DisplayUnits;

/**
 * What a flyer chose for screens and reports, as kept in a logbook's preferences; null where nothing was said.
 *
 * @param theme name of the theme
 * @param textSize name of the text size
 * @param keyCaps whether keys stand in buttons and rows
 * @param flyer the flyer's name, for reports
 */
public record ScreenChoices(
        @Nullable String theme,
        @Nullable String textSize,
        @Nullable Boolean keyCaps,
        @Nullable DisplayUnits units,
        @Nullable String flyer) {

    /** Names of the preferences. */
    public enum Name {
        THEME("theme"),
        TEXT_SIZE("text size"),
        KEY_CAPS("key caps"),
        UNITS("units"),
        FLYER("flyer");

        private final String key;

        Name(String key) {
            this.key = key;
        }

        /** The preference's own name. */
        public String key() {
            return key;
        }
    }

    static ScreenChoices of(Book book) {
        return book.logbook().read(r -> {
            String caps = r.preference(Name.KEY_CAPS.key);
            return new ScreenChoices(
                    r.preference(Name.THEME.key),
                    r.preference(Name.TEXT_SIZE.key),
                    caps == null ? null : Boolean.valueOf(caps),
                    units(r.preference(Name.UNITS.key)),
                    r.preference(Name.FLYER.key));
        });
    }

    /** Keeps one choice. */
    public static void keep(Book book, Name name, String value) {
        book.prefer(name.key, value);
    }

    private static @Nullable DisplayUnits units(@Nullable String kept) {
        for (DisplayUnits units : DisplayUnits.values()) {
            if (units.name().equals(kept)) {
                return units;
            }
        }
        return null;
    }
}
