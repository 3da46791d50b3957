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

    /** A flyer's own table with headings the program cannot know. */
    private static final String CLUB = """
            Datum;Flieger;Zeit;Kurbel;Anstellwinkel;Farbe;Ende;Remarks
            28.10.2025;Teasel;8:41;132;2,5;rot;sauber;steady all the way
            28.10.2025;Teasel;9:02;134;2,5;rot;sauber;
            4.11.2025;Teasel;8:47;134;3,0;rot;Balken;touched the beams at three minutes
            4.11.2025;Teasel;9:31;136;3,0;blau;sauber;
            """;

    private static final String READY = """
            model,date,time (min),turns,setting.pitch,setting.incidence,ending,notes
            Teasel,2025-10-28,8:41,1980,640,2.5,clean,steady all the way
            Teasel,2025-10-28,9:02,2010,640,2.5,clean,
            Teasel,2025-11-04,8:47,2010,660,2.5,touched,touched the beams at three minutes
            Teasel,2025-11-04,9:31,2040,660,3.0,clean,
            """;

    /** Readable all through, but one torque was written in another unit and one time in seconds. */
    private static final String DOUBTFUL = """
            model,date,time (min),turns,torque (N·mm),setting.pitch,ending
            Teasel,2025-10-28,8:41,1980,1.9,640,clean
            Teasel,2025-10-28,9:02,2010,1.9,640,clean
            Teasel,2025-11-04,8:47,2010,1.95,660,clean
            Teasel,2025-11-04,9:31,2040,19.5,660,clean
            Teasel,2025-11-04,9:12,2030,1.9,660,clean
            Teasel,2025-11-04,545,2030,1.9,660,clean
            """;

    private static final String WRONG = """
            model,date,time,turns,backed off,setting.pitch,ending
            Teasel,2025-10-28,8:41,1980,110,640,clean
            Teasel,2025-10-32,9:02,2010,110,640,clean
            Teasel,2025-11-04,8:47,2010,3100,660,bumped
            ,2025-11-04,9:31,2040,110,660,clean
            """;

    private WindowScreens() {}

    private static Parent imports(Tools tools, String table) {
        try {
            Path folder = folder();
            Path file = Files.writeString(folder.getParent().resolve("club.csv"), table);
            Tools answered = new Tools(
                    tools.errors(),
                    tools.look(),
                    tools.background(),
                    new ChosenFiles().then(file),
                    tools.kept(),
                    tools.showing());
            return window(answered, folder, null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Screen> all() {
        return List.of(
                screen("start-first", scene -> {}),
                screen("start-name", WindowScreens::name),
                new Screen("start-refused", WindowScreens::refused),
                new Screen("import-open", tools -> imports(tools, CLUB), scene -> {
                    Fx.key(scene, KeyCode.DIGIT4, "4");
                }),
                new Screen("import-ready", tools -> imports(tools, READY), scene -> {
                    Fx.key(scene, KeyCode.DIGIT4, "4");
                }),
                new Screen("import-doubtful", tools -> imports(tools, DOUBTFUL), scene -> {
                    Fx.key(scene, KeyCode.DIGIT4, "4");
                }),
                new Screen("import-wrong", tools -> imports(tools, WRONG), scene -> {
                    Fx.key(scene, KeyCode.DIGIT4, "4");
                }),
                new Screen("import-done", tools -> imports(tools, READY), scene -> {
                    Fx.key(scene, KeyCode.DIGIT4, "4");
                    Fx.key(scene, KeyCode.ENTER, "\r");
                }),
                screen("season-demo", scene -> Fx.key(scene, KeyCode.DIGIT3, "3")),
                screen("season-flights", scene -> {
                    Fx.key(scene, KeyCode.DIGIT3, "3");
                    Fx.key(scene, KeyCode.L, "l");
                }),
                screen("season-versions", scene -> {
                    Fx.key(scene, KeyCode.DIGIT3, "3");
                    Fx.key(scene, KeyCode.V, "v");
                }),
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
            return Files.createDirectories(Files.createTempDirectory("window").resolve("Aldous"))
                    .resolve("Documents");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Parent window(Tools tools, Path folder, UserError refused) {
        Shelf shelf = new Shelf(folder.resolve("flights.rafterbook"), Clock.systemDefaultZone());
        OpenWindow window = new OpenWindow(
                shelf, tools, () -> FxBackground.onTheSpot(tools.errors()), title -> {}, new Outset(null, refused));
        window.makeOwn();
        return window.shell();
    }
}
