package org.rafterbook.ui.kit;

import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.rafterbook.units.ClockTime;

/** The stopwatch's readout: minutes and seconds large, tenths at half the size. */
public final class WatchFace extends HBox {

    /** How large it is. */
    public enum Size {
        /** The watch that is picked: 176 px at 100 %. */
        PICKED,
        /** After landing: 100 px. */
        LANDING,
        /** A watch beside the picked one: 92 px. */
        SECOND
    }

    private final Label seconds = new Label("0:00");
    private final Label tenths = new Label(".0");
    private String shown = "";

    public WatchFace(Size size) {
        getStyleClass().addAll("watch", size.name().toLowerCase(Locale.ROOT));
        seconds.getStyleClass().add("seconds");
        tenths.getStyleClass().add("tenths");
        seconds.setMinWidth(USE_PREF_SIZE);
        tenths.setMinWidth(USE_PREF_SIZE);
        setAlignment(Pos.BASELINE_LEFT);
        setAccessibleRole(AccessibleRole.TEXT);
        getChildren().addAll(seconds, tenths);
    }

    /** Shows a duration; cheap when it reads as before. */
    public void show(double durationS) {
        String text = ClockTime.tenths(durationS);
        if (!text.equals(shown)) {
            shown = text;
            int dot = text.lastIndexOf('.');
            String whole = text.substring(0, dot);
            if (!whole.equals(seconds.getText())) {
                seconds.setText(whole);
                setAccessibleText(whole);
            }
            tenths.setText(text.substring(dot));
        }
    }

    /** What it reads. */
    public String text() {
        return shown;
    }
}
