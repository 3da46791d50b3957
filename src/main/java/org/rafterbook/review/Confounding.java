package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Tells which changes of a season can be told apart from everything that changed with them.
 *
 * <p>Motors are drawn from a stock much as days are from a season. A change that always went with a change of motor is
 * told from it where either side flew on at least two motors; with one motor on a side it has moved together with it.
 */
final class Confounding {

    /** What a change moved together with that was made between two days and never undone. */
    static final String DATE = "date";

    /** More partners than this are taken all together instead of searched for the fewest that do. */
    private static final int MOST_SEARCHED = 12;

    private final Design design;
    private final List<TrimStep> steps;
    private final List<ReviewFlight> clean;
    private final NullSpace withinDays;
    private final NullSpace acrossDays;
    private final NullSpace withinDaysAnyMotor;
    private final NullSpace acrossDaysAnyMotor;

    Confounding(Design design, List<TrimStep> steps) {
        this.design = design;
        this.steps = steps;
        clean = design.flights().stream().filter(ReviewFlight::isExact).toList();
        Predicate<DesignColumn> all = column -> column.kind() != DesignColumn.Kind.ORDER;
        Predicate<DesignColumn> anyMotor =
                all.and(column -> column.kind() != DesignColumn.Kind.MOTOR && column.kind() != DesignColumn.Kind.WINDS);
        withinDays = new NullSpace(design, all, true);
        acrossDays = new NullSpace(design, all, false);
        boolean motors = design.column(DesignColumn.Kind.MOTOR) >= 0;
        withinDaysAnyMotor = motors ? new NullSpace(design, anyMotor, true) : withinDays;
        acrossDaysAnyMotor = motors ? new NullSpace(design, anyMotor, false) : acrossDays;
    }

    Verdict judge(Pair pair) {
        if (clean.stream().noneMatch(pair::isFrom) || clean.stream().noneMatch(pair::isTo)) {
            return Verdict.alone(Comparison.ONE_SIDE_UNFLOWN, null);
        }
        double[] contrast = Objects.requireNonNull(design.contrast(pair.setting(), pair.from(), pair.to()));
        boolean severalMotors = motors(pair::isFrom) > 1 && motors(pair::isTo) > 1;
        if (withinDays.tells(contrast) || (severalMotors && withinDaysAnyMotor.tells(contrast))) {
            return Verdict.alone(Comparison.SAME_DAY, contrast);
        }
        if (acrossDays.tells(contrast) || (severalMotors && acrossDaysAnyMotor.tells(contrast))) {
            return Verdict.alone(Comparison.ACROSS_DAYS, contrast);
        }
        return joint(pair, contrast);
    }

    private long motors(Predicate<ReviewFlight> side) {
        return clean.stream()
                .filter(side)
                .map(f -> f.motor().motorId())
                .filter(Objects::nonNull)
                .distinct()
                .count();
    }

    private Verdict joint(Pair pair, double[] contrast) {
        List<Partner> mixed = List.of();
        for (List<Partner> occasion : occasions(pair)) {
            List<Partner> open = occasion.stream()
                    .filter(p -> !acrossDays.tells(p.contrast()))
                    .toList();
            List<Partner> fewest = fewest(contrast, open);
            if (!fewest.isEmpty()) {
                double[] sum = sum(contrast, fewest);
                return new Verdict(Comparison.MOVED_TOGETHER, sum, withinDays.tells(sum), sorted(fewest));
            }
            if (mixed.isEmpty()) {
                mixed = sorted(open);
            }
        }
        return new Verdict(Comparison.MOVED_TOGETHER, null, false, mixed.isEmpty() ? scales(contrast) : mixed);
    }

    private static List<Partner> sorted(List<Partner> partners) {
        return partners.stream()
                .sorted(Comparator.comparing(p -> !p.isSetting()))
                .toList();
    }

    /** Measured scales, noted or not, that run along with the contrast: time in the season, turns, air, winds. */
    private List<Partner> scales(double[] contrast) {
        double[] met = acrossDays.meets(contrast);
        List<Partner> partners = new ArrayList<>();
        for (int j = 0; j < contrast.length; j++) {
            DesignColumn column = design.columns().get(j);
            String name = switch (column.kind()) {
                case TREND -> DATE;
                case TURNS -> "turns";
                case DENSITY -> "air density";
                case WINDS -> "winds of the motor";
                case UNLOGGED -> column.of();
                default -> "";
            };
            double[] own = acrossDays.meets(design.unit(j));
            if (!name.isEmpty()
                    && partners.stream().noneMatch(p -> p.name().equals(name))
                    && IntStream.range(0, met.length).anyMatch(q -> met[q] != 0 && own[q] != 0)) {
                partners.add(Partner.unnamed(name, design.unit(j)));
            }
        }
        return partners;
    }

    /** The smallest choice of partners whose joint effect with the contrast can be told, empty where none can. */
    private List<Partner> fewest(double[] contrast, List<Partner> partners) {
        if (partners.size() > MOST_SEARCHED) {
            return acrossDays.tells(sum(contrast, partners)) ? partners : List.of();
        }
        IntPredicate mayTell = mayTell(contrast, partners);
        return IntStream.range(1, 1 << partners.size())
                .filter(mayTell)
                .boxed()
                .sorted(Comparator.comparingInt(Integer::bitCount))
                .map(mask -> IntStream.range(0, partners.size())
                        .filter(k -> (mask >> k & 1) == 1)
                        .mapToObj(partners::get)
                        .toList())
                .filter(choice -> acrossDays.tells(sum(contrast, choice)))
                .findFirst()
                .orElse(List.of());
    }

    /** Sets aside at little cost the choices, as bits of a mask, whose joint effect cannot be told. */
    private IntPredicate mayTell(double[] contrast, List<Partner> partners) {
        double[] own = acrossDays.along(contrast);
        double[][] along =
                partners.stream().map(p -> acrossDays.along(p.contrast())).toArray(double[][]::new);
        double most = NullSpace.leastMet(contrast)
                + partners.stream()
                        .mapToDouble(p -> NullSpace.leastMet(p.contrast()))
                        .sum();
        return mask -> IntStream.range(0, own.length).allMatch(q -> {
            double met = own[q];
            for (int k = 0; k < along.length; k++) {
                met += (mask >> k & 1) * along[k][q];
            }
            return Math.abs(met) <= most;
        });
    }

    private static double[] sum(double[] contrast, List<Partner> partners) {
        double[] sum = contrast.clone();
        for (Partner partner : partners) {
            for (int j = 0; j < sum.length; j++) {
                sum[j] += partner.contrast()[j];
            }
        }
        return sum;
    }

    /** What else changed each time the pair changed: between neighbouring clean flights, then between riggings. */
    private List<List<Partner>> occasions(Pair pair) {
        List<List<Partner>> occasions = new ArrayList<>();
        for (int i = 1; i < clean.size(); i++) {
            ReviewFlight before = clean.get(i - 1);
            ReviewFlight after = clean.get(i);
            if (pair.isFrom(before) && pair.isTo(after)) {
                occasions.add(between(pair, before, after));
            } else if (pair.isTo(before) && pair.isFrom(after)) {
                occasions.add(between(pair, after, before));
            }
        }
        for (TrimStep step : steps) {
            if (step.changed().contains(pair.setting())) {
                boolean onward = step.from(pair.setting()).same(pair.from())
                        && step.to(pair.setting()).same(pair.to());
                boolean back = step.from(pair.setting()).same(pair.to())
                        && step.to(pair.setting()).same(pair.from());
                if (onward || back) {
                    List<Partner> partners = settings(pair, step);
                    occasions.add(
                            onward
                                    ? partners
                                    : partners.stream().map(Partner::turned).toList());
                }
            }
        }
        return occasions;
    }

    private List<Partner> between(Pair pair, ReviewFlight from, ReviewFlight to) {
        List<Partner> partners = new ArrayList<>(settings(pair, new TrimStep(from.settings(), to.settings())));
        int a = design.flights().indexOf(from);
        int b = design.flights().indexOf(to);
        addNuisance(partners, "motor", DesignColumn.Kind.MOTOR, a, b);
        addNuisance(partners, "build", DesignColumn.Kind.BUILD, a, b);
        addNuisance(partners, "share of the motor", DesignColumn.Kind.PARTIAL, a, b);
        return partners;
    }

    private List<Partner> settings(Pair pair, TrimStep step) {
        List<Partner> partners = new ArrayList<>();
        for (String other : step.changed()) {
            double[] contrast = design.contrast(other, step.from(other), step.to(other));
            if (!other.equals(pair.setting()) && contrast != null) {
                partners.add(new Partner(other, step.from(other), step.to(other), contrast));
            }
        }
        return partners;
    }

    private void addNuisance(List<Partner> partners, String name, DesignColumn.Kind kind, int from, int to) {
        double[] contrast = new double[design.columns().size()];
        for (int j = 0; j < contrast.length; j++) {
            if (design.columns().get(j).kind() == kind) {
                contrast[j] = design.at(to, j) - design.at(from, j);
            }
        }
        if (Arrays.stream(contrast).anyMatch(c -> c != 0)) {
            partners.add(Partner.unnamed(name, contrast));
        }
    }
}
