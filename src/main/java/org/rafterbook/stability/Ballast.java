package org.rafterbook.stability;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.AirframeEdits;
import org.rafterbook.airframe.BalancePoint;
import org.rafterbook.airframe.MassItem;

/** Ballast for a wished margin: it follows from moments alone once the neutral point is known. */
final class Ballast {

    private static final double SAME_PLACE_M = 1e-9;

    private final Trials trials;
    private final double wished;

    Ballast(Trials trials, double wishedMargin) {
        this.trials = trials;
        wished = wishedMargin;
    }

    /** Mass and balance as they are and the balance wished, or why one of them cannot be said. */
    private record Task(
            double massKg,
            double balanceM,
            double wishedM,
            @Nullable String reason) {}

    private Task task() {
        String problem = trials.problem();
        BalancePoint now = trials.balance(trials.airframe());
        Double at = now.aftM();
        Double mass = now.massKg();
        if (problem != null || at == null || mass == null) {
            return new Task(0, 0, 0, problem == null ? Trials.unknown(now) : problem);
        }
        GeometrySolution solution = GeometrySolution.of(trials.airframe(), LatticeSettings.DEFAULT);
        double to = solution.neutralPointM() - wished * solution.wings().meanChordM();
        return new Task(mass, at, to, null);
    }

    /** Where ballast of a given mass has to lie. */
    PlacementAnswer ofMass(double massKg, double fromM, double toM) {
        Task task = task();
        if (task.reason != null) {
            return PlacementAnswer.none(task.reason);
        }
        if (!(massKg > 0)) {
            return PlacementAnswer.none("Ballast needs a mass above zero.");
        }
        double place = ((task.massKg + massKg) * task.wishedM - task.massKg * task.balanceM) / massKg;
        if (place < fromM || place > toM) {
            return none(
                    "%.2f g of ballast would have to lie at %.0f mm, outside of %.0f to %.0f mm: it takes more mass, or"
                            + " the wing has to move.",
                    massKg * 1000, place * 1000, fromM * 1000, toM * 1000);
        }
        return with(massKg, place, place);
    }

    /** How much ballast it takes at a given place. */
    PlacementAnswer at(double placeM, double mostKg) {
        Task task = task();
        if (task.reason != null) {
            return PlacementAnswer.none(task.reason);
        }
        double way = task.wishedM - task.balanceM;
        double lever = placeM - task.wishedM;
        if (Math.abs(way) < SAME_PLACE_M) {
            return PlacementAnswer.none("The margin is what is wished already: no ballast is needed.");
        }
        if (way * lever <= 0) {
            String why = way * (placeM - task.balanceM) > 0
                    ? "Ballast at %.0f mm never brings the balance point beyond its own place: it has to lie %s of %.0f mm."
                    : "Ballast at %.0f mm moves the balance point the wrong way: it has to lie %s of %.0f mm.";
            return none(why, placeM * 1000, way > 0 ? "aft" : "ahead", task.wishedM * 1000);
        }
        double massKg = task.massKg * way / lever;
        if (massKg > mostKg) {
            return none(
                    "It would take %.2f g of ballast at %.0f mm, more than the %.2f g allowed.",
                    massKg * 1000, placeM * 1000, mostKg * 1000);
        }
        return with(massKg, placeM, massKg);
    }

    /** Where the ballast lies that brings the airframe without motor to a least mass. */
    PlacementAnswer toMinimum(double minimumKg, double fromM, double toM) {
        Task task = task();
        if (task.reason != null) {
            return PlacementAnswer.none(task.reason);
        }
        double missingKg = minimumKg - (task.massKg - trials.motorKg());
        if (missingKg <= 0) {
            return none(
                    "The airframe is %.2f g above the minimum without ballast: none is needed for it.",
                    -missingKg * 1000);
        }
        return ofMass(missingKg, fromM, toM);
    }

    private PlacementAnswer with(double massKg, double placeM, double value) {
        return trials.answer(
                value, AirframeEdits.withMass(trials.airframe(), new MassItem("ballast", massKg, placeM, 0)));
    }

    private static PlacementAnswer none(String format, Object... values) {
        return PlacementAnswer.none(String.format(Locale.ROOT, format, values));
    }
}
