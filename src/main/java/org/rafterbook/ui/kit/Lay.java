package org.rafterbook.ui.kit;

import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * Rows and columns with the gaps of the design: 0, 4, 8, 12, 16, 24 or 32 px at 100 %, kept in em by the stylesheet. A
 * node's inner distance is a style class of the same kind, {@code pad-12}.
 */
public final class Lay {

    private Lay() {}

    /** Nodes beside each other, on one base line where they are text. */
    public static HBox row(int gap, Node... nodes) {
        HBox row = new HBox(nodes);
        row.getStyleClass().add("gap-" + gap);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** Nodes beside each other whose texts share a base line. */
    public static HBox baseline(int gap, Node... nodes) {
        HBox row = row(gap, nodes);
        row.setAlignment(Pos.BASELINE_LEFT);
        return row;
    }

    /** Nodes below each other. */
    public static VBox column(int gap, Node... nodes) {
        VBox column = new VBox(nodes);
        column.getStyleClass().add("gap-" + gap);
        column.setFillWidth(true);
        return column;
    }

    /** Lets the node take what room is left in its row or column. */
    public static <N extends Node> N grow(N node) {
        HBox.setHgrow(node, Priority.ALWAYS);
        VBox.setVgrow(node, Priority.ALWAYS);
        if (node instanceof Region region) {
            region.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        }
        return node;
    }

    /** Room that pushes its neighbours apart. */
    public static Region space() {
        return grow(new Region());
    }

    /** A hairline across a column. */
    public static Region hairline() {
        Region line = new Region();
        line.getStyleClass().add("hairline");
        return line;
    }

    /** Nodes beside each other, all of one width; what is narrower than its content wraps. */
    public static HBox even(int gap, Node... nodes) {
        HBox row = row(gap, nodes);
        row.setAlignment(Pos.TOP_LEFT);
        for (Node node : nodes) {
            HBox.setHgrow(node, Priority.ALWAYS);
            if (node instanceof Region region) {
                region.setMinWidth(0);
                region.setPrefWidth(1);
                region.setMaxWidth(Double.MAX_VALUE);
            }
        }
        return row;
    }

    /** Lets the middle of a sheet roll where the room is too low, so that what stands above and below stays in sight. */
    public static ScrollPane rolling(Node middle) {
        ScrollPane rolling = new RollingPane(middle);
        rolling.setFitToWidth(true);
        rolling.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        rolling.setFocusTraversable(false);
        rolling.setMinSize(0, 0);
        rolling.sceneProperty().flatMap(Scene::focusOwnerProperty).subscribe(focus -> bringIntoSight(rolling, focus));
        return grow(rolling);
    }

    /** Rolls so far that a field which has got the cursor by its key is in sight, its name and message too. */
    private static void bringIntoSight(ScrollPane rolling, @Nullable Node focus) {
        Node shown = focus;
        for (Node at = focus; at != null && at != rolling.getContent(); at = at.getParent()) {
            shown = at instanceof Field<?> ? at : shown;
            if (at.getParent() == null) {
                return; // the focus is elsewhere
            }
        }
        double all = rolling.getContent().getLayoutBounds().getHeight();
        double window = rolling.getViewportBounds().getHeight();
        if (shown != null && focus != rolling.getContent() && all > window && window > 0) {
            Bounds place = rolling.getContent().sceneToLocal(shown.localToScene(shown.getLayoutBounds()));
            double top = rolling.getVvalue() * (all - window);
            double wanted = Math.min(place.getMinY(), Math.max(top, place.getMaxY() - window));
            rolling.setVvalue(Math.max(0, wanted) / (all - window));
        }
    }

    /** Adds style classes and gives the node back. */
    public static <N extends Node> N styled(N node, String... classes) {
        node.getStyleClass().addAll(classes);
        return node;
    }

    /** Shows or hides the node together with its room. */
    public static void show(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    /** Whether neither the node nor anything it stands in is hidden. */
    public static boolean isInSight(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }
}
