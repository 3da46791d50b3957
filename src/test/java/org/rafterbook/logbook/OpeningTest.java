package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.rafterbook.logbook.Samples.list;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.rafterbook.flight.Venue;
import org.rafterbook.units.UserError;

/** What is in the way of opening gets a sentence, and not a byte of any file changes. */
class OpeningTest {

    private static final String UNTOUCHED = " is not a Rafterbook logbook. Nothing in it was touched.";

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void place() {
        file = folder.resolve("season.rafterbook");
    }

    @ParameterizedTest
    @EnumSource(
            value = Mode.class,
            names = {"EXISTING", "READ_ONLY"})
    void aMissingFileIsNotMade(Mode mode) throws IOException {
        refused(mode, "There is no logbook " + file + ".");
        assertThat(contents()).isEmpty();
    }

    @Test
    void aNewLogbooksFolderIsMade() {
        Path deep = folder.resolve("documents").resolve("flying").resolve("season.rafterbook");
        Logbook.open(deep, Mode.CREATE).close();
        assertThat(deep).exists();
    }

    @ParameterizedTest
    @EnumSource(Mode.class)
    void aTextIsNoLogbook(Mode mode) throws IOException {
        Files.writeString(file, "Dear flyer, this is a letter and no logbook. ".repeat(40));
        refused(mode, file + UNTOUCHED);
    }

    @ParameterizedTest
    @EnumSource(Mode.class)
    void anEmptyFileIsNoLogbook(Mode mode) throws IOException {
        Files.createFile(file);
        refused(mode, file + UNTOUCHED);
    }

    @ParameterizedTest
    @EnumSource(Mode.class)
    void anotherProgramsDatabaseIsNoLogbook(Mode mode) throws Exception {
        try (Sql sql = new Sql(Connections.migrating(file).getConnection())) {
            sql.execute("CREATE TABLE model (id TEXT)");
        }
        refused(mode, file + UNTOUCHED);
    }

    @ParameterizedTest
    @EnumSource(Mode.class)
    void aFolderIsNoLogbook(Mode mode) throws IOException {
        Files.createDirectory(file);
        refused(mode, file + " is not a file.");
    }

    @ParameterizedTest
    @EnumSource(Mode.class)
    void aLogbookOfANewerProgramIsLeftAlone(Mode mode) throws IOException {
        make();
        overwrite(60, 7);
        refused(
                mode,
                "The logbook " + file + " was written by a newer Rafterbook (edition 7, this program knows up to 2)."
                        + " Open it with that one; nothing in it was touched.");
    }

    @Test
    void aNewerEditionStillInTheWriteAheadLogIsSeenToo() throws IOException {
        make();
        try (Sql sql = Connections.writer(file)) {
            sql.execute("PRAGMA user_version = 7");
            assertThatThrownBy(() -> Logbook.open(file, Mode.EXISTING))
                    .isInstanceOf(UserError.class)
                    .hasMessageContaining("newer Rafterbook (edition 7");
            assertThatThrownBy(() -> Logbook.open(file, Mode.READ_ONLY))
                    .isInstanceOf(UserError.class)
                    .hasMessageContaining("newer Rafterbook (edition 7");
        }
    }

    @ParameterizedTest
    @EnumSource(Mode.class)
    void aTruncatedFileIsDamaged(Mode mode) throws IOException {
        make();
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.truncate(channel.size() - 4096 * 3);
        }
        refused(mode, file + ": " + Failures.DAMAGED);
    }

    @Test
    void aFileWithoutItsTablesIsDamaged() throws IOException {
        make();
        try (Sql sql = Connections.writer(file)) {
            sql.execute("DROP TABLE flight_event");
        }
        refused(Mode.EXISTING, file + ": " + Failures.DAMAGED);
    }

    @Test
    void damageFoundLaterIsSaidAndCheckNamesIt() throws IOException {
        make();
        try (Sql sql = Connections.untouching(file)) {
            for (int page : sql.list(
                    "SELECT rootpage FROM sqlite_schema WHERE tbl_name = 'venue' AND rootpage > 0", r -> r.getInt(1))) {
                overwrite((page - 1) * 4096, 0x01020304);
            }
        }
        try (Logbook logbook = Logbook.open(file, Mode.EXISTING)) {
            assertThatThrownBy(() -> logbook.read(r -> r.all(Venue.class)))
                    .isInstanceOfSatisfying(
                            UserError.class, e -> assertThat(e.kind()).isEqualTo(UserError.Kind.COULD_NOT))
                    .hasMessage(Failures.DAMAGED);
            assertThat(logbook.check()).isNotEmpty();
        }
    }

    @Test
    void aProgramKilledWhileEntriesWentIntoTheFileLosesNone() throws IOException {
        Venue hall = Samples.venue("Hall");
        Path copy = folder.resolve("killed.rafterbook");
        try (Logbook logbook = Logbook.open(file, Mode.CREATE)) {
            logbook.enter("Venue", w -> w.insert(hall));
            // Enough to make the file grow, which changes its first page.
            logbook.enter("Long", w -> w.insert(Samples.venue("long ".repeat(20_000))));
            Files.copy(file, copy);
            Files.copy(folder.resolve("season.rafterbook-wal"), folder.resolve("killed.rafterbook-wal"));
        }
        // The first page says already how long the file will be (SQLite file format, section 1.3.8), the rest is not
        // yet
        // written.
        file = copy;
        overwrite(28, 5000);
        try (Logbook logbook = Logbook.open(copy, Mode.EXISTING)) {
            assertThat(list(logbook, r -> r.all(Venue.class))).contains(hall).hasSize(2);
            assertThat(logbook.check()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Mode.class,
            names = {"CREATE", "EXISTING"})
    void aSecondWindowIsRefusedAndReadingWorksBesideTheFirst(Mode mode) throws IOException {
        try (Logbook first = Logbook.open(file, Mode.CREATE)) {
            first.enter("Venue", w -> w.insert(Samples.venue("Hall")));
            refused(mode, "The logbook " + file + " is open in another window; close that one first, or only read.");
            try (Logbook reading = Logbook.open(file, Mode.READ_ONLY)) {
                assertThat(list(reading, r -> r.all(Venue.class))).hasSize(1);
                first.enter("Venue", w -> w.insert(Samples.venue("Hall 2")));
                assertThat(list(reading, r -> r.all(Venue.class))).hasSize(2);
            }
            first.enter("Venue", w -> w.insert(Samples.venue("Hall 3")));
        }
        Logbook.open(file, mode).close();
    }

    @Test
    void aReaderThatOutlivesTheWindowLosesNothingAndLeavesNothingBehind() {
        Logbook window = Logbook.open(file, Mode.CREATE);
        window.enter("Venue", w -> w.insert(Samples.venue("Hall")));
        try (Logbook reading = Logbook.open(file, Mode.READ_ONLY)) {
            assertThat(list(reading, r -> r.all(Venue.class))).hasSize(1);
            window.enter("Venue", w -> w.insert(Samples.venue("Hall 2")));
            window.close();
            assertThat(list(reading, r -> r.all(Venue.class))).hasSize(2);
        }
        assertThat(folder.toFile().list()).containsExactly("season.rafterbook");
        try (Logbook again = Logbook.open(file, Mode.EXISTING)) {
            assertThat(list(again, r -> r.all(Venue.class))).hasSize(2);
        }
    }

    @Test
    void aSecondProgramIsRefusedToo() throws Exception {
        try (Logbook first = Logbook.open(file, Mode.CREATE)) {
            OtherProgram other = OtherProgram.start("open", file.toString());
            assertThat(other.line())
                    .isEqualTo(
                            "The logbook " + file + " is open in another window; close that one first, or only read.");
            first.enter("Venue", w -> w.insert(Samples.venue("Hall")));
            OtherProgram reader = OtherProgram.start("venues", file.toString());
            assertThat(reader.line()).isEqualTo("Hall");
        }
        OtherProgram again = OtherProgram.start("open", file.toString());
        assertThat(again.line()).isEqualTo("opened");
    }

    @Test
    void aLinkToALogbookIsTheSameLogbook() throws IOException {
        make();
        Path link = Files.createSymbolicLink(folder.resolve("link.rafterbook"), file);
        try (Logbook first = Logbook.open(link, Mode.EXISTING)) {
            assertThat(first.file()).isEqualTo(file.toRealPath());
            assertThatThrownBy(() -> Logbook.open(file, Mode.EXISTING)).hasMessageContaining("another window");
        }
    }

    @Test
    void aLogbookOpenForReadingTakesNoEntries() {
        make();
        try (Logbook reading = Logbook.open(file, Mode.READ_ONLY)) {
            assertThat(reading.readOnly()).isTrue();
            String sentence = "The logbook " + file + " is open for reading only.";
            assertThatThrownBy(() -> reading.enter("x", w -> w.insert(Samples.venue("Hall"))))
                    .hasMessage(sentence);
            assertThatThrownBy(reading::undo).hasMessage(sentence);
            reading.keepComputed("lattice", "d", "1", "{}");
            assertThat(reading.<String>find(r -> r.computed("lattice", "d", "1")))
                    .isNull();
            assertThat(reading.check()).isEmpty();
        }
        assertThat(folder.toFile().list()).containsExactly("season.rafterbook");
    }

    @Test
    void aReadOnlyFileTakesNoEntriesButCanBeRead() throws IOException {
        make();
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        assumeFalse(Files.isWritable(file), "this user may write everywhere");
        refused(Mode.EXISTING, "The logbook " + file + " cannot be written to: the file is read-only.");
        try (Logbook logbook = Logbook.open(file, Mode.READ_ONLY)) {
            assertThat(list(logbook, r -> r.all(Venue.class))).isEmpty();
        }
        assertThat(folder.toFile().list()).containsExactly("season.rafterbook");
    }

    @Test
    void aReadOnlyFolderTakesNoEntriesButItsLogbooksCanBeRead() throws IOException {
        make();
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            assumeFalse(Files.isWritable(folder), "this user may write everywhere");
            refused(Mode.EXISTING, "The logbook " + file + " cannot be written to: its folder takes no new files.");
            file = folder.resolve("new.rafterbook");
            refused(Mode.CREATE, "The logbook " + file + " cannot be written to: its folder takes no new files.");
            try (Logbook logbook = Logbook.open(folder.resolve("season.rafterbook"), Mode.READ_ONLY)) {
                assertThat(list(logbook, r -> r.all(Venue.class))).isEmpty();
            }
        } finally {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws IOException {
        Path inTheWay = Files.createFile(folder.resolve("documents"));
        assertThatThrownBy(() -> Logbook.open(inTheWay.resolve("season.rafterbook"), Mode.CREATE))
                .isInstanceOf(UserError.class)
                .hasMessage("The folder " + inTheWay + " cannot be made.");
    }

    @Test
    void whatAKilledStartLeftBehindIsNoHindrance() throws IOException {
        Files.writeString(folder.resolve("season.rafterbook.part"), "half");
        Files.createFile(folder.resolve("season.rafterbook.lock"));
        Logbook.open(file, Mode.CREATE).close();
        assertThat(folder.toFile().list()).containsExactly("season.rafterbook");
    }

    private void make() {
        Logbook.open(file, Mode.CREATE).close();
    }

    private void overwrite(int offset, int value) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.allocate(4).putInt(0, value), offset);
        }
    }

    private void refused(Mode mode, String sentence) throws IOException {
        Map<String, String> before = contents();
        assertThatThrownBy(() -> Logbook.open(file, mode).close())
                .isInstanceOf(UserError.class)
                .hasMessage(sentence);
        assertThat(contents()).isEqualTo(before);
    }

    /** Every file of the folder but the lock held by the test's own first window. */
    private Map<String, String> contents() throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path each : files.filter(f -> !f.toString().endsWith(".lock")).toList()) {
                contents.put(
                        each.getFileName().toString(),
                        Files.isRegularFile(each)
                                ? HexFormat.of().formatHex(digest(Files.readAllBytes(each)))
                                : "folder");
            }
        }
        return contents;
    }

    private static byte[] digest(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
