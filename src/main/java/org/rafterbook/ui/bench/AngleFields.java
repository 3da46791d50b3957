package org.rafterbook.ui.bench;

import javafx.scene.Node;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;

/** An incidence as an angle, or as the height difference of the two posts over the distance between them. */
final class AngleFields {

    private final Amount angle;
    private final Amount higher;
    private final Amount apart;
    private final Node node;

    AngleFields(DisplayUnits units, Runnable changed) {
        angle = new Amount("Incidence", Quantity.ANGLE, units).decimals(2);
        higher = new Amount("or posts differ by", Quantity.LENGTH, units);
        apart = new Amount("posts apart", Quantity.LENGTH, units);
        angle.field().quietly("leading edge up: positive");
        apart.field().refuseIf(v -> v.si() <= 0, v -> "A distance above zero.");
        for (Amount post : new Amount[] {higher, apart}) {
            post.field().valueProperty().subscribe((before, now) -> tell());
        }
        angle.field().valueProperty().subscribe((before, now) -> changed.run());
        node = Lay.even(12, angle.field(), higher.field(), apart.field());
    }

    Node node() {
        return node;
    }

    void fill(double rad) {
        angle.fill(rad);
        higher.fill(null);
        apart.fill(null);
    }

    /** Both posts typed give the angle: the posts stand upright on the stick. */
    private void tell() {
        Double up = higher.si();
        Double between = apart.si();
        if (up != null && between != null && between > 0 && Math.abs(up) < between) {
            double rad = Math.atan(up / between);
            angle.fill(rad);
            angle.field().quietly("");
            apart.field().also(v -> "= " + QuantityFormat.rounded(Math.toDegrees(rad), 2) + "°");
        }
    }

    boolean check() {
        boolean sound =
                angle.field().check() & higher.field().check() & apart.field().check();
        @Nullable Double up = higher.si();
        @Nullable Double between = apart.si();
        if (sound && (up == null) != (between == null)) {
            (up == null ? higher : apart).field().refuse("Type both, or the angle.");
            return false;
        }
        if (sound && up != null && between != null && Math.abs(up) >= between) {
            higher.field().refuse("More than the distance between the posts.");
            return false;
        }
        return sound;
    }

    double rad(double otherwise) {
        return angle.si(otherwise);
    }
}
