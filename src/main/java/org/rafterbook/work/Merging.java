package org.rafterbook.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;

/**
 * Two versions that became equal and are one from then on. Riggings and weighings move to the one that stays, and so does what
 * the flyer said of the other: a mark stays a mark; a zero or a result of the flyer's own formula is taken over where the one
 * that stays has none. Where both have one, the one that stays keeps its own; the other's zero is told in its reason.
 */
final class Merging {

    private final Model model;
    private final Version gone;
    private final Version kept;

    Merging(Model model, Version gone, Version kept) {
        this.model = model;
        this.gone = gone;
        this.kept = kept;
    }

    /** What becomes of the flyer's own words and figures on the version that goes, in sentences. */
    List<String> sentences(DisplayUnits units) {
        QuantityFormat format = new QuantityFormat(units);
        List<String> said = new ArrayList<>();
        if (gone.markedGood() && !kept.markedGood()) {
            said.add(name(kept) + " is marked well-behaved, as " + name(gone) + " was.");
        }
        Double zero = gone.zeroShiftM();
        Double own = kept.zeroShiftM();
        if (zero != null && own == null) {
            said.add("The zero of " + name(gone) + ", " + format.difference(Quantity.LENGTH, zero) + ", is "
                    + name(kept) + "'s.");
        } else if (zero != null && own != null && differs()) {
            said.add("The zero of " + name(kept) + ", " + format.difference(Quantity.LENGTH, own) + ", stands; that of "
                    + name(gone) + ", " + format.difference(Quantity.LENGTH, zero) + ", is told in its reason.");
        }
        Double ownGone = gone.ownNeutralPointM();
        Double ownKept = kept.ownNeutralPointM();
        if (ownGone != null && ownKept == null) {
            said.add("Your own formula's " + format.text(Quantity.LENGTH, ownGone) + " for " + name(gone) + " is "
                    + name(kept) + "'s.");
        } else if (ownGone != null && ownKept != null && !ownGone.equals(ownKept)) {
            said.add("Your own formula's " + format.text(Quantity.LENGTH, ownKept) + " for " + name(kept)
                    + " stands; the " + format.text(Quantity.LENGTH, ownGone) + " for " + name(gone) + " goes.");
        }
        return said;
    }

    void make(Writer writer) {
        for (Rigging r : writer.where(Rigging.class, "versionId", gone.id())) {
            writer.update(r.withVersion(kept.id()));
        }
        for (Weighing x : writer.where(Weighing.class, "versionId", gone.id())) {
            writer.update(x.of(kept.id()));
        }
        Version one = kept.sketch() && !gone.sketch() ? kept.taken() : kept;
        one = one.withMark(gone.markedGood() || kept.markedGood());
        if (kept.ownNeutralPointM() == null) {
            one = one.withOwnNeutralPoint(gone.ownNeutralPointM());
        }
        writer.update(gone.zeroShiftM() == null ? one : withZero(one));
        writer.where(SettingValue.class, "versionId", gone.id())
                .forEach(v -> writer.remove(SettingValue.class, v.id()));
        writer.remove(Version.class, gone.id());
    }

    private Version withZero(Version one) {
        Double own = one.zeroShiftM();
        if (own == null) {
            return one.withZero(gone.zeroShiftM(), gone.zeroShiftReason());
        }
        return differs() ? one.withZero(own, one.zeroShiftReason() + "; " + told()) : one;
    }

    private boolean differs() {
        return !Objects.equals(gone.zeroShiftM(), kept.zeroShiftM())
                || !Objects.equals(gone.zeroShiftReason(), kept.zeroShiftReason());
    }

    private String told() {
        return name(gone) + " had "
                + new QuantityFormat(DisplayUnits.METRIC).difference(Quantity.LENGTH, gone.zeroShiftM()) + ": "
                + gone.zeroShiftReason();
    }

    private String name(Version version) {
        return model.letter() + version.number();
    }
}
