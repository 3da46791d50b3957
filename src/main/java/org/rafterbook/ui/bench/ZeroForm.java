package org.rafterbook.ui.bench;

import java.util.Comparator;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Version;
import org.rafterbook.stability.StabilityAnswer;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.MarginAnswer;
import org.rafterbook.work.Rigged;

/** A version of which the flyer knows the margin, as a rule that it was neutral, sets the zero of its model. */
final class ZeroForm extends EntryForm {

    private final Amount known;
    private final Field<String> reason = Field.words("How it is known").prompt("held any speed it was set to");
    private final Label set = Words.prose("");
    private final Node takeBack;
    private @Nullable Rigged holder;

    ZeroForm(BenchContext context) {
        super(context, "Known margin", "");
        known = new Amount("This version's margin was", Quantity.FRACTION, context.units()).decimals(2);
        takeBack = Lay.row(8, Buttons.secondary(form.keys().on("Ctrl+Del", "Take the zero back", this::takeBack)));
        form.add(
                set,
                takeBack,
                known.field(),
                reason,
                Words.prose(
                        "A version that kept every speed it was put into was neutral: 0 %. The neutral point of all versions"
                                + " of the model is shifted by what the computation misses here."));
        actions("Set the zero", this::keep);
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        Version version = BenchModel.shown(bench).version();
        known.fill(version.zeroShiftM() == null ? null : bench.shown().margin().margin());
        reason.fill(version.zeroShiftReason() == null ? "" : version.zeroShiftReason());
        holder = holder(bench);
        Rigged by = holder;
        set.setText(by == null ? "" : words(by));
        Lay.show(set, by != null);
        Lay.show(takeBack, by != null);
        super.opened(bench);
    }

    /** The version whose zero counts here: the one shown, else the newest of those that have one. */
    private static @Nullable Rigged holder(BenchDesk.Bench bench) {
        Rigged shown = BenchModel.shown(bench);
        if (shown.version().zeroShiftM() != null) {
            return shown;
        }
        return Stream.concat(
                        bench.strip().stream().map(BenchDesk.Occasion::rigged),
                        bench.sketches().stream().map(BenchDesk.Sketch::rigged))
                .filter(r -> r.version().zeroShiftM() != null)
                .max(Comparator.comparing(r -> r.version().number()))
                .orElse(null);
    }

    private String words(Rigged by) {
        String shift = context.format().difference(Quantity.LENGTH, by.version().zeroShiftM());
        String why = by.version().zeroShiftReason();
        return "The zero is set by " + by.name() + ": neutral point moved by " + shift
                + (why == null ? "." : ", " + why + ".");
    }

    private void takeBack() {
        Rigged by = holder;
        if (by != null) {
            enter(progress -> {
                context.book().bench().zero(by.version().id(), null, null);
                return true;
            });
        }
    }

    private void keep() {
        if (!known.field().check()) {
            return;
        }
        if (known.si() == null) {
            known.field()
                    .refuse(
                            holder == null
                                    ? "This is needed: the margin it was known to have."
                                    : "This is needed; the zero is taken back by its own button.");
            return;
        }
        double margin = known.si(0);
        String why = reason.typed().strip();
        if (why.isEmpty()) {
            reason.refuse("A shift of the zero needs its reason.");
            return;
        }
        Double shift = shift(margin);
        if (shift == null) {
            known.field().refuse("The margin of this version cannot be computed, so there is nothing to shift.");
            return;
        }
        String id = versionId();
        enter(progress -> {
            context.book().bench().zero(id, shift, why);
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
