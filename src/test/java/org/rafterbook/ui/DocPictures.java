package org.rafterbook.ui;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Theme;

/**
 * Takes the pictures of the pages in {@code docs/} from the same screens as {@link Snapshots}.
 *
 * <pre>
 * mvn -q -o test-compile exec:java -Dexec.classpathScope=test -Dmain.class=org.rafterbook.ui.DocPictures
 * </pre>
 *
 * The first argument is the folder, {@code docs/pictures} without one.
 */
public final class DocPictures {

    private static final int ROOM = 0;

    /**
     * A picture.
     *
     * @param screen name of the screen it is taken from
     * @param part style of the part shown, null for all of it
     * @param height how much of the part is shown from its top, 0 for all
     * @param theme light but for pictures that show another
     */
    private record Cut(String name, String screen, @Nullable String part, int height, Theme theme) {

        Cut(String name, String screen, @Nullable String part, int height) {
            this(name, screen, part, height, Theme.LIGHT);
        }

        static Cut dark(String name, String screen) {
            return new Cut(name, screen, null, 0, Theme.DARK);
        }
    }

    private static final List<Cut> CUTS = List.of(
            new Cut("review", "review-demo", null, 0),
            Cut.dark("review-dark", "review-demo"),
            new Cut("review-thin", "review-thin", null, 0),
            Cut.dark("review-thin-dark", "review-thin"),
            new Cut("review-empty", "review-empty", null, 0),
            Cut.dark("review-empty-dark", "review-empty"),
            new Cut("review-together", "review-together", null, 0),
            Cut.dark("review-together-dark", "review-together"),
            new Cut("changes", "review-demo", ".change-table", 243),
            new Cut("time-against", "review-demo", ".review-right .sheet", 0),
            new Cut("chance-to-touch", "review-demo", ".chance", 0),
            new Cut("trial", "hall-trial", ".trial-part", 0),
            new Cut("expected-flight", "hall-demo", ".expected-part", 0),
            new Cut("start", "start-first", null, 0),
            new Cut("hall", "hall-preparing", null, 0),
            new Cut("landing", "hall-landing", null, 0),
            new Cut("bench", "bench-two-wings", null, 0),
            new Cut("motor-box", "motorbox-demo", null, 0),
            new Cut("season", "season-demo", null, 0),
            new Cut("import", "import-open", null, 0));

    private DocPictures() {}

    public static void main(String[] args) {
        Path folder = Path.of(args.length == 0 ? "docs/pictures" : args[0]);
        for (Cut cut : CUTS) {
            Snapshots.all().stream()
                    .filter(screen -> screen.name().equals(cut.screen()))
                    .forEach(screen -> take(screen, cut, folder));
        }
        System.exit(0); // the toolkit's threads would keep the process alive
    }

    private static void take(Screen screen, Cut cut, Path folder) {
        Snapshots.with(screen, cut.theme(), TextSize.NORMAL, 1280, 800, scene -> {
            WritableImage picture = scene.snapshot(null);
            Snapshots.write(
                    cut.part() == null ? picture : cut(picture, scene, cut), folder.resolve(cut.name() + ".png"));
        });
    }

    private static WritableImage cut(WritableImage picture, Scene scene, Cut cut) {
        Node part = scene.getRoot().lookup(cut.part());
        Bounds bounds = part.localToScene(part.getBoundsInLocal());
        int x = (int) Math.max(0, bounds.getMinX() - ROOM);
        int y = (int) Math.max(0, bounds.getMinY() - ROOM);
        int width = (int) Math.min(picture.getWidth() - x, bounds.getWidth() + 2 * ROOM);
        int height = cut.height() > 0
                ? cut.height()
                : (int) Math.min(picture.getHeight() - y, bounds.getHeight() + 2 * ROOM);
        return new WritableImage(picture.getPixelReader(), x, y, width, height);
    }
}
