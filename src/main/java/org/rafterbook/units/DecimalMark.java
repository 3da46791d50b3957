package org.rafterbook.units;

/** Which character stands before the decimals. */
public enum DecimalMark {
    POINT("."),
    COMMA(","),
    /** For typed fields: either, but only one in a number. */
    EITHER(".,");

    private final String characters;

    DecimalMark(String characters) {
        this.characters = characters;
    }

    boolean allows(char mark) {
        return characters.indexOf(mark) >= 0;
    }
}
