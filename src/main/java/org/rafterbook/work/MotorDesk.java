package org.rafterbook.work;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Session;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.power.Motor;
import org.rafterbook.power.MotorLimits;
import org.rafterbook.power.RubberBatch;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindEnd;
import org.rafterbook.units.UserError;

/** What the Motor box shows and does: batches, motors and winds, added and put right. */
public final class MotorDesk {

    private static final Pattern NUMBER = Pattern.compile("\\d{1,12}");

    private final Logbook logbook;
    private final Clock clock;

    MotorDesk(Logbook logbook, Clock clock) {
        this.logbook = logbook;
        this.clock = clock;
    }

    /**
     * A motor of the box.
     *
     * @param batch name of its batch, empty where unknown
     * @param winds its winds, oldest first
     * @param limit turns at which it breaks, null where loop or mass is unknown
     */
    public record Boxed(Motor motor, String batch, List<Wind> winds, MotorLimits.@Nullable Band limit) {

        /** Ready, or what became of it. */
        public String state() {
            String fate = motor.fate();
            if (fate != null) {
                return fate;
            }
            return winds.stream().anyMatch(w -> w.end() == WindEnd.BROKE) ? "broke" : "ready";
        }
    }

    /** The whole box, motors by name: M2 before M10. */
    public record Box(List<RubberBatch> batches, List<Boxed> motors) {}

    public Box load() {
        return logbook.read(r -> {
            List<RubberBatch> batches = r.all(RubberBatch.class);
            Map<String, RubberBatch> byId = new HashMap<>();
            batches.forEach(b -> byId.put(b.id(), b));
            Map<String, List<Wind>> winds = new HashMap<>();
            for (Wind wind : r.all(Wind.class)) {
                if (wind.motorId() != null) {
                    winds.computeIfAbsent(wind.motorId(), m -> new ArrayList<>())
                            .add(wind);
                }
            }
            List<Boxed> motors = new ArrayList<>();
            for (Motor motor : r.all(Motor.class)) {
                List<Wind> own = winds.getOrDefault(motor.id(), new ArrayList<>());
                own.sort(Comparator.comparingInt(Wind::ordinal));
                RubberBatch batch = motor.batchId() == null ? null : byId.get(motor.batchId());
                motors.add(new Boxed(motor, batch == null ? "" : batch.name(), own, limit(motor, batch)));
            }
            motors.sort(Comparator.comparing(b -> counted(b.motor().name())));
            return new Box(batches, motors);
        });
    }

    /** A name whose numbers are of one length, so that they sort as numbers. */
    private static String counted(String name) {
        return NUMBER.matcher(name.toLowerCase(Locale.ROOT))
                .replaceAll(number -> String.format(Locale.ROOT, "%12s", number.group()));
    }

    private static MotorLimits.@Nullable Band limit(Motor motor, @Nullable RubberBatch batch) {
        MotorLimit limit = limitOf(motor, batch);
        return limit == null ? null : limit.turns();
    }

    /** By the batch's own turns constant where it has one; null where loop or mass is not known. */
    static @Nullable MotorLimit limitOf(Motor motor, @Nullable RubberBatch batch) {
        Double loop = motor.loopLengthM();
        Double mass = motor.massKg();
        return loop == null || mass == null ? null : breakingTurns(loop, mass, batch);
    }

    /** Turns at which a loop breaks: by its batch's own constant where there is one. */
    static MotorLimit breakingTurns(double loop, double mass, @Nullable RubberBatch batch) {
        Double own = batch == null ? null : batch.turnsConstant();
        return batch == null || own == null
                ? new MotorLimit(MotorLimits.breakingTurnsBand(loop, mass), null)
                : new MotorLimit(
                        MotorLimits.breakingTurnsBand(own, MotorLimits.PRIOR_SPREAD, loop, mass), batch.name());
    }

    /** Adds a batch of which only the name is known. */
    public RubberBatch addBatch(String name) {
        return addBatch(name, null, null, Map.of());
    }

    /**
     * Adds a batch.
     *
     * @param widthM width of the strip as bought, m
     * @param turnsConstant the batch's own, in^-1.5 g^0.5
     */
    public RubberBatch addBatch(
            String name, @Nullable Double widthM, @Nullable Double turnsConstant, Map<String, String> asTyped) {
        return logbook.enter("batch " + name.strip(), w -> {
            String free = freeBatch(w, name, "");
            return w.insert(new RubberBatch(Logbook.newId(), free, null, widthM, turnsConstant, null, asTyped));
        });
    }

    /** Puts a batch right. */
    public RubberBatch correct(RubberBatch batch) {
        return logbook.enter("batch " + batch.name(), w -> {
            freeBatch(w, batch.name(), batch.id());
            return w.update(batch);
        });
    }

    /**
     * Adds a motor.
     *
     * @param loopM length of the loop when tied, m
     * @param massKg mass without knot and rings, kg
     */
    public Motor addMotor(
            String name,
            @Nullable String batchId,
            @Nullable Double loopM,
            @Nullable Double massKg,
            Map<String, String> asTyped) {
        return logbook.enter("motor " + name.strip(), w -> {
            String trimmed = freeMotor(w, name, "");
            return w.insert(
                    new Motor(Logbook.newId(), trimmed, batchId, loopM, massKg, null, 1, null, null, null, asTyped));
        });
    }

    /** Puts a motor right. */
    public Motor correct(Motor motor) {
        return logbook.enter("motor " + motor.name(), w -> {
            freeMotor(w, motor.name(), motor.id());
            return w.update(motor);
        });
    }

    /**
     * Adds a wind that was not flown, such as one for practice or the one in which the motor broke; it belongs to today's
     * visit where there is one.
     *
     * @param end how it ended; a motor that broke is ready no more
     */
    public Wind addWind(WindForm form, WindEnd end) {
        String motorId = form.motorId();
        if (motorId == null) {
            throw UserError.badInput("A wind needs its motor.");
        }
        return logbook.enter("wind " + end.word().replace('-', ' '), w -> {
            Wind last = w.flights().lastWindOfMotor(motorId);
            Session today = Sessions.today(w, clock);
            Wind wind = w.insert(new Wind(
                    Logbook.newId(),
                    motorId,
                    today == null ? null : today.id(),
                    last == null ? 1 : last.ordinal() + 1,
                    clock.instant(),
                    form.turnsWound(),
                    form.turnsBackedOff(),
                    form.maxTorqueNm(),
                    form.launchTorqueNm(),
                    form.winderRatio(),
                    end,
                    null,
                    form.asTyped()));
            follow(w, motorId, null, end);
            return wind;
        });
    }

    /** Puts a wind right; whether its motor broke follows. */
    public Wind correct(Wind wind) {
        return logbook.enter("wind " + wind.ordinal(), w -> {
            WindEnd before = w.get(Wind.class, wind.id()).end();
            if (wind.motorId() != null && before != wind.end()) {
                follow(w, wind.motorId(), before, wind.end());
            }
            return w.update(wind);
        });
    }

    /** A motor is ready no more once a wind of it ended in a break, and again where that was put right. */
    private static void follow(Writer w, String motorId, @Nullable WindEnd before, @Nullable WindEnd end) {
        Motor m = w.get(Motor.class, motorId);
        String broke = WindEnd.BROKE.word();
        if (end == WindEnd.BROKE) {
            w.update(m.withFate(broke));
        } else if (before == WindEnd.BROKE && broke.equals(m.fate())) {
            w.update(m.withFate(null));
        }
    }

    private static String freeMotor(Reader reader, String name, String id) {
        String trimmed = named(name, "A motor");
        if (reader.all(Motor.class).stream().anyMatch(m -> m.name().equalsIgnoreCase(trimmed) && !m.id().equals(id))) {
            throw UserError.badInput("There is a motor named '" + trimmed + "' already.");
        }
        return trimmed;
    }

    private static String freeBatch(Reader reader, String name, String id) {
        String trimmed = named(name, "A batch");
        if (reader.all(RubberBatch.class).stream()
                .anyMatch(b -> b.name().equalsIgnoreCase(trimmed) && !b.id().equals(id))) {
            throw UserError.badInput("There is a batch named '" + trimmed + "' already.");
        }
        return trimmed;
    }

    private static String named(String name, String what) {
        if (name.isBlank()) {
            throw UserError.badInput(what + " needs a name.");
        }
        return name.strip();
    }
}
