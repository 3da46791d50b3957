package org.rafterbook.review;

import java.util.function.Function;

/**
 * An estimate, or the sentence that says why there is none and what is needed next.
 *
 * @param <T> what is estimated
 */
public sealed interface Answer<T> {

    /** The flights can tell. */
    record Known<T>(T value) implements Answer<T> {}

    /** The flights cannot tell. */
    record CannotTell<T>(String sentence) implements Answer<T> {}

    static <T> Answer<T> known(T value) {
        return new Known<>(value);
    }

    static <T> Answer<T> cannotTell(String sentence) {
        return new CannotTell<>(sentence);
    }

    /** What {@code step} makes of the estimate; a sentence stays the sentence it is. */
    default <U> Answer<U> then(Function<T, Answer<U>> step) {
        if (this instanceof Known<T> known) {
            return step.apply(known.value());
        }
        return cannotTell(((CannotTell<T>) this).sentence());
    }
}
