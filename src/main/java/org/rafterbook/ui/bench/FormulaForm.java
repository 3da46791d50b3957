package org.rafterbook.ui.bench;

import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.work.BenchDesk;

/** What the flyer's own formula gives, to stand beside the lattice. */
final class FormulaForm extends EntryForm {

    private final Amount neutral;

    FormulaForm(BenchContext context) {
        super(context, "Own formula", "beside the lattice");
        neutral = new Amount("Neutral point aft of the bearing", Quantity.LENGTH, context.units());
        form.add(
                neutral.field(),
                Words.prose(
                        "Shown for this version as its difference to the lattice; nothing is computed from it. Empty: no"
                                + " result."));
        actions("Keep the result", this::keep);
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        neutral.fill(bench.facts().ownFormulaM());
        super.opened(bench);
    }

    private void keep() {
        if (neutral.field().check()) {
            Double typed = neutral.si();
            String id = versionId();
            enter(progress -> {
                context.book().bench().ownFormula(id, typed);
                return true;
            });
        }
    }
}
