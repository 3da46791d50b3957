package org.rafterbook.ui.kit;

import javafx.scene.control.Label;

/** A key as drawn on its cap; never narrower than it is high and never cut off. */
public final class KeyCap extends Label {

    private static final double LEAST_EM = 1.6;

    public KeyCap(String key) {
        super(key);
        getStyleClass().add("key-cap");
        setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    }

    @Override
    protected double computePrefWidth(double height) {
        return Math.max(super.computePrefWidth(height), LEAST_EM * getFont().getSize());
    }
}
