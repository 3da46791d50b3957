package org.rafterbook.work;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.SideRows.BatchRow;
import org.rafterbook.exchange.SideRows.MarkRow;
import org.rafterbook.exchange.SideRows.MotorRow;
import org.rafterbook.exchange.SideRows.VenueRow;
import org.rafterbook.flight.Venue;
import org.rafterbook.flight.VenueMark;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Writer;
import org.rafterbook.power.Motor;
import org.rafterbook.power.RubberBatch;

/**
 * Venues, marks, batches and motors of an import, found by name or made. What the logbook has stays; a file only fills
 * in what is missing.
 */
final class ImportBasics {

    private final Writer w;
    private final ImportTally tally;
    private final Map<String, Venue> venues = new HashMap<>();
    private final Map<String, VenueMark> marks = new HashMap<>();
    private final Map<String, RubberBatch> batches = new HashMap<>();
    private final Map<String, Motor> motors = new HashMap<>();

    ImportBasics(Writer writer, ImportTally tally) {
        this.w = writer;
        this.tally = tally;
        w.all(Venue.class).forEach(v -> venues.put(key(v.name()), v));
        w.all(VenueMark.class).forEach(m -> marks.put(m.venueId() + "|" + key(m.name()), m));
        w.all(RubberBatch.class).forEach(b -> batches.put(key(b.name()), b));
        w.all(Motor.class).forEach(m -> motors.put(key(m.name()), m));
    }

    static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    void take(ImportPlan plan) {
        plan.venues.forEach(v -> venue(v.row()));
        plan.marks.forEach(m -> mark(m.row()));
        plan.batches.forEach(b -> batch(b.row()));
        plan.motors.forEach(m -> motor(m.row()));
        plan.motors.forEach(m -> cutFrom(m.row()));
    }

    /** The venue of this name, made where there is none; null for none. */
    @Nullable
    Venue venue(@Nullable String name, @Nullable Double usableM) {
        if (name == null) {
            return null;
        }
        Venue known = venues.get(key(name));
        if (known == null) {
            tally.add("venues");
            return put(w.insert(new Venue(Logbook.newId(), name, null, null, usableM, null, Map.of())));
        }
        return known.usableHeightM() == null && usableM != null
                ? put(w.update(new Venue(
                        known.id(),
                        known.name(),
                        known.siteHeightM(),
                        known.officialHeightM(),
                        usableM,
                        known.notes(),
                        known.asTyped())))
                : known;
    }

    private Venue put(Venue venue) {
        venues.put(key(venue.name()), venue);
        return venue;
    }

    private void venue(VenueRow row) {
        Venue v = Objects.requireNonNull(venue(row.venue(), row.usableHeightM()));
        String what = "venue " + v.name();
        put(w.update(new Venue(
                v.id(),
                v.name(),
                keep(what + ", site height", v.siteHeightM(), row.siteHeightM()),
                keep(what + ", official height", v.officialHeightM(), row.officialHeightM()),
                keep(what + ", usable height", v.usableHeightM(), row.usableHeightM()),
                keep(what + ", notes", v.notes(), row.notes()),
                v.asTyped())));
    }

    private void mark(MarkRow row) {
        Venue venue = Objects.requireNonNull(venue(row.venue(), null));
        String key = venue.id() + "|" + key(row.mark());
        VenueMark known = marks.get(key);
        if (known == null) {
            marks.put(
                    key,
                    w.insert(new VenueMark(
                            Logbook.newId(), venue.id(), row.mark(), row.heightM(), row.limit(), Map.of())));
            tally.add("marks");
        } else {
            keep("mark " + known.name() + ", height", known.heightM(), row.heightM());
        }
    }

    /** The mark of this name at the venue, null where there is none. */
    @Nullable
    VenueMark mark(@Nullable String venueId, String name) {
        return venueId == null ? null : marks.get(venueId + "|" + key(name));
    }

    private RubberBatch batch(String name) {
        RubberBatch known = batches.get(key(name));
        if (known != null) {
            return known;
        }
        tally.add("batches");
        RubberBatch made = w.insert(new RubberBatch(Logbook.newId(), name, null, null, null, null, Map.of()));
        batches.put(key(name), made);
        return made;
    }

    private void batch(BatchRow row) {
        RubberBatch b = batch(row.batch());
        String what = "batch " + b.name();
        batches.put(
                key(b.name()),
                w.update(new RubberBatch(
                        b.id(),
                        b.name(),
                        keep(what + ", opened on", b.openedOn(), row.openedOn()),
                        keep(what + ", width", b.widthM(), row.widthM()),
                        keep(what + ", constant", b.turnsConstant(), row.turnsConstant()),
                        keep(what + ", notes", b.notes(), row.notes()),
                        b.asTyped())));
    }

    /** The motor of this name, made where there is none. */
    Motor motor(String name, double fraction) {
        Motor known = motors.get(key(name));
        if (known != null) {
            return known;
        }
        tally.add("motors");
        Motor made = w.insert(
                new Motor(Logbook.newId(), name, null, null, null, null, fraction, null, null, null, Map.of()));
        motors.put(key(name), made);
        return made;
    }

    /** The motor of this name, null where there is none. */
    @Nullable
    Motor motorNamed(String name) {
        return motors.get(key(name));
    }

    private void motor(MotorRow row) {
        boolean isNew = !motors.containsKey(key(row.motor()));
        Double fraction = row.fraction();
        Motor m = motor(row.motor(), fraction == null ? 1 : fraction);
        String what = "motor " + m.name();
        String batchName = row.batch();
        String batchId = batchName == null ? null : batch(batchName).id();
        LocalDate made = keep(what + ", made on", m.madeOn(), row.madeOn());
        Motor filled = new Motor(
                m.id(),
                m.name(),
                keep(what + ", batch", m.batchId(), batchId),
                keep(what + ", loop", m.loopLengthM(), row.loopLengthM()),
                keep(what + ", mass", m.massKg(), row.massKg()),
                m.cutFrom(),
                m.fraction(),
                made,
                keep(what + ", fate", m.fate(), row.fate()),
                keep(what + ", notes", m.notes(), row.notes()),
                m.asTyped());
        motors.put(key(m.name()), isNew || !filled.equals(m) ? w.update(filled) : m);
    }

    private void cutFrom(MotorRow row) {
        String from = row.cutFrom();
        Motor m = Objects.requireNonNull(motorNamed(row.motor()));
        if (from == null || m.cutFrom() != null || key(from).equals(key(row.motor()))) {
            return;
        }
        Motor whole = motor(from, 1);
        motors.put(
                key(m.name()),
                w.update(new Motor(
                        m.id(),
                        m.name(),
                        m.batchId(),
                        m.loopLengthM(),
                        m.massKg(),
                        whole.id(),
                        m.fraction(),
                        m.madeOn(),
                        m.fate(),
                        m.notes(),
                        m.asTyped())));
    }

    /** What the logbook has, else what the file says; says so where both differ. */
    <T> @Nullable T keep(String what, @Nullable T there, @Nullable T given) {
        if (there == null) {
            return given;
        }
        if (given != null && !there.equals(given)) {
            tally.remark("The logbook's own stays: " + what + ".");
        }
        return there;
    }

    List<Venue> venues() {
        return List.copyOf(venues.values());
    }
}
