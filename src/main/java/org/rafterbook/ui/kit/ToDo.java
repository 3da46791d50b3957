package org.rafterbook.ui.kit;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.look.Token;

/** Stands in the place of a value not written down yet: a dashed ring and the word for adding it. */
public final class ToDo extends HBox {

    /** A to-do that is only told. */
    public ToDo(String word) {
        getStyleClass().add("to-do");
        setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(new Ring(), Words.body(word));
        setAccessibleText(word);
    }

    /** A to-do that can be done here. */
    public ToDo(Action add) {
        this(add.label());
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setOnMouseClicked(event -> add.run());
        setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                add.run();
                event.consume();
            }
        });
    }

    private static final class Ring extends Drawing {

        private Ring() {
            wish(0.96, 0.96);
            setMouseTransparent(true);
        }

        @Override
        protected void paint(Pen pen) {
            double size = pen.px(9);
            pen.stroke(Token.ACCENT, 1.4).dashed(2, 1.6);
            pen.canvas().strokeOval((pen.width() - size) / 2, (pen.height() - size) / 2, size, size);
        }
    }
}
