package org.rafterbook.review;

/**
 * Which value of one setting to fly next: the one with the highest expected gain over the value estimated best, never
 * further than a quarter of the range from anything flown.
 *
 * @param axis the setting
 * @param value the value to try, in the axis's unit
 * @param against the value estimated best so far, to fly it alternately with
 * @param expectedGain expected gain of log duration over {@code against}
 * @param chance probability that {@code value} beats {@code against}
 */
public record NextTry(SettingInfo axis, double value, double against, double expectedGain, double chance) {

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
        if (!isWorthwhile()) {
            return "You are there, within what 6 flights can show: " + axis.label() + " " + show(against) + ".";
        }
        return "Try " + axis.label() + " " + show(value) + ": expected gain +" + percent() + " %, chance that it beats "
                + show(against) + ": " + Figures.odds(chance) + ". Fly it alternately with " + show(against)
                + ", 3 + 3.";
    }

    private String percent() {
        return Figures.value(100 * Math.expm1(expectedGain), 0.1);
    }

    private String show(double x) {
        double resolution = axis.step() == null ? Figures.decade(Math.max(Math.abs(value), 1) / 100) : axis.step();
        String text = Figures.value(x, resolution);
        return axis.unit().isEmpty() ? text : text + " " + axis.unit();
    }
}
