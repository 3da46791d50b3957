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
import org.rafterbook.airframe.AirframeProblem;
import org.rafterbook.airframe.AirframeProblems;
import org.rafterbook.airframe.Balance;
import org.rafterbook.airframe.BalancePoint;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Planform;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.airframe.WingGeometry;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.power.Motor;
import org.rafterbook.stability.ClosedForm;

/** Stability margins of sheets, versions and flights: the one place where geometry, balance and motor meet. */
public final class Margins {

    private final Logbook logbook;
    private final Map<String, MarginAnswer> known = new ConcurrentHashMap<>();

    Margins(Logbook logbook) {
        this.logbook = logbook;
    }

    /** The margin of an airframe sheet as it stands, with its own motor. */
    public static MarginAnswer of(Airframe airframe) {
        return of(airframe, Balance.of(airframe, null));
    }

    /** The margin of an airframe that balances there. */
    public static MarginAnswer of(Airframe airframe, BalancePoint balance) {
        List<AirframeProblem> problems = AirframeProblems.ofGeometry(airframe).stream()
                .filter(p -> p.kind() != AirframeProblem.Kind.NO_TAIL)
                .toList();
        if (!problems.isEmpty()) {
            return MarginAnswer.unknown(problems.get(0).sentence());
        }
        WingGeometry wings = WingGeometry.of(airframe);
        ClosedForm.Answer closed = ClosedForm.of(airframe);
        Double neutral = closed.neutralPointM();
        ClosedForm.Figures figures = closed.figures();
        Double balanceM = balance.aftM();
        Double margin = neutral == null || balanceM == null ? null : (neutral - balanceM) / wings.meanChordM();
        String missing = neutral == null ? closed.reason() : margin == null ? balance.missing() : null;
        return new MarginAnswer(
                neutral,
                neutral == null ? null : ClosedForm.NAME,
                balanceM,
                balance.massKg(),
                wings.meanChordM(),
                margin,
                wings.areaM2(),
                wings.aspectRatio(),
                figures == null ? null : wholeSlope(wings, figures),
                figures == null ? Map.of() : shares(wings, figures),
                null,
                neutral,
                closed.reason() == null ? closed.error() : closed.reason(),
                missing);
    }

    private static double tailPart(WingGeometry wings, ClosedForm.Figures f) {
        return f.tailSlope() * wings.tailAreaM2() / wings.areaM2() * (1 - f.downwash());
    }

    private static double wholeSlope(WingGeometry wings, ClosedForm.Figures f) {
        return f.wingSlope() + tailPart(wings, f);
    }

    /** The closed form gives each wing the same slope on its own area. */
    private static Map<String, Double> shares(WingGeometry wings, ClosedForm.Figures f) {
        Map<String, Double> shares = new LinkedHashMap<>();
        double whole = wholeSlope(wings, f);
        for (Surface wing : wings.wings()) {
            shares.put(wing.name(), f.wingSlope() / whole * Planform.of(wing).areaM2() / wings.areaM2());
        }
        for (Surface tail : wings.tails()) {
            shares.put(tail.name(), tailPart(wings, f) / whole);
        }
        return shares;
    }

    /**
     * The margin of a version with a motor.
     *
     * @param motorId null for the motor last flown on it, else the sheet's
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
        String key = version.digest()
                + '|'
                + motor
                + '|'
                + (weighing == null ? "" : weighing.id())
                + (weighing == null ? "" : weighing.toString().hashCode());
        MarginAnswer answer = known.get(key);
        if (answer == null) {
            answer = of(geometry, balance(reader, geometry, motor, weighing));
            known.put(key, answer);
        }
        return shifted(answer, version);
    }

    /** The margin of an edited airframe of a version: its measured balance is carried over, its motor stays. */
    public MarginAnswer edited(String versionId, Airframe edited) {
        return logbook.read(r -> {
            Version version = r.get(Version.class, versionId);
            Airframe geometry = Geometry.of(version);
            MotorPlace motor = geometry == null ? null : motor(r, version, geometry, null, 1);
            return shifted(of(edited, balance(r, edited, motor, weighing(r, version))), version);
        });
    }

    /** A version the flyer knows to be neutral moves the zero. */
    private static MarginAnswer shifted(MarginAnswer a, Version version) {
        Double shift = version.zeroShiftM();
        Double neutral = a.neutralPointM();
        Double balance = a.balanceM();
        Double chord = a.meanChordM();
        if (shift == null || neutral == null || chord == null) {
            return a;
        }
        return new MarginAnswer(
                neutral + shift,
                a.neutralPointBy(),
                balance,
                a.massKg(),
                chord,
                balance == null ? null : (neutral + shift - balance) / chord,
                a.areaM2(),
                a.aspectRatio(),
                a.liftSlopePerRad(),
                a.liftShare(),
                a.band(),
                a.closedFormM(),
                a.closedFormNote(),
                a.missing());
    }

    private static BalancePoint balance(
            Reader reader, Airframe geometry, @Nullable MotorPlace motor, @Nullable Weighing weighing) {
        Double measured = weighing == null ? null : weighing.balanceM();
        if (weighing == null || measured == null) {
            return Balance.computed(geometry.masses(), motor);
        }
        Airframe then = Geometry.of(reader.get(Version.class, weighing.versionId()));
        Double motorKg = weighing.motorKg();
        Double motorAft = weighing.motorAftM();
        MotorPlace onBoard =
                motorKg == null || motorKg == 0 || motorAft == null ? null : new MotorPlace(motorKg, motorAft);
        return Balance.carried(then == null ? geometry : then, measured, onBoard, weighing.massKg(), geometry, motor);
    }

    /** The newest measured balance of this version, else of the model's other versions of this build. */
    private static @Nullable Weighing weighing(Reader reader, Version version) {
        List<Weighing> measured = new ArrayList<>();
        for (Weighing x : reader.where(Weighing.class, "modelId", version.modelId())) {
            Version of = reader.find(Version.class, x.versionId());
            if (x.balanceM() != null && of != null && of.build() == version.build()) {
                measured.add(x);
            }
        }
        return measured.stream()
                .max(Comparator.comparing((Weighing x) -> x.versionId().equals(version.id()))
                        .thenComparing(Weighing::at))
                .orElse(null);
    }

    private static @Nullable MotorPlace motor(
            Reader reader, Version version, Airframe geometry, @Nullable String motorId, double fraction) {
        MotorPlace own = geometry.motor();
        Motor motor = motorId == null ? null : reader.find(Motor.class, motorId);
        double part = fraction;
        if (motor == null) {
            FlightLine last = reader.flights().ofModel(version.modelId()).stream()
                    .filter(l -> l.version() != null && l.version().id().equals(version.id()))
                    .filter(l -> l.motor() != null && l.motor().massKg() != null)
                    .reduce((a, b) -> b)
                    .orElse(null);
            motor = last == null ? null : last.motor();
            part = last == null ? 1 : last.flight().partialFraction();
        }
        Double mass = motor == null ? null : motor.massKg();
        if (mass == null || own == null) {
            return own;
        }
        return new MotorPlace(mass / part, own.aftM());
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
