package org.rafterbook.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Trial;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Reader;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;

/** Prepares the next flight from the last: choices carry over, measurements stay hints. */
final class Preparation {

    private final Reader reader;
    private final MarginText margins;
    private final @Nullable Session session;

    Preparation(Reader reader, MarginText margins, @Nullable Session session) {
        this.reader = reader;
        this.margins = margins;
        this.session = session;
    }

    /**
     * The next flight.
     *
     * @param modelId the model it is prepared for, null to just time it
     * @param evening flights of today's session
     */
    Prepared of(@Nullable String modelId, List<FlightLine> evening) {
        int ordinal = evening.stream().mapToInt(l -> l.flight().ordinal()).max().orElse(0) + 1;
        Wind wind = onTheMotor();
        Motor motor = wind == null || wind.motorId() == null ? null : reader.find(Motor.class, wind.motorId());
        if (modelId == null) {
            return Prepared.justTimed(
                    ordinal,
                    wind,
                    motor,
                    evening.isEmpty() ? null : evening.get(evening.size() - 1).wind());
        }
        Rigged now = Riggings.now(reader, modelId);
        FlightLine last = reader.flights().lastOfModel(modelId);
        Rigged before = last == null || last.version() == null
                ? null
                : Riggings.rigged(reader, now.model(), last.rigging(), last.version());
        Motor lastMotor = last == null ? null : last.motor();
        Motor counts = motor == null ? lastMotor : motor;
        Rigged good = good(now);
        TrialNow trial = TrialReading.now(reader, modelId);
        return new Prepared(
                ordinal,
                now,
                margins.of(now, counts),
                before,
                before == null ? null : margins.of(before, lastMotor),
                good,
                good == null ? null : margins.of(good, counts),
                last,
                wind,
                motor,
                wind == null ? Winding.rested(reader, lastMotor) : null,
                last != null && session != null && last.session().id().equals(session.id()) ? last.wind() : null,
                reader.flights().versionsFlown(modelId),
                lastSetting(now),
                trial,
                trial == null ? judged(modelId) : null);
    }

    private @Nullable Rigged good(Rigged now) {
        return reader.where(Version.class, "modelId", now.model().id()).stream()
                .filter(v -> v.markedGood() && !v.id().equals(now.version().id()))
                .reduce((one, later) -> later.number() > one.number() ? later : one)
                .map(v -> Riggings.rigged(reader, now.model(), null, v))
                .orElse(null);
    }

    private @Nullable String lastSetting(Rigged now) {
        List<Rigging> all = new ArrayList<>(Riggings.ordered(reader, now.model().id()));
        Collections.reverse(all);
        return all.stream()
                .map(Rigging::versionId)
                .filter(id -> !id.equals(now.version().id()))
                .findFirst()
                .orElse(null);
    }

    private @Nullable Trial judged(String modelId) {
        List<Trial> all = reader.where(Trial.class, "modelId", modelId);
        Trial newest = all.isEmpty() ? null : all.get(all.size() - 1);
        // the session of now has not begun anew since, though it may have passed midnight
        return newest == null
                        || newest.judgedAt() == null
                        || session == null
                        || LocalDate.ofInstant(newest.judgedAt(), session.zone())
                                .isBefore(session.localDate())
                ? null
                : newest;
    }

    private @Nullable Wind onTheMotor() {
        Wind newest = null;
        for (Wind wind : session == null ? List.<Wind>of() : reader.where(Wind.class, "sessionId", session.id())) {
            if (wind.end() == null
                    && reader.where(Flight.class, "windId", wind.id()).isEmpty()) {
                newest = wind;
            }
        }
        return newest;
    }
}
