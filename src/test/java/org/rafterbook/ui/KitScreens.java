package org.rafterbook.ui;

import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.action.Problem;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Figure;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.SettingRow;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Shell;
import org.rafterbook.ui.shell.Tools;

/** Pictures of the shell round an invented place, and of all parts side by side. */
final class KitScreens {

    private KitScreens() {}

    static List<Screen> all() {
        return List.of(
                new Screen("kit-shell", KitScreens::shell),
                new Screen("kit-parts", PartsSheet::make),
                new Screen("kit-charts", ChartSheet::make),
                new Screen("kit-help", KitScreens::calmShell, scene -> Fx.key(scene, KeyCode.UNDEFINED, "?")),
                new Screen(
                        "kit-alt",
                        KitScreens::calmShell,
                        scene -> scene.getRoot()
                                .fireEvent(new KeyEvent(
                                        KeyEvent.KEY_PRESSED, "", "", KeyCode.ALT, false, false, true, false))));
    }

    static Parent shell(Tools tools) {
        tools.errors()
                .show(new Problem(
                        "The disk is full.", "Everything up to flight 5 is kept. Make room, then press Ctrl+S again."));
        return calmShell(tools);
    }

    static Parent calmShell(Tools tools) {
        Map<PlaceId, Supplier<? extends Place>> makers = new EnumMap<>(PlaceId.class);
        for (PlaceId id : PlaceId.values()) {
            makers.put(id, () -> new Sample(tools));
        }
        tools.kept().kept(LocalTime.of(20, 41, 7));
        tools.kept().undoable("wing 3 mm forward", () -> {});
        return new Shell(tools, makers);
    }

    /** A place that shows a few parts. */
    private static final class Sample implements Place {

        private final Keys keys;
        private final Node node;

        private Sample(Tools tools) {
            keys = tools.keys();
            Action start = keys.on("Space", "Start the watch", () -> {});
            keys.hint("Space", "start");
            keys.hint("P W T R L B", "pick a setting");
            keys.hint("F3", "wind");
            keys.hint("M", "model");
            keys.hint("A", "air");
            Sheet sheet = new Sheet();
            sheet.section(
                    Words.small("Flight 6, as flight 5 unless you change it"),
                    Lay.row(
                            12,
                            Words.head("Teasel v13"),
                            Words.aside("trial: wing 3 mm forward of v12"),
                            Lay.space(),
                            Buttons.secondary(keys.on("F", "Back to …", () -> {})),
                            Buttons.secondary(keys.on("M", "Model", () -> {}))));
            SettingRow wing = new SettingRow(keys.on("P", "Wing position", () -> {})).show("146 mm", "149");
            wing.picked(true);
            sheet.add(new VBox(
                    new Sheet.Section("Trim", "letter, then ← or →"),
                    wing,
                    new SettingRow(keys.on("W", "Wing incidence", () -> {}))
                            .show("2.50°", null)
                            .step("step 0.25°"),
                    new SettingRow(keys.on("T", "Tailplane incidence", () -> {}))
                            .show("−0.50°", null)
                            .step("step 0.25°"),
                    SettingRow.computed("Decalage, follows").show("3.00°", null)));
            sheet.section(Buttons.main(
                    start,
                    Words.body("Kept from the first instant."),
                    Words.body("A wrong press is taken back with Ctrl+Z.")));
            HBox page =
                    Lay.styled(Lay.row(12, Lay.grow(sheet), new Sheet("This evening", "5 flights, 1 touched")), "page");
            page.setFillHeight(true);
            node = page;
        }

        @Override
        public Node node() {
            return node;
        }

        @Override
        public ObservableValue<Keys> keys() {
            return new SimpleObjectProperty<>(keys);
        }

        @Override
        public ObservableValue<String> subtitle() {
            return Place.always("Saltmarsh Sports Hall, Tue 20 Jan 2026, beams at 9.4 m, lamps at 7.9 m");
        }

        @Override
        public ObservableList<Node> figures() {
            return FXCollections.observableArrayList(
                    new Figure("Air, read 34 min ago", "19.4 °C, 41 %, 1.199 kg/m³"),
                    new Figure("Now", "20:41").strong());
        }
    }
}
