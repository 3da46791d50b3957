package org.rafterbook.work;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;

/**
 * In which air and on which circle the Bench's figures are computed.
 *
 * @param airDensity kg/m^3
 * @param airFrom where the density comes from, in words
 * @param circleRadiusM radius of the circle flown, m
 */
public record Surroundings(double airDensity, String airFrom, double circleRadiusM) {

    /** Dry air at 20 degrees C and 1013.25 hPa (standard pressure, ideal gas). */
    private static final double USUAL_DENSITY = 1.204;

    /** An assumption of ours for a wide indoor circle; the flyer may type another. */
    private static final double USUAL_RADIUS_M = 6;

    private static final String RADIUS = "bench.circle_radius_m";

    /** The air of the last session, if it was read, and the circle the flyer last typed. */
    static Surroundings of(Reader reader) {
        String typed = reader.preference(RADIUS);
        double radius = typed == null ? USUAL_RADIUS_M : Double.parseDouble(typed);
        Session last = reader.flights().lastSession();
        Double density = last == null ? null : density(reader, last);
        return density == null
                ? new Surroundings(USUAL_DENSITY, "usual air, no reading", radius)
                : new Surroundings(density, "air of the last session", radius);
    }

    private static @Nullable Double density(Reader reader, Session session) {
        List<AirReading> readings = reader.where(AirReading.class, "sessionId", session.id()).stream()
                .sorted(Comparator.comparing(AirReading::at, Comparator.nullsFirst(Comparator.naturalOrder())))
                .toList();
        return new SessionAir(readings).densityKgM3(null);
    }

    /** Keeps the circle as a preference. */
    static void keep(Writer writer, double circleRadiusM) {
        writer.preference(RADIUS, String.format(Locale.ROOT, "%.4f", circleRadiusM));
    }
}
