package org.rafterbook.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.exchange.FlightsText;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.review.Outcome;

/** Every flight as the command line answers it: the columns of a table of flights, with version and margin. */
public final class FlightAnswers {

    private FlightAnswers() {}

    /**
     * One flight.
     *
     * @param cells keyed by heading of its column
     * @param atLeast true where its time is a lower bound
     */
    public record Answer(Map<String, @Nullable Object> cells, boolean atLeast) {}

    /** The flights of a book in flying order, of one model or of all; one that is still in the air is not among them. */
    public static List<Answer> of(Book book, @Nullable String model) {
        return book.logbook().read(reader -> {
            List<FlightLine> lines = reader.flights().all().stream()
                    .filter(l -> l.flight().durationS() != null || l.flight().ending() != null)
                    .filter(l -> model == null
                            || (l.model() != null && l.model().name().equalsIgnoreCase(model)))
                    .toList();
            ExportFlights rows = new ExportFlights(reader, lines, false);
            List<FlightRow> flights = lines.stream().map(rows::row).toList();
            List<String> settings = rows.settings();
            FlightOutcomes outcomes = FlightOutcomes.of(reader, lines);
            List<Answer> answers = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                FlightLine line = lines.get(i);
                Map<String, @Nullable Object> cells = FlightsText.cells(flights.get(i), settings);
                cells.put("version", name(line));
                MarginAnswer margin = book.margins().ofFlight(line);
                Double fraction = margin == null ? null : margin.margin();
                cells.put("margin_percent", fraction == null ? null : fraction * 100);
                if (line.flight().durationS() == null) {
                    cells.put("missing", "This flight has no time.");
                } else if (margin != null && fraction == null) {
                    cells.put("missing", margin.missing());
                }
                answers.add(new Answer(cells, outcomes.of(line).kind() == Outcome.Kind.AT_LEAST));
            }
            return answers;
        });
    }

    private static @Nullable String name(FlightLine line) {
        return line.model() == null || line.version() == null
                ? null
                : line.model().letter() + line.version().number();
    }
}
