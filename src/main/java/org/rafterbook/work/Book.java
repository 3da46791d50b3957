package org.rafterbook.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Mode;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.logbook.Undone;
import org.rafterbook.units.UserError;

/** The open logbook with all that works on it: what screens and commands are given. */
public final class Book implements AutoCloseable {

    private final Logbook logbook;
    private final Clock clock;
    private final Riggings riggings;
    private final Corrections corrections;
    private final Recordings recordings;
    private final Sheets sheets;
    private final Margins margins;
    private final BenchDesk bench;
    private final Trials trials;
    private final SeasonDesk season;
    private final MotorDesk motors;
    private final Imports imports;
    private final Exports exports;

    private Book(Logbook logbook, Clock clock) {
        this.logbook = logbook;
        this.clock = clock;
        this.riggings = new Riggings(logbook, clock);
        this.corrections = new Corrections(logbook, clock);
        this.recordings = new Recordings(logbook);
        this.sheets = new Sheets(logbook, clock, riggings);
        this.margins = new Margins(logbook);
        this.bench = new BenchDesk(logbook, clock, riggings, margins);
        this.trials = new Trials(logbook, riggings, clock, new SecureRandom()::nextLong);
        this.season = new SeasonDesk(logbook, margins, riggings);
        this.motors = new MotorDesk(logbook, clock);
        this.imports = new Imports(logbook, clock, riggings, sheets);
        this.exports = new Exports(logbook);
    }

    /** Opens a logbook; every failure is a sentence and harms nothing. */
    public static Book open(Path file, Mode mode, Clock clock) {
        return new Book(Logbook.open(file, mode), clock);
    }

    /** The file this logbook is. */
    public Path file() {
        return logbook.file();
    }

    /** The store, for what works on it within this room. */
    Logbook logbook() {
        return logbook;
    }

    /** The clock its entries are dated by. */
    public Clock clock() {
        return clock;
    }

    public Riggings riggings() {
        return riggings;
    }

    public Recordings recordings() {
        return recordings;
    }

    public Corrections corrections() {
        return corrections;
    }

    public Sheets sheets() {
        return sheets;
    }

    public Margins margins() {
        return margins;
    }

    public BenchDesk bench() {
        return bench;
    }

    /** The Review of this logbook. */
    public ReviewDesk review() {
        return new ReviewDesk(this, margins);
    }

    /** The Hall of this logbook. */
    public HallDesk hall() {
        return new HallDesk(
                this,
                (rigged, motor) -> MarginText.Answer.of(margins.ofVersion(
                        rigged.version().id(),
                        motor == null ? null : motor.id(),
                        motor == null ? 1 : motor.fraction())));
    }

    /** Trials of a setting's two values. */
    public Trials trials() {
        return trials;
    }

    public SeasonDesk season() {
        return season;
    }

    public MotorDesk motors() {
        return motors;
    }

    /** Something the flyer prefers, such as the theme; null where nothing was said. */
    public @Nullable String preference(String name) {
        return logbook.read(r -> Optional.ofNullable(r.preference(name))).orElse(null);
    }

    /** Keeps a preference; undo does not touch it. */
    public void prefer(String name, String value) {
        logbook.prefer(name, value);
    }

    public Imports imports() {
        return imports;
    }

    public Exports exports() {
        return exports;
    }

    /** True where nothing was ever entered but preferences, or all of it was undone. */
    public boolean isEmpty() {
        return undoable() == null;
    }

    /** What undo would take back, in words; null where there is nothing. */
    public @Nullable String undoable() {
        return logbook.undoable();
    }

    /** Takes back the newest entry and says what it was. */
    public Undone undo() {
        return logbook.undo();
    }

    /** Calls the listener after each entry and each undo. */
    public Subscription onChange(Runnable listener) {
        return logbook.onChange(listener);
    }

    /** Sentences on what is wrong with the file; empty where it is sound. */
    public List<String> check() {
        return logbook.check();
    }

    /**
     * Takes another logbook in as one entry, all or none; the other one stays as it is.
     *
     * @return how many things were added, by the words for one of them
     */
    public Map<String, Integer> join(Path other) {
        try {
            if (Files.exists(other) && Files.isSameFile(other, file())) {
                throw UserError.badInput("That is the same logbook.");
            }
        } catch (IOException e) {
            throw UserError.couldNot("The logbook " + other + " cannot be read.", e);
        }
        try (Logbook joined = Logbook.open(other, Mode.READ_ONLY)) {
            return logbook.join(joined);
        }
    }

    /** Writes a copy of the logbook; never over an existing file. */
    public void backup(Path to) {
        logbook.backup(to);
    }

    @Override
    public void close() {
        logbook.close();
    }
}
