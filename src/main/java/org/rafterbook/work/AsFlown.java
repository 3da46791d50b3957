package org.rafterbook.work;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.stability.StabilityAnswer;

/**
 * A version with the balance and mass it has with the motor flown, so that what is moved in thought moves from there: a
 * measured balance counts, and what the scale showed beyond the parts stays where it is.
 *
 * @param airframe null where the version has no geometry
 * @param zero the flyer's shift of the neutral point, as a fraction of the mean chord
 */
record AsFlown(@Nullable Airframe airframe, double zero) {

    /** Stands for what the scale showed beyond the parts; it never moves. */
    private static final String REST = " not in the parts";

    static AsFlown of(Looked looked) {
        Airframe airframe = looked.airframe();
        return new AsFlown(airframe == null ? null : weighed(airframe, looked.margin()), zero(looked.margin()));
    }

    private static double zero(MarginAnswer margin) {
        StabilityAnswer shape = margin.stability();
        Double shown = margin.neutralPointM();
        Double computed = shape == null ? null : shape.neutralPointM();
        Double chord = margin.meanChordM();
        return shown == null || computed == null || chord == null ? 0 : (shown - computed) / chord;
    }

    private static Airframe weighed(Airframe airframe, MarginAnswer margin) {
        Double balance = margin.balanceM();
        Double mass = margin.massKg();
        if (balance == null || mass == null) {
            return airframe;
        }
        double parts = airframe.masses().stream().mapToDouble(MassItem::massKg).sum();
        double motor = airframe.motor() == null ? 0 : airframe.motor().massKg();
        List<MassItem> masses = new ArrayList<>(airframe.masses());
        masses.add(new MassItem(REST, mass - parts - motor, balance, 0));
        return new Airframe(airframe.surfaces(), masses, balance, airframe.motor());
    }

    /** An airframe of an answer without what stood for the unknown rest, to be kept as a sketch. */
    static Airframe withoutRest(Airframe answer) {
        return new Airframe(
                answer.surfaces(),
                answer.masses().stream().filter(m -> !m.name().equals(REST)).toList(),
                null,
                answer.motor());
    }
}
