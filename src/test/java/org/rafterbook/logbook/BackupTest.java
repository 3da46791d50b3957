package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.rafterbook.logbook.Samples.list;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.flight.Venue;
import org.rafterbook.units.UserError;

class BackupTest {

    @TempDir
    Path folder;

    private Logbook logbook;
    private Venue hall;

    @BeforeEach
    void open() {
        logbook = Logbook.open(folder.resolve("season.rafterbook"), Mode.CREATE);
        hall = logbook.enter("Venue", w -> w.insert(Samples.venue("Hall")));
    }

    @AfterEach
    void close() {
        logbook.close();
    }

    @Test
    void aBackupIsALogbookAsOfItsMoment() {
        Path copy = folder.resolve("copy, 50 %?#.rafterbook");
        logbook.backup(copy);
        logbook.enter("Later", w -> w.insert(Samples.venue("Later")));

        try (Logbook opened = Logbook.open(copy, Mode.EXISTING)) {
            assertThat(list(opened, r -> r.all(Venue.class))).containsExactly(hall);
            assertThat(opened.undoable()).isEqualTo("Venue");
            assertThat(opened.check()).isEmpty();
        }
        assertThat(list(logbook, r -> r.all(Venue.class))).hasSize(2);
    }

    @Test
    void aBackupCanBeTakenFromALogbookOpenForReading() {
        try (Logbook reading = Logbook.open(logbook.file(), Mode.READ_ONLY)) {
            reading.backup(folder.resolve("copy.rafterbook"));
        }
        assertThat(folder.resolve("copy.rafterbook")).exists();
    }

    @Test
    void aBackupOverwritesNothing() throws IOException {
        Path other = Files.writeString(folder.resolve("letter.txt"), "dear");
        assertThatThrownBy(() -> logbook.backup(other))
                .isInstanceOf(UserError.class)
                .hasMessage("There is already a file " + other + "; a backup overwrites nothing.");
        assertThatThrownBy(() -> logbook.backup(logbook.file())).isInstanceOf(UserError.class);
        assertThat(other).hasContent("dear");
    }

    @Test
    void aBackupThatCannotBeWrittenLeavesNothingBehind() throws IOException {
        assertThatThrownBy(() -> logbook.backup(folder.resolve("nowhere").resolve("copy.rafterbook")))
                .isInstanceOf(UserError.class)
                .hasMessage("There is no folder " + folder.resolve("nowhere") + ".");
        // A folder in the place of the file that is written first stands for any failure to write.
        Files.createDirectories(folder.resolve("copy.rafterbook.part").resolve("full"));
        assertThatThrownBy(() -> logbook.backup(folder.resolve("copy.rafterbook")))
                .isInstanceOf(UserError.class)
                .hasMessageStartingWith("The backup " + folder.resolve("copy.rafterbook") + " could not be written.");
        assertThat(folder.resolve("copy.rafterbook")).doesNotExist();
    }
}
