package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DriverFolderTest {

    @TempDir
    Path folder;

    @Test
    void whatKilledProgramsLeftBehindIsRemovedAfterAWhile() throws IOException {
        Instant now = Instant.now();
        Path old = Files.createFile(folder.resolve("sqlite-3-a.so"));
        Path fresh = Files.createFile(folder.resolve("sqlite-3-b.so"));
        Path other = Files.createFile(folder.resolve("letter.txt"));
        Files.setLastModifiedTime(old, FileTime.from(now.minus(Duration.ofDays(2))));
        Files.setLastModifiedTime(other, FileTime.from(now.minus(Duration.ofDays(2))));

        DriverFolder.tidy(folder, now.minus(Duration.ofDays(1)));

        assertThat(old).doesNotExist();
        assertThat(fresh).exists();
        assertThat(other).exists();
    }
}
