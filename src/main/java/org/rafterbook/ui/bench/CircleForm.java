package org.rafterbook.ui.bench;

import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.work.BenchDesk;

/** The circle in which the figures of trim are computed. */
final class CircleForm extends EntryForm {

    private final Amount radius;

    CircleForm(BenchContext context) {
        super(context, "Circle flown", "");
        radius = new Amount("Radius of the circle", Quantity.HEIGHT, context.units());
        radius.field().required().refuseIf(r -> r.si() < 0.2, r -> "A circle of less than 0.2 m cannot be flown.");
        form.add(
                radius.field(),
                Words.prose(
                        "In a circle the tailplane meets the air at a slightly greater angle, which lowers the nose. In"
                                + " wide circles it hardly matters; below about 2 m of radius it does."));
        actions("Keep the circle", this::keep);
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        radius.fill(bench.in().circleRadiusM());
        super.opened(bench);
    }

    private void keep() {
        Double typed = radius.si();
        if (radius.field().check() && typed != null) {
            enter(progress -> {
                context.book().bench().circle(typed);
                return true;
            });
        }
    }
}
