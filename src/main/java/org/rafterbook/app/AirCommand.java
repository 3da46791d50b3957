package org.rafterbook.app;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.MoistAir;
import org.rafterbook.flight.StandardAtmosphere;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.UserError;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Density of moist air from temperature, station pressure and humidity. */
@Command(name = "air", description = "Density of moist air.")
final class AirCommand implements Callable<Integer> {

    /** Assumed where no humidity is given, and said so; common practice, no source. */
    private static final double USUAL_HUMIDITY = 0.5;

    @Mixin
    private final Answer answer = new Answer();

    @Option(names = "--temperature", required = true, paramLabel = "21C", description = "Air temperature.")
    private String temperature = "";

    @Option(names = "--pressure", paramLabel = "1013hPa", description = "Pressure at the place, not at sea level.")
    private @Nullable String pressure;

    @Option(names = "--height", paramLabel = "250m", description = "Height of the site, where no pressure is known.")
    private @Nullable String height;

    @Option(names = "--humidity", paramLabel = "45%%", description = "Relative humidity.")
    private @Nullable String humidity;

    @Override
    public Integer call() {
        double temperatureK = read(Quantity.TEMPERATURE, temperature);
        double pressurePa = pressurePa();
        double share = humidity == null ? USUAL_HUMIDITY : read(Quantity.HUMIDITY, humidity);
        double density = MoistAir.densityKgPerM3(temperatureK, pressurePa, share);
        if (answer.json()) {
            Map<String, @Nullable Object> keys = new LinkedHashMap<>();
            keys.put("density_kg_m3", density);
            keys.put("pressure_hpa", pressurePa / 100);
            keys.put("pressure_estimated", pressure == null);
            keys.put("humidity_assumed", humidity == null);
            answer.document(keys);
        } else {
            answer.line(String.format(Locale.ROOT, "%.4f kg/m³", density)
                    + (pressure == null
                            ? String.format(
                                    Locale.ROOT, ", pressure %.0f hPa estimated from the height", pressurePa / 100)
                            : "")
                    + (humidity == null ? ", humidity taken as 50 %" : ""));
        }
        return 0;
    }

    private double pressurePa() {
        if (pressure != null && height != null) {
            throw UserError.badInput("Give the pressure or the height of the site, not both.");
        }
        if (pressure != null) {
            return read(Quantity.PRESSURE, pressure);
        }
        if (height != null) {
            return StandardAtmosphere.pressurePa(read(Quantity.HEIGHT, height));
        }
        throw UserError.badInput("Give the pressure at the place, such as 1013hPa, or the height of the site.");
    }

    static double read(Quantity quantity, String text) {
        return QuantityParser.typed(quantity, DisplayUnits.METRIC)
                .read(text)
                .orThrow()
                .si();
    }
}
