package org.rafterbook.rules;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.QuantityFormat;

/** Checks a model against the limits a class sheet holds, one finding for each. */
public final class ClassCheck {

    /** A hundredth of a milligram or of a micrometre: below what is shown, and above what adding up parts leaves. */
    private static final double NOTHING = 1e-8;

    private static final int MOST_DECIMALS = 4;

    private final QuantityFormat format;
    private final List<ClassFinding> findings = new ArrayList<>();

    private ClassCheck(QuantityFormat format) {
        this.format = format;
    }

    /** The findings in the order of {@link ClassLimit}; a limit the sheet leaves open has none. */
    public static List<ClassFinding> of(ClassSheet sheet, ClassMeasures model, QuantityFormat format) {
        ClassCheck check = new ClassCheck(format);
        check.add(ClassLimit.AIRFRAME_MASS, model.airframeKg(), sheet.minAirframeKg());
        check.add(ClassLimit.MOTOR_MASS, model.motorKg(), sheet.maxMotorKg());
        check.add(ClassLimit.SPAN, model.spanM(), sheet.maxSpanM());
        check.add(ClassLimit.CHORD, model.chordM(), sheet.maxChordM());
        check.add(ClassLimit.TAIL_SPAN, model.tailSpanM(), sheet.maxTailSpanM());
        check.add(ClassLimit.PROPELLER, model.propellerM(), sheet.maxPropellerM());
        return List.copyOf(check.findings);
    }

    private void add(ClassLimit of, @Nullable Double value, @Nullable Double limit) {
        if (limit == null) {
            return;
        }
        String asked =
                of.isLeast() ? "at least " + text(of, limit) + " needed" : "at most " + text(of, limit) + " allowed";
        if (value == null) {
            String sentence = capital(of.noun()) + " not known; " + asked + ".";
            findings.add(new ClassFinding(of, ClassFinding.Standing.UNKNOWN, null, limit, null, sentence));
            return;
        }
        double toSpare = of.isLeast() ? value - limit : limit - value;
        boolean kept = toSpare >= -NOTHING;
        String sentence =
                capital(of.noun()) + " " + text(of, value) + ", " + asked + ": " + difference(of, toSpare) + ".";
        ClassFinding.Standing standing = kept ? ClassFinding.Standing.KEPT : ClassFinding.Standing.BROKEN;
        findings.add(new ClassFinding(of, standing, value, limit, toSpare, sentence));
    }

    private String difference(ClassLimit of, double toSpare) {
        if (Math.abs(toSpare) <= NOTHING) {
            return "exactly on the limit";
        }
        String wrong = of.isLeast() ? " too little" : " too much";
        return text(of, Math.abs(toSpare)) + (toSpare > 0 ? " to spare" : wrong);
    }

    private String text(ClassLimit of, double si) {
        return format.shortest(of.quantity(), si, MOST_DECIMALS);
    }

    private static String capital(String noun) {
        return Character.toUpperCase(noun.charAt(0)) + noun.substring(1);
    }
}
