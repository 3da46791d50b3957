package org.rafterbook.ui.bench;

import java.util.List;
import javafx.scene.Cursor;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Surface;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.Rule;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.look.TextSize;

/** The drawing below its millimetre rule; a pointer slides and turns surfaces in it. */
final class AirframePane extends VBox {

    /** What the pointer does to a surface. */
    interface Mover {

        /** The pointer takes a surface to turn it or to slide it. */
        void take(Surface surface, boolean turns);

        /** It was moved so far since it was taken: along the stick in m, or leading edge up in rad. */
        void moved(double by);
    }

    private static final double SIDE = 26;
    private static final double UNIT_SIDE = 46;
    private static final double LEAST_PX = 3;
    private static final Airframe NOTHING = new Airframe(List.of(), List.of(), null, null);

    private final Rule rule = new Rule("Millimetres aft of the propeller's bearing", Graduation.numbers())
            .leftSide(UNIT_SIDE)
            .unitFirst("mm");
    private final AirframeDrawing drawing = new AirframeDrawing();
    private final Mover mover;
    private double zoom = 1;
    private double fromX;
    private double fromY;
    private AirframeDrawing.@Nullable Hit taken;
    private boolean turning;
    private boolean moving;

    AirframePane(Mover mover) {
        this.mover = mover;
        getStyleClass().add("airframe-pane");
        getChildren().addAll(rule, Lay.grow(drawing));
        setMinSize(0, 0);
        drawing.setOnMousePressed(this::pressed);
        drawing.setOnMouseDragged(this::dragged);
        drawing.setOnMouseReleased(event -> taken = null);
        drawing.setOnMouseMoved(event ->
                drawing.setCursor(drawing.at(event.getX(), event.getY()) == null ? Cursor.DEFAULT : Cursor.MOVE));
    }

    void show(AirframeDrawing.Subject subject) {
        drawing.show(subject);
        requestLayout();
    }

    AirframeDrawing drawing() {
        return drawing;
    }

    /** Closer for a factor above 1, down to the whole airframe in sight. */
    void zoom(double factor) {
        zoom = Math.max(1, Math.min(16, zoom * factor));
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        Airframe airframe = drawing.subject().airframe();
        double px = drawing.em() / TextSize.EM_PX;
        double width = getWidth() - (SIDE + UNIT_SIDE) * px;
        double height = getHeight() - rule.prefHeight(-1);
        if (width > LEAST_PX && height > LEAST_PX) {
            AirframeFit fit = AirframeFit.of(airframe == null ? NOTHING : airframe, width, height, px, zoom);
            rule.show(fit.lowMm(), fit.highMm(), List.of());
            super.layoutChildren();
            rule.layout();
            drawing.lay(fit, rule.scaleProperty().get());
        } else {
            super.layoutChildren();
        }
    }

    private void pressed(MouseEvent event) {
        taken = drawing.at(event.getX(), event.getY());
        fromX = event.getX();
        fromY = event.getY();
        moving = false;
    }

    /** From the side an upward or downward drag turns, a level one slides; from above every drag slides. */
    private void dragged(MouseEvent event) {
        AirframeDrawing.Hit hit = taken;
        if (hit == null) {
            return;
        }
        double across = event.getX() - fromX;
        double up = fromY - event.getY();
        if (!moving) {
            if (Math.hypot(across, up) < LEAST_PX) {
                return;
            }
            moving = true;
            turning = hit.fromSide() && Math.abs(up) > Math.abs(across);
            mover.take(hit.surface(), turning);
        }
        double mm = 1 / drawing.pxPerMm();
        double chord = hit.surface().ribs().get(0).chordM() * 1000;
        boolean ahead = drawing.mmAt(fromX) < hit.surface().edgeAftM() * 1000 + chord / 2;
        mover.moved(turning ? Math.atan2((ahead ? up : -up) * mm, chord / 2) : across * mm / 1000);
    }
}
