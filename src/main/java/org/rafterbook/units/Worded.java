package org.rafterbook.units;

import java.util.Locale;

/** An enum whose constants have a word of their own in files, tables and commands. */
public interface Worded {

    /** The word, lower case, as written in files: {@code MID_AIR} is {@code mid-air} unless the enum says otherwise. */
    default String word() {
        return ((Enum<?>) this).name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The constant whose word this is. */
    static <E extends Enum<E> & Worded> E of(Class<E> type, String word) {
        for (E constant : type.getEnumConstants()) {
            if (constant.word().equals(word)) {
                return constant;
            }
        }
        throw UserError.badInput("'" + word + "' is not one of the words known here.");
    }
}
