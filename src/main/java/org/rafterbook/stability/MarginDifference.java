package org.rafterbook.stability;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The margin of one version less that of another, with the band of the difference itself: both are computed under the same
 * perturbations, so what is unknown about both alike drops out.
 *
 * @param points difference of the margins, fraction of the chord (0.01 is one point)
 * @param distanceM difference of the distances between balance and neutral point, m
 * @param bandPoints half the range of the difference over all perturbations, fraction of the chord
 * @param bandM half the range of the distance's difference, m
 */
public record MarginDifference(double points, double distanceM, double bandPoints, double bandM) {

    /** This version less the other; null where a margin is unknown. */
    public static @Nullable MarginDifference between(
            StabilityAnswer version, @Nullable Double balanceM, StabilityAnswer other, @Nullable Double otherBalanceM) {
        Double a = version.neutralPointM();
        Double b = other.neutralPointM();
        Double chordA = version.meanChordM();
        Double chordB = other.meanChordM();
        if (a == null || b == null || chordA == null || chordB == null || balanceM == null || otherBalanceM == null) {
            return null;
        }
        Range points = new Range();
        Range distance = new Range();
        points.add((a - balanceM) / chordA - (b - otherBalanceM) / chordB);
        distance.add((a - balanceM) - (b - otherBalanceM));
        for (Map.Entry<Perturbation, Double> entry :
                version.perturbedNeutralPointM().entrySet()) {
            Double moved = other.perturbedNeutralPointM().get(entry.getKey());
            if (moved != null) {
                points.add((entry.getValue() - balanceM) / chordA - (moved - otherBalanceM) / chordB);
                distance.add((entry.getValue() - balanceM) - (moved - otherBalanceM));
            }
        }
        return new MarginDifference(points.first, distance.first, points.half(), distance.half());
    }

    /** The first value and the range of all. */
    static final class Range {
        private double first = Double.NaN;
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;

        void add(double value) {
            if (Double.isNaN(first)) {
                first = value;
            }
            least = Math.min(least, value);
            most = Math.max(most, value);
        }

        double half() {
            return most > least ? (most - least) / 2 : 0;
        }
    }
}
