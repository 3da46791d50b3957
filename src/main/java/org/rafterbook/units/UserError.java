package org.rafterbook.units;

import org.jspecify.annotations.Nullable;

/** The one error type with a sentence for the user; logged once where it is finally caught. */
public final class UserError extends RuntimeException {

    /** Whether the input was at fault or the program could not do it; becomes the command's exit code. */
    public enum Kind {
        BAD_INPUT,
        COULD_NOT
    }

    private static final long serialVersionUID = 1;

    private final Kind kind;

    public UserError(Kind kind, String sentence, @Nullable Throwable cause) {
        super(sentence, cause);
        this.kind = kind;
    }

    public static UserError badInput(String sentence) {
        return new UserError(Kind.BAD_INPUT, sentence, null);
    }

    public static UserError couldNot(String sentence, @Nullable Throwable cause) {
        return new UserError(Kind.COULD_NOT, sentence, cause);
    }

    public Kind kind() {
        return kind;
    }

    /** The sentence for the user. */
    public String sentence() {
        return String.valueOf(getMessage());
    }
}
