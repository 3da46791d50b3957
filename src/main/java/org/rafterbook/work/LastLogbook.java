package org.rafterbook.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Which logbook other than the flyer's own was open last: one line of text in the flyer's settings folder. */
public final class LastLogbook {

    private static final Logger LOG = LoggerFactory.getLogger(LastLogbook.class);

    private final Path note;

    /** @param note the file that holds the line; it and its folder may not be there yet */
    public LastLogbook(Path note) {
        this.note = note;
    }

    /** The logbook noted, where it is still there. */
    Optional<Path> find() {
        try {
            return Files.isRegularFile(note)
                    ? Optional.of(Path.of(Files.readString(note).strip())).filter(Files::isRegularFile)
                    : Optional.empty();
        } catch (IOException | InvalidPathException e) {
            LOG.warn("The note of the logbook opened last cannot be read.", e);
            return Optional.empty();
        }
    }

    /** Notes a logbook; where that cannot be done nothing is offered next time. */
    void note(Path logbook) {
        try {
            Path folder = note.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            Files.writeString(note, logbook.toAbsolutePath().normalize() + System.lineSeparator());
        } catch (IOException e) {
            LOG.warn("The logbook opened last is not noted.", e);
        }
    }
}
