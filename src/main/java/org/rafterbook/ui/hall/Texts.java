package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.power.Wind;
import org.rafterbook.review.Outcome;
import org.rafterbook.ui.kit.SettingWords;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Evening;
import org.rafterbook.work.MarginText;
import org.rafterbook.work.Prepared;
import org.rafterbook.work.TrialNow;

/** How the Hall words what it shows. */
final class Texts {

    private Texts() {}

    /** What the next flight changes, in words; empty where it flies as last time. */
    static String changes(Prepared prepared) {
        if (prepared.rigged() == null || prepared.before() == null) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        for (TrimChange change : TrimChange.between(
                prepared.rigged().settings(),
                prepared.before().values(),
                prepared.rigged().values())) {
            SettingDef def = change.setting();
            parts.add(def.label().toLowerCase(Locale.ROOT) + " " + SettingWords.value(def, change.from()) + " → "
                    + SettingWords.value(def, change.to()));
        }
        return String.join(", ", parts);
    }

    /** True for what was typed with a unit in it, so that it means the same whatever the units of now. */
    static boolean namesItsUnit(String typed) {
        return typed.chars().anyMatch(Character::isLetter);
    }

    /** The margin in per cent, or a dash. */
    static String margin(MarginText.@Nullable Answer answer, int decimals) {
        Double fraction = answer == null ? null : answer.fraction();
        return fraction == null ? QuantityFormat.UNKNOWN : QuantityFormat.rounded(fraction * 100, decimals);
    }

    /** The time as it counts: "at least" where it was cut short. */
    static String time(Evening evening, Flight flight) {
        Double duration = flight.durationS();
        if (duration == null) {
            return flight.ending() == null ? "in the air" : "no launch";
        }
        Outcome outcome = evening.outcome(flight);
        return switch (outcome.kind()) {
            case EXACT -> ClockTime.minutesSeconds(duration);
            case AT_LEAST -> ClockTime.atLeast(outcome.countsS());
            case LEFT_OUT -> "(" + ClockTime.minutesSeconds(duration) + ")";
        };
    }

    /** What is to be said of a flight flagged to be left out; empty for one that is not. */
    static String flagged(Evening evening, Flight flight) {
        String why = flight.leftOutWhy();
        if (why == null) {
            return "";
        }
        return isLeftOut(evening, flight)
                ? "Left out of the estimates: " + why + "."
                : "Flagged to be left out: " + why
                        + ". The flag came after its time was known, so the estimates count it"
                        + " all the same; Review can leave such flights out.";
    }

    /** Whether a timed flight says nothing about the model. */
    static boolean isLeftOut(Evening evening, Flight flight) {
        return flight.durationS() != null && evening.outcome(flight).kind() == Outcome.Kind.LEFT_OUT;
    }

    /** Says of a flight of the model on trial that is not one of the trial's that it does not count for it. */
    static String uncounted(HallData data, @Nullable FlightLine line) {
        TrialNow now = data.prepared().trial();
        boolean onTrial = now != null
                && line != null
                && line.model() != null
                && line.model().id().equals(now.trial().modelId())
                && line.rigging() != null
                && !now.trial().id().equals(line.rigging().trialId());
        return onTrial ? "This flight does not count for the trial." : "";
    }

    static String turns(@Nullable Double turns) {
        return turns == null ? QuantityFormat.UNKNOWN : QuantityFormat.rounded(turns, 0);
    }

    /** Turns on the motor at launch, null where they are not known. */
    static @Nullable Double atLaunch(@Nullable Wind wind) {
        Double wound = wind == null ? null : wind.turnsWound();
        if (wind == null || wound == null) {
            return null;
        }
        Double off = wind.turnsBackedOff();
        return wound - (off == null ? 0 : off);
    }

    /**
     * Turns on the motor as a flight was launched: of a relaunch those that the launch before has left, null where they are
     * not known.
     */
    static @Nullable Double atLaunch(Evening evening, FlightLine line) {
        if (line.flight().launchNoOfWind() <= 1) {
            return atLaunch(line.wind());
        }
        return evening.flights().stream()
                .map(FlightLine::flight)
                .filter(f -> Objects.equals(f.windId(), line.flight().windId())
                        && f.launchNoOfWind() == line.flight().launchNoOfWind() - 1)
                .map(Flight::turnsLeft)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    static String event(FlightEvent event, QuantityFormat format) {
        String name = event.notes() == null ? "" : event.notes();
        Double value = event.value();
        return switch (event.kind()) {
            case TOUCHED -> "Touched " + name + (value == null ? "" : ", " + format.text(Quantity.HEIGHT, value));
            case TOP_OF_CLIMB -> "Top of climb";
            case LAP -> value == null ? "Lap begins" : "Lap " + QuantityFormat.rounded(value, 0) + " s";
            case STEERED -> "Steered";
            case STALLED -> "Stalled";
            case DIVED -> "Dived";
            case MUSHED -> "Mushed";
            case RECOVERED -> "Upset: recovered";
            case NOT_RECOVERED -> "Upset: did not recover";
            case PROPELLER_STOPPED -> "Propeller stopped";
            case NOTE -> name;
        };
    }

    static String sentence(Throwable failure) {
        return failure instanceof UserError error ? error.sentence() : String.valueOf(failure);
    }
}
