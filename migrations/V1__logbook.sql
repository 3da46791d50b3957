-- The logbook, edition 1. Text ids (UUID v7), SI units in columns whose names say so, instants in UTC (ISO 8601).
-- Nothing is deleted: gone_at. as_typed keeps, per column, what the flyer typed (JSON object).
-- Each check is named by the sentence the flyer reads when it fails; triggers raise theirs.

CREATE TABLE class_sheet (
    id TEXT PRIMARY KEY NOT NULL,
    name TEXT NOT NULL
        CONSTRAINT "A class sheet needs a name." CHECK (length(trim(name)) > 0),
    rule_book TEXT NOT NULL,
    year INTEGER NOT NULL
        CONSTRAINT "The year of a class sheet lies between 1900 and 2200." CHECK (year BETWEEN 1900 AND 2200),
    min_airframe_kg REAL
        CONSTRAINT "A class's least airframe mass cannot be below zero." CHECK (min_airframe_kg >= 0),
    max_motor_kg REAL
        CONSTRAINT "A class's greatest motor mass must be above zero." CHECK (max_motor_kg > 0),
    max_span_m REAL
        CONSTRAINT "A class's greatest span must be above zero." CHECK (max_span_m > 0),
    max_chord_m REAL
        CONSTRAINT "A class's greatest chord must be above zero." CHECK (max_chord_m > 0),
    max_tail_span_m REAL
        CONSTRAINT "A class's greatest tailplane span must be above zero." CHECK (max_tail_span_m > 0),
    max_propeller_m REAL
        CONSTRAINT "A class's greatest propeller diameter must be above zero." CHECK (max_propeller_m > 0),
    notes TEXT,
    gone_at TEXT
) STRICT;

CREATE TABLE model (
    id TEXT PRIMARY KEY NOT NULL,
    name TEXT NOT NULL
        CONSTRAINT "A model needs a name." CHECK (length(trim(name)) > 0),
    letter TEXT NOT NULL
        CONSTRAINT "A model's versions are counted with one letter." CHECK (length(letter) = 1),
    build INTEGER NOT NULL
        CONSTRAINT "Builds are counted from 1." CHECK (build >= 1),
    wished_low REAL,
    wished_high REAL
        CONSTRAINT "The upper end of the wished margin cannot lie below its lower end."
            CHECK (wished_high >= wished_low),
    class_sheet_id TEXT REFERENCES class_sheet (id),
    notes TEXT,
    gone_at TEXT
) STRICT;
CREATE UNIQUE INDEX model_name ON model (name) WHERE gone_at IS NULL;

CREATE TABLE part (
    id TEXT PRIMARY KEY NOT NULL,
    name TEXT NOT NULL
        CONSTRAINT "A part needs a name." CHECK (length(trim(name)) > 0),
    mass_kg REAL
        CONSTRAINT "A part's mass cannot be below zero." CHECK (mass_kg >= 0),
    notes TEXT,
    as_typed TEXT NOT NULL DEFAULT '{}'
        CONSTRAINT "What was typed is kept as a JSON object." CHECK (json_valid(as_typed)),
    gone_at TEXT
) STRICT;

CREATE TABLE part_use (
    id TEXT PRIMARY KEY NOT NULL,
    model_id TEXT NOT NULL REFERENCES model (id),
    part_id TEXT NOT NULL REFERENCES part (id),
    aft_m REAL,
    rise_m REAL,
    gone_at TEXT
) STRICT;
CREATE INDEX part_use_model ON part_use (model_id);
CREATE INDEX part_use_part ON part_use (part_id);

CREATE TABLE propeller (
    id TEXT PRIMARY KEY NOT NULL,
    name TEXT NOT NULL
        CONSTRAINT "A propeller needs a name." CHECK (length(trim(name)) > 0),
    diameter_m REAL
        CONSTRAINT "A propeller's diameter must be above zero." CHECK (diameter_m > 0),
    pitch_m REAL
        CONSTRAINT "A propeller's pitch must be above zero." CHECK (pitch_m > 0),
    mass_kg REAL
        CONSTRAINT "A propeller's mass cannot be below zero." CHECK (mass_kg >= 0),
    notes TEXT,
    as_typed TEXT NOT NULL DEFAULT '{}'
        CONSTRAINT "What was typed is kept as a JSON object." CHECK (json_valid(as_typed)),
    gone_at TEXT
) STRICT;

CREATE TABLE setting_def (
    id TEXT PRIMARY KEY NOT NULL,
    model_id TEXT NOT NULL REFERENCES model (id),
    label TEXT NOT NULL
        CONSTRAINT "A setting needs a name." CHECK (length(trim(label)) > 0),
    quantity TEXT NOT NULL,
    unit TEXT NOT NULL,
    step REAL
        CONSTRAINT "A setting's step must be above zero." CHECK (step > 0),
    tolerance REAL
        CONSTRAINT "A setting's tolerance cannot be below zero." CHECK (tolerance >= 0),
    low REAL,
    high REAL
        CONSTRAINT "A setting's upper limit cannot lie below its lower limit." CHECK (high >= low),
    key_letter TEXT
        CONSTRAINT "A setting's key is one letter." CHECK (length(key_letter) = 1),
    path TEXT,
    ordinal INTEGER NOT NULL,
    gone_at TEXT
) STRICT;
CREATE UNIQUE INDEX setting_def_label ON setting_def (model_id, label) WHERE gone_at IS NULL;
CREATE UNIQUE INDEX setting_def_path ON setting_def (model_id, path) WHERE gone_at IS NULL AND path IS NOT NULL;

CREATE TABLE version (
    id TEXT PRIMARY KEY NOT NULL,
    model_id TEXT NOT NULL REFERENCES model (id),
    build INTEGER NOT NULL
        CONSTRAINT "Builds are counted from 1." CHECK (build >= 1),
    number INTEGER NOT NULL
        CONSTRAINT "Versions are counted from 1." CHECK (number >= 1),
    digest TEXT NOT NULL,
    geometry TEXT
        CONSTRAINT "A version's geometry must be an airframe sheet." CHECK (geometry IS NULL OR json_valid(geometry)),
    marked_good INTEGER NOT NULL
        CONSTRAINT "A version is marked good or it is not." CHECK (marked_good IN (0, 1)),
    zero_shift_m REAL,
    zero_shift_reason TEXT,
    sketch INTEGER NOT NULL
        CONSTRAINT "A version is a sketch or it is not." CHECK (sketch IN (0, 1)),
    made_at TEXT NOT NULL,
    gone_at TEXT,
    CONSTRAINT "A shift of the neutral point needs its reason."
        CHECK (zero_shift_m IS NULL OR zero_shift_reason IS NOT NULL)
) STRICT;
CREATE UNIQUE INDEX version_digest ON version (digest) WHERE gone_at IS NULL;
CREATE UNIQUE INDEX version_number ON version (model_id, number) WHERE gone_at IS NULL;

CREATE TABLE setting_value (
    id TEXT PRIMARY KEY NOT NULL,
    version_id TEXT NOT NULL REFERENCES version (id),
    setting_id TEXT NOT NULL REFERENCES setting_def (id),
    number REAL,
    word TEXT,
    as_typed TEXT,
    gone_at TEXT,
    CONSTRAINT "A setting's value is a number or a word."
        CHECK ((number IS NULL) <> (word IS NULL))
) STRICT;
CREATE UNIQUE INDEX setting_value_once ON setting_value (version_id, setting_id) WHERE gone_at IS NULL;
CREATE INDEX setting_value_setting ON setting_value (setting_id);

CREATE TABLE trial (
    id TEXT PRIMARY KEY NOT NULL,
    model_id TEXT NOT NULL REFERENCES model (id),
    setting_id TEXT NOT NULL REFERENCES setting_def (id),
    number_a REAL,
    word_a TEXT,
    number_b REAL,
    word_b TEXT,
    per_side INTEGER NOT NULL
        CONSTRAINT "A trial needs at least one flight for each value." CHECK (per_side >= 1),
    seed INTEGER NOT NULL,
    drawn_order TEXT NOT NULL
        CONSTRAINT "A trial's drawn order names every flight of both values once."
            CHECK (length(drawn_order) = 2 * per_side),
    opened_at TEXT NOT NULL,
    judged_at TEXT,
    ended_why TEXT,
    gone_at TEXT,
    CONSTRAINT "A trial's first value is a number or a word."
        CHECK ((number_a IS NULL) <> (word_a IS NULL)),
    CONSTRAINT "A trial's second value is a number or a word."
        CHECK ((number_b IS NULL) <> (word_b IS NULL))
) STRICT;
CREATE UNIQUE INDEX trial_open ON trial (model_id) WHERE judged_at IS NULL AND gone_at IS NULL;

CREATE TABLE rigging (
    id TEXT PRIMARY KEY NOT NULL,
    model_id TEXT NOT NULL REFERENCES model (id),
    ordinal INTEGER NOT NULL
        CONSTRAINT "Riggings are counted from 1." CHECK (ordinal >= 1),
    version_id TEXT NOT NULL REFERENCES version (id),
    previous_id TEXT REFERENCES rigging (id),
    set_at TEXT,
    reason TEXT,
    trial_id TEXT REFERENCES trial (id),
    gone_at TEXT
) STRICT;
CREATE INDEX rigging_model ON rigging (model_id, ordinal);
CREATE INDEX rigging_version ON rigging (version_id);

CREATE TABLE weighing (
    id TEXT PRIMARY KEY NOT NULL,
    model_id TEXT NOT NULL REFERENCES model (id),
    version_id TEXT NOT NULL REFERENCES version (id),
    mass_kg REAL
        CONSTRAINT "A mass on the scale must be above zero." CHECK (mass_kg > 0),
    balance_m REAL,
    motor_kg REAL
        CONSTRAINT "The mass of the motor on board cannot be below zero." CHECK (motor_kg >= 0),
    motor_aft_m REAL,
    accuracy_m REAL
        CONSTRAINT "The accuracy of a balance point cannot be below zero." CHECK (accuracy_m >= 0),
    at TEXT NOT NULL,
    notes TEXT,
    as_typed TEXT NOT NULL DEFAULT '{}'
        CONSTRAINT "What was typed is kept as a JSON object." CHECK (json_valid(as_typed)),
    gone_at TEXT,
    CONSTRAINT "A weighing needs a mass or a balance point."
        CHECK (mass_kg IS NOT NULL OR balance_m IS NOT NULL)
) STRICT;
CREATE INDEX weighing_version ON weighing (version_id);

CREATE TABLE airframe_event (
    id TEXT PRIMARY KEY NOT NULL,
    model_id TEXT NOT NULL REFERENCES model (id),
    at TEXT NOT NULL,
    kind TEXT NOT NULL,
    notes TEXT,
    new_build INTEGER
        CONSTRAINT "Builds are counted from 1." CHECK (new_build >= 1),
    gone_at TEXT
) STRICT;
CREATE INDEX airframe_event_model ON airframe_event (model_id);

CREATE TABLE rubber_batch (
    id TEXT PRIMARY KEY NOT NULL,
    name TEXT NOT NULL
        CONSTRAINT "A batch needs a name." CHECK (length(trim(name)) > 0),
    opened_on TEXT,
    width_m REAL
        CONSTRAINT "A strip's width must be above zero." CHECK (width_m > 0),
    turns_constant REAL
        CONSTRAINT "A batch's turns constant must be above zero." CHECK (turns_constant > 0),
    notes TEXT,
    as_typed TEXT NOT NULL DEFAULT '{}'
        CONSTRAINT "What was typed is kept as a JSON object." CHECK (json_valid(as_typed)),
    gone_at TEXT
) STRICT;
CREATE UNIQUE INDEX rubber_batch_name ON rubber_batch (name) WHERE gone_at IS NULL;

CREATE TABLE motor (
    id TEXT PRIMARY KEY NOT NULL,
    name TEXT NOT NULL
        CONSTRAINT "A motor needs a name." CHECK (length(trim(name)) > 0),
    batch_id TEXT REFERENCES rubber_batch (id),
    loop_length_m REAL
        CONSTRAINT "A motor's loop length must be above zero." CHECK (loop_length_m > 0),
    mass_kg REAL
        CONSTRAINT "A motor's mass must be above zero." CHECK (mass_kg > 0),
    cut_from TEXT REFERENCES motor (id),
    fraction REAL NOT NULL
        CONSTRAINT "A motor is a part of a full one: above zero and at most 1." CHECK (fraction > 0 AND fraction <= 1),
    made_on TEXT,
    fate TEXT,
    notes TEXT,
    as_typed TEXT NOT NULL DEFAULT '{}'
        CONSTRAINT "What was typed is kept as a JSON object." CHECK (json_valid(as_typed)),
    gone_at TEXT
) STRICT;
CREATE UNIQUE INDEX motor_name ON motor (name) WHERE gone_at IS NULL;

CREATE TABLE venue (
    id TEXT PRIMARY KEY NOT NULL,
    name TEXT NOT NULL
        CONSTRAINT "A venue needs a name." CHECK (length(trim(name)) > 0),
    site_height_m REAL
        CONSTRAINT "A venue's height above the sea lies between -500 m and 9000 m."
            CHECK (site_height_m BETWEEN -500 AND 9000),
    official_height_m REAL
        CONSTRAINT "A venue's ceiling height must be above zero." CHECK (official_height_m > 0),
    usable_height_m REAL
        CONSTRAINT "A venue's usable height must be above zero." CHECK (usable_height_m > 0),
    notes TEXT,
    as_typed TEXT NOT NULL DEFAULT '{}'
        CONSTRAINT "What was typed is kept as a JSON object." CHECK (json_valid(as_typed)),
    gone_at TEXT
) STRICT;
CREATE UNIQUE INDEX venue_name ON venue (name) WHERE gone_at IS NULL;

CREATE TABLE venue_mark (
    id TEXT PRIMARY KEY NOT NULL,
    venue_id TEXT NOT NULL REFERENCES venue (id),
    name TEXT NOT NULL
        CONSTRAINT "A mark needs a name." CHECK (length(trim(name)) > 0),
    height_m REAL NOT NULL
        CONSTRAINT "A mark's height cannot be below zero." CHECK (height_m >= 0),
    "limit" INTEGER NOT NULL
        CONSTRAINT "A mark is a limit or it is not." CHECK ("limit" IN (0, 1)),
    as_typed TEXT NOT NULL DEFAULT '{}'
        CONSTRAINT "What was typed is kept as a JSON object." CHECK (json_valid(as_typed)),
    gone_at TEXT
) STRICT;
CREATE INDEX venue_mark_venue ON venue_mark (venue_id);

CREATE TABLE session (
    id TEXT PRIMARY KEY NOT NULL,
    venue_id TEXT REFERENCES venue (id),
    local_date TEXT NOT NULL
        CONSTRAINT "A session's date is written year-month-day."
            CHECK (local_date GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    zone TEXT NOT NULL,
    goal TEXT,
    notes TEXT,
    gone_at TEXT
) STRICT;
CREATE INDEX session_date ON session (local_date);

CREATE TABLE air_reading (
    id TEXT PRIMARY KEY NOT NULL,
    session_id TEXT NOT NULL REFERENCES session (id),
    at TEXT,
    temperature_k REAL
        CONSTRAINT "The temperature lies outside what is flown in: -43 to 57 degrees C."
            CHECK (temperature_k BETWEEN 230 AND 330),
    humidity REAL
        CONSTRAINT "Relative humidity lies between 0 and 100 %." CHECK (humidity BETWEEN 0 AND 1),
    pressure_pa REAL
        CONSTRAINT "The station pressure lies outside 300 to 1200 hPa." CHECK (pressure_pa BETWEEN 30000 AND 120000),
    pressure_source TEXT
        CONSTRAINT "A station pressure is measured or estimated from the height."
            CHECK (pressure_source IN ('measured', 'from-height')),
    as_typed TEXT NOT NULL DEFAULT '{}'
        CONSTRAINT "What was typed is kept as a JSON object." CHECK (json_valid(as_typed)),
    gone_at TEXT,
    CONSTRAINT "A station pressure and where it comes from belong together."
        CHECK ((pressure_pa IS NULL) = (pressure_source IS NULL))
) STRICT;
CREATE INDEX air_reading_session ON air_reading (session_id);

CREATE TABLE session_limit (
    id TEXT PRIMARY KEY NOT NULL,
    session_id TEXT NOT NULL REFERENCES session (id),
    mark_id TEXT REFERENCES venue_mark (id),
    name TEXT NOT NULL
        CONSTRAINT "What hangs in the way needs a name." CHECK (length(trim(name)) > 0),
    height_m REAL NOT NULL
        CONSTRAINT "What hangs in the way is above the floor." CHECK (height_m > 0),
    gone_at TEXT
) STRICT;
CREATE INDEX session_limit_session ON session_limit (session_id);

CREATE TABLE wind (
    id TEXT PRIMARY KEY NOT NULL,
    motor_id TEXT REFERENCES motor (id),
    session_id TEXT REFERENCES session (id),
    ordinal INTEGER NOT NULL
        CONSTRAINT "Winds are counted from 1." CHECK (ordinal >= 1),
    wound_at TEXT,
    turns_wound REAL
        CONSTRAINT "Turns wound cannot be below zero." CHECK (turns_wound >= 0),
    turns_backed_off REAL
        CONSTRAINT "Turns backed off cannot be below zero." CHECK (turns_backed_off >= 0),
    max_torque_nm REAL
        CONSTRAINT "The highest torque cannot be below zero." CHECK (max_torque_nm >= 0),
    launch_torque_nm REAL
        CONSTRAINT "The torque at launch cannot be below zero." CHECK (launch_torque_nm >= 0),
    winder_ratio REAL
        CONSTRAINT "A winder's ratio must be above zero." CHECK (winder_ratio > 0),
    "end" TEXT
        CONSTRAINT "A wind is flown, let down or broke." CHECK ("end" IN ('flown', 'let-down', 'broke')),
    notes TEXT,
    as_typed TEXT NOT NULL DEFAULT '{}'
        CONSTRAINT "What was typed is kept as a JSON object." CHECK (json_valid(as_typed)),
    gone_at TEXT,
    CONSTRAINT "Turns backed off cannot be above the turns wound."
        CHECK (turns_backed_off IS NULL OR turns_wound IS NULL OR turns_backed_off <= turns_wound)
) STRICT;
CREATE INDEX wind_motor ON wind (motor_id);
CREATE INDEX wind_session ON wind (session_id);

CREATE TABLE wind_reading (
    id TEXT PRIMARY KEY NOT NULL,
    wind_id TEXT NOT NULL REFERENCES wind (id),
    ordinal INTEGER NOT NULL
        CONSTRAINT "Readings of a wind are counted from 1." CHECK (ordinal >= 1),
    phase TEXT NOT NULL
        CONSTRAINT "A reading is taken while winding or while backing off." CHECK (phase IN ('winding', 'backing-off')),
    turns REAL NOT NULL
        CONSTRAINT "Turns on the motor cannot be below zero." CHECK (turns >= 0),
    torque_nm REAL
        CONSTRAINT "A torque read cannot be below zero." CHECK (torque_nm >= 0),
    at TEXT,
    as_typed TEXT NOT NULL DEFAULT '{}'
        CONSTRAINT "What was typed is kept as a JSON object." CHECK (json_valid(as_typed)),
    gone_at TEXT
) STRICT;
CREATE INDEX wind_reading_wind ON wind_reading (wind_id);

CREATE TABLE flight (
    id TEXT PRIMARY KEY NOT NULL,
    session_id TEXT NOT NULL REFERENCES session (id),
    rigging_id TEXT REFERENCES rigging (id),
    wind_id TEXT REFERENCES wind (id),
    ordinal INTEGER NOT NULL
        CONSTRAINT "Flights of a session are counted from 1." CHECK (ordinal >= 1),
    launch_no_of_wind INTEGER NOT NULL
        CONSTRAINT "Launches on a wind are counted from 1." CHECK (launch_no_of_wind >= 1),
    launched_at TEXT,
    landed_at TEXT,
    duration_s REAL
        CONSTRAINT "A time aloft must be above zero and below 24 hours." CHECK (duration_s > 0 AND duration_s < 86400),
    duration_source TEXT
        CONSTRAINT "A time comes from the watch, was typed, or from the wall clock."
            CHECK (duration_source IN ('watch', 'typed', 'wall-clock')),
    clock_doubt_s REAL,
    ending TEXT
        CONSTRAINT "The ending of a flight is clean, touched, steered, mid-air, hung or aborted."
            CHECK (ending IN ('clean', 'touched', 'steered', 'mid-air', 'hung', 'aborted')),
    cut_short TEXT
        CONSTRAINT "A flight was cut short, was not, or it cannot be said."
            CHECK (cut_short IN ('yes', 'no', 'cannot say')),
    peak_low_m REAL
        CONSTRAINT "A peak height cannot be below zero." CHECK (peak_low_m >= 0),
    peak_high_m REAL
        CONSTRAINT "The upper end of the peak height cannot lie below its lower end."
            CHECK (peak_high_m >= coalesce(peak_low_m, 0)),
    turns_left REAL
        CONSTRAINT "Turns left cannot be below zero." CHECK (turns_left >= 0),
    partial_fraction REAL NOT NULL
        CONSTRAINT "A partial motor is a part of a full one: above zero and at most 1."
            CHECK (partial_fraction > 0 AND partial_fraction <= 1),
    recovered TEXT
        CONSTRAINT "A model recovered, did not, or it was not tried." CHECK (recovered IN ('yes', 'no', 'not tried')),
    stalls INTEGER
        CONSTRAINT "The number of stalls cannot be below zero." CHECK (stalls >= 0),
    left_out_why TEXT,
    left_out_by TEXT,
    left_out_at TEXT,
    left_out_before_time INTEGER
        CONSTRAINT "A flight was flagged before its time was known or it was not."
            CHECK (left_out_before_time IN (0, 1)),
    notes TEXT,
    as_typed TEXT NOT NULL DEFAULT '{}'
        CONSTRAINT "What was typed is kept as a JSON object." CHECK (json_valid(as_typed)),
    gone_at TEXT,
    CONSTRAINT "A time aloft and where it comes from belong together."
        CHECK ((duration_s IS NULL) = (duration_source IS NULL)),
    CONSTRAINT "A flight needs its time or the instant of its launch."
        CHECK (duration_s IS NOT NULL OR launched_at IS NOT NULL OR ending = 'aborted')
) STRICT;
CREATE INDEX flight_session ON flight (session_id, ordinal);
CREATE INDEX flight_rigging ON flight (rigging_id);
CREATE INDEX flight_wind ON flight (wind_id);
CREATE INDEX flight_in_the_air ON flight (id) WHERE duration_s IS NULL AND gone_at IS NULL;

-- Turns left and backed off together never exceed what was wound, from whichever row the change comes.
CREATE TRIGGER flight_turns_left_insert BEFORE INSERT ON flight
WHEN NEW.turns_left IS NOT NULL AND NEW.gone_at IS NULL AND EXISTS (
    SELECT 1 FROM wind w WHERE w.id = NEW.wind_id AND w.turns_wound IS NOT NULL
        AND NEW.turns_left > w.turns_wound - coalesce(w.turns_backed_off, 0))
BEGIN SELECT RAISE (ABORT, 'Turns left cannot be above the turns wound less those backed off.'); END;
CREATE TRIGGER flight_turns_left_update BEFORE UPDATE ON flight
WHEN NEW.turns_left IS NOT NULL AND NEW.gone_at IS NULL AND EXISTS (
    SELECT 1 FROM wind w WHERE w.id = NEW.wind_id AND w.turns_wound IS NOT NULL
        AND NEW.turns_left > w.turns_wound - coalesce(w.turns_backed_off, 0))
BEGIN SELECT RAISE (ABORT, 'Turns left cannot be above the turns wound less those backed off.'); END;
CREATE TRIGGER wind_turns_update BEFORE UPDATE ON wind
WHEN NEW.turns_wound IS NOT NULL AND NEW.gone_at IS NULL AND EXISTS (
    SELECT 1 FROM flight f WHERE f.wind_id = NEW.id AND f.gone_at IS NULL AND f.turns_left IS NOT NULL
        AND f.turns_left > NEW.turns_wound - coalesce(NEW.turns_backed_off, 0))
BEGIN SELECT RAISE (ABORT, 'Turns left cannot be above the turns wound less those backed off.'); END;

CREATE TABLE flight_event (
    id TEXT PRIMARY KEY NOT NULL,
    flight_id TEXT NOT NULL REFERENCES flight (id),
    kind TEXT NOT NULL
        CONSTRAINT "The kind of this event is not known."
            CHECK (kind IN ('touched', 'top-of-climb', 'lap', 'steered', 'stalled', 'dived', 'mushed',
        'recovered', 'not-recovered', 'propeller-stopped', 'note')),
    at_s REAL
        CONSTRAINT "An event cannot come before the launch." CHECK (at_s >= 0),
    value REAL,
    mark_id TEXT REFERENCES venue_mark (id),
    notes TEXT,
    gone_at TEXT
) STRICT;
CREATE INDEX flight_event_flight ON flight_event (flight_id);

CREATE TABLE preference (
    id TEXT PRIMARY KEY NOT NULL,
    value TEXT NOT NULL
) STRICT;

CREATE TABLE computed (
    kind TEXT NOT NULL,
    digest TEXT NOT NULL,
    engine TEXT NOT NULL,
    value TEXT NOT NULL,
    made_at TEXT NOT NULL,
    PRIMARY KEY (kind, digest, engine)
) STRICT;

-- One row per changed row; an entry groups what one action changed. undoes names the entry that a compensating entry
-- takes back.
CREATE TABLE change_log (
    id INTEGER PRIMARY KEY,
    entry TEXT NOT NULL,
    table_name TEXT NOT NULL,
    row_id TEXT NOT NULL,
    before TEXT CHECK (before IS NULL OR json_valid(before)),
    after TEXT CHECK (after IS NULL OR json_valid(after)),
    at TEXT NOT NULL,
    device TEXT NOT NULL,
    why TEXT NOT NULL,
    undoes TEXT
) STRICT;
CREATE INDEX change_log_entry ON change_log (entry);
CREATE INDEX change_log_undoes ON change_log (undoes) WHERE undoes IS NOT NULL;
CREATE INDEX change_log_row ON change_log (table_name, row_id);
