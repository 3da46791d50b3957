package org.rafterbook.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Balance;
import org.rafterbook.airframe.BalancePoint;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.power.Motor;
import org.rafterbook.stability.ClosedForm;
import org.rafterbook.stability.Stability;
import org.rafterbook.stability.StabilityAnswer;
import org.rafterbook.stability.Trim;
import org.rafterbook.stability.TrimAnswer;
import org.rafterbook.stability.TrimConditions;

/** Stability margins of sheets, versions and flights: the one place where geometry, balance and motor meet. */
public final class Margins implements MarginPercent {

    private final Logbook logbook;
    private final KeptStability shapes;
    private final Map<Asked, MarginAnswer> known = new ConcurrentHashMap<>();

    /** All that a margin rests on beside its zero: a correction of the version or of the one weighed asks anew. */
    private record Asked(
            String digest,
            @Nullable MotorPlace motor,
            @Nullable Weighing weighing,
            @Nullable String weighedDigest) {}

    Margins(Logbook logbook) {
        this.logbook = logbook;
        this.shapes = new KeptStability(logbook);
    }

    /** The margin of an airframe sheet as it stands, with its own motor. */
    public static MarginAnswer of(Airframe airframe) {
        return of(airframe, Balance.of(airframe, null));
    }

    /** The margin of an airframe that balances there, its shape not yet known. */
    public static MarginAnswer of(Airframe airframe, BalancePoint balance) {
        return of(Stability.analyse(airframe), balance);
    }

    private static MarginAnswer of(StabilityAnswer stability, BalancePoint balance) {
        ClosedForm.Answer closed = stability.closedForm();
        Double margin = stability.margin(balance.aftM());
        Double band = stability.bandPercent();
        return new MarginAnswer(
                stability.neutralPointM(),
                balance.aftM(),
                balance.massKg(),
                stability.meanChordM(),
                margin,
                stability.wingAreaM2(),
                stability.aspectRatio(),
                stability.liftSlopePerRad(),
                stability.liftShare(),
                band == null ? null : band / 100,
                stability,
                closed.neutralPointM(),
                closed.reason() == null ? closed.error() : closed.reason(),
                null,
                stability.missing() != null ? stability.missing() : margin == null ? balance.missing() : null);
    }

    @Override
    public @Nullable Double percent(String versionId, @Nullable String motorId, double fraction) {
        Double margin = ofVersion(versionId, motorId, fraction).margin();
        return margin == null ? null : margin * 100;
    }

    @Override
    public boolean isQuick(Version version) {
        Airframe geometry = Geometry.of(version);
        return geometry == null || shapes.isInMemory(geometry);
    }

    /**
     * The margin of a version with a motor.
     *
     * @param motorId null for the motor last flown on it, else on its model, else the sheet's
     * @param fraction part of a full motor flown with a spacer, whose ballast keeps the full motor's mass
     */
    public MarginAnswer ofVersion(String versionId, @Nullable String motorId, double fraction) {
        return logbook.read(r -> ofVersion(r, versionId, motorId, fraction));
    }

    MarginAnswer ofVersion(Reader reader, String versionId, @Nullable String motorId, double fraction) {
        Version version = reader.get(Version.class, versionId);
        Airframe geometry = Geometry.of(version);
        if (geometry == null) {
            return MarginAnswer.unknown("The margin needs the geometry of this version: span, chord, places.");
        }
        MotorPlace motor = motor(reader, version, geometry, motorId, fraction);
        Weighing weighing = weighing(reader, version);
        Version weighedAs = weighing == null ? null : reader.get(Version.class, weighing.versionId());
        Asked key = new Asked(version.digest(), motor, weighing, weighedAs == null ? null : weighedAs.digest());
        MarginAnswer answer = known.get(key);
        if (answer == null) {
            Airframe then = weighedAs == null ? null : Geometry.of(weighedAs);
            answer = of(shapes.of(geometry), balance(geometry, motor, weighing, then));
            known.put(key, answer);
        }
        return shifted(answer, zero(reader, version));
    }

    /**
     * What of a version's margin does not lie in its airframe: read once, it serves every airframe looked at in the place of
     * the version's own.
     *
     * @param weighedAs the airframe that was weighed, null where it had no geometry
     */
    record Standing(
            @Nullable MotorPlace motor,
            @Nullable Weighing weighing,
            @Nullable Airframe weighedAs,
            @Nullable KnownZero zero) {}

    Standing standing(String versionId) {
        return logbook.read(r -> {
            Version version = r.get(Version.class, versionId);
            Airframe geometry = Geometry.of(version);
            Weighing weighing = weighing(r, version);
            return new Standing(
                    geometry == null ? null : motor(r, version, geometry, null, 1),
                    weighing,
                    weighing == null ? null : Geometry.of(r.get(Version.class, weighing.versionId())),
                    zero(r, version));
        });
    }

    /** The margin of an edited airframe: the version's measured balance is carried over, its motor stays. */
    MarginAnswer edited(Standing standing, Airframe edited) {
        MotorPlace motor = standing.motor() == null ? edited.motor() : standing.motor();
        BalancePoint balance = balance(edited, motor, standing.weighing(), standing.weighedAs());
        return shifted(of(shapes.glance(edited), balance), standing.zero());
    }

    /** The zero of the newest version of the model that the flyer knows to be neutral; what is unknown is alike in all. */
    private @Nullable KnownZero zero(Reader reader, Version version) {
        Version known = version.zeroShiftM() != null
                ? version
                : reader.whereFilled(Version.class, "modelId", version.modelId(), "zeroShiftM").stream()
                        .max(Comparator.comparing(Version::number))
                        .orElse(null);
        Airframe geometry = known == null ? null : Geometry.of(known);
        return known == null ? null : KnownZero.of(reader, known, geometry == null ? null : shapes.of(geometry));
    }

    private static MarginAnswer shifted(MarginAnswer a, @Nullable KnownZero zero) {
        Double neutral = a.neutralPointM();
        Double balance = a.balanceM();
        Double chord = a.meanChordM();
        StabilityAnswer shape = a.stability();
        if (zero == null || neutral == null || chord == null) {
            return a;
        }
        double moved = neutral + zero.shiftM();
        return new MarginAnswer(
                moved,
                balance,
                a.massKg(),
                chord,
                balance == null ? null : (moved - balance) / chord,
                a.areaM2(),
                a.aspectRatio(),
                a.liftSlopePerRad(),
                a.liftShare(),
                shape == null ? a.band() : zero.bandOf(shape),
                shape,
                a.closedFormM(),
                a.closedFormNote(),
                zero,
                a.missing());
    }

    /** A version's geometry as a sheet: with the balance it has by what was measured, with the sheet's own motor. */
    static Airframe asSheet(Reader reader, Version version, Airframe geometry) {
        Weighing weighing = weighing(reader, version);
        if (weighing == null) {
            return geometry;
        }
        Airframe then = Geometry.of(reader.get(Version.class, weighing.versionId()));
        Double balance = balance(geometry, geometry.motor(), weighing, then).aftM();
        return new Airframe(geometry.surfaces(), geometry.masses(), balance, geometry.motor());
    }

    private static BalancePoint balance(
            Airframe geometry, @Nullable MotorPlace motor, @Nullable Weighing weighing, @Nullable Airframe then) {
        Double measured = weighing == null ? null : weighing.balanceM();
        if (weighing == null || measured == null) {
            return Balance.computed(geometry.masses(), motor);
        }
        Double motorKg = weighing.motorKg();
        Double motorAft = weighing.motorAftM();
        MotorPlace onBoard =
                motorKg == null || motorKg == 0 || motorAft == null ? null : new MotorPlace(motorKg, motorAft);
        return Balance.carried(then == null ? geometry : then, measured, onBoard, weighing.massKg(), geometry, motor);
    }

    private static @Nullable Weighing weighing(Reader reader, Version version) {
        return Weighings.newest(reader, version, x -> x.balanceM() != null);
    }

    private static @Nullable MotorPlace motor(
            Reader reader, Version version, Airframe geometry, @Nullable String motorId, double fraction) {
        MotorPlace own = geometry.motor();
        Motor motor = motorId == null ? null : reader.find(Motor.class, motorId);
        double part = fraction;
        if (motor == null) {
            FlightLine last = reader.flights().lastWithMotorMass(version);
            motor = last == null ? null : last.motor();
            part = last == null ? 1 : last.flight().partialFraction();
        }
        Double mass = motor == null ? null : motor.massKg();
        if (mass == null || own == null) {
            return own;
        }
        return new MotorPlace(mass / part, own.aftM());
    }

    /**
     * How an airframe flies hands off at the mass and balance of its margin; null where one of them is unknown.
     */
    public @Nullable TrimAnswer trim(Airframe airframe, MarginAnswer margin, Surroundings in) {
        StabilityAnswer shape = margin.stability();
        Double mass = margin.massKg();
        Double balance = margin.balanceM();
        Double neutral = margin.neutralPointM();
        Double computed = shape == null ? null : shape.neutralPointM();
        if (mass == null || balance == null || neutral == null || computed == null) {
            return null;
        }
        // the flyer's zero moves the neutral point; trim only sees how far it lies behind the balance point
        TrimConditions conditions = new TrimConditions(
                mass,
                balance - (neutral - computed),
                in.airDensity(),
                TrimConditions.USUAL_GLIDE_RATIO,
                null,
                in.circleRadiusM(),
                in.propeller());
        return shapes.solution(airframe)
                .map(solution -> Trim.of(solution, airframe, conditions))
                .orElse(null);
    }

    /** Computes what is not known yet of every version, flown or sketched, so that no screen waits for it; how many there are. */
    public int computeAll(Progress progress) {
        List<Version> versions = logbook.read(r -> r.all(Version.class));
        int done = 0;
        for (Version version : versions) {
            progress.step(done++, versions.size(), "versions");
            ofVersion(version.id(), null, 1);
        }
        return done;
    }

    /** One version that flew, with its margin. */
    public record VersionMargin(Rigged version, MarginAnswer margin) {}

    /** Every version flown of one model or of all, in order. */
    public List<VersionMargin> flown(@Nullable String modelName, Riggings riggings) {
        List<VersionMargin> answers = new ArrayList<>();
        riggings.models().stream()
                .filter(m -> modelName == null || m.name().equalsIgnoreCase(modelName))
                .forEach(model -> {
                    Map<String, Rigged> versions = new LinkedHashMap<>();
                    riggings.strip(model.id())
                            .forEach(r -> versions.putIfAbsent(r.version().id(), r));
                    Map<String, Integer> flights = logbook.read(r -> r.flights().countsByVersion(model.id()));
                    versions.values().stream()
                            .filter(v -> flights.getOrDefault(v.version().id(), 0) > 0)
                            .forEach(v -> answers.add(
                                    new VersionMargin(v, ofVersion(v.version().id(), null, 1))));
                });
        return answers;
    }

    /** The margin of one flight with its own motor; null where the flight has no model. */
    public @Nullable MarginAnswer ofFlight(FlightLine line) {
        Version version = line.version();
        if (version == null) {
            return null;
        }
        Motor motor = line.motor();
        return ofVersion(
                version.id(),
                motor == null ? null : Objects.requireNonNull(motor).id(),
                line.flight().partialFraction());
    }
}
