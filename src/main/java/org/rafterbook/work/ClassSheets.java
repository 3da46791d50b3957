package org.rafterbook.work;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.rules.ClassCheck;
import org.rafterbook.rules.ClassFinding;
import org.rafterbook.rules.ClassMeasures;
import org.rafterbook.rules.ClassSheet;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.units.UserError;

/** The sheets of limits a model can be checked against, which of them a model flies in, and the checks. */
public final class ClassSheets {

    private final Logbook logbook;

    ClassSheets(Logbook logbook) {
        this.logbook = logbook;
    }

    /** Every class sheet, by name and year. */
    public List<ClassSheet> all() {
        return logbook.read(r -> r.all(ClassSheet.class).stream()
                .sorted(Comparator.comparing(ClassSheet::name, String.CASE_INSENSITIVE_ORDER)
                        .thenComparingInt(ClassSheet::year))
                .toList());
    }

    /** Adds a class sheet (an empty id) or puts one in the place of its earlier state, and lets the model fly in it. */
    public ClassSheet keep(String modelId, ClassSheet sheet) {
        if (sheet.name().isBlank()) {
            throw UserError.badInput("A class sheet needs a name.");
        }
        return logbook.enter("class sheet " + sheet.name(), w -> {
            ClassSheet kept = sheet.id().isEmpty() ? w.insert(sheet.withId(Logbook.newId())) : w.update(sheet);
            w.update(w.get(Model.class, modelId).inClass(kept.id()));
            return kept;
        });
    }

    /** Lets the model fly in a class, or in none. */
    public void choose(String modelId, @Nullable String sheetId) {
        logbook.change("class", w -> w.update(w.get(Model.class, modelId).inClass(sheetId)));
    }

    /** The margin the flyer wishes for, as fractions of the mean chord; both null for none. */
    public void wish(String modelId, @Nullable Double low, @Nullable Double high) {
        if ((low == null) != (high == null) || (low != null && high != null && low > high)) {
            throw UserError.badInput("The wished margin runs from its lower to its upper end.");
        }
        logbook.change(
                "wished margin", w -> w.update(w.get(Model.class, modelId).wishing(low, high)));
    }

    /** How a version stands to the sheet of its model's class; empty without one or without geometry. */
    public List<ClassFinding> check(String versionId, DisplayUnits units) {
        return logbook.read(r -> {
            Version version = r.get(Version.class, versionId);
            ClassSheet sheet = of(r, version.modelId());
            Airframe geometry = Geometry.of(version);
            return sheet == null || geometry == null
                    ? List.<ClassFinding>of()
                    : ClassCheck.of(
                            sheet, ClassMeasures.of(geometry, weighedKg(r, version), null), new QuantityFormat(units));
        });
    }

    static @Nullable ClassSheet of(Reader reader, String modelId) {
        String id = reader.get(Model.class, modelId).classSheetId();
        return id == null ? null : reader.find(ClassSheet.class, id);
    }

    /**
     * The bare airframe as the scale showed it last for a version of this build, with the masses changed since; null where
     * it was never weighed.
     */
    static @Nullable Double weighedKg(Reader reader, Version version) {
        Weighing last = Weighings.newest(reader, version, x -> x.massKg() != null && x.motorKg() != null);
        Double scale = last == null ? null : last.massKg();
        Double motor = last == null ? null : last.motorKg();
        if (last == null || scale == null || motor == null) {
            return null;
        }
        Airframe then = Geometry.of(reader.get(Version.class, last.versionId()));
        return scale - motor + masses(Geometry.of(version)) - masses(then);
    }

    private static double masses(@Nullable Airframe airframe) {
        return airframe == null
                ? 0
                : airframe.masses().stream().mapToDouble(MassItem::massKg).sum();
    }
}
