package org.rafterbook.app;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.rafterbook.power.MotorEnergy;
import org.rafterbook.power.MotorLimits;
import org.rafterbook.power.UnwindingCurve;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.UserError;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Limits and energy of a motor before it is wound. */
@Command(name = "motor", description = "Turns and torque at which a motor breaks, and its energy, before winding.")
final class MotorCommand implements Callable<Integer> {

    @Mixin
    private final Answer answer = new Answer();

    @Option(names = "--loop", required = true, paramLabel = "20in", description = "Length of the loop when tied.")
    private String loop = "";

    @Option(names = "--mass", required = true, paramLabel = "2g", description = "Mass of the rubber.")
    private String mass = "";

    @Option(names = "--turns-constant", paramLabel = "K", description = "The batch's own K, in^-1.5 g^0.5.")
    private @Nullable Double constant;

    @Override
    public Integer call() {
        if (constant != null && !(constant > 0 && Double.isFinite(constant))) {
            throw UserError.badInput("The turns constant must be a number above zero.");
        }
        double loopM = AirCommand.read(Quantity.LENGTH, loop);
        double massKg = AirCommand.read(Quantity.MASS, mass);
        MotorLimits.Band turns = constant == null
                ? MotorLimits.breakingTurnsBand(loopM, massKg)
                : MotorLimits.breakingTurnsBand(constant, 0, loopM, massKg);
        double torque = MotorLimits.breakingTorqueNm(loopM, massKg);
        double energy = MotorEnergy.whole(UnwindingCurve.REFERENCE, torque, turns.expected());
        if (answer.json()) {
            Map<String, Object> keys = new LinkedHashMap<>();
            keys.put("breaking_turns", turns.expected());
            keys.put("breaking_turns_low", turns.low());
            keys.put("breaking_turns_high", turns.high());
            keys.put("breaking_torque_nmm", torque * 1000);
            keys.put("energy_j", energy);
            keys.put("energy_j_per_g", energy / massKg / 1000);
            answer.document(keys);
        } else {
            answer.line(String.format(
                    Locale.ROOT,
                    "breaks at about %.0f turns (%.0f to %.0f)",
                    turns.expected(),
                    turns.low(),
                    turns.high()));
            answer.line(
                    String.format(Locale.ROOT, "breaks at about %.2f N·mm; a guideline, not a promise", torque * 1000));
            answer.line(String.format(
                    Locale.ROOT,
                    "holds about %.1f J, %.1f J/g, by the reference curve",
                    energy,
                    energy / massKg / 1000));
        }
        return 0;
    }
}
