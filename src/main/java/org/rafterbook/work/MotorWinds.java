package org.rafterbook.work;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.Writer;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindDraft;

/** Counts the winds of motors while an import adds to them. */
final class MotorWinds {

    private final Writer w;
    private final Map<String, List<Wind>> ofMotor = new HashMap<>();
    private final Map<String, Set<Integer>> reserved = new HashMap<>();
    private final Set<String> outOfOrder = new TreeSet<>();
    private final Map<String, Instant> when = new HashMap<>();

    MotorWinds(Writer writer) {
        this.w = writer;
    }

    /** Keeps a number free for a wind that comes later. */
    void reserve(String motor, int number) {
        reserved.computeIfAbsent(ImportBasics.key(motor), m -> new HashSet<>()).add(number);
    }

    /** Numbers those motors anew that got an older wind than one they had. */
    void putInOrder() {
        outOfOrder.forEach(this::countAnew);
    }

    /** Adds a wind with the number it takes: the given one where it is free, else the next that nobody reserved. */
    Wind insert(@Nullable Motor motor, @Nullable Integer number, Instant at, Wind wind) {
        if (motor == null) {
            return w.insert(wind);
        }
        List<Wind> winds = of(motor);
        Set<Integer> taken = new HashSet<>();
        winds.forEach(x -> taken.add(x.ordinal()));
        int ordinal;
        if (number != null && !taken.contains(number)) {
            ordinal = number;
        } else {
            ordinal = winds.isEmpty() ? 1 : winds.get(winds.size() - 1).ordinal() + 1;
            Set<Integer> kept =
                    number == null ? reserved.getOrDefault(ImportBasics.key(motor.name()), Set.of()) : Set.of();
            while (kept.contains(ordinal) || taken.contains(ordinal)) {
                ordinal++;
            }
            if (!winds.isEmpty() && at.isBefore(when(winds.get(winds.size() - 1)))) {
                outOfOrder.add(motor.id());
            }
        }
        Wind made = w.insert(WindDraft.of(wind).ordinal(ordinal).done());
        when.put(made.id(), at);
        winds.add(made);
        winds.sort(Comparator.comparingInt(Wind::ordinal));
        return made;
    }

    /** The winds of a motor in their order. */
    List<Wind> of(Motor motor) {
        return ofMotor.computeIfAbsent(
                motor.id(), id -> new ArrayList<>(w.flights().windsOfMotor(id)));
    }

    /** When a wind was wound: as written down, else when it was first flown, else its session's day. */
    private Instant when(Wind wind) {
        return when.computeIfAbsent(wind.id(), id -> {
            if (wind.woundAt() != null) {
                return wind.woundAt();
            }
            for (Flight flight : w.where(Flight.class, "windId", id)) {
                if (flight.launchedAt() != null) {
                    return flight.launchedAt();
                }
            }
            String sessionId = wind.sessionId();
            Session session = sessionId == null ? null : w.find(Session.class, sessionId);
            return session == null
                    ? Instant.EPOCH
                    : session.localDate().atStartOfDay(session.zone()).toInstant();
        });
    }

    /** Counts a motor's winds in the order they were wound: an import may bring older ones than those that are there. */
    private void countAnew(String motorId) {
        List<Wind> winds = new ArrayList<>(Objects.requireNonNull(ofMotor.get(motorId)));
        winds.sort(Comparator.comparing(this::when).thenComparingInt(Wind::ordinal));
        List<Wind> counted = new ArrayList<>();
        for (Wind wind : winds) {
            int ordinal = counted.size() + 1;
            counted.add(
                    wind.ordinal() == ordinal
                            ? wind
                            : w.update(WindDraft.of(wind).ordinal(ordinal).done()));
        }
        ofMotor.put(motorId, counted);
    }
}
