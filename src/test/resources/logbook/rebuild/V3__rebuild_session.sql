-- A parent table built anew, as a later edition may have to.
CREATE TABLE session_new (
    id TEXT PRIMARY KEY NOT NULL,
    venue_id TEXT REFERENCES venue (id),
    local_date TEXT NOT NULL,
    zone TEXT NOT NULL,
    goal TEXT,
    notes TEXT,
    gone_at TEXT
) STRICT;
INSERT INTO session_new SELECT id, venue_id, local_date, zone, goal, notes, gone_at FROM session;
DROP TABLE session;
ALTER TABLE session_new RENAME TO session;
CREATE INDEX session_date ON session (local_date);
