package org.rafterbook.ui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;

/** While Alt is held: every key as an accent cap straddling the top edge of what it works on. */
final class CapsOverlay extends Pane {

    /** A target wider than this has its cap at the left, where its caption begins. */
    private static final double WIDE_EM = 21;

    private static final double LINE_EM = 1.6;

    CapsOverlay() {
        setMouseTransparent(true);
        setManaged(false);
        getStyleClass().add("caps-overlay");
    }

    void show(Keys here, Keys everywhere) {
        getChildren().clear();
        if (getParent() instanceof Region parent) {
            resizeRelocate(0, 0, parent.getWidth(), parent.getHeight());
        }
        List<Label> caps = new ArrayList<>();
        List<Bounds> places = new ArrayList<>();
        Stream.concat(here.actions().stream(), everywhere.actions().stream())
                .forEach(action -> action.targets().forEach(target -> {
                    if (action.enabledProperty().get() && inSight(target)) {
                        caps.add(cap(action));
                        places.add(sceneToLocal(target.localToScene(target.getBoundsInLocal())));
                    }
                }));
        getChildren().setAll(caps);
        applyCss();
        for (int i = 0; i < caps.size(); i++) {
            place(caps.get(i), places.get(i));
        }
    }

    void hide() {
        getChildren().clear();
    }

    private void place(Label cap, Bounds target) {
        double w = cap.prefWidth(-1);
        double h = cap.prefHeight(-1);
        double em = cap.getFont().getSize();
        double x = target.getWidth() > WIDE_EM * em ? target.getMinX() + em : target.getMaxX() - w - em * 0.6;
        // a target as low as a line of text is a key's own place: the cap lies over it
        boolean line = target.getHeight() < LINE_EM * em;
        double y = line ? target.getCenterY() - h / 2 : target.getMinY() - h / 2;
        cap.resizeRelocate(
                Math.max(2, Math.min(x, getWidth() - w - 2)), Math.max(2, Math.min(y, getHeight() - h)), w, h);
    }

    private static Label cap(Action action) {
        Label cap = new Label(action.key());
        cap.getStyleClass().add("alt-cap");
        return cap;
    }

    private static boolean inSight(Node node) {
        if (node.getScene() == null || node.getLayoutBounds().isEmpty()) {
            return false;
        }
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }
}
