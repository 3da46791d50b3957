package org.rafterbook.ui.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import org.rafterbook.ui.action.Action;

/**
 * Parts below each other of which some fold to a one-line summary with its key where the height does not suffice, in the
 * order of their rank. A part without a rank never folds. Opening a folded part folds others instead, if it must.
 */
public final class FoldingColumn extends Pane {

    private static final int NEVER = Integer.MAX_VALUE;

    /** One part and what stands for it when folded. */
    private static final class Part {

        private final Node whole;
        private final Node folded;
        private final int rank;
        private boolean grows;
        private int wished;

        private Part(Node whole, Node folded, int rank) {
            this.whole = whole;
            this.folded = folded;
            this.rank = rank;
        }
    }

    private final List<Part> parts = new ArrayList<>();
    private int wishes;

    /** Adds a part that never folds. */
    public FoldingColumn add(Node node) {
        return add(new Part(node, node, NEVER));
    }

    /** Adds a part that never folds and takes what height is left, or gives way where even folding does not suffice. */
    public FoldingColumn addGrowing(Node node) {
        add(node);
        parts.get(parts.size() - 1).grows = true;
        return this;
    }

    /**
     * Adds a part that can fold.
     *
     * @param rank 1 folds first
     * @param unfold its key and label; it should call {@link #unfold} with the node
     */
    public FoldingColumn add(Node node, int rank, Action unfold) {
        return add(new Part(node, line(unfold), rank));
    }

    /** The same with what is most worth knowing of the part while it is folded, where there is room for it. */
    public FoldingColumn add(Node node, int rank, Action unfold, ObservableValue<String> summary) {
        Button line = line(unfold);
        line.setMinWidth(USE_PREF_SIZE);
        Label says = Words.aside("");
        says.setMinWidth(0);
        says.textProperty().bind(summary);
        HBox folded = Lay.styled(Lay.row(8, line, says), "folded-line");
        return add(new Part(node, folded, rank));
    }

    private static Button line(Action unfold) {
        Button line = Buttons.secondary(unfold);
        line.getStyleClass().add("folded");
        line.setMaxWidth(Double.MAX_VALUE);
        return line;
    }

    private FoldingColumn add(Part part) {
        parts.add(part);
        getChildren().add(part.whole);
        if (part.folded != part.whole) {
            getChildren().add(part.folded);
        }
        requestLayout();
        return this;
    }

    /** Shows the part whole as long as there is any room for it, and at once, so that it can take the cursor. */
    public void unfold(Node node) {
        wishes++;
        parts.stream().filter(part -> part.whole == node).forEach(part -> part.wished = wishes);
        requestLayout();
        layout();
    }

    /** Whether the part is folded now. */
    public boolean isFolded(Node node) {
        return !node.isVisible();
    }

    @Override
    protected double computePrefHeight(double width) {
        return height(width, List.of());
    }

    @Override
    protected double computeMinHeight(double width) {
        return 0;
    }

    @Override
    protected double computePrefWidth(double height) {
        return parts.stream()
                .mapToDouble(part -> part.whole.prefWidth(-1))
                .max()
                .orElse(0);
    }

    private double height(double width, List<Part> foldedParts) {
        return parts.stream()
                .mapToDouble(part -> (foldedParts.contains(part) ? part.folded : part.whole).prefHeight(width))
                .sum();
    }

    @Override
    protected void layoutChildren() {
        Insets insets = getInsets();
        double width = getWidth() - insets.getLeft() - insets.getRight();
        double room = getHeight() - insets.getTop() - insets.getBottom();
        List<Part> foldedParts = new ArrayList<>();
        // what was asked for last folds last
        List<Part> order = parts.stream()
                .filter(part -> part.rank != NEVER)
                .sorted(Comparator.<Part>comparingInt(part -> part.wished).thenComparingInt(part -> part.rank))
                .toList();
        double gives = parts.stream()
                .filter(part -> part.grows)
                .mapToDouble(part -> part.whole.prefHeight(width) - part.whole.minHeight(width))
                .sum();
        for (Part part : order) {
            // what was asked for is shown as long as a growing part can give way
            double lacking = height(width, foldedParts) - (part.wished > 0 ? gives : 0);
            if (lacking <= room + 0.5) {
                break;
            }
            foldedParts.add(part);
        }
        // what folded first may fit again once something larger has folded; of those the one wanted most comes first
        for (int i = foldedParts.size() - 1; i >= 0; i--) {
            List<Part> fewer = new ArrayList<>(foldedParts);
            fewer.remove(i);
            if (height(width, fewer) <= room + 0.5) {
                foldedParts.remove(i);
            }
        }
        double spare = room - height(width, foldedParts);
        double y = insets.getTop();
        for (Part part : parts) {
            boolean isFolded = foldedParts.contains(part);
            Node shown = isFolded ? part.folded : part.whole;
            if (part.whole != part.folded) {
                part.whole.setVisible(!isFolded);
                part.folded.setVisible(isFolded);
            }
            double high = shown.prefHeight(width);
            if (part.grows) {
                high = Math.max(Math.min(high, shown.minHeight(width)), high + spare);
            }
            shown.resizeRelocate(insets.getLeft(), snapPositionY(y), width, snapSizeY(high));
            y += high;
        }
    }
}
