package org.rafterbook.work;

import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.UserError;

/** What the scale and the balance edge said: measurements of a version, never trim changes. */
public final class Weighings {

    private final Logbook logbook;
    private final Clock clock;

    Weighings(Logbook logbook, Clock clock) {
        this.logbook = logbook;
        this.clock = clock;
    }

    /**
     * One weighing as typed; what was not measured is null.
     *
     * @param mass all that was on the scale
     * @param balance where it balanced, aft of the origin
     * @param motor mass of the motor on board; null for a bare airframe
     * @param motorAft middle of that motor; null takes the place the version's motor has
     * @param accuracy of the balance point
     */
    public record Form(
            @Nullable TypedValue mass,
            @Nullable TypedValue balance,
            @Nullable TypedValue motor,
            @Nullable TypedValue motorAft,
            @Nullable TypedValue accuracy,
            String notes) {}

    /** The model's weighings, the newest first. */
    public List<Weighing> of(String modelId) {
        return logbook.read(r -> r.where(Weighing.class, "modelId", modelId).stream()
                .sorted(Comparator.comparing(Weighing::at).reversed())
                .toList());
    }

    /**
     * The weighing a version counts from: its own newest that measured what is asked for; else the newest of the model's
     * other versions of this build made before the model was set from it to the next, since a measurement holds until it
     * is measured again; else the first made after that.
     */
    static @Nullable Weighing newest(Reader reader, Version version, Predicate<Weighing> measured) {
        List<Weighing> candidates = reader.where(Weighing.class, "modelId", version.modelId()).stream()
                .filter(measured)
                .filter(x -> {
                    Version of = reader.find(Version.class, x.versionId());
                    return of != null && of.build() == version.build();
                })
                .sorted(Comparator.comparing(Weighing::at))
                .toList();
        Weighing own = last(candidates, x -> x.versionId().equals(version.id()));
        if (own != null || candidates.size() < 2) {
            return own == null ? last(candidates, x -> true) : own;
        }
        Instant left = leftAt(reader, version);
        Weighing before = last(candidates, x -> left == null || x.at().isBefore(left));
        return before == null ? candidates.get(0) : before;
    }

    private static @Nullable Weighing last(List<Weighing> inOrder, Predicate<Weighing> wanted) {
        return inOrder.stream().filter(wanted).reduce((a, b) -> b).orElse(null);
    }

    /** When the model was last set from this version to another; null where it stands at it or never did. */
    private static @Nullable Instant leftAt(Reader reader, Version version) {
        List<Rigging> riggings = reader.where(Rigging.class, "modelId", version.modelId()).stream()
                .sorted(Comparator.comparingInt(Rigging::ordinal))
                .toList();
        Instant left = null;
        for (int i = 1; i < riggings.size(); i++) {
            if (riggings.get(i - 1).versionId().equals(version.id())) {
                left = riggings.get(i).setAt();
            }
        }
        boolean standsAtIt = !riggings.isEmpty()
                && riggings.get(riggings.size() - 1).versionId().equals(version.id());
        return standsAtIt ? null : left;
    }

    /** Keeps a weighing of a version. */
    public Weighing add(String versionId, Form form) {
        if (form.mass() == null && form.balance() == null) {
            throw UserError.badInput("Type what the scale or the edge said: a mass, a balance point or both.");
        }
        if (si(form.mass(), 1) <= 0) {
            throw UserError.badInput("A mass on the scale is above zero.");
        }
        if (si(form.motor(), 0) >= si(form.mass(), Double.POSITIVE_INFINITY)) {
            throw UserError.badInput("The motor on board weighs more than all that was on the scale.");
        }
        return logbook.enter("weighing", w -> {
            Version version = w.get(Version.class, versionId);
            double motorKg = si(form.motor(), 0);
            Double place = form.motorAft() == null
                    ? ownPlace(version)
                    : (Double) form.motorAft().si();
            if (motorKg > 0 && form.balance() != null && place == null) {
                throw UserError.badInput("Where did the motor lie? Type the middle between its hooks.");
            }
            Map<String, String> typed = new HashMap<>();
            put(typed, "mass_kg", form.mass());
            put(typed, "balance_m", form.balance());
            put(typed, "motor_kg", form.motor());
            put(typed, "motor_aft_m", form.motorAft());
            put(typed, "accuracy_m", form.accuracy());
            return w.insert(new Weighing(
                    Logbook.newId(),
                    version.modelId(),
                    versionId,
                    form.mass() == null ? null : form.mass().si(),
                    form.balance() == null ? null : form.balance().si(),
                    motorKg,
                    motorKg > 0 ? place : null,
                    form.accuracy() == null ? null : form.accuracy().si(),
                    clock.instant(),
                    form.notes().isBlank() ? null : form.notes().strip(),
                    typed));
        });
    }

    /** Takes a weighing away. */
    public void remove(String weighingId) {
        logbook.change("weighing taken away", w -> w.remove(Weighing.class, weighingId));
    }

    private static @Nullable Double ownPlace(Version version) {
        Airframe geometry = Geometry.of(version);
        MotorPlace motor = geometry == null ? null : geometry.motor();
        return motor == null ? null : (Double) motor.aftM();
    }

    private static double si(@Nullable TypedValue value, double otherwise) {
        return value == null ? otherwise : value.si();
    }

    private static void put(Map<String, String> typed, String column, @Nullable TypedValue value) {
        if (value != null) {
            typed.put(column, value.asTyped());
        }
    }
}
