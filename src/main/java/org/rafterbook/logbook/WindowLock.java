package org.rafterbook.logbook;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.UserError;

/**
 * Lets one program at a time write in a logbook: an operating system's lock on a file beside it, which falls with the
 * process however that ends.
 */
final class WindowLock implements AutoCloseable {

    /** Held by this process: closing any second channel to the lock's file would release the lock (POSIX). */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final Path lockFile;
    private final FileChannel channel;

    private WindowLock(Path lockFile, FileChannel channel) {
        this.lockFile = lockFile;
        this.channel = channel;
    }

    /**
     * Takes the lock.
     *
     * @param logbook its real path, so that one file has one lock
     */
    static WindowLock take(Path logbook) {
        Path lockFile = logbook.resolveSibling(logbook.getFileName() + ".lock");
        if (!HELD.add(lockFile)) {
            throw taken(logbook);
        }
        FileChannel channel = null;
        try {
            channel = locked(lockFile);
        } catch (IOException e) {
            throw UserError.couldNot(
                    "The logbook " + logbook + " cannot be written to: its folder takes no new files.", e);
        } finally {
            if (channel == null) {
                HELD.remove(lockFile);
            }
        }
        if (channel == null) {
            throw taken(logbook);
        }
        return new WindowLock(lockFile, channel);
    }

    private static @Nullable FileChannel locked(Path lockFile) throws IOException {
        while (true) {
            FileChannel channel = FileChannel.open(
                    lockFile, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            Object opened = key(lockFile);
            FileLock lock = channel.tryLock();
            if (lock == null) {
                channel.close();
                return null;
            }
            // The holder before may have deleted the file between opening and locking: then this lock holds nothing.
            if (opened != null && Objects.equals(opened, key(lockFile))) {
                return channel;
            }
            channel.close();
        }
    }

    private static @Nullable Object key(Path lockFile) throws IOException {
        try {
            Object key =
                    Files.readAttributes(lockFile, BasicFileAttributes.class).fileKey();
            return key == null ? "no key on this system" : key;
        } catch (NoSuchFileException e) {
            return null;
        }
    }

    private static UserError taken(Path logbook) {
        return UserError.couldNot(
                "The logbook " + logbook + " is open in another window; close that one first, or only read.", null);
    }

    @Override
    public void close() {
        try {
            Files.deleteIfExists(lockFile);
        } catch (IOException e) {
            // It stays behind empty and unlocked, which harms nobody.
        }
        try {
            channel.close();
        } catch (IOException e) {
            throw UserError.couldNot("The lock " + lockFile + " could not be given back.", e);
        } finally {
            HELD.remove(lockFile);
        }
    }
}
