package org.rafterbook.ui.action;

import org.rafterbook.units.UserError;

/**
 * What the bar under the head says.
 *
 * @param what what happened, one sentence
 * @param rest what is safe and what to do; may be empty
 */
public record Problem(String what, String rest) {

    /** The sentence of a {@link UserError}, or what can be said of a fault of the program's own. */
    public static Problem of(Throwable failure) {
        if (failure instanceof UserError error) {
            return new Problem(error.sentence(), "");
        }
        return new Problem(
                "That did not work: a fault in the program ("
                        + failure.getClass().getSimpleName() + ").",
                "Everything kept so far is safe. Try it another way; the log tells what went wrong.");
    }
}
