package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The effects model of one aeroplane's flights: which columns it has and what each flight has in them.
 *
 * <p>Columns: 1; time in the season from -0.5 to 0.5; ln turns, ln density and order in the session about their means; one
 * column for every value of every setting that has at least two; one for flights without turns and one for those without
 * density where others have them; one a motor where more than one flew, with its winds before, flights without a named one
 * taken together; one a build and one a share of the motor where they differ. Peak height, launch torque and climb are results of
 * the trim and are kept out. The day effects are groups, not columns.
 */
final class Design {

    private static final double INTERCEPT_SD = 1;
    private static final double TREND_SD = 0.08;
    private static final double COVARIATE_SD = 0.3;
    private static final double ORDER_SD = 0.005;
    private static final double MOTOR_SD = 0.02;
    private static final double WINDS_SD = 0.005;
    /** A repaired model, or a motor scaled up from a part, may differ by some per cent: a choice, no source. */
    private static final double BUILD_SD = 0.05;

    /** How far turns or air that nobody noted may lie from the mean they take, in duration: a choice, no source. */
    private static final double UNLOGGED_SD = 0.05;

    private final List<ReviewFlight> flights;
    private final List<String> sessions;
    private final List<DesignColumn> columns = new ArrayList<>();
    private final List<double[]> values = new ArrayList<>();
    private final double[] y;
    private final int filledTurns;
    private final int filledDensity;

    /** The model of the flights that count; there must be at least one. */
    Design(ReviewInput input) {
        flights = input.counted();
        sessions = flights.stream().map(ReviewFlight::sessionId).distinct().toList();
        y = flights.stream().mapToDouble(f -> StrictMath.log(f.fullDurationS())).toArray();
        add(
                DesignColumn.covariate(
                        DesignColumn.Kind.INTERCEPT, Arrays.stream(y).average().orElseThrow(), INTERCEPT_SD),
                f -> 1);
        addTrend();
        Covariate turns = Covariate.lnTurns(flights);
        Covariate density = Covariate.lnDensity(flights);
        filledTurns = addCovariate(DesignColumn.Kind.TURNS, 1, COVARIATE_SD, turns);
        filledDensity = addCovariate(DesignColumn.Kind.DENSITY, 0.5, COVARIATE_SD, density);
        addUnlogged("turns", turns);
        addUnlogged("air density", density);
        addCovariate(
                DesignColumn.Kind.ORDER, 0, ORDER_SD, Covariate.of(flights, f -> Double.valueOf(f.orderInSession())));
        input.settingKeys().forEach(this::addSetting);
        addMotors();
        addNames(DesignColumn.Kind.BUILD, f -> Integer.toString(f.build()), BUILD_SD);
        addPartials();
    }

    List<ReviewFlight> flights() {
        return flights;
    }

    List<String> sessions() {
        return sessions;
    }

    List<DesignColumn> columns() {
        return columns;
    }

    double[] y() {
        return y.clone();
    }

    /** Number of flights whose turns were filled in, all of them where none has any. */
    int filledTurns() {
        return filledTurns;
    }

    /** Number of flights whose density was filled in, all of them where none has any. */
    int filledDensity() {
        return filledDensity;
    }

    /** True where a day holds two flights or more; else days and flights scatter as one. */
    boolean isAnyDayRepeated() {
        return sessions.size() < flights.size();
    }

    /** What the model holds equal beside the settings, in the words of a flyer; only what has a column. */
    List<String> heldEqual() {
        return columns.stream()
                .map(column -> switch (column.kind()) {
                    case INTERCEPT, LEVEL, UNLOGGED -> "";
                    case TREND -> "the season's trend";
                    case TURNS -> "turns";
                    case DENSITY -> "air density";
                    case ORDER -> "order in the session";
                    case MOTOR -> "the motor";
                    case WINDS -> "the winds it had before";
                    case BUILD -> "the build";
                    case PARTIAL -> "the share of the motor";
                })
                .filter(words -> !words.isEmpty())
                .distinct()
                .toList();
    }

    /** What one flight has in one column. */
    double at(int flight, int column) {
        return values.get(column)[flight];
    }

    /** Index of the only column of its kind, -1 where there is none. */
    int column(DesignColumn.Kind kind) {
        for (int j = 0; j < columns.size(); j++) {
            if (columns.get(j).kind() == kind) {
                return j;
            }
        }
        return -1;
    }

    /** Coefficients of the difference of two values of a setting; null where one of them has no column. */
    double @Nullable [] contrast(String setting, Level from, Level to) {
        int a = level(setting, from.key());
        int b = level(setting, to.key());
        if (a < 0 || b < 0) {
            return null;
        }
        double[] contrast = new double[columns.size()];
        contrast[a] = -1;
        contrast[b] = 1;
        return contrast;
    }

    /** Coefficients of one column alone. */
    double[] unit(int column) {
        double[] unit = new double[columns.size()];
        unit[column] = 1;
        return unit;
    }

    /** The censored mixed model with its priors, Student's errors with six degrees of freedom. */
    CensoredModel model() {
        return model(6);
    }

    /** The same with errors of these degrees of freedom, infinite for normal ones. */
    CensoredModel model(double errorDegrees) {
        double[] high = y.clone();
        for (int i = 0; i < high.length; i++) {
            if (!flights.get(i).isExact()) {
                high[i] = Double.POSITIVE_INFINITY;
            }
        }
        boolean[] isLevel = new boolean[columns.size()];
        for (int j = 0; j < isLevel.length; j++) {
            isLevel[j] = columns.get(j).kind() == DesignColumn.Kind.LEVEL;
        }
        return new CensoredModel(
                rows(),
                y.clone(),
                high,
                each(DesignColumn::priorMean),
                each(DesignColumn::priorSd),
                isLevel,
                ScalePrior.halfT(3, 0.10),
                ScalePrior.halfT(3, 0.04),
                LevelPrior.learned(4, 0.08),
                errorDegrees);
    }

    private SparseRows rows() {
        double[][] dense = new double[flights.size()][columns.size()];
        int[] group = new int[flights.size()];
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (int i = 0; i < dense.length; i++) {
            for (int j = 0; j < columns.size(); j++) {
                dense[i][j] = at(i, j);
            }
            String session = flights.get(i).sessionId();
            numbers.putIfAbsent(session, numbers.size());
            group[i] = Objects.requireNonNull(numbers.get(session));
        }
        return new SparseRows(dense, columns.size(), group, sessions.size());
    }

    private double[] each(ToDoubleFunction<DesignColumn> read) {
        return columns.stream().mapToDouble(read).toArray();
    }

    private int level(String setting, String key) {
        for (int j = 0; j < columns.size(); j++) {
            DesignColumn column = columns.get(j);
            if (column.kind() == DesignColumn.Kind.LEVEL
                    && column.of().equals(setting)
                    && column.level().equals(key)) {
                return j;
            }
        }
        return -1;
    }

    private void addTrend() {
        long first = flights.stream()
                .mapToLong(f -> f.sessionDate().toEpochDay())
                .min()
                .orElseThrow();
        long last = flights.stream()
                .mapToLong(f -> f.sessionDate().toEpochDay())
                .max()
                .orElseThrow();
        if (last > first) {
            add(
                    DesignColumn.covariate(DesignColumn.Kind.TREND, 0, TREND_SD),
                    f -> (double) (f.sessionDate().toEpochDay() - first) / (last - first) - 0.5);
        }
    }

    private int addCovariate(DesignColumn.Kind kind, double priorMean, double priorSd, @Nullable Covariate covariate) {
        if (covariate == null) {
            return flights.size();
        }
        double mean = covariate.mean();
        double[] column = new double[flights.size()];
        boolean varies = false;
        for (int i = 0; i < column.length; i++) {
            column[i] = covariate.at(i) - mean;
            varies |= Math.abs(column[i]) > 1e-12;
        }
        if (varies) {
            columns.add(DesignColumn.covariate(kind, priorMean, priorSd));
            values.add(column);
        }
        return covariate.filled();
    }

    /** A flight that does not carry the setting has a value of its own, so that it does not count as any other. */
    private void addSetting(String setting) {
        Set<String> keys =
                flights.stream().map(f -> levelKey(f, setting)).collect(Collectors.toCollection(LinkedHashSet::new));
        if (keys.size() > 1) {
            for (String key : keys) {
                add(
                        new DesignColumn(DesignColumn.Kind.LEVEL, setting, key, 0, 0),
                        f -> levelKey(f, setting).equals(key) ? 1 : 0);
            }
        }
    }

    private static String levelKey(ReviewFlight flight, String setting) {
        Level level = flight.settings().get(setting);
        return level == null ? "" : level.key();
    }

    /** A mean taken for what nobody noted is not what was there: where only some flights lack it, they differ by it. */
    private void addUnlogged(String what, @Nullable Covariate covariate) {
        if (covariate != null && covariate.filled() > 0) {
            columns.add(new DesignColumn(DesignColumn.Kind.UNLOGGED, what, "", 0, UNLOGGED_SD));
            values.add(IntStream.range(0, flights.size())
                    .mapToDouble(i -> covariate.isFilled(i) ? 1 : 0)
                    .toArray());
        }
    }

    private void addMotors() {
        addNames(
                DesignColumn.Kind.MOTOR,
                f -> Objects.requireNonNullElse(f.motor().motorId(), ""),
                MOTOR_SD);
        if (flights.stream()
                        .map(f -> f.motor().motorId())
                        .filter(Objects::nonNull)
                        .distinct()
                        .count()
                > 1) {
            addCovariate(DesignColumn.Kind.WINDS, 0, WINDS_SD, Covariate.of(flights, f -> {
                Integer winds = f.motor().windsBefore();
                return winds == null ? null : Double.valueOf(winds);
            }));
        }
    }

    private void addPartials() {
        flights.stream()
                .filter(f -> f.motor().isPartial())
                .map(f -> f.motor().partialFraction())
                .collect(Collectors.toCollection(TreeSet::new))
                .forEach(share -> add(
                        new DesignColumn(DesignColumn.Kind.PARTIAL, share.toString(), "", 0, BUILD_SD),
                        f -> f.motor().partialFraction() == share ? 1 : 0));
    }

    private void addNames(DesignColumn.Kind kind, Function<ReviewFlight, String> name, double priorSd) {
        Set<String> names = flights.stream().map(name).collect(Collectors.toCollection(LinkedHashSet::new));
        if (names.size() > 1) {
            for (String own : names) {
                add(new DesignColumn(kind, own, "", 0, priorSd), f -> own.equals(name.apply(f)) ? 1 : 0);
            }
        }
    }

    private void add(DesignColumn column, ToDoubleFunction<ReviewFlight> value) {
        columns.add(column);
        values.add(flights.stream().mapToDouble(value).toArray());
    }
}
