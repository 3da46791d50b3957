package org.rafterbook.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;

/**
 * Watches the JavaFX thread: samples its stack about every millisecond and tells for how long at a time the program's own
 * code was on it, from entry to exit. Samples that stand next to each other and begin with the same method count as one
 * hold, so that a hold is never told too short. Holds are told in the thread's own processor time: what other processes
 * take from a busy machine is none of it.
 */
final class HoldSampler implements AutoCloseable {

    private static final String OWN = "org.rafterbook.";
    private static final String BENCH = "org.rafterbook.bench.";
    private static final String TESTS = "org.rafterbook.ui.Fx";
    private static final String ROBOT = "org.rafterbook.app.WindowRobot";

    /** Each call shows one part and nothing else. */
    private static final String TURN = "ui.action.Parts.next";

    private static final String PULSE = "com.sun.javafx.tk.Toolkit";

    /**
     * The program's own code on the thread without a pause.
     *
     * @param what the method it began with
     * @param inside our innermost lines, those seen most often first
     */
    record Hold(String what, String inside, double ms, double wallMs) {}

    private final Thread watched;
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final Thread sampler = new Thread(this::sample, "hold sampler");
    private final List<Hold> holds = new ArrayList<>();
    private final List<Double> pulses = new ArrayList<>();
    private volatile boolean ended;
    private String now = "";
    private final Map<String, Integer> inside = new HashMap<>();
    private double began;
    private double beganWall;
    private double pulseBegan = -1;

    HoldSampler(Thread watched) {
        this.watched = watched;
        sampler.setDaemon(true);
        sampler.setPriority(Thread.MAX_PRIORITY);
        sampler.start();
    }

    private void sample() {
        double before = cpuMs();
        double wallBefore = wallMs();
        while (!ended) {
            LockSupport.parkNanos(700_000);
            StackTraceElement[] stack = watched.getStackTrace();
            double at = cpuMs();
            see(stack, before, at, wallBefore);
            before = at;
            wallBefore = wallMs();
        }
    }

    private double cpuMs() {
        return threads.getThreadCpuTime(watched.getId()) / 1e6;
    }

    private static double wallMs() {
        return System.nanoTime() / 1e6;
    }

    private synchronized void see(StackTraceElement[] stack, double before, double at, double wallBefore) {
        String first = "";
        String last = "";
        boolean pulse = false;
        for (int i = stack.length - 1; i >= 0; i--) {
            String type = stack[i].getClassName();
            pulse |= type.equals(PULSE) && stack[i].getMethodName().contains("Pulse");
            if (isOwn(type)) {
                String method = type.substring(OWN.length()) + "." + stack[i].getMethodName();
                if (method.equals(TURN)) {
                    first = "";
                    continue;
                }
                first = first.isEmpty() ? method : first;
                last = method + ":" + stack[i].getLineNumber();
            }
        }
        if (!first.equals(now)) {
            end(before, wallBefore);
            now = first;
            began = before;
            beganWall = wallBefore;
            inside.clear();
        }
        inside.merge(last, 1, Integer::sum);
        if (pulse && pulseBegan < 0) {
            pulseBegan = before;
        } else if (!pulse && pulseBegan >= 0) {
            pulses.add(at - pulseBegan);
            pulseBegan = -1;
        }
    }

    private static boolean isOwn(String type) {
        return type.startsWith(OWN)
                && !type.startsWith(BENCH)
                && !type.startsWith(TESTS)
                && !type.startsWith(ROBOT)
                && !type.contains("$$");
    }

    private void end(double at, double wallAt) {
        if (!now.isEmpty()) {
            String most = inside.entrySet().stream()
                    .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                    .limit(4)
                    .map(line -> line.getValue() + " × " + line.getKey())
                    .collect(Collectors.joining(", "));
            holds.add(new Hold(now, most, at - began, wallAt - beganWall));
        }
    }

    /** Prints what was seen since the last time and begins anew. */
    synchronized void tell(String step) {
        holds.sort(Comparator.comparingDouble(Hold::ms).reversed());
        double longest = holds.isEmpty() ? 0 : holds.get(0).ms();
        System.out.printf(
                Locale.ROOT,
                "%-34s longest hold of ours %5.1f ms (by the clock %.1f), over 16 ms: %d; JavaFX's longest pulse %5.1f ms, mean"
                        + " %.1f ms of %d%n",
                step,
                longest,
                holds.stream().mapToDouble(Hold::wallMs).max().orElse(0),
                holds.stream().filter(h -> h.ms() > 16).count(),
                pulses.stream().mapToDouble(p -> p).max().orElse(0),
                pulses.stream().mapToDouble(p -> p).average().orElse(0),
                pulses.size());
        holds.stream()
                .limit(5)
                .filter(h -> h.ms() > 8)
                .forEach(h -> System.out.printf(
                        Locale.ROOT,
                        "      %5.1f ms, by the clock %.1f, %s (%s)%n",
                        h.ms(),
                        h.wallMs(),
                        h.what(),
                        h.inside()));
        holds.clear();
        pulses.clear();
    }

    @Override
    public void close() {
        ended = true;
    }
}
