package org.rafterbook.units;

import java.util.Optional;
import java.util.function.Function;

/** What came of reading a text: a value, or a refusal with one sentence for the user. */
public sealed interface Parsed<T> {

    /** The text could be read. */
    record Accepted<T>(T value) implements Parsed<T> {}

    /** The text could not be read; the sentence says what is wrong with it. */
    record Refused<T>(String sentence) implements Parsed<T> {}

    static <T> Parsed<T> accepted(T value) {
        return new Accepted<>(value);
    }

    static <T> Parsed<T> refused(String sentence) {
        return new Refused<>(sentence);
    }

    /** The value, or {@link UserError} of bad input with the refusal's sentence. */
    default T orThrow() {
        if (this instanceof Accepted<T> accepted) {
            return accepted.value();
        }
        throw UserError.badInput(((Refused<T>) this).sentence());
    }

    /** The value where there is one. */
    default Optional<T> toOptional() {
        return this instanceof Accepted<T> accepted ? Optional.of(accepted.value()) : Optional.empty();
    }

    /** The sentence where the text was refused. */
    default Optional<String> refusal() {
        return this instanceof Refused<T> refused ? Optional.of(refused.sentence()) : Optional.empty();
    }

    /** Goes on with the value; a refusal stays as it is. */
    default <R> Parsed<R> then(Function<? super T, Parsed<R>> next) {
        return this instanceof Accepted<T> accepted
                ? next.apply(accepted.value())
                : refused(((Refused<T>) this).sentence());
    }
}
