package org.rafterbook.demo;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.SideRows.EventRow;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.flight.Recovered;

/** One simulated flight while it is being made up; in the units of its columns. */
final class DemoFlight {

    final DemoModel model;
    final Map<String, String> settings;
    final LocalDateTime launched;
    final DemoMotors.DemoMotor motor;

    double wound;
    double backedOff;
    double maxTorque;
    double launchTorque;
    int launchNo = 1;

    @Nullable
    Double left;

    @Nullable
    Double seconds;

    Ending ending = Ending.CLEAN;

    @Nullable
    CutShort cutShort;

    @Nullable
    Double peakLow;

    @Nullable
    Double peakHigh;

    @Nullable
    Recovered recovered;

    @Nullable
    Integer stalls;

    @Nullable
    String leftOut;

    @Nullable
    String note;

    final List<Happening> happenings = new ArrayList<>();

    /** An event of the flight. */
    record Happening(
            FlightEventKind kind,
            double second,
            @Nullable Double value,
            @Nullable String mark) {}

    DemoFlight(DemoModel model, Map<String, String> settings, LocalDateTime launched, DemoMotors.DemoMotor motor) {
        this.model = model;
        this.settings = settings;
        this.launched = launched;
        this.motor = motor;
    }

    void happened(FlightEventKind kind, double second, @Nullable Double value, @Nullable String mark) {
        happenings.add(new Happening(kind, StrictMath.rint(second), value, mark));
    }

    /** Its events as rows. */
    List<EventRow> events(String venue, int flightNo) {
        return happenings.stream()
                .sorted(Comparator.comparingDouble(Happening::second))
                .map(h -> new EventRow(
                        0,
                        model.title,
                        launched.toLocalDate(),
                        venue,
                        flightNo,
                        launched,
                        h.kind(),
                        h.second(),
                        h.value(),
                        h.mark(),
                        null))
                .toList();
    }
}
