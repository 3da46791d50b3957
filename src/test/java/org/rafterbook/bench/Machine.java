package org.rafterbook.bench;

import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.Locale;

/** What a figure was measured on. */
final class Machine {

    private Machine() {}

    static String now() {
        return String.format(
                Locale.ROOT,
                "%s, JDK %s, %s, %d processors, load %.1f",
                LocalDate.now(),
                System.getProperty("java.version"),
                System.getProperty("os.name"),
                Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }
}
