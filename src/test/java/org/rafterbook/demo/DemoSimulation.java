package org.rafterbook.demo;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.TreeMap;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.Recovered;

/**
 * Makes up single flights. Time aloft goes with the energy used, with mass^-1.5, with air density^0.5 and with the
 * rubber's temperature, times what the trim does, the day, and the luck of the flight; peak height goes with torque at
 * launch. The figures are in the README that is written beside the data.
 */
final class DemoSimulation {

    static final double DAY_SD = 0.03;
    static final double FLIGHT_SD = 0.035;
    static final double TREND = 0.02;
    static final double PER_WIND = 0.004;
    static final double PER_DEGREE = 0.008;
    static final double HEIGHT_DAY_SD = 0.03;
    static final double HEIGHT_SD = 0.05;
    static final double HEIGHT_SLOPE = 0.9;
    static final double LAMPS_M = 7.9;
    static final double BEAMS_M = 9.4;
    static final double BOARD_M = 4.0;
    private static final double LAMP_CHANCE = 0.7;
    private static final double USUAL_WIND = 0.9;

    /** What holds for a whole evening. */
    record Day(double luck, double height, double seasonShare) {}

    private final DemoDice dice;
    private final Map<DemoModel, Double> torqueShare = new TreeMap<>();

    DemoSimulation(DemoDice dice) {
        this.dice = dice;
        for (DemoModel model : DemoModel.values()) {
            torqueShare.put(model, 0.9);
        }
    }

    Day day(double seasonShare) {
        return new Day(dice.normal(DAY_SD), dice.normal(HEIGHT_DAY_SD), seasonShare);
    }

    /** A flight on a fresh wind, order counted within the evening. */
    DemoFlight fly(
            DemoModel model,
            Map<String, String> settings,
            DemoMotors.DemoMotor motor,
            LocalDateTime at,
            Day day,
            double temperatureC,
            double density,
            int order,
            boolean mustTouch) {
        DemoFlight f = new DemoFlight(model, settings, at, motor);
        wind(f, order);
        double peak = model.usualPeakM
                * motor.fraction
                * StrictMath.pow(f.launchTorque / model.usualTorque, HEIGHT_SLOPE)
                * StrictMath.exp(day.height() + dice.normal(HEIGHT_SD) + 0.01 * (temperatureC - 18));
        if (mustTouch) {
            peak = LAMPS_M + 0.3;
        }
        double share = model.shareLeft + dice.normal(0.015);
        f.left = StrictMath.rint(share * f.wound);
        double seconds = time(f, share, day, temperatureC, density);
        f.seconds = seconds;
        handle(f);
        touch(f, peak, mustTouch);
        steer(f);
        observe(f, peak);
        f.seconds = DemoDice.rounded(f.seconds, 10);
        f.note = DemoNotes.of(f, model.margin(settings), dice);
        motor.winds++;
        return f;
    }

    private void wind(DemoFlight f, int order) {
        double breaking = f.motor.breakingTurns();
        double part = 0.875 + 0.0025 * order + dice.normal(0.012);
        f.wound = StrictMath.rint(StrictMath.min(part, 0.96) * breaking / 10) * 10;
        double wound = f.wound / breaking;
        f.maxTorque =
                DemoDice.rounded(f.motor.size.highestTorque() * wound * wound * StrictMath.exp(dice.normal(0.03)), 20);
        double wanted = f.model.usualTorque * torqueShare.get(f.model) * StrictMath.exp(dice.normal(0.02));
        double remaining = DemoRubber.shareAtTorque(wanted / f.maxTorque);
        f.backedOff = StrictMath.rint((1 - remaining) * f.wound / 5) * 5;
        f.launchTorque = DemoDice.rounded(f.maxTorque * DemoRubber.torque(1 - f.backedOff / f.wound), 20);
    }

    private double time(DemoFlight f, double shareLeft, Day day, double temperatureC, double density) {
        DemoModel m = f.model;
        double wound = f.wound / f.motor.breakingTurns();
        double energy = f.motor.size.massG()
                * f.motor.batch.energy
                * wound
                * wound
                * (DemoRubber.energy(1 - f.backedOff / f.wound) - DemoRubber.energy(shareLeft));
        double usual =
                m.motor.massG() * USUAL_WIND * USUAL_WIND * (DemoRubber.energy(0.96) - DemoRubber.energy(m.shareLeft));
        double ballast = f.settings.containsKey("ballast.mass_g")
                ? Double.parseDouble(f.settings.get("ballast.mass_g"))
                        - Double.parseDouble(m.asBuilt().get("ballast.mass_g"))
                : 0;
        // A spacer brings a part of a motor back to the mass of a full one.
        double mass = m.massG + ballast + f.motor.size.massG() / f.motor.fraction - m.motor.massG();
        return m.topTimeS
                * energy
                / usual
                * StrictMath.pow(mass / m.massG, -1.5)
                * StrictMath.sqrt(density / 1.2)
                * StrictMath.exp(m.trim(f.settings)
                        + PER_DEGREE * (temperatureC - 18)
                        - PER_WIND * f.motor.winds
                        + TREND * (day.seasonShare() - 0.5)
                        + day.luck()
                        + dice.normal(FLIGHT_SD));
    }

    private void handle(DemoFlight f) {
        double margin = f.model.margin(f.settings);
        String incidence = f.model == DemoModel.QUIRE ? "upper.incidence_deg" : "wing.incidence_deg";
        double steep = StrictMath.max(0, Double.parseDouble(f.settings.get(incidence)) - 2.75);
        int stalls = dice.count(0.25 + 1.2 * steep + 0.3 * StrictMath.max(0, 6 - margin));
        if (dice.chance(0.8)) {
            f.stalls = stalls;
        }
        if (stalls > 1) {
            f.happened(FlightEventKind.STALLED, seconds(f) * dice.between(0.04, 0.2), null, null);
        }
        if (dice.chance(0.24)) {
            upset(f, dice.between(0.1, 0.6));
        }
    }

    private void upset(DemoFlight f, double when) {
        double margin = f.model.margin(f.settings);
        boolean recovers = dice.chance(1 / (1 + StrictMath.exp(-(margin - 5) / 2)));
        f.recovered = recovers ? Recovered.YES : Recovered.NO;
        double second = seconds(f) * when;
        f.happened(recovers ? FlightEventKind.RECOVERED : FlightEventKind.NOT_RECOVERED, second, null, null);
        if (!recovers) {
            f.seconds = seconds(f) * 0.95;
        }
    }

    private void touch(DemoFlight f, double peak, boolean must) {
        boolean beams = peak > BEAMS_M;
        boolean lamps = !beams && peak > LAMPS_M && (must || dice.chance(LAMP_CHANCE));
        double share = torqueShare.get(f.model);
        if (!beams && !lamps) {
            // The flyer asks for a little more each time and backs off after a touch.
            torqueShare.put(f.model, StrictMath.min(1.1, share + 0.007));
            return;
        }
        torqueShare.put(f.model, share * 0.94);
        double loss = dice.between(0, 0.2);
        double second = seconds(f) * dice.between(0.3, 0.4);
        f.happened(FlightEventKind.TOUCHED, second, null, beams ? DemoSeason.BEAMS : DemoSeason.LAMPS);
        f.seconds = StrictMath.max(second + 20, seconds(f) * (1 - loss));
        f.ending = Ending.TOUCHED;
        f.cutShort = loss > 0.08 ? CutShort.YES : loss > 0.03 || dice.chance(0.5) ? CutShort.CANNOT_SAY : CutShort.NO;
        f.peakLow = beams ? BEAMS_M : LAMPS_M;
        if (f.recovered == null) {
            upset(f, dice.between(0.42, 0.5));
        }
    }

    private void steer(DemoFlight f) {
        if (f.ending == Ending.CLEAN && dice.chance(0.03)) {
            f.ending = Ending.STEERED;
            f.happened(FlightEventKind.STEERED, seconds(f) * dice.between(0.5, 0.85), null, null);
        }
    }

    private void observe(DemoFlight f, double peak) {
        if (f.peakLow != null) {
            return;
        }
        if (dice.chance(0.55)) {
            double low = StrictMath.floor(peak * 2) / 2;
            f.peakLow = low;
            f.peakHigh = low + 0.5;
        } else if (dice.chance(0.6)) {
            f.peakLow = peak > BOARD_M ? BOARD_M : 0;
            f.peakHigh = peak > BOARD_M ? LAMPS_M : BOARD_M;
        }
        if (f.peakLow != null && f.peakLow + 0.5 == f.peakHigh && dice.chance(0.6)) {
            f.happened(
                    FlightEventKind.TOP_OF_CLIMB,
                    seconds(f) * dice.between(0.32, 0.42),
                    DemoDice.rounded(peak, 10),
                    null);
        }
        if (dice.chance(0.1)) {
            f.left = null;
        }
    }

    private static double seconds(DemoFlight f) {
        Double seconds = f.seconds;
        if (seconds == null) {
            throw new IllegalStateException("a flight without a time");
        }
        return seconds;
    }
}
