package org.rafterbook.ui.kit;

import java.util.regex.Pattern;
import javafx.scene.control.Label;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/** Texts in the roles of the design. */
public final class Words {

    private static final Pattern BEFORE_A_UNIT =
            Pattern.compile("(?<=±) (?=\\d)|(?<=\\d) (?=%|mm|cm|m\\b|g\\b|s\\b|N·mm)");

    private Words() {}

    /** The same text in which a line ends nowhere between a figure and its sign or unit. */
    public static String unbroken(String text) {
        return BEFORE_A_UNIT.matcher(text).replaceAll("\u00a0");
    }

    /** Plain text. */
    public static Label body(String text) {
        return label(text, "body");
    }

    /** The value or the verdict. */
    public static Label bold(String text) {
        return label(text, "bold");
    }

    /** Labels and prose beside a verdict (ink-2). */
    public static Label aside(String text) {
        return label(text, "aside");
    }

    /** Labels over fields and messages: small, ink-2. */
    public static Label small(String text) {
        return label(text, "small");
    }

    /** Hints and old values: small, ink-3. */
    public static Label hint(String text) {
        return label(text, "hint");
    }

    /** Head of a block. */
    public static Label caption(String text) {
        return label(text, "caption");
    }

    /** A time or count in a table. */
    public static Label figure(String text) {
        return label(text, "figure");
    }

    /** Name of a place or a model. */
    public static Label head(String text) {
        return label(text, "head");
    }

    /** A large figure; {@code size} 1, 2 or 3 stands for 2.25, 3.2 and 4.2 em. */
    public static Label readout(String text, int size) {
        return label(text, "readout-" + size);
    }

    /** What may be acted on, now, or the answer: in the accent. */
    public static Label accent(String text) {
        return label(text, "accent");
    }

    /** Several lines of running text. */
    public static Label prose(String text) {
        Label label = label(text, "aside");
        label.setWrapText(true);
        return label;
    }

    /** Running text with a bold lead. */
    public static TextFlow led(String lead, String rest) {
        Text first = new Text(lead + " ");
        first.getStyleClass().add("text-bold");
        Text second = new Text(rest);
        second.getStyleClass().add("text-aside");
        return new TextFlow(first, second);
    }

    private static Label label(String text, String role) {
        Label label = new Label(text);
        label.getStyleClass().add(role);
        return label;
    }
}
