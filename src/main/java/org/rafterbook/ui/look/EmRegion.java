package org.rafterbook.ui.look;

import java.util.ArrayList;
import java.util.List;
import javafx.css.CssMetaData;
import javafx.css.FontCssMetaData;
import javafx.css.SimpleStyleableObjectProperty;
import javafx.css.Styleable;
import javafx.css.StyleableObjectProperty;
import javafx.css.StyleableProperty;
import javafx.css.converter.EnumConverter;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;

/** A region that learns from the stylesheets how many pixels one em has and which theme is worn. */
public abstract class EmRegion extends Region {

    private static final CssMetaData<EmRegion, Font> FONT = new FontCssMetaData<>("-fx-font", Font.getDefault()) {
        @Override
        public boolean isSettable(EmRegion region) {
            return !region.font.isBound();
        }

        @Override
        public StyleableProperty<Font> getStyleableProperty(EmRegion region) {
            return region.font;
        }
    };

    private static final CssMetaData<EmRegion, Theme> THEME =
            new CssMetaData<>("-rb-theme", new EnumConverter<>(Theme.class), Theme.LIGHT) {
                @Override
                public boolean isSettable(EmRegion region) {
                    return !region.theme.isBound();
                }

                @Override
                public StyleableProperty<Theme> getStyleableProperty(EmRegion region) {
                    return region.theme;
                }
            };

    private static final List<CssMetaData<? extends Styleable, ?>> META = meta();

    private final StyleableObjectProperty<Font> font =
            new SimpleStyleableObjectProperty<>(FONT, this, "font", Font.getDefault()) {
                @Override
                protected void invalidated() {
                    get();
                    restyled();
                }
            };
    private final StyleableObjectProperty<Theme> theme =
            new SimpleStyleableObjectProperty<>(THEME, this, "theme", Theme.LIGHT) {
                @Override
                protected void invalidated() {
                    get();
                    restyled();
                }
            };

    private static List<CssMetaData<? extends Styleable, ?>> meta() {
        List<CssMetaData<? extends Styleable, ?>> all = new ArrayList<>(Region.getClassCssMetaData());
        all.add(FONT);
        all.add(THEME);
        return List.copyOf(all);
    }

    protected EmRegion() {
        getStyleClass().add("em-region");
    }

    /** Called when theme or text size have changed; asks for a new layout. */
    protected void restyled() {
        requestLayout();
    }

    /** Pixels of one em here. */
    public final double em() {
        return font.get().getSize();
    }

    public final String fontFamily() {
        return font.get().getFamily();
    }

    /** The theme worn here. */
    public final Theme theme() {
        return theme.get();
    }

    @Override
    public final List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return META;
    }
}
