package org.rafterbook.work;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.stability.PropellerTerm;

/**
 * In which air, on which circle and with which propeller the Bench's figures are computed.
 *
 * @param airDensity kg/m^3
 * @param airFrom where the density comes from, in words
 * @param circleRadiusM radius of the circle flown, m
 * @param propeller the model's propeller as a fin; null where it is left out
 */
public record Surroundings(
        double airDensity,
        String airFrom,
        double circleRadiusM,
        @Nullable PropellerTerm propeller) {

    /** Dry air at 20 degrees C and 1013.25 hPa (standard pressure, ideal gas). */
    private static final double USUAL_DENSITY = 1.204;

    /** An assumption of ours for a wide indoor circle; the flyer may type another. */
    private static final double USUAL_RADIUS_M = 6;

    private static final String RADIUS = "bench.circle_radius_m";

    private static final String PROPELLER = "bench.propeller.";

    /** The air of the last session, if it was read, and the circle and the model's propeller as the flyer last typed them. */
    static Surroundings of(Reader reader, String modelId) {
        String typed = reader.preference(RADIUS);
        double radius = typed == null ? USUAL_RADIUS_M : Double.parseDouble(typed);
        Session last = reader.flights().lastSession();
        Double density = last == null ? null : density(reader, last);
        PropellerTerm propeller = propeller(reader.preference(PROPELLER + modelId));
        return density == null
                ? new Surroundings(USUAL_DENSITY, "usual air, no reading", radius, propeller)
                : new Surroundings(density, "air of the last session", radius, propeller);
    }

    /** Diameter, width of a blade and pitch in m and the number of blades. */
    private static @Nullable PropellerTerm propeller(@Nullable String kept) {
        if (kept == null) {
            return null;
        }
        String[] numbers = kept.split(" ");
        return new PropellerTerm(
                0,
                Double.parseDouble(numbers[0]),
                Double.parseDouble(numbers[1]),
                Double.parseDouble(numbers[2]),
                Integer.parseInt(numbers[3]));
    }

    /** Keeps a model's propeller as a preference; null leaves it out again. */
    static void keep(Writer writer, String modelId, @Nullable PropellerTerm propeller) {
        writer.preference(
                PROPELLER + modelId,
                propeller == null
                        ? null
                        : String.format(
                                Locale.ROOT,
                                "%.5f %.5f %.5f %d",
                                propeller.diameterM(),
                                propeller.bladeWidthM(),
                                propeller.pitchM(),
                                propeller.blades()));
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
