package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.WingGeometry;
import org.rafterbook.stability.SlowMode;
import org.rafterbook.stability.TrimAnswer;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.KnownZero;
import org.rafterbook.work.Looked;
import org.rafterbook.work.Surroundings;

/** What a margin and its incidences mean: the rows under the settings, each of one version. */
final class Means {

    /** One row: name with unit, and the figure. */
    record Row(String name, String value) {}

    private final QuantityFormat format;
    private final Looked looked;
    private final Surroundings in;
    private final List<Row> rows = new ArrayList<>();

    private Means(Looked looked, Surroundings in, QuantityFormat format) {
        this.format = format;
        this.looked = looked;
        this.in = in;
    }

    /**
     * The rows of a version; two versions of a model have the same names in the same order unless their surfaces differ.
     *
     * @param ownFormulaM neutral point by the flyer's own formula, null where none was typed
     */
    static List<Row> of(Looked looked, Surroundings in, @Nullable Double ownFormulaM, QuantityFormat format) {
        Means means = new Means(looked, in, format);
        means.follow();
        means.trim();
        means.neutralPoint(ownFormulaM);
        means.geometry();
        return List.copyOf(means.rows);
    }

    private void add(String name, String value) {
        rows.add(new Row(name, value));
    }

    /** Angles and distances between surfaces: they follow from settings and are none themselves. */
    private void follow() {
        Airframe airframe = looked.airframe();
        if (airframe == null) {
            return;
        }
        WingGeometry wings = WingGeometry.of(airframe);
        for (Surface wing : wings.wings()) {
            Double decalage = wings.decalageRad(wing);
            if (decalage != null) {
                String of = wings.wings().size() > 1 ? "Decalage of " + wing.name() + ", °" : "Decalage, °";
                add(of, BenchWords.number(Math.toDegrees(decalage), 2));
            }
        }
        Double stagger = wings.staggerM();
        Double gap = wings.gapM();
        if (stagger != null && gap != null && wings.meanChordM() > 0) {
            add("Stagger", format.text(Quantity.LENGTH, stagger));
            add("Gap", format.text(Quantity.LENGTH, gap));
            add("Gap, chords", BenchWords.number(gap / wings.meanChordM(), 2));
        }
    }

    private void trim() {
        TrimAnswer trim = looked.trim();
        boolean glides = trim == null || trim.caution() == null;
        add(
                "Hands-off speed, " + format.unitOf(Quantity.SPEED),
                glides ? format.number(Quantity.SPEED, trim == null ? null : trim.speed()) : "no glide");
        add("Lift coefficient there", BenchWords.number(trim == null ? null : trim.liftCoefficient(), 2));
        if (trim == null) {
            return;
        }
        if (in.propeller() != null) {
            add(
                    "Neutral by propeller, " + format.unitOf(Quantity.LENGTH),
                    BenchWords.signedLength(format, trim.propellerShiftM()));
            add("Margin with it, %", BenchWords.number(trim.margin() * 100, 1));
        }
        for (TrimAnswer.Touchiness touch : trim.touchiness()) {
            Double share = touch.speedShare();
            add("½° on " + touch.name() + ", speed %", share == null ? "–" : BenchWords.signed(share * 100, 1));
        }
        SlowMode mode = trim.slowMode();
        if (mode != null) {
            boolean never = Math.abs(mode.ratePerS()) < 0.005;
            add(
                    "An upset " + (mode.grows() ? "doubles" : "halves") + " in, s",
                    never ? "never" : QuantityFormat.rounded(mode.seconds(), 1));
        }
        for (TrimAnswer.OfSurface surface : trim.surfaces()) {
            add("Lift of " + surface.name() + ", %", QuantityFormat.rounded(surface.share() * 100, 0));
        }
        for (TrimAnswer.OfSurface surface : trim.surfaces()) {
            add(
                    "Angle left to " + surface.name() + ", °",
                    BenchWords.number(Math.toDegrees(surface.effectiveAngleRad()), 1));
        }
        TrimAnswer.Circle circle = trim.circle();
        if (circle != null) {
            add(
                    "Tail, circle of " + format.text(Quantity.HEIGHT, in.circleRadiusM()) + ", °",
                    BenchWords.signed(Math.toDegrees(circle.tailAngleRad()), 2));
        }
    }

    private void neutralPoint(@Nullable Double ownFormulaM) {
        Double neutral = looked.margin().neutralPointM();
        add("Neutral point", format.text(Quantity.LENGTH, neutral));
        KnownZero zero = looked.margin().zero();
        if (zero != null && neutral != null) {
            add(
                    "of that zero by " + zero.version() + ", " + format.unitOf(Quantity.LENGTH),
                    BenchWords.signedLength(format, zero.shiftM()));
        }
        Double closed = looked.margin().closedFormDifferenceM();
        add("Closed form, less that, " + format.unitOf(Quantity.LENGTH), BenchWords.signedLength(format, closed));
        if (ownFormulaM != null && neutral != null) {
            add(
                    "Own formula, less that, " + format.unitOf(Quantity.LENGTH),
                    BenchWords.signedLength(format, ownFormulaM - neutral));
        }
        add("Balance point", format.text(Quantity.LENGTH, looked.margin().balanceM()));
    }

    private void geometry() {
        Airframe airframe = looked.airframe();
        if (airframe == null) {
            return;
        }
        WingGeometry wings = WingGeometry.of(airframe);
        add("Mean chord", format.text(Quantity.LENGTH, wings.meanChordM()));
        add(
                wings.wings().size() > 1 ? "Longer span² / both areas" : "Aspect ratio, span²/area",
                BenchWords.number(wings.aspectRatio(), 2));
        Double volume = wings.tailVolume();
        if (volume != null) {
            add("Tail volume", BenchWords.number(volume, 2));
        }
    }
}
