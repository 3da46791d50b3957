package org.rafterbook.ui;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.rafterbook.ui.bench.BenchScreens;
import org.rafterbook.ui.hall.HallScreens;
import org.rafterbook.ui.look.Look;
import org.rafterbook.ui.look.TextSize;
import org.rafterbook.ui.look.Theme;
import org.rafterbook.ui.shell.Tools;

/**
 * Takes pictures of the screens without a display, to be looked at: each in three themes at 1280 x 800, in the light
 * theme also at 1920 x 1080 and with the text at 150 %.
 *
 * <pre>
 * mvn -q -o test-compile exec:java -Dexec.classpathScope=test \
 *     -Dmain.class=org.rafterbook.ui.Snapshots -Dexec.args="target/pictures hall"
 * </pre>
 *
 * The first argument is the folder, further ones are beginnings of names; none means all.
 */
public final class Snapshots {

    /** Every screen; a place adds its own list here. */
    static List<Screen> all() {
        List<Screen> all = new ArrayList<>();
        all.addAll(KitScreens.all());
        all.addAll(ReviewScreens.all());
        all.addAll(WindowScreens.all());
        all.addAll(HallScreens.all());
        all.addAll(BenchScreens.all());
        return all;
    }

    private record Shot(Theme theme, TextSize text, int width, int height, String suffix) {}

    private Snapshots() {}

    public static void main(String[] args) {
        Path folder = Path.of(args.length == 0 ? "target/pictures" : args[0]);
        List<String> wanted = Arrays.asList(args).subList(Math.min(1, args.length), args.length);
        for (Screen screen : all()) {
            if (wanted.isEmpty() || wanted.stream().anyMatch(screen.name()::startsWith)) {
                shots().forEach(shot -> take(screen, shot, folder));
            }
        }
        System.exit(0); // the toolkit's threads would keep the process alive
    }

    private static List<Shot> shots() {
        List<Shot> shots = new ArrayList<>();
        for (Theme theme : Theme.values()) {
            shots.add(new Shot(
                    theme, TextSize.NORMAL, 1280, 800, "-" + theme.name().toLowerCase(Locale.ROOT)));
        }
        shots.add(new Shot(Theme.LIGHT, TextSize.NORMAL, 1920, 1080, "-light-1920"));
        shots.add(new Shot(Theme.LIGHT, TextSize.LARGEST, 1280, 800, "-light-150"));
        shots.add(new Shot(Theme.LIGHT, TextSize.LARGEST, 1920, 1080, "-light-1920-150"));
        return shots;
    }

    private static void take(Screen screen, Shot shot, Path folder) {
        Path file = folder.resolve(screen.name() + shot.suffix() + ".png");
        with(
                screen,
                shot.theme(),
                shot.text(),
                shot.width(),
                shot.height(),
                scene -> write(scene.snapshot(null), file));
    }

    /** What is done with a screen once it is laid out. */
    interface Shown {
        void take(Scene scene) throws IOException;
    }

    /** Several times on the JavaFX thread, so that what a screen puts off until after its first frame is there too. */
    static void with(Screen screen, Theme theme, TextSize text, int width, int height, Shown then) {
        Stage stage = Fx.on(() -> {
            Tools tools = Fx.tools();
            tools.look().themeProperty().set(theme);
            tools.look().textSizeProperty().set(text);
            Parent root = screen.make().apply(tools);
            Scene scene = new Scene(root, width, height);
            Look.dress(scene, theme, text);
            Stage shown = new Stage();
            shown.setScene(scene);
            shown.show();
            Fx.layOut(scene);
            return shown;
        });
        settle(stage);
        Fx.run(() -> screen.after().act(stage.getScene()));
        settle(stage);
        Fx.run(() -> {
            then.take(stage.getScene());
            stage.close();
        });
    }

    private static void settle(Stage stage) {
        for (int i = 0; i < 4; i++) {
            Fx.run(() -> Fx.layOut(stage.getScene()));
        }
    }

    /** Writes a picture as PNG. */
    public static void write(WritableImage picture, Path file) throws IOException {
        int width = (int) picture.getWidth();
        int height = (int) picture.getHeight();
        int[] pixels = new int[width * height];
        picture.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, width, height, pixels, 0, width);
        Files.createDirectories(file.toAbsolutePath().getParent());
        ImageIO.write(image, "png", file.toFile());
    }
}
