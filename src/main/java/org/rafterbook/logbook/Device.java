package org.rafterbook.logbook;

import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The name of this machine, for the change log. */
final class Device {

    private static final String NAME = find();

    private Device() {}

    static String name() {
        return NAME;
    }

    private static String find() {
        String name = firstOf(System.getenv("COMPUTERNAME"), System.getenv("HOSTNAME"), hostnameFile());
        if (name != null) {
            return name;
        }
        try {
            // Last, because it may wait for a name server.
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            return "unknown";
        }
    }

    private static @Nullable String firstOf(@Nullable String... names) {
        for (String name : names) {
            if (name != null && !name.isBlank()) {
                return name.strip();
            }
        }
        return null;
    }

    private static @Nullable String hostnameFile() {
        Path file = Path.of("/etc/hostname");
        try {
            return Files.isRegularFile(file) ? Files.readString(file) : null;
        } catch (IOException e) {
            return null;
        }
    }
}
