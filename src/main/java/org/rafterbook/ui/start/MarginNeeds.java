package org.rafterbook.ui.start;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;

/** What the stability margin needs, to be given whenever the flyer likes. */
final class MarginNeeds {

    private MarginNeeds() {}

    static Sheet sheet() {
        Sheet sheet = new Sheet();
        sheet.section("What the margin needs, whenever you like", "");
        sheet.add(Lay.grow(new DashedAirframe()));
        sheet.section(
                numbered("1", "Span and chord of the wing and of the tailplane, in mm."),
                numbered("2", "Where each sits along the motor stick."),
                numbered("3", "Where the model balances with the motor on. Rest it on an edge and measure."),
                told("With these three, the stability margin is shown at once, with how far to trust it. Flights are"
                        + " timed without them."),
                told("Everything is kept on this machine, in one file."));
        sheet.setMinWidth(0);
        return sheet;
    }

    private static Node numbered(String number, String text) {
        return line(Lay.styled(new Label(number), "numbered"), text);
    }

    private static Node told(String text) {
        return line(Lay.styled(new Label("✓"), "good-tick", "numbered"), text);
    }

    private static Node line(Label sign, String text) {
        sign.setMinWidth(Region.USE_PREF_SIZE);
        Label words = Words.prose(text);
        words.setMinHeight(Region.USE_PREF_SIZE);
        HBox line = Lay.row(8, sign, Lay.grow(words));
        line.setAlignment(Pos.TOP_LEFT);
        return line;
    }
}
