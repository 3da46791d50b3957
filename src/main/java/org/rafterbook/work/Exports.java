package org.rafterbook.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Version;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.exchange.AirframeSheets;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.exchange.FlightsText;
import org.rafterbook.exchange.TextFiles;
import org.rafterbook.flight.Ending;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.units.UserError;

/** Writes a logbook as plain files that an import takes back. */
public final class Exports {

    private final Logbook logbook;

    Exports(Logbook logbook) {
        this.logbook = logbook;
    }

    /**
     * Writes all tables and one airframe sheet a version into a folder, made where there is none.
     *
     * @param overwrite whether files of the same names may be replaced
     * @throws UserError of bad input where files would be replaced unasked; nothing is written then
     */
    public ExportSummary write(Path folder, boolean overwrite) {
        Written written = logbook.read(this::written);
        if (!overwrite) {
            for (String name : written.files().keySet()) {
                if (Files.exists(folder.resolve(name))) {
                    throw UserError.badInput("There is a file " + folder.resolve(name)
                            + " already; nothing was written. Say that it may be replaced, or name another folder.");
                }
            }
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw UserError.couldNot("The folder " + folder + " could not be made: " + e.getMessage() + ".", e);
        }
        written.files().forEach((name, text) -> TextFiles.write(folder.resolve(name), text));
        return new ExportSummary(folder, List.copyOf(written.files().keySet()), written.flights(), written.remarks());
    }

    private record Written(Map<String, String> files, int flights, List<String> remarks) {}

    private Written written(Reader reader) {
        List<FlightLine> lines = new ArrayList<>();
        int flying = 0;
        for (FlightLine line : reader.flights().all()) {
            if (line.flight().durationS() == null && line.flight().ending() != Ending.ABORTED) {
                flying++;
            } else {
                lines.add(line);
            }
        }
        ExportTables tables = new ExportTables(reader, lines);
        ExportFlights flights = new ExportFlights(reader, lines, tables.numbersWinds());
        List<FlightRow> named = new ArrayList<>();
        List<FlightRow> nameless = new ArrayList<>();
        for (FlightLine line : lines) {
            (line.model() == null ? nameless : named).add(flights.row(line));
        }
        Map<String, String> files = new LinkedHashMap<>();
        files.put("flights.csv", FlightsText.of(named, flights.settings(), true));
        if (!nameless.isEmpty()) {
            files.put("flights_without_model.csv", FlightsText.of(nameless, List.of(), false));
        }
        tables.all().forEach((form, text) -> files.put(form.stem() + ".csv", text));
        sheets(reader).forEach((name, sheet) -> files.put(name, AirframeSheets.write(sheet)));
        List<String> remarks = flying == 0
                ? List.of()
                : List.of(
                        flying == 1
                                ? "One flight is still in the air and not among them."
                                : flying + " flights are still in the air and not among them.");
        return new Written(files, lines.size(), remarks);
    }

    private static Map<String, AirframeSheet> sheets(Reader reader) {
        Map<String, AirframeSheet> sheets = new LinkedHashMap<>();
        Set<String> stems = new HashSet<>();
        List<Model> models = new ArrayList<>(reader.all(Model.class));
        models.sort(Comparator.comparing(Model::name));
        for (Model model : models) {
            String stem = stem(model.name());
            while (!stems.add(stem)) {
                stem = stem + "-";
            }
            List<Version> versions = new ArrayList<>(reader.where(Version.class, "modelId", model.id()));
            versions.sort(Comparator.comparingInt(Version::number));
            for (Version version : versions) {
                Airframe geometry = Geometry.of(version);
                if (geometry != null) {
                    String name = model.letter() + version.number();
                    sheets.put(
                            stem + "-" + name + ".json",
                            new AirframeSheet(model.name(), name, Margins.asSheet(reader, version, geometry)));
                }
            }
        }
        return sheets;
    }

    private static String stem(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    }
}
