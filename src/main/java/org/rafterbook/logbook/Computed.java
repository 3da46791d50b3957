package org.rafterbook.logbook;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** The cache of what was computed, by the digest of its input and the version of the engine; no part of the change log. */
final class Computed {

    private Computed() {}

    static @Nullable String find(Sql sql, String kind, String digest, String engine) {
        return sql.first(
                "SELECT value FROM computed WHERE kind = ? AND digest = ? AND engine = ?",
                rows -> rows.getString(1),
                kind,
                digest,
                engine);
    }

    static boolean keep(Sql sql, String kind, String digest, String engine, String json) {
        sql.run("DELETE FROM computed WHERE kind = ? AND digest = ?", kind, digest);
        sql.run(
                "INSERT INTO computed (kind, digest, engine, value, made_at) VALUES (?, ?, ?, ?, ?)",
                kind,
                digest,
                engine,
                json,
                Codec.text(Instant.now()));
        return true;
    }
}
