package org.rafterbook.flight;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A copy of a flight in the making, with some things different: {@code FlightDraft.of(flight).turnsLeft(590.0).done()}. */
public final class FlightDraft {

    private final String id;
    private String sessionId;
    private @Nullable String riggingId;
    private @Nullable String windId;
    private int ordinal;
    private int launchNoOfWind;
    private @Nullable Instant launchedAt;
    private @Nullable Instant landedAt;
    private @Nullable Double durationS;
    private @Nullable DurationSource durationSource;
    private @Nullable Double clockDoubtS;
    private @Nullable Ending ending;
    private @Nullable CutShort cutShort;
    private @Nullable Double peakLowM;
    private @Nullable Double peakHighM;
    private @Nullable Double turnsLeft;
    private double partialFraction;
    private @Nullable Recovered recovered;
    private @Nullable Integer stalls;
    private @Nullable String leftOutWhy;
    private @Nullable String leftOutBy;
    private @Nullable Instant leftOutAt;
    private @Nullable Boolean leftOutBeforeTime;
    private @Nullable String notes;
    private Map<String, String> asTyped;

    private FlightDraft(Flight from) {
        this.id = from.id();
        this.sessionId = from.sessionId();
        this.riggingId = from.riggingId();
        this.windId = from.windId();
        this.ordinal = from.ordinal();
        this.launchNoOfWind = from.launchNoOfWind();
        this.launchedAt = from.launchedAt();
        this.landedAt = from.landedAt();
        this.durationS = from.durationS();
        this.durationSource = from.durationSource();
        this.clockDoubtS = from.clockDoubtS();
        this.ending = from.ending();
        this.cutShort = from.cutShort();
        this.peakLowM = from.peakLowM();
        this.peakHighM = from.peakHighM();
        this.turnsLeft = from.turnsLeft();
        this.partialFraction = from.partialFraction();
        this.recovered = from.recovered();
        this.stalls = from.stalls();
        this.leftOutWhy = from.leftOutWhy();
        this.leftOutBy = from.leftOutBy();
        this.leftOutAt = from.leftOutAt();
        this.leftOutBeforeTime = from.leftOutBeforeTime();
        this.notes = from.notes();
        this.asTyped = from.asTyped();
    }

    public static FlightDraft of(Flight from) {
        return new FlightDraft(from);
    }

    public Flight done() {
        return new Flight(
                id,
                sessionId,
                riggingId,
                windId,
                ordinal,
                launchNoOfWind,
                launchedAt,
                landedAt,
                durationS,
                durationSource,
                clockDoubtS,
                ending,
                cutShort,
                peakLowM,
                peakHighM,
                turnsLeft,
                partialFraction,
                recovered,
                stalls,
                leftOutWhy,
                leftOutBy,
                leftOutAt,
                leftOutBeforeTime,
                notes,
                asTyped);
    }

    public FlightDraft sessionId(String sessionId) {
        this.sessionId = sessionId;
        return this;
    }

    public FlightDraft riggingId(@Nullable String riggingId) {
        this.riggingId = riggingId;
        return this;
    }

    public FlightDraft windId(@Nullable String windId) {
        this.windId = windId;
        return this;
    }

    public FlightDraft ordinal(int ordinal) {
        this.ordinal = ordinal;
        return this;
    }

    public FlightDraft launchNoOfWind(int launchNoOfWind) {
        this.launchNoOfWind = launchNoOfWind;
        return this;
    }

    public FlightDraft launchedAt(@Nullable Instant launchedAt) {
        this.launchedAt = launchedAt;
        return this;
    }

    public FlightDraft landedAt(@Nullable Instant landedAt) {
        this.landedAt = landedAt;
        return this;
    }

    public FlightDraft durationS(@Nullable Double durationS) {
        this.durationS = durationS;
        return this;
    }

    public FlightDraft durationSource(@Nullable DurationSource durationSource) {
        this.durationSource = durationSource;
        return this;
    }

    public FlightDraft clockDoubtS(@Nullable Double clockDoubtS) {
        this.clockDoubtS = clockDoubtS;
        return this;
    }

    public FlightDraft ending(@Nullable Ending ending) {
        this.ending = ending;
        return this;
    }

    public FlightDraft cutShort(@Nullable CutShort cutShort) {
        this.cutShort = cutShort;
        return this;
    }

    public FlightDraft peakLowM(@Nullable Double peakLowM) {
        this.peakLowM = peakLowM;
        return this;
    }

    public FlightDraft peakHighM(@Nullable Double peakHighM) {
        this.peakHighM = peakHighM;
        return this;
    }

    public FlightDraft turnsLeft(@Nullable Double turnsLeft) {
        this.turnsLeft = turnsLeft;
        return this;
    }

    public FlightDraft partialFraction(double partialFraction) {
        this.partialFraction = partialFraction;
        return this;
    }

    public FlightDraft recovered(@Nullable Recovered recovered) {
        this.recovered = recovered;
        return this;
    }

    public FlightDraft stalls(@Nullable Integer stalls) {
        this.stalls = stalls;
        return this;
    }

    public FlightDraft leftOutWhy(@Nullable String leftOutWhy) {
        this.leftOutWhy = leftOutWhy;
        return this;
    }

    public FlightDraft leftOutBy(@Nullable String leftOutBy) {
        this.leftOutBy = leftOutBy;
        return this;
    }

    public FlightDraft leftOutAt(@Nullable Instant leftOutAt) {
        this.leftOutAt = leftOutAt;
        return this;
    }

    public FlightDraft leftOutBeforeTime(@Nullable Boolean leftOutBeforeTime) {
        this.leftOutBeforeTime = leftOutBeforeTime;
        return this;
    }

    public FlightDraft notes(@Nullable String notes) {
        this.notes = notes;
        return this;
    }

    public FlightDraft asTyped(Map<String, String> asTyped) {
        this.asTyped = asTyped;
        return this;
    }
}
