package org.rafterbook.ui.start;

import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;

/** Stands in a place for the second in which the first logbook is being made. */
public final class WaitingPlace implements Place {

    private final ReadOnlyObjectWrapper<Keys> keys;
    private final VBox page = Lay.styled(Lay.column(0, Words.aside("The logbook is being made.")), "page");

    public WaitingPlace(Tools tools) {
        keys = new ReadOnlyObjectWrapper<>(tools.keys());
    }

    @Override
    public Node node() {
        return page;
    }

    @Override
    public ObservableValue<Keys> keys() {
        return keys.getReadOnlyProperty();
    }

    @Override
    public ObservableValue<String> subtitle() {
        return Place.always("");
    }
}
