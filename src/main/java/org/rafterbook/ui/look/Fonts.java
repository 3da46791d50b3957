package org.rafterbook.ui.look;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javafx.scene.text.Font;
import org.jspecify.annotations.Nullable;

/** The bundled type family, loaded before the first stage; the system's DejaVu Sans stands in where it cannot be. */
public final class Fonts {

    private static final String FAMILY = "B612";
    private static final String STAND_IN = "DejaVu Sans";
    private static @Nullable String family;

    private Fonts() {}

    /** The family to use; loads it at the first call. */
    public static synchronized String family() {
        if (family == null) {
            family = load("B612-Regular.otf") && load("B612-Bold.otf") ? FAMILY : STAND_IN;
        }
        return family;
    }

    static boolean standIn() {
        return family().equals(STAND_IN);
    }

    private static boolean load(String file) {
        try (InputStream in = Fonts.class.getResourceAsStream("fonts/" + file)) {
            return in != null && Font.loadFont(in, TextSize.EM_PX) != null;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
