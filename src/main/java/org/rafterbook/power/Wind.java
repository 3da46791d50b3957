package org.rafterbook.power;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One winding of a motor; turns are motor turns. One wind may serve a relaunch.
 *
 * @param motorId null where the motor was not named
 * @param ordinal counts the winds of its motor from 1
 * @param turnsWound turns put in
 * @param turnsBackedOff turns taken out again before launch
 * @param maxTorqueNm highest torque read, N m
 * @param launchTorqueNm torque at launch, N m
 * @param winderRatio motor turns for one turn of the winder's handle, where the flyer counts those
 * @param end null while it is on the motor
 */
public record Wind(
        String id,
        @Nullable String motorId,
        @Nullable String sessionId,
        int ordinal,
        @Nullable Instant woundAt,
        @Nullable Double turnsWound,
        @Nullable Double turnsBackedOff,
        @Nullable Double maxTorqueNm,
        @Nullable Double launchTorqueNm,
        @Nullable Double winderRatio,
        @Nullable WindEnd end,
        @Nullable String notes,
        Map<String, String> asTyped) {}
