package org.rafterbook.exchange;

import java.nio.file.Path;

/**
 * Reads and writes airframe sheets: JSON with lengths in mm, angles in degrees and masses in g.
 *
 * <p>What {@link #write} gives, {@link #read} takes back to the same airframe; numbers come out as they were typed.
 */
public final class AirframeSheets {

    private AirframeSheets() {}

    /**
     * Reads a sheet.
     *
     * @param where what the sentence of an error begins with, such as the file's name
     * @throws org.rafterbook.units.UserError of bad input where the text is no airframe sheet; says what is wrong and
     *     where
     */
    public static AirframeSheet read(String json, String where) {
        return new SheetReader(where).read(json);
    }

    /**
     * Reads a sheet from a file.
     *
     * @throws org.rafterbook.units.UserError where it cannot be opened or is no airframe sheet
     */
    public static AirframeSheet read(Path file) {
        return read(TextFiles.read(file), TextFiles.nameOf(file));
    }

    /** The sheet as text, one rib and one mass a line. */
    public static String write(AirframeSheet sheet) {
        return SheetWriter.write(sheet);
    }

    /**
     * Writes a sheet to a file, over one that is there.
     *
     * @throws org.rafterbook.units.UserError where it cannot be written
     */
    public static void write(AirframeSheet sheet, Path file) {
        TextFiles.write(file, write(sheet));
    }
}
