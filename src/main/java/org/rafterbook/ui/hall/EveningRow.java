package org.rafterbook.ui.hall;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Flight;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.review.Outcome;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Evening;

/**
 * A flight as it stands in the evening's list.
 *
 * @param mark of its version, null for a flight without a model
 * @param apart what sets it apart from the flights that count, in a word; empty for nothing
 * @param asks which of the words asks for something that is missing: the version, the turns left, or none
 */
record EveningRow(
        FlightLine line,
        String number,
        @Nullable VersionMark mark,
        MarkStyle style,
        String version,
        String torque,
        String margin,
        String time,
        String apart,
        String left,
        Asks asks) {

    /** What the flyer may still add. */
    enum Asks {
        NOTHING,
        MODEL,
        TURNS_LEFT
    }

    static EveningRow of(Evening evening, FlightLine line, QuantityFormat format) {
        Flight flight = line.flight();
        Model model = line.model();
        Version version = line.version();
        boolean atLeast = flight.durationS() != null && evening.outcome(flight).kind() == Outcome.Kind.AT_LEAST;
        boolean turns =
                flight.turnsLeft() == null && Texts.atLaunch(evening, line) != null && flight.durationS() != null;
        return new EveningRow(
                line,
                String.valueOf(flight.ordinal()),
                model == null || version == null ? null : VersionMark.dealt(version.number() - 1),
                atLeast ? MarkStyle.AT_LEAST : MarkStyle.CLEAN,
                model == null || version == null ? "give a model" : model.letter() + version.number(),
                line.wind() == null || flight.launchNoOfWind() > 1
                        ? QuantityFormat.UNKNOWN
                        : format.number(Quantity.TORQUE, line.wind().launchTorqueNm()),
                Texts.margin(evening.margins().get(flight.id()), 1),
                Texts.time(evening, flight),
                Texts.isLeftOut(evening, flight) ? "left out" : flight.leftOutWhy() == null ? "" : "flagged",
                turns ? "add" : Texts.turns(flight.turnsLeft()),
                model == null || version == null ? Asks.MODEL : turns ? Asks.TURNS_LEFT : Asks.NOTHING);
    }

    /** The words under the heads, from the left. */
    List<String> cells() {
        return List.of(number, version, torque, margin, time, left);
    }

    boolean atLeast() {
        return style == MarkStyle.AT_LEAST;
    }

    /** Flagged to be left out, and counted all the same. */
    boolean flagged() {
        return apart.equals("flagged");
    }

    /** The row read out. */
    String words() {
        return "flight " + number + ", " + version + ", torque " + torque + ", margin " + margin + ", " + time
                + (apart.isEmpty() ? "" : ", × " + apart) + ", turns left " + left;
    }
}
