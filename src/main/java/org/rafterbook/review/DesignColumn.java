package org.rafterbook.review;

/**
 * One column of the effects model.
 *
 * @param kind what it stands for
 * @param of the setting, motor, build, share or what was not noted it belongs to, empty where there is only one of its kind
 * @param level the setting's value, empty where it is no level
 * @param priorMean mean of its prior
 * @param priorSd standard deviation of its prior; of no effect for a level
 */
record DesignColumn(Kind kind, String of, String level, double priorMean, double priorSd) {

    /** What a column stands for. */
    enum Kind {
        INTERCEPT,
        TREND,
        TURNS,
        DENSITY,
        ORDER,
        LEVEL,
        /** Flights on which something was not noted that was on others, and takes a mean instead. */
        UNLOGGED,
        MOTOR,
        WINDS,
        BUILD,
        PARTIAL
    }

    static DesignColumn covariate(Kind kind, double priorMean, double priorSd) {
        return new DesignColumn(kind, "", "", priorMean, priorSd);
    }
}
