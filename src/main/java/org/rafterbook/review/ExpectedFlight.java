package org.rafterbook.review;

import java.util.ArrayList;
import java.util.List;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.Counted;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;

/**
 * What the next flight may be expected to do, from this model's own flights. A forecast for preparing a flight, never
 * evidence about a trim.
 *
 * @param model the model's name
 * @param flights flights the time rests on
 * @param atLeast how many of them were cut short and count as "at least"
 * @param sameSettings how many of them flew with exactly these settings
 * @param unscaled how many of them, or all, could not be scaled to the planned turns or the air
 * @param durationS time with even chances of more and less, s
 * @param bandS 90 % band of the time, s
 * @param peak how high it will come, or why that cannot be told
 */
public record ExpectedFlight(
        String model,
        int flights,
        int atLeast,
        int sameSettings,
        int unscaled,
        double durationS,
        Span bandS,
        Answer<PeakHeight> peak) {

    private static final int FEWEST = 3;

    /**
     * How high it will come.
     *
     * @param heightM height with even chances of more and less, m
     * @param bandM 90 % band, m
     * @param flights flights it rests on
     */
    public record PeakHeight(double heightM, Span bandM, int flights) {}

    /**
     * Forecasts the next flight.
     *
     * @param all the model's flights in flying order
     * @param ceiling the heights of the same model with the next flight's settings, or why there are none
     */
    public static Answer<ExpectedFlight> of(
            String model, List<ReviewFlight> all, NextFlight next, Answer<CeilingModel> ceiling) {
        List<ReviewFlight> alike = all.stream()
                .filter(f -> f.counts() && f.fullDurationS() > 0)
                .filter(f -> Math.abs(f.motor().partialFraction() - next.partialFraction()) < 1e-9)
                .toList();
        if (alike.size() < FEWEST) {
            return Answer.cannotTell("Cannot tell yet what to expect: "
                    + Counted.of(alike.size(), "flight") + " of " + model
                    + (next.partialFraction() < 1 ? " on this part of a motor" : " on a full motor")
                    + (alike.size() == 1 ? " counts" : " count") + " so far, " + FEWEST + " are needed.");
        }
        DurationForecast forecast = new DurationForecast(alike, next);
        NormalMixture lnDuration = forecast.lnDuration();
        return Answer.known(new ExpectedFlight(
                model,
                forecast.flights().size(),
                (int) forecast.flights().stream().filter(f -> !f.isExact()).count(),
                (int) forecast.flights().stream()
                        .filter(f -> f.settings().equals(next.settings()) && f.build() == next.build())
                        .count(),
                forecast.unscaled(),
                StrictMath.exp(lnDuration.quantile(0.5)),
                new Span(StrictMath.exp(lnDuration.quantile(0.05)), StrictMath.exp(lnDuration.quantile(0.95))),
                ceiling.then(heights -> peak(heights, next))));
    }

    private static Answer<PeakHeight> peak(CeilingModel heights, NextFlight next) {
        Double torque = next.launchTorqueNm();
        if (torque == null || !(torque > 0)) {
            return Answer.cannotTell("The peak cannot be told without the launch torque.");
        }
        if (torque > heights.flownNm().high() * Ceiling.REACH) {
            return Answer.cannotTell(
                    "This launch torque is more than 10 % above the highest flown, so the peak cannot be" + " told.");
        }
        NormalMixture lnPeak = heights.lnPeak(torque);
        double share = next.partialFraction();
        return Answer.known(new PeakHeight(
                share * StrictMath.exp(lnPeak.quantile(0.5)),
                new Span(share * StrictMath.exp(lnPeak.quantile(0.05)), share * StrictMath.exp(lnPeak.quantile(0.95))),
                heights.flights().size()));
    }

    /** What to expect and what it rests on, sentence by sentence. */
    public List<String> sentences(QuantityFormat format) {
        List<String> sentences = new ArrayList<>();
        sentences.add("About " + ClockTime.minutesSeconds(durationS) + " (90 % band "
                + ClockTime.minutesSeconds(bandS.low()) + " to " + ClockTime.minutesSeconds(bandS.high()) + "), from "
                + Counted.of(flights, "flight") + " of " + model
                + (atLeast > 0 ? ", " + atLeast + " of them \"at least\"" : "") + ".");
        if (sameSettings == 0) {
            sentences.add("None of these flights had these settings: the band allows for what they may do.");
        }
        if (unscaled > 0) {
            sentences.add(Counted.of(unscaled, "flight") + " could not be scaled to these turns or this air.");
        }
        if (peak instanceof Answer.Known<PeakHeight> known) {
            PeakHeight height = known.value();
            sentences.add("Peak about " + format.text(Quantity.HEIGHT, height.heightM()) + " (90 % band "
                    + format.range(
                            Quantity.HEIGHT,
                            height.bandM().low(),
                            height.bandM().high()) + "), from "
                    + Counted.of(height.flights(), "flight") + ".");
        } else if (peak instanceof Answer.CannotTell<PeakHeight> open) {
            sentences.add(open.sentence());
        }
        return List.copyOf(sentences);
    }
}
