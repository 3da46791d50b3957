-- What the flyer's own formula gives for a version was a preference, which undo passes over; it is a fact of the version.

ALTER TABLE version ADD COLUMN own_neutral_point_m REAL;

UPDATE version SET own_neutral_point_m =
    (SELECT CAST(p.value AS REAL) FROM preference p WHERE p.id = 'bench.own_neutral_point_m.' || version.id);

DELETE FROM preference WHERE id LIKE 'bench.own_neutral_point_m.%';
