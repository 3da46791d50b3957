package org.rafterbook.ui.bench;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Version;
import org.rafterbook.stability.StabilityAnswer;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.MarginAnswer;

/** A version of which the flyer knows the margin, as a rule that it was neutral, sets the zero of its model. */
final class ZeroForm extends EntryForm {

    private final Amount known;
    private final Field<String> reason = Field.words("How it is known").prompt("held any speed it was set to");

    ZeroForm(BenchContext context) {
        super(context, "Known margin", "");
        known = new Amount("This version's margin was", Quantity.FRACTION, context.units());
        known.field().prompt("0");
        form.add(
                known.field(),
                reason,
                Words.prose(
                        "A version that kept every speed it was put into was neutral: 0 %. The neutral point of all versions"
                                + " of the model is shifted by what the computation misses here. Empty: the shift is taken back."));
        actions("Set the zero", this::keep);
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        Version version = BenchModel.shown(bench).version();
        known.fill(version.zeroShiftM() == null ? null : bench.shown().margin().margin());
        reason.fill(version.zeroShiftReason() == null ? "" : version.zeroShiftReason());
        super.opened(bench);
    }

    private void keep() {
        if (!known.field().check()) {
            return;
        }
        Double margin = known.si();
        String why = reason.typed().strip();
        if (margin != null && why.isEmpty()) {
            reason.refuse("A shift of the zero needs its reason.");
            return;
        }
        Double shift = margin == null ? null : shift(margin);
        if (margin != null && shift == null) {
            known.field().refuse("The margin of this version cannot be computed, so there is nothing to shift.");
            return;
        }
        String id = versionId();
        enter(progress -> {
            context.book().bench().zero(id, shift, margin == null ? null : why);
            return true;
        });
    }

    private @Nullable Double shift(double margin) {
        BenchDesk.Bench bench = model.bench().get();
        MarginAnswer answer = bench == null ? null : bench.shown().margin();
        StabilityAnswer shape = answer == null ? null : answer.stability();
        Double computed = shape == null ? null : shape.neutralPointM();
        Double balance = answer == null ? null : answer.balanceM();
        Double chord = answer == null ? null : answer.meanChordM();
        return computed == null || balance == null || chord == null
                ? null
                : (Double) (balance + margin * chord - computed);
    }
}
