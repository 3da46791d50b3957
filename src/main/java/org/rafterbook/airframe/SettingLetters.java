package org.rafterbook.airframe;

import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Deals the key letter of a new setting: once dealt it is stored with the setting and stays. */
public final class SettingLetters {

    /** Letters that commands of the places use where settings are listed; never dealt. */
    private static final String KEPT_FOR_COMMANDS = "ACDEFHKMNOQVXYZ";

    private SettingLetters() {}

    /** A letter of the label where one is free, else any free one, else null. */
    public static @Nullable String deal(String label, Collection<String> taken) {
        String wanted = label.toUpperCase(Locale.ROOT) + "PWTRLBGSUIJ";
        for (int i = 0; i < wanted.length(); i++) {
            char letter = wanted.charAt(i);
            if (letter >= 'A'
                    && letter <= 'Z'
                    && KEPT_FOR_COMMANDS.indexOf(letter) < 0
                    && !taken.contains(String.valueOf(letter))) {
                return String.valueOf(letter);
            }
        }
        return null;
    }
}
