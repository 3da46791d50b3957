package org.rafterbook.review;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a season's flights say beside the changes.
 *
 * @param sigma scale of the flights' errors on one day, Student's with six degrees of freedom, of ln duration
 * @param dayScatter standard deviation from day to day; null where no day holds two flights that count, as it then cannot
 *     be told from the scatter of flights
 * @param levelScale typical size tau of a change's effect
 * @param trend drift over the whole season whatever was changed; null where all was flown on one date
 * @param turnsSlope per cent of duration per per cent of turns; null where turns are unknown or never differed
 * @param heldEqual what the model holds equal where it compares, such as "turns"; empty where nothing else differed
 */
public record SeasonFigures(
        double sigma,
        @Nullable Double dayScatter,
        double levelScale,
        @Nullable Estimate trend,
        @Nullable Estimate turnsSlope,
        List<String> heldEqual) {

    public SeasonFigures {
        heldEqual = List.copyOf(heldEqual);
    }

    /** Standard deviation from flight to flight on one day, of ln duration. */
    public double flightScatter() {
        return Math.sqrt(SeasonFit.STUDENT_VARIANCE) * sigma;
    }
}
