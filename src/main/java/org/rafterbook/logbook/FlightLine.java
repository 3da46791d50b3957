package org.rafterbook.logbook;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;

/** A flight with all it points to. */
public record FlightLine(
        Flight flight,
        Session session,
        @Nullable Rigging rigging,
        @Nullable Version version,
        @Nullable Model model,
        @Nullable Wind wind,
        @Nullable Motor motor,
        @Nullable Venue venue) {}
