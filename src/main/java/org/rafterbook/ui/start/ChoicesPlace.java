package org.rafterbook.ui.start;

import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;

/** The flyer's name, units, theme and text size, to be changed at any time; each is kept as it is chosen. */
public final class ChoicesPlace implements Place {

    private final ReadOnlyObjectWrapper<Keys> keys;
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("Name, units, look");
    private final ChoicesForm form;
    private final VBox page;

    /**
     * @param leave goes back to where the flyer came from
     */
    public ChoicesPlace(Tools tools, Choices choices, Runnable leave) {
        form = new ChoicesForm(choices);
        Keys own = tools.keys();
        own.on("Esc", "Back", leave);
        own.on("Enter", "Back", leave);
        own.hint("Tab", "from part to part");
        own.hint("Esc", "back");
        keys = new ReadOnlyObjectWrapper<>(own);
        Sheet sheet = new Sheet();
        sheet.add(form);
        page = Lay.styled(Lay.column(0, sheet), "page");
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
    public ObservableValue<String> title() {
        return title.getReadOnlyProperty();
    }

    @Override
    public ObservableValue<String> subtitle() {
        return Place.always("kept in this logbook");
    }

    @Override
    public void shown() {
        form.edit();
    }
}
