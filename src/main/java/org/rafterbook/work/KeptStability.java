package org.rafterbook.work;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
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
    private static final int SOLUTIONS = 8;
    private static final JsonMapper JSON = new JsonMapper();

    private final Logbook logbook;
    private final Map<Airframe, StabilityAnswer> known = new ConcurrentHashMap<>();

    private final Map<Airframe, GeometrySolution> solutions = lastFew();
    private final Map<Airframe, StabilityAnswer> glanced = lastFew();

    private static <V> Map<Airframe, V> lastFew() {
        return new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Airframe, V> eldest) {
                return size() > SOLUTIONS;
            }
        };
    }

    KeptStability(Logbook logbook) {
        this.logbook = logbook;
    }

    /** The answer for an airframe; asked again for the same shape it is not computed again. */
    StabilityAnswer of(Airframe airframe) {
        if (AirframeProblems.ofGeometry(airframe).stream()
                .map(AirframeProblem::kind)
                .anyMatch(AirframeProblem.Kind::hidesNeutralPoint)) {
            return Stability.analyse(airframe);
        }
        return known.computeIfAbsent(Stability.shape(airframe), this::fromLogbook);
    }

    /** The answer for an airframe that is only looked at, such as a wing under the pointer: it is not kept. */
    synchronized StabilityAnswer glance(Airframe airframe) {
        Airframe shape = Stability.shape(airframe);
        StabilityAnswer kept = known.get(shape);
        if (kept == null) {
            kept = glanced.get(shape);
        }
        GeometrySolution solved = kept == null ? solution(airframe).orElse(null) : null;
        if (solved != null) {
            kept = Stability.answer(shape, solved);
            glanced.put(shape, kept);
        }
        return kept == null ? Stability.analyse(airframe) : kept;
    }

    /** The solved flow of a shape, the last few kept: turning an incidence back and forth solves nothing again. */
    synchronized Optional<GeometrySolution> solution(Airframe airframe) {
        Airframe shape = Stability.shape(airframe);
        GeometrySolution solved = solutions.get(shape);
        if (solved == null) {
            solved = Stability.solve(airframe).orElse(null);
            if (solved != null) {
                solutions.put(shape, solved);
            }
        }
        return Optional.ofNullable(solved);
    }

    private StabilityAnswer fromLogbook(Airframe shape) {
        String digest = VersionDigest.sha256(Geometry.write("", "", shape));
        StabilityAnswer kept =
                logbook.read(r -> Optional.ofNullable(read(r, digest))).orElse(null);
        if (kept != null) {
            return kept;
        }
        StabilityAnswer answer =
                solution(shape).map(s -> Stability.answer(shape, s)).orElseGet(() -> Stability.analyse(shape));
        try {
            logbook.keepComputed(KIND, digest, Stability.ENGINE_VERSION, JSON.writeValueAsString(answer));
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
            return JSON.readValue(json, StabilityAnswer.class);
        } catch (JsonProcessingException e) {
            LOG.warn("What was kept of the lattice cannot be read; it is computed again.", e);
            return null;
        }
    }
}
