package org.rafterbook.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;

/** The season of flights_demo.csv as input of the review. */
final class DemoFlights {

    /** How a touched flight is taken. */
    enum Touched {
        AT_LEAST((s, t) -> Outcome.atLeast(s, "touched")),
        AS_EXACT((s, t) -> Outcome.exact(s)),
        SET_ASIDE((s, t) -> Outcome.leftOut(s, "touched"));

        private final BiFunction<Double, Boolean, Outcome> rule;

        Touched(BiFunction<Double, Boolean, Outcome> rule) {
            this.rule = rule;
        }
    }

    private DemoFlights() {}

    static ReviewInput read(Touched touched) {
        DataFile file = DataFile.read("flights_demo.csv");
        List<ReviewFlight> flights = new ArrayList<>();
        for (int i = 0; i < file.size(); i++) {
            Map<String, Level> settings = new TreeMap<>();
            for (String setting : List.of("a0", "a1", "a2", "a3")) {
                settings.put(setting, Level.number(file.at(i, setting)));
            }
            double time = file.at(i, "duration_s");
            boolean isTouched = file.at(i, "touched") == 1;
            flights.add(ReviewFlight.of(
                            "f" + i,
                            "s" + (int) file.at(i, "session"),
                            SeasonBuilder.FIRST_DAY.plusDays(Math.round(100 * file.at(i, "season_fraction"))),
                            (int) file.at(i, "order"),
                            isTouched ? touched.rule.apply(time, true) : Outcome.exact(time),
                            settings)
                    .with(MotorUse.turns(file.at(i, "turns")), file.at(i, "density")));
        }
        return ReviewInput.of("demo", flights, SeasonBuilder.settingsOf(flights));
    }
}
