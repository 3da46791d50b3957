package org.rafterbook.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Flight;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.power.Wind;
import org.rafterbook.review.MotorUse;

/**
 * What each flight took out of its motor. Where nobody counted the turns left, the share that usually came back on this
 * model's other flights is taken off, none where it was never counted; a relaunch starts with what the launch before
 * left.
 */
final class WindShare {

    private final Map<String, Double> leftByLaunch = new HashMap<>();
    private final double usualShareLeft;

    WindShare(List<FlightLine> lines) {
        double shares = 0;
        int counted = 0;
        for (FlightLine line : lines) {
            Wind wind = line.wind();
            Double left = line.flight().turnsLeft();
            if (wind != null && left != null) {
                leftByLaunch.put(launch(wind, line.flight().launchNoOfWind()), left);
                Double atLaunch = wound(wind);
                if (atLaunch != null && atLaunch > 0 && line.flight().launchNoOfWind() == 1) {
                    shares += left / atLaunch;
                    counted++;
                }
            }
        }
        usualShareLeft = counted == 0 ? 0 : shares / counted;
    }

    MotorUse of(FlightLine line) {
        Flight flight = line.flight();
        Wind wind = line.wind();
        double fraction = flight.partialFraction() > 0 && flight.partialFraction() <= 1 ? flight.partialFraction() : 1;
        if (wind == null) {
            return new MotorUse(null, null, null, null, fraction);
        }
        boolean first = flight.launchNoOfWind() <= 1;
        return new MotorUse(
                wind.motorId(),
                wind.motorId() == null ? null : Integer.valueOf(wind.ordinal() - 1),
                used(flight, wind),
                first ? wind.launchTorqueNm() : null,
                fraction);
    }

    /** Turns a wind that has not flown yet will use if as many are left as usual; null where its turns are not known. */
    @Nullable
    Double usualUse(Wind wind) {
        Double atLaunch = wound(wind);
        return atLaunch == null || !(atLaunch > 0) ? null : Double.valueOf(atLaunch * (1 - usualShareLeft));
    }

    /**
     * Turns that another launch of a wind will use, of those its launch before has left; null where nobody counted them.
     *
     * @param before number of that launch
     */
    @Nullable
    Double usualUseAgain(Wind wind, int before) {
        Double left = leftByLaunch.get(launch(wind, before));
        return left == null || !(left > 0) ? null : Double.valueOf(left * (1 - usualShareLeft));
    }

    private @Nullable Double used(Flight flight, Wind wind) {
        Double atLaunch = flight.launchNoOfWind() <= 1
                ? wound(wind)
                : leftByLaunch.get(launch(wind, flight.launchNoOfWind() - 1));
        if (atLaunch == null) {
            return null;
        }
        double left = flight.turnsLeft() == null ? usualShareLeft * atLaunch : flight.turnsLeft();
        return atLaunch - left > 0 ? Double.valueOf(atLaunch - left) : null;
    }

    private static @Nullable Double wound(Wind wind) {
        if (wind.turnsWound() == null) {
            return null;
        }
        return wind.turnsWound() - (wind.turnsBackedOff() == null ? 0 : wind.turnsBackedOff());
    }

    private static String launch(Wind wind, int number) {
        return wind.id() + "#" + number;
    }
}
