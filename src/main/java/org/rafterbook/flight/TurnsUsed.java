package org.rafterbook.flight;

import java.util.Locale;
import java.util.Optional;
import org.rafterbook.units.UserError;

/**
 * What became of the turns of one flight; all are motor turns.
 *
 * @param wound turns put in
 * @param backedOff turns taken out again before launch
 * @param left turns left at landing
 */
public record TurnsUsed(double wound, double backedOff, double left) {

    private static final double SECONDS_PER_MINUTE = 60;

    public TurnsUsed {
        refusal(wound, backedOff, left).ifPresent(sentence -> {
            throw UserError.badInput(sentence);
        });
    }

    /** Why three numbers of turns cannot belong to one flight; empty where they can. */
    public static Optional<String> refusal(double wound, double backedOff, double left) {
        if (!(wound >= 0 && backedOff >= 0 && left >= 0)) {
            return Optional.of("Turns cannot be negative.");
        }
        if (backedOff > wound) {
            return Optional.of(String.format(
                    Locale.ROOT, "%.0f turns backed off are more than the %.0f wound.", backedOff, wound));
        }
        if (left > wound - backedOff) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "%.0f turns left are more than the %.0f on the motor at launch.",
                    left,
                    wound - backedOff));
        }
        return Optional.empty();
    }

    /** Turns on the motor at launch. */
    public double atLaunch() {
        return wound - backedOff;
    }

    /** Turns the propeller made: wound less backed off less left. */
    public double used() {
        return atLaunch() - left;
    }

    /** Turns left over turns at launch, the share that came back; NaN where there were none. */
    public double shareLeft() {
        return left / atLaunch();
    }

    /** Mean speed of the propeller over the flight, turns a minute; NaN where the time is not above zero. */
    public double meanRpm(double durationS) {
        return durationS > 0 ? used() / durationS * SECONDS_PER_MINUTE : Double.NaN;
    }
}
