package org.rafterbook.power;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A copy of a wind in the making, with some things different. */
public final class WindDraft {

    private final String id;
    private @Nullable String motorId;
    private @Nullable String sessionId;
    private int ordinal;
    private @Nullable Instant woundAt;
    private @Nullable Double turnsWound;
    private @Nullable Double turnsBackedOff;
    private @Nullable Double maxTorqueNm;
    private @Nullable Double launchTorqueNm;
    private @Nullable Double winderRatio;
    private @Nullable WindEnd end;
    private @Nullable String notes;
    private Map<String, String> asTyped;

    private WindDraft(Wind from) {
        this.id = from.id();
        this.motorId = from.motorId();
        this.sessionId = from.sessionId();
        this.ordinal = from.ordinal();
        this.woundAt = from.woundAt();
        this.turnsWound = from.turnsWound();
        this.turnsBackedOff = from.turnsBackedOff();
        this.maxTorqueNm = from.maxTorqueNm();
        this.launchTorqueNm = from.launchTorqueNm();
        this.winderRatio = from.winderRatio();
        this.end = from.end();
        this.notes = from.notes();
        this.asTyped = from.asTyped();
    }

    public static WindDraft of(Wind from) {
        return new WindDraft(from);
    }

    public Wind done() {
        return new Wind(
                id,
                motorId,
                sessionId,
                ordinal,
                woundAt,
                turnsWound,
                turnsBackedOff,
                maxTorqueNm,
                launchTorqueNm,
                winderRatio,
                end,
                notes,
                asTyped);
    }

    public WindDraft motorId(@Nullable String motorId) {
        this.motorId = motorId;
        return this;
    }

    public WindDraft sessionId(@Nullable String sessionId) {
        this.sessionId = sessionId;
        return this;
    }

    public WindDraft ordinal(int ordinal) {
        this.ordinal = ordinal;
        return this;
    }

    public WindDraft woundAt(@Nullable Instant woundAt) {
        this.woundAt = woundAt;
        return this;
    }

    public WindDraft turnsWound(@Nullable Double turnsWound) {
        this.turnsWound = turnsWound;
        return this;
    }

    public WindDraft turnsBackedOff(@Nullable Double turnsBackedOff) {
        this.turnsBackedOff = turnsBackedOff;
        return this;
    }

    public WindDraft maxTorqueNm(@Nullable Double maxTorqueNm) {
        this.maxTorqueNm = maxTorqueNm;
        return this;
    }

    public WindDraft launchTorqueNm(@Nullable Double launchTorqueNm) {
        this.launchTorqueNm = launchTorqueNm;
        return this;
    }

    public WindDraft winderRatio(@Nullable Double winderRatio) {
        this.winderRatio = winderRatio;
        return this;
    }

    public WindDraft end(@Nullable WindEnd end) {
        this.end = end;
        return this;
    }

    public WindDraft notes(@Nullable String notes) {
        this.notes = notes;
        return this;
    }

    public WindDraft asTyped(Map<String, String> asTyped) {
        this.asTyped = asTyped;
        return this;
    }
}
