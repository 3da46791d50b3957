package org.rafterbook.work;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.TurnsUsed;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.logbook.Writer;
import org.rafterbook.power.Motor;
import org.rafterbook.power.RubberBatch;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindDraft;
import org.rafterbook.power.WindEnd;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.UserError;

/** Motors and their winds, as far as they are needed between two flights. */
public final class Winding {

    private static final String RATIO = "hall.winder_ratio";
    private static final double SAME_SIZE = 0.03;

    private final Logbook logbook;
    private final Clock clock;

    Winding(Logbook logbook, Clock clock) {
        this.logbook = logbook;
        this.clock = clock;
    }

    /** Motors that can be wound, by name. */
    public List<Motor> motors() {
        return logbook.read(r -> r.where(Motor.class, "fate", null).stream()
                .sorted(Comparator.comparing(Motor::name, String.CASE_INSENSITIVE_ORDER))
                .toList());
    }

    /** Where the motors that can be wound are expected to break, keyed by motor; of those with loop and mass. */
    public Map<String, MotorLimit> limits() {
        return logbook.read(r -> {
            Map<String, MotorLimit> limits = new HashMap<>();
            for (Motor motor : r.where(Motor.class, "fate", null)) {
                String batchId = motor.batchId();
                MotorLimit limit =
                        MotorDesk.limitOf(motor, batchId == null ? null : r.find(RubberBatch.class, batchId));
                if (limit != null) {
                    limits.put(motor.id(), limit);
                }
            }
            return limits;
        });
    }

    /** Adds a motor by its name; loop and mass may be given later. */
    public Motor addMotor(String name, @Nullable TypedValue loop, @Nullable TypedValue mass) {
        String trimmed = name.strip();
        if (trimmed.isEmpty()) {
            throw UserError.badInput("A motor needs a name.");
        }
        return logbook.enter("motor " + trimmed, w -> {
            if (w.all(Motor.class).stream().anyMatch(m -> m.name().equalsIgnoreCase(trimmed))) {
                throw UserError.badInput("There is a motor named '" + trimmed + "' already.");
            }
            Map<String, String> asTyped = new HashMap<>();
            if (loop != null) {
                asTyped.put("loopLengthM", loop.asTyped());
            }
            if (mass != null) {
                asTyped.put("massKg", mass.asTyped());
            }
            return w.insert(new Motor(
                    Logbook.newId(),
                    trimmed,
                    null,
                    loop == null ? null : loop.si(),
                    mass == null ? null : mass.si(),
                    null,
                    1,
                    LocalDate.now(clock),
                    null,
                    null,
                    asTyped));
        });
    }

    /** The gear of the winder used last, null where motor turns were counted. */
    public @Nullable Double ratio() {
        Optional<String> kept = logbook.read(r -> Optional.ofNullable(r.preference(RATIO)));
        return kept.map(Double::valueOf).orElse(null);
    }

    /** Keeps a new wind, or puts its values right; one that was not yet flown is the one on the motor. */
    public Wind keep(@Nullable String windId, WindForm form) {
        double off = form.turnsBackedOff() == null ? 0 : form.turnsBackedOff();
        if (form.turnsWound() != null) {
            TurnsUsed.refusal(form.turnsWound(), off, 0).ifPresent(sentence -> {
                throw UserError.badInput(sentence);
            });
        }
        return logbook.enter("wind", w -> {
            w.preference(RATIO, form.winderRatio() == null ? null : String.valueOf(form.winderRatio()));
            Wind wind = windId == null ? begun(w, form.motorId()) : w.get(Wind.class, windId);
            boolean otherMotor = !Objects.equals(wind.motorId(), form.motorId());
            Wind filled = WindDraft.of(wind)
                    .motorId(form.motorId())
                    .ordinal(otherMotor ? next(w, form.motorId()) : wind.ordinal())
                    .turnsWound(form.turnsWound())
                    .turnsBackedOff(form.turnsBackedOff())
                    .maxTorqueNm(form.maxTorqueNm())
                    .launchTorqueNm(form.launchTorqueNm())
                    .winderRatio(form.winderRatio())
                    .asTyped(form.asTyped())
                    .done();
            return windId == null ? w.insert(filled) : w.update(filled);
        });
    }

    private Wind begun(Writer writer, @Nullable String motorId) {
        return new Wind(
                Logbook.newId(),
                motorId,
                Sessions.todayOrBegin(writer, clock).id(),
                next(writer, motorId),
                clock.instant(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                Map.of());
    }

    private static int next(Reader reader, @Nullable String motorId) {
        Wind last = motorId == null ? null : reader.flights().lastWindOfMotor(motorId);
        return last == null ? 1 : last.ordinal() + 1;
    }

    /** Ends a wind without a flight: let down, or the motor broke, which also ends the motor. */
    public Wind end(String windId, WindEnd end) {
        return logbook.enter("wind " + end.word().replace('-', ' '), w -> {
            Wind wind = w.get(Wind.class, windId);
            String motorId = wind.motorId();
            if (end == WindEnd.BROKE && motorId != null) {
                w.update(w.get(Motor.class, motorId).withFate(end.word()));
            }
            return w.update(WindDraft.of(wind).end(end).done());
        });
    }

    /** A motor of the same size that has rested longest, never the one itself; null where there is none. */
    static @Nullable Motor rested(Reader reader, @Nullable Motor like) {
        if (like == null) {
            return null;
        }
        return reader.where(Motor.class, "fate", null).stream()
                .filter(m -> !m.id().equals(like.id()) && m.fraction() == like.fraction())
                .filter(m -> near(m.loopLengthM(), like.loopLengthM()) && near(m.massKg(), like.massKg()))
                .min(Comparator.comparing(m -> lastWound(reader, m)))
                .orElse(null);
    }

    private static String lastWound(Reader reader, Motor motor) {
        Wind last = reader.flights().lastWindOfMotor(motor.id());
        return last == null ? "" : last.id(); // ids are in the order of time
    }

    private static boolean near(@Nullable Double a, @Nullable Double b) {
        return a != null && b != null && Math.abs(a - b) <= SAME_SIZE * b;
    }
}
