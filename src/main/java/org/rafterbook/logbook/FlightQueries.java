package org.rafterbook.logbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;

/**
 * Questions about flights together with what they point to. Unless said otherwise lines come in flying order: by local
 * date, session and place in the session.
 */
public final class FlightQueries {

    private static final String ORDER = " ORDER BY s.local_date, s.id, f.ordinal, f.id";
    private static final String LAST = " ORDER BY s.local_date DESC, s.id DESC, f.ordinal DESC, f.id DESC LIMIT 1";

    /** A flight's place in the season as text that sorts. */
    private static final String PLACE = "s.local_date || s.id || printf('%09d', f.ordinal)";

    private final RowReader rows;

    FlightQueries(RowReader rows) {
        this.rows = rows;
    }

    /** All flights. */
    public List<FlightLine> all() {
        return lines(ORDER);
    }

    /** The flights of one session. */
    public List<FlightLine> ofSession(String sessionId) {
        return lines(" AND f.session_id = ?" + ORDER, sessionId);
    }

    /** The flights of one model. */
    public List<FlightLine> ofModel(String modelId) {
        return lines(" AND f.rigging_id IN (SELECT id FROM rigging WHERE model_id = ?)" + ORDER, modelId);
    }

    /** The flight of a model that was flown last, null before its first. */
    public @Nullable FlightLine lastOfModel(String modelId) {
        return first(lines(" AND f.rigging_id IN (SELECT id FROM rigging WHERE model_id = ?)" + LAST, modelId));
    }

    /** The last flight of a version, else of its model, on a motor whose mass is known; null where there is none. */
    public @Nullable FlightLine lastWithMotorMass(Version version) {
        FlightLine own = lastWithMotorMass("version_id", version.id());
        return own == null ? lastWithMotorMass("model_id", version.modelId()) : own;
    }

    private @Nullable FlightLine lastWithMotorMass(String column, String id) {
        return first(lines(
                " AND f.rigging_id IN (SELECT id FROM rigging WHERE " + column + " = ?)"
                        + " AND w.motor_id IN (SELECT id FROM motor WHERE mass_kg IS NOT NULL)" + LAST,
                id));
    }

    private static @Nullable FlightLine first(List<FlightLine> lines) {
        return lines.isEmpty() ? null : lines.get(0);
    }

    /** The versions of a model that have flown, the one flown last first. */
    public List<Version> versionsFlown(String modelId) {
        return flown(Version.class, "r.version_id", " AND r.model_id = ?", modelId);
    }

    /** The models that have flown, the one flown last first. */
    public List<Model> modelsFlown() {
        return flown(Model.class, "r.model_id", "");
    }

    private <R extends Record> List<R> flown(Class<R> type, String by, String condition, @Nullable Object... of) {
        RecordTable<R> table = Tables.of(type);
        return rows.sql()
                .list(
                        "SELECT " + table.columns("t") + " FROM \"" + table.name() + "\" t JOIN (SELECT " + by
                                + " AS id, max(" + PLACE + ") AS last FROM flight f"
                                + " JOIN rigging r ON r.id = f.rigging_id JOIN session s ON s.id = f.session_id"
                                + " WHERE f.gone_at IS NULL" + condition
                                + " GROUP BY 1) n ON n.id = t.id ORDER BY n.last DESC",
                        row -> table.read(row, 1),
                        of);
    }

    /** The flights of one rigging. */
    public List<FlightLine> ofRigging(String riggingId) {
        return lines(" AND f.rigging_id = ?" + ORDER, riggingId);
    }

    /** Flights without a time that were not aborted. */
    public List<FlightLine> inTheAir() {
        return lines(" AND f.duration_s IS NULL AND f.ending IS NOT 'aborted'" + ORDER);
    }

    /** The session of the latest local date, null in an empty logbook. */
    public @Nullable Session lastSession() {
        RecordTable<Session> table = Tables.of(Session.class);
        return rows.sql()
                .first(
                        "SELECT " + table.columns("s") + " FROM session s WHERE s.gone_at IS NULL"
                                + " ORDER BY s.local_date DESC, s.id DESC LIMIT 1",
                        row -> table.read(row, 1));
    }

    /** How many flights each version of a model has, by the version's id; those without are left out. */
    public Map<String, Integer> countsByVersion(String modelId) {
        return counts("r.version_id", modelId);
    }

    /** How many flights each rigging of a model has, by the rigging's id; those without are left out. */
    public Map<String, Integer> countsByRigging(String modelId) {
        return counts("r.id", modelId);
    }

    /**
     * The flights whose notes, or whose events' notes, contain a text in upper or lower case; the newest first.
     *
     * @param modelId null for all models
     * @param limit at most so many
     */
    public List<FlightLine> notesContaining(String text, @Nullable String modelId, int limit) {
        List<String> patterns = cases(text);
        String found =
                patterns.stream().map(p -> "notes LIKE ? ESCAPE '\\'").collect(Collectors.joining(" OR ", "(", ")"));
        List<@Nullable Object> parameters = new ArrayList<>(patterns);
        parameters.addAll(patterns);
        String ofModel = "";
        if (modelId != null) {
            ofModel = " AND n.rigging_id IN (SELECT id FROM rigging WHERE model_id = ?)";
            parameters.add(modelId);
        }
        parameters.add((long) limit);
        // Which flights, and only then all they point to: most of those found may be beyond the limit.
        return lines(
                " AND f.id IN (SELECT n.id FROM flight n JOIN session d ON d.id = n.session_id WHERE n.gone_at IS NULL"
                        + " AND n.id IN (SELECT id FROM flight WHERE " + found
                        + " UNION SELECT flight_id FROM flight_event WHERE gone_at IS NULL AND " + found + ")"
                        + ofModel
                        + " ORDER BY d.local_date DESC, d.id DESC, n.ordinal DESC, n.id DESC LIMIT ?)"
                        + " ORDER BY s.local_date DESC, s.id DESC, f.ordinal DESC, f.id DESC",
                parameters.toArray());
    }

    /** LIKE knows upper and lower case of a to z only, so that other letters are asked for in both. */
    private static List<String> cases(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        String upper = text.toUpperCase(Locale.ROOT);
        String first = text.isEmpty() ? "" : text.substring(0, 1).toUpperCase(Locale.ROOT) + lower.substring(1);
        Stream<String> cases =
                text.chars().allMatch(letter -> letter < 128) ? Stream.of(text) : Stream.of(text, lower, upper, first);
        return cases.distinct()
                .map(each ->
                        "%" + each.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + "%")
                .toList();
    }

    /** The winds of a motor in their order. */
    public List<Wind> windsOfMotor(String motorId) {
        return winds("ORDER BY w.ordinal, w.id", motorId);
    }

    /** The last wind of a motor, null before its first. */
    public @Nullable Wind lastWindOfMotor(String motorId) {
        List<Wind> last = winds("ORDER BY w.ordinal DESC, w.id DESC LIMIT 1", motorId);
        return last.isEmpty() ? null : last.get(0);
    }

    /** The air of sessions, in time order within each; readings without a time first. */
    public List<AirReading> airOf(Collection<String> sessionIds) {
        RecordTable<AirReading> table = Tables.of(AirReading.class);
        return rows.sql()
                .list(
                        "SELECT " + table.columns("a") + " FROM air_reading a WHERE a.gone_at IS NULL"
                                + " AND a.session_id IN (SELECT value FROM json_each(?))"
                                + " ORDER BY a.session_id, a.at, a.id",
                        row -> table.read(row, 1),
                        Json.array(sessionIds));
    }

    private List<Wind> winds(String order, String motorId) {
        RecordTable<Wind> table = Tables.of(Wind.class);
        return rows.sql()
                .list(
                        "SELECT " + table.columns("w") + " FROM wind w WHERE w.gone_at IS NULL AND w.motor_id = ? "
                                + order,
                        row -> table.read(row, 1),
                        motorId);
    }

    private Map<String, Integer> counts(String by, String modelId) {
        Map<String, Integer> counts = new HashMap<>();
        rows.sql()
                .list(
                        "SELECT " + by + ", count(*) FROM rigging r JOIN flight f ON f.rigging_id = r.id"
                                + " WHERE r.model_id = ? AND f.gone_at IS NULL GROUP BY 1",
                        row -> counts.put(row.getString(1), row.getInt(2)),
                        modelId);
        return counts;
    }

    private List<FlightLine> lines(String condition, @Nullable Object... parameters) {
        RecordTable<Flight> flights = Tables.of(Flight.class);
        RecordTable<Wind> winds = Tables.of(Wind.class);
        int wind = flights.width() + 1;
        Joined joined = new Joined(rows.sql());
        return rows.sql()
                .list(
                        "SELECT " + flights.columns("f") + ", " + winds.columns("w")
                                + " FROM flight f JOIN session s ON s.id = f.session_id"
                                + " LEFT JOIN wind w ON w.id = f.wind_id WHERE f.gone_at IS NULL" + condition,
                        row -> joined.line(
                                flights.read(row, 1), row.getString(wind) == null ? null : winds.read(row, wind)),
                        parameters);
    }

    /** Reads each record that many flights point to once and hands the same one to all. */
    private static final class Joined {

        private final Sql sql;
        private final Map<String, Record> read = new HashMap<>();

        Joined(Sql sql) {
            this.sql = sql;
        }

        FlightLine line(Flight flight, @Nullable Wind wind) {
            Session session = of(Session.class, flight.sessionId());
            if (session == null) {
                throw new IllegalStateException("flight " + flight.id() + " without its session");
            }
            Rigging rigging = of(Rigging.class, flight.riggingId());
            return new FlightLine(
                    flight,
                    session,
                    rigging,
                    rigging == null ? null : of(Version.class, rigging.versionId()),
                    rigging == null ? null : of(Model.class, rigging.modelId()),
                    wind,
                    wind == null ? null : of(Motor.class, wind.motorId()),
                    of(Venue.class, session.venueId()));
        }

        /** Gone or not: a flight keeps what it points to. */
        private <R extends Record> @Nullable R of(Class<R> type, @Nullable String id) {
            if (id == null) {
                return null;
            }
            Record known = read.get(id);
            if (known == null) {
                RecordTable<R> table = Tables.of(type);
                known = sql.first(
                        "SELECT " + table.columns("t") + " FROM \"" + table.name() + "\" t WHERE t.id = ?",
                        row -> table.read(row, 1),
                        id);
                if (known != null) {
                    read.put(id, known);
                }
            }
            return type.cast(known);
        }
    }
}
