package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.kit.FittingRow;
import org.rafterbook.ui.kit.KeyCap;
import org.rafterbook.ui.kit.Lay;

/** Captions beside each other, each with its key; the content of one of them stands below. */
final class Faces extends VBox {

    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final FittingRow heads = new FittingRow();
    private final StackPane contents = new StackPane();
    private final List<Action> actions = new ArrayList<>();

    Faces() {
        getStyleClass().addAll("section", "faces");
        heads.getStyleClass().add("face-heads");
        contents.setMinSize(0, 0);
        contents.setAlignment(Pos.TOP_LEFT);
        setMinSize(0, 0);
        getChildren().addAll(heads, Lay.grow(contents));
    }

    /** Adds a face; its action should call {@link #bring} with the content. */
    Faces face(Action action, Node content) {
        Label caption = new Label();
        caption.textProperty().bind(action.labelProperty());
        HBox head = Lay.row(4, caption, new KeyCap(action.key()));
        head.getStyleClass().add("face-head");
        head.setMinWidth(USE_PREF_SIZE);
        head.setAccessibleRole(AccessibleRole.TAB_ITEM);
        head.accessibleTextProperty().bind(action.labelProperty());
        head.setOnMouseClicked(event -> action.run());
        action.at(head);
        actions.add(action);
        heads.getChildren().add(head);
        contents.getChildren().add(content);
        bring(contents.getChildren().get(0));
        return this;
    }

    /** Brings a content to the front. */
    void bring(Node content) {
        for (int i = 0; i < contents.getChildren().size(); i++) {
            boolean front = contents.getChildren().get(i) == content;
            contents.getChildren().get(i).setVisible(front);
            heads.getChildren().get(i).pseudoClassStateChanged(CHOSEN, front);
        }
    }

    /** What rolls in the content in front, for the arrow and page keys; null where nothing does. */
    @Nullable
    Node rolling() {
        return contents.getChildren().stream()
                .filter(Node::isVisible)
                .flatMap(content -> Stream.of(".scroll-pane", ".table-view", ".list-view")
                        .map(content::lookup)
                        .filter(Objects::nonNull))
                .filter(Faces::isShown)
                .findFirst()
                .orElse(null);
    }

    private static boolean isShown(Node node) {
        for (Node up = node; up != null; up = up.getParent()) {
            if (!up.isVisible()) {
                return false;
            }
        }
        return true;
    }

    /** Whether a content stands in front. */
    boolean isInFront(Node content) {
        return content.isVisible();
    }

    /** Shows the captions alone. */
    void fold(boolean folded) {
        Lay.show(contents, !folded);
        setMinHeight(folded ? USE_PREF_SIZE : 0);
    }
}
