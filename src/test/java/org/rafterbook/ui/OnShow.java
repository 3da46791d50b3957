package org.rafterbook.ui;

import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.kit.Lay;

/** What a scene shows in words. */
public final class OnShow {

    private OnShow() {}

    /** Every text in sight, what drawings say of themselves among them, one a line, with plain spaces. */
    public static String words(Scene scene) {
        StringBuilder all = new StringBuilder();
        for (Node node : scene.getRoot().lookupAll("*")) {
            String text = node instanceof Labeled label
                    ? label.getText()
                    : node instanceof Text written
                            ? written.getText()
                            : node instanceof Drawing drawn ? drawn.getAccessibleText() : null;
            if (text != null && Lay.isInSight(node)) {
                all.append(plain(text)).append('\n');
            }
        }
        return all.toString();
    }

    /** The text with plain spaces where a line must not end. */
    public static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
