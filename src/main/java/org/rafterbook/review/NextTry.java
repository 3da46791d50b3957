package org.rafterbook.review;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Which value of one setting to fly next: the one with the highest expected gain over the flown value estimated best, never
 * further than a quarter of the range from anything flown.
 *
 * @param axis the setting
 * @param value the value to try, in the axis's unit
 * @param against the flown value estimated best, to fly it alternately with
 * @param expectedGain expected gain of log duration over {@code against}
 * @param chance probability that {@code value} beats {@code against}
 * @param difference mean difference of log duration to {@code against}
 * @param sd standard deviation of that difference as it is known now
 */
public record NextTry(
        SettingInfo axis,
        double value,
        double against,
        double expectedGain,
        double chance,
        double difference,
        double sd) {

    /** Below this expected gain nothing is worth trying: 0.3 %, what six flights can show. */
    public static final double WORTHWHILE = 0.003;

    /** No value is tried further from anything flown, as a share of the range: the curve is only a model. */
    static final double REACH = 0.25;

    /** False where the best is reached within what the next six flights could show. */
    public boolean isWorthwhile() {
        return expectedGain >= WORTHWHILE;
    }

    /** What to do next, in words. */
    public String sentence() {
        return sentence("");
    }

    /**
     * The same with a trim named, for a margin: it cannot be set, and a trim that has it can.
     *
     * @param trim the version that was flown at {@code against}, empty where none is known
     */
    public String sentence(String trim) {
        String incumbent = axis.show(against);
        if (!isWorthwhile()) {
            return "You are there, within what 6 flights can show: " + axis.label() + " " + incumbent + ".";
        }
        String other = axis.isSetting()
                ? incumbent
                : trim.isEmpty() ? "a trim flown at " + incumbent : trim + ", flown at " + incumbent;
        return "Try " + axis.label() + " " + axis.show(value) + ": expected gain +" + percent()
                + " %, chance that it beats " + incumbent + ": " + Figures.odds(chance) + ". Fly it alternately with "
                + other + ", 3 + 3.";
    }

    /** One of the two values, without what binary arithmetic leaves behind. */
    static Level level(double x) {
        return Level.number(new BigDecimal(x).round(new MathContext(10)).doubleValue());
    }

    private String percent() {
        return Figures.value(100 * Math.expm1(expectedGain), 0.1);
    }
}
