package org.rafterbook.ui.bench;

import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Button;
import org.rafterbook.airframe.WingGeometry;
import org.rafterbook.ui.kit.Figure;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Looked;
import org.rafterbook.work.MarginAnswer;
import org.rafterbook.work.MarginWords;
import org.rafterbook.work.Rigged;

/** What stands in the head while the Bench is on show: which version, and three figures of it. */
final class BenchHead {

    private final QuantityFormat format;
    private final Button another;

    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ObservableList<Node> figures = FXCollections.observableArrayList();

    /**
     * @param another adds another model
     */
    BenchHead(QuantityFormat format, Button another) {
        this.format = format;
        this.another = another;
    }

    ReadOnlyStringProperty subtitle() {
        return subtitle.getReadOnlyProperty();
    }

    ObservableList<Node> figures() {
        return figures;
    }

    /** Shows nothing: there is no model. */
    void clear() {
        subtitle.set("");
        figures.clear();
    }

    void show(BenchDesk.Bench bench, Looked looked) {
        subtitle.set(words(bench));
        MarginAnswer margin = looked.margin();
        Double area = margin.areaM2();
        boolean several = looked.airframe() != null
                && WingGeometry.of(looked.airframe()).wings().size() > 1;
        figures.setAll(
                new Figure("Ready to fly", BenchWords.grams(margin.massKg()) + " with motor").strong(),
                new Figure(several ? "Area of all wings" : "Wing area", format.text(Quantity.AREA, area)).strong(),
                new Figure("Neutral point by", MarginAnswer.LATTICE + trust(margin)).strong(),
                another);
    }

    private static String trust(MarginAnswer margin) {
        Double band = margin.band();
        if (margin.zero() != null) {
            return ", zero by " + margin.zero().version();
        }
        return band == null ? "" : ", " + MarginWords.band(band) + " %";
    }

    private static String words(BenchDesk.Bench bench) {
        Rigged shown = BenchModel.shown(bench);
        String what = shown.version().sketch() ? "sketch " : "version ";
        String build =
                bench.now().model().build() > 1 ? ", build " + shown.version().build() : "";
        return shown.model().name() + ", " + what + shown.name() + build
                + (shown.version().markedGood() ? ", well-behaved" : "")
                + (bench.showsNow() ? "" : "; rigged as " + bench.now().name());
    }
}
