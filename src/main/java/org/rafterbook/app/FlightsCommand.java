package org.rafterbook.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.ClockTime;
import org.rafterbook.work.Book;
import org.rafterbook.work.FlightAnswers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Every flight with its version and margin. */
@Command(name = "flights", description = "Every flight with its version and margin.")
final class FlightsCommand implements Callable<Integer> {

    @Mixin
    private final Answer answer = new Answer();

    @Mixin
    private final LogbookChoice logbook = new LogbookChoice();

    @Option(names = "--model", description = "Only this model.")
    private @Nullable String model;

    @Override
    public Integer call() {
        try (Book book = logbook.open(Mode.READ_ONLY)) {
            List<FlightAnswers.Answer> flights = FlightAnswers.of(book, model);
            if (answer.json()) {
                answer.document(Map.of(
                        "flights",
                        flights.stream().map(FlightAnswers.Answer::cells).toList()));
                return 0;
            }
            List<List<String>> rows = new ArrayList<>();
            for (FlightAnswers.Answer answered : flights) {
                Map<String, @Nullable Object> flight = answered.cells();
                Object margin = flight.get("margin_percent");
                rows.add(List.of(
                        text(flight.get("session_date")),
                        text(flight.get("model")) + " " + text(flight.get("version")),
                        time(answered),
                        text(flight.get("ending")),
                        margin instanceof Double m ? String.format(Locale.ROOT, "%.1f", m) : "-",
                        text(flight.get("notes"))));
            }
            answer.table(List.of("day", "version", "time", "ending", "margin %", "notes"), rows);
        }
        return 0;
    }

    private static String time(FlightAnswers.Answer flight) {
        if (!(flight.cells().get("duration_s") instanceof Double seconds)) {
            return "-";
        }
        return flight.atLeast() ? ClockTime.atLeast(seconds) : ClockTime.minutesSeconds(seconds);
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }
}
