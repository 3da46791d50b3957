package org.rafterbook.work;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeProblem;
import org.rafterbook.airframe.AirframeProblems;
import org.rafterbook.airframe.VersionDigest;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.stability.GeometrySolution;
import org.rafterbook.stability.Stability;
import org.rafterbook.stability.StabilityAnswer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What the lattice says of an airframe's shape, computed once: kept in memory and in the logbook by the digest of the shape
 * and the version of the engine. Incidence and masses are no part of the shape, so a turned tailplane or another motor costs
 * nothing.
 */
final class KeptStability {

    private static final Logger LOG = LoggerFactory.getLogger(KeptStability.class);
    private static final String KIND = "stability";
    private static final int LAST_FEW = 8;

    /** Made when it is first needed: the window opens before. */
    private static final class Json {
        static final JsonMapper MAPPER = new JsonMapper();
    }

    private final Logbook logbook;
    private final OnceEach<Airframe, StabilityAnswer> known = new OnceEach<>(Integer.MAX_VALUE);
    private final OnceEach<Airframe, GeometrySolution> solutions = new OnceEach<>(LAST_FEW);
    private final OnceEach<Airframe, StabilityAnswer> glanced = new OnceEach<>(LAST_FEW);

    KeptStability(Logbook logbook) {
        this.logbook = logbook;
    }

    /** The answer for an airframe; asked again for the same shape it is not computed again. */
    StabilityAnswer of(Airframe airframe) {
        Airframe shape = Stability.shape(airframe);
        return isHidden(airframe) ? Stability.analyse(airframe) : known.of(shape, () -> fromLogbook(airframe, shape));
    }

    /** True where asking for the answer costs nothing. */
    boolean isInMemory(Airframe airframe) {
        return isHidden(airframe) || known.find(Stability.shape(airframe)).isPresent();
    }

    /** The answer for an airframe that is only looked at, such as a wing under the pointer: it is not kept. */
    StabilityAnswer glance(Airframe airframe) {
        if (isHidden(airframe)) {
            return Stability.analyse(airframe);
        }
        Airframe shape = Stability.shape(airframe);
        return known.find(shape).orElseGet(() -> glanced.of(shape, () -> Stability.answer(shape, solved(airframe))));
    }

    /** The solved flow of a shape, the last few kept: turning an incidence back and forth solves nothing again. */
    Optional<GeometrySolution> solution(Airframe airframe) {
        return isHidden(airframe) ? Optional.empty() : Optional.of(solved(airframe));
    }

    private GeometrySolution solved(Airframe sound) {
        return solutions.of(Stability.shape(sound), () -> Stability.solve(sound).orElseThrow());
    }

    private static boolean isHidden(Airframe airframe) {
        return AirframeProblems.ofGeometry(airframe).stream()
                .map(AirframeProblem::kind)
                .anyMatch(AirframeProblem.Kind::hidesNeutralPoint);
    }

    private StabilityAnswer fromLogbook(Airframe airframe, Airframe shape) {
        String digest = VersionDigest.sha256(Geometry.write("", "", shape));
        StabilityAnswer kept =
                logbook.read(r -> Optional.ofNullable(read(r, digest))).orElse(null);
        if (kept != null) {
            return kept;
        }
        StabilityAnswer answer = Stability.answer(shape, solved(airframe));
        try {
            logbook.keepComputed(KIND, digest, Stability.ENGINE_VERSION, Json.MAPPER.writeValueAsString(answer));
        } catch (JsonProcessingException e) {
            LOG.warn("The answer of the lattice is not kept.", e);
        }
        return answer;
    }

    private static @Nullable StabilityAnswer read(Reader reader, String digest) {
        String json = reader.computed(KIND, digest, Stability.ENGINE_VERSION);
        if (json == null) {
            return null;
        }
        try {
            return Json.MAPPER.readValue(json, StabilityAnswer.class);
        } catch (JsonProcessingException e) {
            LOG.warn("What was kept of the lattice cannot be read; it is computed again.", e);
            return null;
        }
    }
}
