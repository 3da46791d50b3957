package org.rafterbook.work;

import org.jspecify.annotations.Nullable;
import org.rafterbook.power.MotorLimits;

/**
 * Turns at which a motor is expected to break.
 *
 * @param batch name of the batch whose own turns constant it rests on, null where it rests on the usual one
 */
public record MotorLimit(MotorLimits.Band turns, @Nullable String batch) {}
