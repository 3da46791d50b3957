package org.rafterbook.demo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.flight.Ending;

/** What is true in the demo season, written down beside its data. */
final class DemoTruth {

    private final Map<String, String> lines = new LinkedHashMap<>();

    /** Takes down a change the flyer made and what it truly does to the time at equal energy and air. */
    void changed(DemoModel model, Map<String, String> before, Map<String, String> after) {
        StringBuilder what = new StringBuilder();
        StringBuilder back = new StringBuilder();
        for (Map.Entry<String, String> entry : after.entrySet()) {
            String from = before.get(entry.getKey());
            String to = entry.getValue();
            if (from != null && !to.equals(from)) {
                what.append(what.isEmpty() ? "" : ", ").append(entry.getKey() + " " + from + " → " + to);
                back.append(back.isEmpty() ? "" : ", ").append(entry.getKey() + " " + to + " → " + from);
            }
        }
        if (what.isEmpty() || lines.containsKey(model.title + "|" + back)) {
            return;
        }
        double effect = 100 * (StrictMath.exp(model.trim(after) - model.trim(before)) - 1);
        lines.putIfAbsent(
                model.title + "|" + what,
                String.format(
                        Locale.ROOT,
                        "| %s | %s | %.1f → %.1f | %+.1f |",
                        model.title,
                        what,
                        model.margin(before),
                        model.margin(after),
                        effect == 0 ? 0.0 : effect));
    }

    String readme(List<FlightRow> rows, int motors) {
        Map<String, Integer> count = new TreeMap<>();
        for (FlightRow row : rows) {
            count.merge(row.model(), 1, Integer::sum);
        }
        long days = rows.stream().map(FlightRow::date).distinct().count();
        return """
                # The demo season

                Everything here is invented: the flyer R. Aldous, the %s, the models Teasel, Marram and Quire and \
                every figure. The files are written by a seeded simulation (`DemoSeason` in the test tree, seed %d) and \
                come into a logbook only through the importer, as a flyer's own would:

                    import --logbook demo.rafterbook sample-data/*.json sample-data/*.csv

                %d flights on %d evenings: %s. Of them %d touched, %d were steered, %d hung or met another model, \
                %d were aborted at launch, %d flew on half motors. The box holds %d motors; one broke \
                while it was wound.

                ## What is true

                A flight's time is the model's own time at its best trim, times

                - the energy used (turns on the motor at launch and at landing through the curve of a wound motor, the \
                motor's mass, its batch: Sedge 25 gives 2 %% more than Umber 24), mass to the power −1.5, air density to the \
                power 0.5, 0.8 %% a degree of rubber temperature, −0.4 %% for every earlier wind of the motor;
                - the trim: one peak over the margin (Teasel at 5.7 %%, Marram at 6.2 %%, Quire at 6.1 %%; 5 points above it cost \
                6 %%, 2.5 points below it cost 6 %%) and the settings below;
                - the season: a rise of 2 %% from the first evening to the last whatever was done;
                - the day (standard deviation 3 %%) and the luck of the flight (3.5 %%).

                A flight that touches loses between nothing and 20 %% of its time; an upset the model does not recover \
                from costs 5 %%. Peak height goes with torque at launch to the power 0.9, with a standard deviation of \
                3 %% between days and 5 %% between flights; the flyer asks for a little more torque each time and \
                backs off after a touch, and winds a little further as the evening goes on.

                True effect of each change on the time at equal energy and air, other settings as they stood when it was \
                first made (margins in per cent of the mean chord, of the straight line the truth is made with):

                | model | change | margin, %% | true effect, %% |
                |---|---|---|---|
                %s

                Teasel's propeller and left thrust were always changed together: −4 %% and +1.5 %%, which flights alone \
                cannot tell apart. Its wash-in of 2 was flown once, and touched. The tailplane's incidence does nothing \
                to Teasel.
                """.formatted(
                        DemoSeason.VENUE,
                        DemoSeason.SEED,
                        rows.size(),
                        days,
                        String.join(
                                ", ",
                                count.entrySet().stream()
                                        .map(e -> e.getKey() + " " + e.getValue())
                                        .toList()),
                        ended(rows, Ending.TOUCHED),
                        ended(rows, Ending.STEERED),
                        ended(rows, Ending.HUNG) + ended(rows, Ending.MID_AIR),
                        ended(rows, Ending.ABORTED),
                        rows.stream()
                                .filter(r -> Double.valueOf(0.5).equals(r.partialFraction()))
                                .count(),
                        motors,
                        String.join("\n", lines.values()));
    }

    private static long ended(List<FlightRow> rows, Ending ending) {
        return rows.stream().filter(r -> r.ending() == ending).count();
    }
}
