package org.rafterbook.demo;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Recovered;

/** What the invented flyer writes down after a flight. */
final class DemoNotes {

    private static final List<String> CLEAN = List.of(
            "Steady all the way, circle about 7 m.",
            "Long slow circle under the lamps.",
            "Floats at the top, then a patient descent.",
            "Circle opened a little in the cruise.",
            "Climbed in four turns, level soon after.",
            "Drifted towards the stage, came back by itself.",
            "Quiet air, nobody else flying.",
            "Door open for a while, bumpy low down.",
            "Landed by the wall bars.",
            "Landed near the piano, prop still turning.",
            "Propeller stopped at head height.",
            "Slow to climb, better once past the board.",
            "Nose a bit high in the descent.",
            "As smooth as it has ever flown.",
            "Circle tightened when the torque went.",
            "Hall warmer up there, hung about for ages.",
            "Motor bunched at the rear hook, no harm.",
            "Launched a little flat, recovered in half a turn.");
    private static final List<String> STEEP = List.of(
            "Stalls in the burst, fine afterwards.",
            "Bobs along in the cruise, too much incidence.",
            "Nods twice a circle.",
            "Nose comes up with the power, mushes at the top.");
    private static final List<String> TOUCHY = List.of(
            "Wanders in pitch, never quite settled.",
            "Dropped a long way after a bump before it caught itself.",
            "Touchy: a breath of air and the nose goes.");
    private static final List<String> TOUCHED = List.of(
            "Touched and slid off.",
            "Nudged it at the top of the climb, lost a circle.",
            "Scraped along for half a turn.",
            "Touched lightly, hardly noticed.");
    private static final List<String> UPSET = List.of(
            "Upset after the touch and spiralled down a good metre.",
            "Dived, did not pull out until the board.",
            "Fell off on one side and stayed there.");
    private static final List<String> HALF = List.of(
            "Half motor with the long spacer.",
            "Half motor: circle and climb as hoped.",
            "Half motor, same torque as the full one.");

    private DemoNotes() {}

    static @Nullable String of(DemoFlight flight, double margin, DemoDice dice) {
        if (flight.ending == Ending.TOUCHED) {
            return dice.of(flight.recovered == Recovered.NO ? UPSET : TOUCHED);
        }
        if (flight.recovered == Recovered.NO) {
            return dice.of(UPSET);
        }
        if (flight.motor.fraction < 1 && dice.chance(0.7)) {
            return dice.of(HALF);
        }
        if (flight.stalls != null && flight.stalls > 1) {
            return dice.of(STEEP);
        }
        if (margin < 5 && dice.chance(0.5)) {
            return dice.of(TOUCHY);
        }
        return dice.chance(0.42) ? dice.of(CLEAN) : null;
    }
}
