package org.rafterbook.ui.bench;

import org.rafterbook.airframe.Model;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.work.BenchDesk;

/** The range of margins the flyer wishes for. */
final class WishedForm extends EntryForm {

    private final Amount low;
    private final Amount high;

    WishedForm(BenchContext context) {
        super(context, "Wished margin", "of the mean chord");
        low = new Amount("From", Quantity.FRACTION, context.units());
        high = new Amount("To", Quantity.FRACTION, context.units());
        form.beside(low.field(), high.field())
                .add(Words.prose(
                        "Drawn on the margin's rule and, on the drawing, as the bracket where the balance point then"
                                + " lies. Both empty: no wish."));
        actions("Keep the wish", this::keep);
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        Model now = bench.now().model();
        low.fill(now.wishedLow());
        high.fill(now.wishedHigh());
        super.opened(bench);
    }

    private void keep() {
        if (!low.field().check() || !high.field().check()) {
            return;
        }
        Double from = low.si();
        Double to = high.si();
        if (from != null && to == null) {
            high.field().refuse("The upper end is missing.");
        } else if (from == null && to != null) {
            low.field().refuse("The lower end is missing.");
        } else if (from != null && to != null && from > to) {
            high.field().refuse("The upper end lies below the lower end.");
        } else {
            String id = modelId();
            enter(progress -> {
                context.book().bench().classes().wish(id, from, to);
                return true;
            });
        }
    }
}
