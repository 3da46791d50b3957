package org.rafterbook.ui.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.stability.PropellerTerm;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.work.BenchDesk;

/** The propeller as a fin at the nose: left out of the figures of trim until its measures are typed. */
final class PropellerForm extends EntryForm {

    private static final double USUAL_BLADES = 2;
    private static final int MOST_BLADES = 6;

    private final Amount diameter;
    private final Amount width;
    private final Amount pitch;
    private final Amount blades;

    PropellerForm(BenchContext context) {
        super(context, "Propeller", "its disc at the bearing");
        diameter = new Amount("Diameter", Quantity.LENGTH, context.units());
        width = new Amount("Mean width of a blade", Quantity.LENGTH, context.units());
        pitch = new Amount("Pitch", Quantity.LENGTH, context.units());
        blades = new Amount("Blades", Quantity.PLAIN, context.units());
        for (Amount measure : List.of(diameter, width, pitch)) {
            measure.field().refuseIf(v -> v.si() <= 0, v -> "A length above zero.");
        }
        blades.field()
                .refuseIf(
                        v -> v.si() < 1 || v.si() > MOST_BLADES || v.si() != Math.rint(v.si()),
                        v -> "One to six blades.");
        form.beside(diameter.field(), width.field())
                .beside(pitch.field(), blades.field())
                .add(Words.prose(
                        "A propeller ahead works as a fin: it always moves the neutral point forward, for large slow"
                                + " ones by 3 to 9 % of the chord. The margin stays that of the airframe; what the"
                                + " propeller takes from it stands under what it means. All empty: left out."));
        actions("Keep the propeller", this::keep);
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        PropellerTerm known = bench.in().propeller();
        diameter.fill(known == null ? null : known.diameterM());
        width.fill(known == null ? null : known.bladeWidthM());
        pitch.fill(known == null ? null : known.pitchM());
        blades.fill(known == null ? USUAL_BLADES : known.blades());
        super.opened(bench);
    }

    private void keep() {
        boolean sound = diameter.field().check()
                & width.field().check()
                & pitch.field().check()
                & blades.field().check();
        Double across = diameter.si();
        Double wide = width.si();
        Double far = pitch.si();
        Double count = blades.si();
        if (!sound) {
            return;
        }
        boolean none = across == null && wide == null && far == null;
        if (!none && (across == null || wide == null || far == null)) {
            for (Amount measure : List.of(diameter, width, pitch)) {
                if (measure.si() == null) {
                    measure.field().refuse("The propeller's term needs diameter, width and pitch.");
                }
            }
            return;
        }
        keep(
                none || across == null || wide == null || far == null
                        ? null
                        : new PropellerTerm(
                                0, across, wide, far, (int) Math.rint(count == null ? USUAL_BLADES : count)));
    }

    private void keep(@Nullable PropellerTerm propeller) {
        String model = modelId();
        enter(progress -> {
            context.book().bench().propeller(model, propeller);
            return true;
        });
    }
}
