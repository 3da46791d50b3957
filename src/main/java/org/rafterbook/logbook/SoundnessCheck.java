package org.rafterbook.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.rafterbook.units.UserError;

/** Looks through a whole logbook for damage and for what contradicts itself; in no transaction, which damage would end. */
final class SoundnessCheck {

    /** Each answers the sentences of what it finds. */
    private static final List<String> CONTRADICTIONS = List.of("""
            SELECT 'The riggings of ' || name || ' do not follow each other: number ' || ordinal
                || ' does not name the one before it.'
            FROM (SELECT m.name, r.ordinal, r.previous_id,
                    lag(r.id) OVER (PARTITION BY r.model_id ORDER BY r.ordinal, r.id) AS before_it
                FROM rigging r JOIN model m ON m.id = r.model_id WHERE r.gone_at IS NULL)
            WHERE previous_id IS NOT before_it
            """, """
            SELECT m.name || ' has ' || count(*) || ' riggings with the number ' || r.ordinal || '.'
            FROM rigging r JOIN model m ON m.id = r.model_id WHERE r.gone_at IS NULL
            GROUP BY r.model_id, r.ordinal HAVING count(*) > 1
            """, """
            SELECT 'Rigging ' || r.ordinal || ' of ' || m.name || ' is set to a version of another model.'
            FROM rigging r JOIN version v ON v.id = r.version_id JOIN model m ON m.id = r.model_id
            WHERE r.gone_at IS NULL AND v.model_id <> r.model_id
            """, """
            SELECT 'Rigging ' || r.ordinal || ' of ' || m.name || ' belongs to a trial of another model.'
            FROM rigging r JOIN trial t ON t.id = r.trial_id JOIN model m ON m.id = r.model_id
            WHERE r.gone_at IS NULL AND t.model_id <> r.model_id
            """, """
            SELECT 'Version ' || v.number || ' of ' || m.name || ' has a value for the setting ' || d.label
                || ' of another model.'
            FROM setting_value s JOIN version v ON v.id = s.version_id JOIN setting_def d ON d.id = s.setting_id
                JOIN model m ON m.id = v.model_id
            WHERE s.gone_at IS NULL AND v.gone_at IS NULL AND d.model_id <> v.model_id
            """, """
            SELECT 'Versions ' || group_concat(number, ' and ') || ' of ' || m.name || ' have the same settings.'
            FROM version v JOIN model m ON m.id = v.model_id WHERE v.gone_at IS NULL
            GROUP BY v.digest HAVING count(*) > 1
            """, """
            SELECT m.name || ' has ' || count(*) || ' open trials.'
            FROM trial t JOIN model m ON m.id = t.model_id WHERE t.judged_at IS NULL AND t.gone_at IS NULL
            GROUP BY t.model_id HAVING count(*) > 1
            """, """
            SELECT 'Flight ' || f.ordinal || ' of ' || s.local_date || ' has more turns left than were on the motor.'
            FROM flight f JOIN wind w ON w.id = f.wind_id JOIN session s ON s.id = f.session_id
            WHERE f.gone_at IS NULL AND f.turns_left > w.turns_wound - coalesce(w.turns_backed_off, 0)
            """, """
            SELECT 'The session of ' || s.local_date || ' has ' || count(*) || ' flights with the number ' || f.ordinal
                || '.'
            FROM flight f JOIN session s ON s.id = f.session_id WHERE f.gone_at IS NULL
            GROUP BY f.session_id, f.ordinal HAVING count(*) > 1
            """, """
            SELECT 'Flight ' || f.ordinal || ' of ' || s.local_date || ' was flown on a wind of another session.'
            FROM flight f JOIN wind w ON w.id = f.wind_id JOIN session s ON s.id = f.session_id
            WHERE f.gone_at IS NULL AND w.session_id IS NOT NULL AND w.session_id <> f.session_id
            """);

    private SoundnessCheck() {}

    static List<String> run(Sql sql) {
        List<String> found = new ArrayList<>();
        try {
            sql.list("PRAGMA integrity_check", rows -> rows.getString(1)).stream()
                    .filter(line -> !line.equals("ok"))
                    .map(line -> "The file is damaged: " + line + ".")
                    .forEach(found::add);
            if (found.isEmpty()) {
                dangling(sql).forEach(found::add);
                CONTRADICTIONS.forEach(rule -> found.addAll(sql.list(rule, rows -> rows.getString(1))));
                Tables.TYPES.forEach(type -> found.addAll(gone(sql, Tables.of(type))));
            }
        } catch (UserError e) {
            found.add(e.sentence());
        }
        return found;
    }

    private static Stream<String> dangling(Sql sql) {
        return sql
                .list(
                        "SELECT \"table\", parent, count(*) FROM pragma_foreign_key_check GROUP BY 1, 2",
                        rows -> rows.getInt(3) + " of the " + rows.getString(1) + " rows name a " + rows.getString(2)
                                + " that is not there.")
                .stream();
    }

    /** Rows that are there and name one that is gone. */
    private static List<String> gone(Sql sql, RecordTable<?> table) {
        return References.of(sql, table).stream()
                .flatMap(reference -> sql
                        .list(
                                "SELECT count(*) FROM \"" + table.name() + "\" t JOIN \"" + reference.target()
                                        + "\" p ON p.id = t.\"" + reference.column()
                                        + "\" WHERE t.gone_at IS NULL AND p.gone_at IS NOT NULL",
                                rows -> rows.getLong(1))
                        .stream()
                        .filter(count -> count > 0)
                        .map(count -> count + " of the " + table.words() + " rows name a "
                                + reference.target().replace('_', ' ') + " that was removed."))
                .toList();
    }
}
