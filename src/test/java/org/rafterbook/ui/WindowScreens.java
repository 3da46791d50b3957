package org.rafterbook.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Shelf;

/** Pictures of the whole window: the first start, a logbook that is refused, the demo season. */
final class WindowScreens {

    private WindowScreens() {}

    static List<Screen> all() {
        return List.of(
                screen("start-first", scene -> {}),
                screen("start-name", WindowScreens::name),
                new Screen("start-refused", WindowScreens::refused),
                screen("season-demo", scene -> Fx.key(scene, KeyCode.DIGIT3, "3")),
                screen("motorbox-demo", scene -> {
                    Fx.key(scene, KeyCode.DIGIT3, "3");
                    Fx.key(scene, KeyCode.F3, "");
                }));
    }

    private static void name(Scene scene) {
        Fx.key(scene, KeyCode.ENTER, "\r");
        "Teasel".chars().forEach(c -> Fx.key(scene, KeyCode.UNDEFINED, String.valueOf((char) c)));
    }

    private static Screen screen(String name, Screen.After after) {
        return new Screen(name, tools -> window(tools, folder(), null), after);
    }

    private static Parent refused(Tools tools) {
        Path folder = Path.of("/home/aldous/Documents/Rafterbook");
        return window(
                tools,
                folder,
                UserError.couldNot(
                        "The logbook " + folder.resolve("flights.rafterbook")
                                + " is open in another window; close that one first, or only read.",
                        null));
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("window").resolve("Documents");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Parent window(Tools tools, Path folder, UserError refused) {
        Shelf shelf = new Shelf(folder.resolve("flights.rafterbook"), Clock.systemDefaultZone());
        OpenWindow window =
                new OpenWindow(shelf, tools, () -> FxBackground.onTheSpot(tools.errors()), title -> {}, null, refused);
        window.makeOwn();
        return window.shell();
    }
}
