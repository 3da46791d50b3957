package org.rafterbook.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.exchange.FlightTable;
import org.rafterbook.exchange.ImportProblem;
import org.rafterbook.exchange.Mapping;
import org.rafterbook.exchange.SideRows.AirRow;
import org.rafterbook.exchange.SideRows.BatchRow;
import org.rafterbook.exchange.SideRows.EventRow;
import org.rafterbook.exchange.SideRows.LimitRow;
import org.rafterbook.exchange.SideRows.MarkRow;
import org.rafterbook.exchange.SideRows.ModelRow;
import org.rafterbook.exchange.SideRows.MotorRow;
import org.rafterbook.exchange.SideRows.ReadingRow;
import org.rafterbook.exchange.SideRows.SessionRow;
import org.rafterbook.exchange.SideRows.SettingRow;
import org.rafterbook.exchange.SideRows.VenueRow;
import org.rafterbook.exchange.SideRows.WindRow;

/** Files as read, before anything is written: all rows, and all that is wrong with them. */
public final class ImportPlan {

    /** A row and the file it comes from. */
    record Placed<R>(String file, R row) {}

    final List<AirframeSheet> sheets = new ArrayList<>();
    final List<FlightTable> flights = new ArrayList<>();
    final List<Placed<VenueRow>> venues = new ArrayList<>();
    final List<Placed<MarkRow>> marks = new ArrayList<>();
    final List<Placed<BatchRow>> batches = new ArrayList<>();
    final List<Placed<MotorRow>> motors = new ArrayList<>();
    final List<Placed<ModelRow>> models = new ArrayList<>();
    final List<Placed<SettingRow>> settings = new ArrayList<>();
    final List<Placed<SessionRow>> sessions = new ArrayList<>();
    final List<Placed<AirRow>> air = new ArrayList<>();
    final List<Placed<LimitRow>> limits = new ArrayList<>();
    final List<Placed<WindRow>> winds = new ArrayList<>();
    final List<Placed<EventRow>> events = new ArrayList<>();
    final List<Placed<ReadingRow>> readings = new ArrayList<>();
    final List<ImportProblem> problems = new ArrayList<>();
    final List<Mapping> mappings = new ArrayList<>();
    final Map<String, String> read = new LinkedHashMap<>();

    ImportPlan() {}

    /** What is wrong, in the order of the files; where this is not empty nothing can be kept. */
    public List<ImportProblem> problems() {
        return List.copyOf(problems);
    }

    /** What each file was taken for, by its name: "223 flights by own headings". */
    public Map<String, String> read() {
        return Map.copyOf(read);
    }

    /** What the columns of the first table of flights were taken for, under a name to remember it by. */
    public Optional<Mapping> mapping(String name) {
        return mappings.stream().findFirst().map(m -> m.withName(name));
    }

    /** The tables of flights as read; rows with a problem are meaningless. */
    public List<FlightTable> flightTables() {
        return List.copyOf(flights);
    }

    /** What undo will say. */
    String why() {
        return read.size() == 1
                ? "import of " + read.keySet().iterator().next()
                : "import of " + read.size() + " files";
    }
}
