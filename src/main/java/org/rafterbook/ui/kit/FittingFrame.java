package org.rafterbook.ui.kit;

import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.rafterbook.ui.look.EmRegion;

/** Holds a place's content and tells how much room it has, in em, so that it can be fitted. */
public final class FittingFrame extends StackPane {

    /** Fits the content to the room. */
    public interface Fold {
        void to(double widthEm, double heightEm, double emPx);
    }

    /** Learns the text size. */
    private static final class Em extends EmRegion {}

    private final Em em = new Em();
    private final Fold fold;
    private double lastWidth = -1;
    private double lastHeight = -1;
    private double lastEm = -1;

    public FittingFrame(Fold fold) {
        this.fold = fold;
        em.setManaged(false);
        em.setVisible(false);
    }

    public void show(Node... content) {
        getChildren().setAll(content);
        getChildren().add(em);
    }

    @Override
    protected void layoutChildren() {
        double now = em.em();
        // the window's height tells, so that what is folded does not unfold itself
        double height = getScene() == null ? 0 : getScene().getHeight();
        if (height <= 0) {
            height = getHeight(); // the window is not laid out yet
        }
        if (now > 0 && (getWidth() != lastWidth || height != lastHeight || now != lastEm)) {
            lastWidth = getWidth();
            lastHeight = height;
            lastEm = now;
            fold.to(lastWidth / now, lastHeight / now, now);
        }
        super.layoutChildren();
    }
}
