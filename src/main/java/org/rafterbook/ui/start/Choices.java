package org.rafterbook.ui.start;

import java.util.Locale;
import java.util.function.BiConsumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.look.Look;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Theme;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.ScreenChoices;
import org.rafterbook.work.ScreenChoices.Name;

/** What the flyer chose for screens and reports; each change is kept at once, wherever it is made. */
public final class Choices {

    private final Look look;
    private final BiConsumer<Name, String> keeper;
    private final ObjectProperty<DisplayUnits> units = new SimpleObjectProperty<>(this, "units", DisplayUnits.METRIC);
    private final StringProperty flyer = new SimpleStringProperty(this, "flyer", "");
    private boolean wearing;

    /**
     * @param keeper keeps a choice in the logbook that is open
     */
    public Choices(Look look, BiConsumer<Name, String> keeper) {
        this.look = look;
        this.keeper = keeper;
        look.themeProperty().subscribe((before, now) -> keep(Name.THEME, now.name()));
        look.textSizeProperty().subscribe((before, now) -> keep(Name.TEXT_SIZE, now.name()));
        look.capsShownProperty().subscribe((before, now) -> keep(Name.KEY_CAPS, String.valueOf(now)));
        units.subscribe((before, now) -> keep(Name.UNITS, now.name()));
        flyer.subscribe((before, now) -> keep(Name.FLYER, now));
    }

    private void keep(Name name, String value) {
        if (!wearing) {
            keeper.accept(name, value);
        }
    }

    public Look look() {
        return look;
    }

    public ObjectProperty<DisplayUnits> unitsProperty() {
        return units;
    }

    /** The flyer's name, for the report; may stay empty. */
    public StringProperty flyerProperty() {
        return flyer;
    }

    /** Takes over all that a logbook remembers, as at the start. */
    public void wear(ScreenChoices kept) {
        wearing = true;
        Theme theme = named(Theme.values(), kept.theme());
        TextSize size = named(TextSize.values(), kept.textSize());
        if (theme != null) {
            look.themeProperty().set(theme);
        }
        if (size != null) {
            look.textSizeProperty().set(size);
        }
        if (kept.keyCaps() != null) {
            look.capsShownProperty().set(kept.keyCaps());
        }
        wearing = false;
        take(kept);
    }

    /** Takes over what belongs to the logbook; the look is the flyer's and stays as it is. */
    public void take(ScreenChoices kept) {
        wearing = true;
        if (kept.units() != null) {
            units.set(kept.units());
        }
        flyer.set(kept.flyer() == null ? "" : kept.flyer());
        wearing = false;
    }

    private static <E extends Enum<E>> @Nullable E named(E[] values, @Nullable String name) {
        for (E value : values) {
            if (name != null && value.name().equals(name.toUpperCase(Locale.ROOT))) {
                return value;
            }
        }
        return null;
    }
}
