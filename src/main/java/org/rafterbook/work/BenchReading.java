package org.rafterbook.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.flight.Recovered;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.review.Share;
import org.rafterbook.rules.ClassSheet;
import org.rafterbook.stability.Weights;
import org.rafterbook.units.DisplayUnits;

/** Reads what stands beside a model's versions on the Bench: its strip, and what is known of it beside its trim. */
final class BenchReading {

    private final Logbook logbook;
    private final BenchDesk desk;

    BenchReading(Logbook logbook, BenchDesk desk) {
        this.logbook = logbook;
        this.desk = desk;
    }

    /** What is known of the model beside its trim. */
    BenchDesk.Facts facts(Model model, Rigged shown, int flights, DisplayUnits units) {
        return logbook.read(r -> {
            ClassSheet sheet = ClassSheets.of(r, model.id());
            Airframe geometry = shown.geometry();
            return new BenchDesk.Facts(
                    flights,
                    desk.weighings().of(model.id()),
                    desk.builds().of(model.id()),
                    desk.parts().shared(model.id()),
                    sheet,
                    desk.classes().check(shown.version().id(), units),
                    Weights.of(
                            geometry == null ? List.of() : geometry.masses(),
                            ClassSheets.weighedKg(r, shown.version()),
                            sheet == null ? null : sheet.minAirframeKg(),
                            geometry == null || geometry.motor() == null
                                    ? 0
                                    : geometry.motor().massKg()),
                    shown.version().ownNeutralPointM());
        });
    }

    /** The strip, newest first. */
    List<BenchDesk.Occasion> occasions(List<Rigged> strip, List<FlightLine> lines) {
        Map<String, List<TrimChange>> changes = Riggings.changes(strip);
        Map<String, List<FlightLine>> flights = new HashMap<>();
        for (FlightLine line : lines) {
            if (line.rigging() != null) {
                flights.computeIfAbsent(line.rigging().id(), id -> new ArrayList<>())
                        .add(line);
            }
        }
        Set<String> seen = new HashSet<>();
        List<BenchDesk.Occasion> occasions = new ArrayList<>();
        for (Rigged rigged : strip) {
            String id = rigged.rigging() == null ? "" : rigged.rigging().id();
            List<FlightLine> flown = flights.getOrDefault(id, List.of());
            boolean isReturn = !seen.add(rigged.version().id());
            occasions.add(new BenchDesk.Occasion(
                    rigged, changes.getOrDefault(id, List.of()), flown.size(), upsets(flown), isReturn));
        }
        Collections.reverse(occasions);
        return occasions;
    }

    private static Share upsets(List<FlightLine> flights) {
        int recovered = 0;
        int upset = 0;
        for (FlightLine line : flights) {
            recovered += line.flight().recovered() == Recovered.YES ? 1 : 0;
            upset += line.flight().recovered() == Recovered.YES || line.flight().recovered() == Recovered.NO ? 1 : 0;
        }
        return Share.of(recovered, upset);
    }
}
