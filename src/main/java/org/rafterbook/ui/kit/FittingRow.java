package org.rafterbook.ui.kit;

import java.util.List;
import javafx.geometry.HPos;
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
        return width(getManagedChildren()) + snappedLeftInset() + snappedRightInset();
    }

    private double width(List<Node> nodes) {
        double width = 0;
        for (Node node : nodes) {
            width += node.prefWidth(-1) + getSpacing();
        }
        return Math.max(0, width - getSpacing());
    }

    @Override
    protected void layoutChildren() {
        List<Node> nodes = List.copyOf(getManagedChildren());
        if (nodes.isEmpty()) {
            return;
        }
        double room = getWidth() - snappedLeftInset() - snappedRightInset();
        Node last = nodes.get(nodes.size() - 1);
        int fitting = nodes.size() - 1;
        while (fitting > 0 && width(nodes.subList(0, fitting)) + getSpacing() + last.prefWidth(-1) > room + 0.5) {
            fitting--;
        }
        double used = width(nodes.subList(0, fitting)) + (fitting > 0 ? getSpacing() : 0) + last.prefWidth(-1);
        double x = snappedLeftInset() + (getAlignment().getHpos() == HPos.RIGHT ? Math.max(0, room - used) : 0);
        for (int i = 0; i < nodes.size(); i++) {
            Node node = nodes.get(i);
            boolean shown = i < fitting || node == last;
            node.setVisible(shown);
            if (shown) {
                double width = node.prefWidth(-1);
                double height = node.prefHeight(width);
                node.resizeRelocate(snapPositionX(x), snapPositionY((getHeight() - height) / 2), width, height);
                x += width + getSpacing();
            }
        }
    }
}
