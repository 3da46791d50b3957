package org.rafterbook.review;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;

/**
 * A planned comparison of two values of one setting: as many flights with each, on one day, in an order drawn at random
 * within pairs that hold both values.
 *
 * @param setting the setting compared
 * @param a one value
 * @param b the other value
 * @param perSide flights planned with each value
 * @param seed the order was drawn with
 * @param order the order drawn, one side a flight
 */
public record TrialPlan(SettingInfo setting, Level a, Level b, int perSide, long seed, List<Side> order) {

    /** Flights with each value where nothing else is said. */
    public static final int USUAL_PER_SIDE = 3;

    /** One pair alone has no interval. */
    public static final int LEAST_PER_SIDE = 2;

    public static final int MOST_PER_SIDE = 30;

    /** Which of the two values. */
    public enum Side {
        A,
        B
    }

    public TrialPlan {
        order = List.copyOf(order);
        if (order.size() != 2 * perSide
                || order.stream().filter(s -> s == Side.A).count() != perSide) {
            throw new IllegalArgumentException("order " + order + " of " + perSide + " + " + perSide);
        }
    }

    /**
     * Draws the order.
     *
     * @param seed kept with the plan: the same seed draws the same order on every machine
     * @throws UserError where the values are the same or the number of flights makes no trial
     */
    public static TrialPlan draw(SettingInfo setting, Level a, Level b, int perSide, long seed) {
        if (a.same(b)) {
            throw UserError.badInput(
                    "A trial compares two values of " + setting.label() + "; both are " + setting.show(a) + ".");
        }
        if (perSide < LEAST_PER_SIDE || perSide > MOST_PER_SIDE) {
            throw UserError.badInput("A trial takes " + LEAST_PER_SIDE + " to " + MOST_PER_SIDE
                    + " flights with each value, not " + perSide + ".");
        }
        RandomStream random = new RandomStream(seed);
        List<Side> order = new ArrayList<>();
        for (int pair = 0; pair < perSide; pair++) {
            boolean firstA = random.uniform() < 0.5;
            order.add(firstA ? Side.A : Side.B);
            order.add(firstA ? Side.B : Side.A);
        }
        return new TrialPlan(setting, a, b, perSide, seed, order);
    }

    /** The plan as it was kept, its order as letters A and B. */
    public static TrialPlan kept(SettingInfo setting, Level a, Level b, int perSide, long seed, String drawnOrder) {
        return new TrialPlan(
                setting,
                a,
                b,
                perSide,
                seed,
                drawnOrder
                        .chars()
                        .mapToObj(letter -> Side.valueOf(Character.toString(letter)))
                        .toList());
    }

    /**
     * Refuses a second trial of a model.
     *
     * @param open the trial the model has open, null where it has none
     */
    public static void requireNoneOpen(String model, @Nullable TrialPlan open) {
        if (open != null) {
            throw UserError.badInput(model + " has a trial open, " + open.comparedInWords()
                    + ". Fly it to its end, or end it, before the next one.");
        }
    }

    /** The order as letters, to be kept. */
    public String drawnOrder() {
        return order.stream().map(Side::name).collect(Collectors.joining());
    }

    public Level level(Side side) {
        return side == Side.A ? a : b;
    }

    /** Which side a value is on, null where it is neither. */
    public @Nullable Side side(Level level) {
        return level.same(a) ? Side.A : level.same(b) ? Side.B : null;
    }

    /** Such as "Trial: wing at 149 or 146 mm". */
    public String title() {
        return "Trial: " + comparedInWords();
    }

    /** How the order came about, such as "3 + 3 flights on one day, order drawn at the start." */
    public String orderInWords() {
        return perSide + " + " + perSide
                + " flights on one day, order drawn at the start; each pair holds both values.";
    }

    /** When it is judged. */
    public String judgedWhen() {
        return "Judged when all " + order.size() + " are flown, or when you end it.";
    }

    private String comparedInWords() {
        return setting.label() + " at " + a.label() + " or " + setting.show(b);
    }
}
