package org.rafterbook.review;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Worded;

/**
 * A combination of settings to go back to. Best times play no part: the best of many flights is luck more than trim.
 *
 * @param settings the settings to set
 * @param reasons why it is offered
 * @param against estimated effect of going there from what is set now, log duration; null where it is not offered for its
 *     estimate
 */
public record BackChoice(
        Map<String, Level> settings,
        Set<Reason> reasons,
        @Nullable Estimated against) {

    public BackChoice {
        settings = Map.copyOf(settings);
        reasons = Set.copyOf(reasons);
    }

    /** Why a combination is offered. */
    public enum Reason implements Worded {
        /** What was set before the last change. */
        LAST_SETTING("last setting"),
        /** The flyer marked it as well-behaved. */
        WELL_BEHAVED("well-behaved"),
        /** It has the highest estimate. */
        HIGHEST_ESTIMATE("highest estimate");

        private final String word;

        Reason(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    /**
     * An effect as estimated.
     *
     * @param mean of log duration
     * @param sd of log duration
     */
    public record Estimated(double mean, double sd) {

        /** Such as "+3 % (90 % interval −1 to +7 %)". */
        public String words() {
            return Percent.signed(Percent.of(mean)) + " (90 % interval "
                    + Percent.band(Percent.of(mean - 1.645 * sd), Percent.of(mean + 1.645 * sd)) + ")";
        }
    }
}
