package org.rafterbook.exchange;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.rafterbook.units.UserError;

/** Plain text files, UTF-8 with or without a byte order mark; every failure is a sentence. */
public final class TextFiles {

    private TextFiles() {}

    /** The file's name without its folders. */
    public static String nameOf(Path file) {
        Path name = file.getFileName();
        return name == null ? file.toString() : name.toString();
    }

    /** The whole text; a failure is a UserError with a sentence. */
    public static String read(Path file) {
        if (Files.isDirectory(file)) {
            throw UserError.badInput(file + " is a folder, not a file.");
        }
        try {
            return decode(Files.readAllBytes(file), nameOf(file));
        } catch (NoSuchFileException e) {
            throw UserError.badInput("There is no file " + file + ".");
        } catch (AccessDeniedException e) {
            throw UserError.couldNot("The file " + file + " may not be read by this user.", e);
        } catch (IOException e) {
            throw UserError.couldNot("The file " + file + " could not be read: " + e.getMessage() + ".", e);
        }
    }

    /** Text of a file's bytes; UTF-16 is read where its byte order mark says so. */
    static String decode(byte[] bytes, String name) {
        if (bytes.length >= 2 && ((bytes[0] == -1 && bytes[1] == -2) || (bytes[0] == -2 && bytes[1] == -1))) {
            return strict(bytes, StandardCharsets.UTF_16, name);
        }
        String text = strict(bytes, StandardCharsets.UTF_8, name);
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static String strict(byte[] bytes, Charset charset, String name) {
        CharsetDecoder decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        out.flip();
        if (result.isError()) {
            long line = 1 + out.chars().filter(c -> c == '\n').count();
            throw UserError.badInput(
                    name + ", line " + line + ": not UTF-8 text; save the file as CSV UTF-8 and read it again.");
        }
        return out.toString();
    }

    /** Writes a file, over one that is there; a failure is a UserError with a sentence. */
    public static void write(Path file, String text) {
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw UserError.couldNot("The file " + file + " could not be written: " + e.getMessage() + ".", e);
        }
    }
}
