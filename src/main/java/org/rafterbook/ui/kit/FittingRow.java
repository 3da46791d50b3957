package org.rafterbook.ui.kit;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.HBox;

/** A row that leaves out what does not fit, from the right, but never its last node. */
public final class FittingRow extends HBox {

    public FittingRow() {
        setMinWidth(0);
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computePrefWidth(double height) {
        double width = 0;
        for (Node node : getChildren()) {
            width += node.prefWidth(-1) + getSpacing();
        }
        return Math.max(0, width - getSpacing()) + snappedLeftInset() + snappedRightInset();
    }

    @Override
    protected void layoutChildren() {
        List<Node> nodes = List.copyOf(getChildren());
        if (nodes.isEmpty()) {
            return;
        }
        Node last = nodes.get(nodes.size() - 1);
        double room = getWidth() - snappedLeftInset() - snappedRightInset() - last.prefWidth(-1);
        double x = snappedLeftInset();
        boolean full = false;
        for (Node node : nodes) {
            double width = node.prefWidth(-1);
            full |= node != last && x - snappedLeftInset() + width + getSpacing() > room + 0.5;
            boolean shown = node == last || !full;
            node.setVisible(shown);
            if (shown) {
                double height = node.prefHeight(width);
                node.resizeRelocate(snapPositionX(x), snapPositionY((getHeight() - height) / 2), width, height);
                x += width + getSpacing();
            }
        }
    }
}
