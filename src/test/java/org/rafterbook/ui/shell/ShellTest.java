package org.rafterbook.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.look.Theme;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.UserError;

@FxTest
class ShellTest {

    private final Tools tools = Fx.tools();
    private final List<String> heard = new ArrayList<>();
    private final Map<PlaceId, Sample> made = new EnumMap<>(PlaceId.class);
    private Stage stage = new Stage();
    private Scene scene = new Scene(new VBox());

    /** A place with a button, a text field and a number field. */
    private final class Sample implements Place {

        private final Keys keys = tools.keys();
        private final SimpleObjectProperty<Keys> current = new SimpleObjectProperty<>(keys);
        private final TextField text = new TextField();
        private final Field<TypedValue> turns = Field.quantity("Turns left", Quantity.TURNS, DisplayUnits.METRIC)
                .onKept(value -> heard.add("kept"));
        private final Button button;
        private final PlaceId id;
        private final VBox node;

        private Sample(PlaceId id) {
            this.id = id;
            made.put(id, this);
            keys.on("Space", "Start the watch", () -> heard.add("space"));
            keys.on("Enter", "Next flight", () -> heard.add("enter"));
            keys.on("H", "Peak height", () -> heard.add("height"));
            keys.on("N", "Note", text::requestFocus);
            keys.on("/", "Find", () -> heard.add("find"));
            button = Buttons.secondary(keys.on("M", "Model", () -> heard.add("model")));
            keys.hint("Space", "start");
            node = new VBox(button, text, turns);
        }

        @Override
        public Node node() {
            return node;
        }

        @Override
        public ObservableValue<Keys> keys() {
            return current;
        }

        @Override
        public ObservableValue<String> subtitle() {
            return Place.always("subtitle of " + id);
        }

        @Override
        public void shown() {
            heard.add("shown " + id);
        }

        @Override
        public void hidden() {
            heard.add("hidden " + id);
        }
    }

    @BeforeEach
    void open() {
        Map<PlaceId, Supplier<? extends Place>> makers = new EnumMap<>(PlaceId.class);
        for (PlaceId id : PlaceId.values()) {
            makers.put(id, () -> new Sample(id));
        }
        stage.close();
        stage = Fx.window(new Shell(tools, makers));
        scene = stage.getScene();
        tools.look().dress(scene);
        heard.clear();
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private Sample hall() {
        Sample sample = made.get(PlaceId.HALL);
        assertThat(sample).isNotNull();
        return sample;
    }

    private List<String> texts(String styleClass) {
        Fx.layOut(scene);
        return scene.getRoot().lookupAll("." + styleClass).stream()
                .filter(Label.class::isInstance)
                .map(node -> ((Label) node).getText())
                .toList();
    }

    @Test
    void placesAreMadeAtTheFirstVisitAndKept() {
        assertThat(made).containsOnlyKeys(PlaceId.HALL);
        Fx.key(scene, KeyCode.F4, "");
        assertThat(made).containsOnlyKeys(PlaceId.HALL, PlaceId.REVIEW);
        assertThat(heard).containsExactly("hidden HALL", "shown REVIEW");
        Sample first = hall();
        Fx.key(scene, KeyCode.DIGIT1, "", true, false);
        assertThat(hall()).isSameAs(first);
        assertThat(texts("head")).containsExactly("Hall");
    }

    @Test
    void lettersWorkUnlessATextFieldHasTheFocus() {
        hall().button.requestFocus();
        Fx.key(scene, KeyCode.M, "m");
        assertThat(heard).containsExactly("model");
        hall().text.requestFocus();
        Fx.key(scene, KeyCode.M, "m");
        Fx.key(scene, KeyCode.SPACE, " ");
        assertThat(heard).containsExactly("model");
        assertThat(hall().text.getText()).isEqualTo("m ");
    }

    @Test
    void numberFieldsLetLettersThroughAndKeepDigits() {
        TextField turns = hall().turns.input();
        turns.requestFocus();
        Fx.key(scene, KeyCode.DIGIT5, "5");
        Fx.key(scene, KeyCode.H, "h");
        assertThat(heard).containsExactly("height");
        assertThat(turns.getText()).isEqualTo("5");
    }

    @Test
    void enterInAFieldKeepsItBeforeTheMainAction() {
        hall().turns.input().requestFocus();
        Fx.key(scene, KeyCode.DIGIT5, "5");
        Fx.key(scene, KeyCode.ENTER, "\r");
        assertThat(heard).containsExactly("kept", "enter");
    }

    @Test
    void enterPressesTheFocusedButtonAndSpaceStaysTheWatch() {
        hall().button.requestFocus();
        Fx.key(scene, KeyCode.ENTER, "\r");
        Fx.key(scene, KeyCode.SPACE, " ");
        assertThat(heard).containsExactly("model", "space");
    }

    @Test
    void aKeyHeldDownCountsOnce() {
        hall().button.requestFocus();
        for (int i = 0; i < 20; i++) {
            hall().button
                    .fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.SPACE, false, false, false, false));
        }
        assertThat(heard).containsExactly("space");
    }

    @Test
    void theLetterThatOpensAFieldIsNotTypedIntoIt() {
        hall().button.requestFocus();
        Fx.key(scene, KeyCode.N, "n");
        assertThat(scene.getFocusOwner()).isSameAs(hall().text);
        assertThat(hall().text.getText()).isEmpty();
    }

    @Test
    void charactersBesideLettersAreKeysToo() {
        hall().button.requestFocus();
        Fx.key(scene, KeyCode.SLASH, "/");
        assertThat(heard).containsExactly("find");
    }

    @Test
    void aDisabledActionLeavesItsKeyAlone() {
        Action start = hall().keys.find("Space");
        assertThat(start).isNotNull();
        start.enabledProperty().set(false);
        hall().button.requestFocus();
        Fx.key(scene, KeyCode.SPACE, " ");
        assertThat(heard).doesNotContain("space");
    }

    @Test
    void helpListsEveryKeyAndClosesWithEscape() {
        hall().button.requestFocus();
        Fx.key(scene, KeyCode.UNDEFINED, "?");
        assertThat(texts("body")).contains("Start the watch", "Peak height", "Next theme");
        Fx.key(scene, KeyCode.M, "m");
        assertThat(heard).as("keys of the place rest").isEmpty();
        Fx.key(scene, KeyCode.ESCAPE, "");
        assertThat(scene.getRoot().lookup(".help-ground").isVisible()).isFalse();
        assertThat(scene.getFocusOwner()).isSameAs(hall().button);
    }

    @Test
    void altShowsTheKeysOverTheirTargetsWhileHeld() {
        Fx.layOut(scene);
        scene.getRoot().fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ALT, false, false, true, false));
        assertThat(texts("alt-cap")).contains("M", "F1", "F5", "Ctrl+Shift+T");
        scene.getRoot().fireEvent(new KeyEvent(KeyEvent.KEY_RELEASED, "", "", KeyCode.ALT, false, false, false, false));
        assertThat(texts("alt-cap")).isEmpty();
    }

    @Test
    void theFootSaysWhatWasKeptAndWhatUndoWouldTakeBack() {
        tools.kept().undoable("flight 3", () -> heard.add("undone"));
        tools.kept().kept(LocalTime.of(20, 41, 7));
        assertThat(texts("aside")).contains("kept 20:41:07", "undo “flight 3”");
        Fx.key(scene, KeyCode.Z, "", true, false);
        assertThat(heard).containsExactly("undone");
    }

    @Test
    void undoInATextFieldIsTheFieldsOwn() {
        tools.kept().undoable("flight 3", () -> heard.add("undone"));
        hall().text.requestFocus();
        Fx.key(scene, KeyCode.Z, "", true, false);
        assertThat(heard).isEmpty();
    }

    @Test
    void anErrorIsShownUnderTheHeadAndClosedWithEscape() {
        hall().keys.on("X", "Break", () -> {
            throw UserError.couldNot("The disk is full.", null);
        });
        hall().button.requestFocus();
        Fx.key(scene, KeyCode.X, "x");
        assertThat(texts("bold")).contains("The disk is full.");
        Fx.key(scene, KeyCode.ESCAPE, "");
        assertThat(scene.getRoot().lookup(".under-head").isVisible()).isFalse();
    }

    @Test
    void escapeTakesAnErrorAwayBeforeItIsThePlaces() {
        hall().keys.on("Esc", "Leave it", () -> heard.add("left"));
        hall().button.requestFocus();
        tools.errors().show(UserError.couldNot("The disk is full.", null));
        Fx.key(scene, KeyCode.ESCAPE, "");
        assertThat(tools.errors().shownProperty().get()).isNull();
        assertThat(heard).isEmpty();
        Fx.key(scene, KeyCode.ESCAPE, "");
        assertThat(heard).containsExactly("left");
    }

    @Test
    void anErrorsBarIsAsHighAsItsWordsHoweverLittleRoomThereIs() {
        tools.errors().show(UserError.couldNot("The disk is full. ".repeat(30), null));
        hall().button.setMinHeight(4000);
        Fx.layOut(scene);
        Region bar = (Region) scene.getRoot().lookup(".under-head");
        assertThat(bar.getHeight()).isGreaterThanOrEqualTo(bar.prefHeight(bar.getWidth()));
        Region close = (Region) bar.lookup(".link");
        assertThat(close.getHeight()).isGreaterThanOrEqualTo(close.prefHeight(-1));
        assertThat(close.getBoundsInParent().getMaxY()).isLessThanOrEqualTo(bar.getHeight());
    }

    @Test
    void theThemeTurnsWithItsKey() {
        hall().text.requestFocus();
        Fx.key(scene, KeyCode.T, "", true, true);
        assertThat(tools.look().themeProperty().get()).isEqualTo(Theme.DARK);
    }

    @Test
    void theKeyLineFollowsTheStateOfThePlace() {
        Keys inTheAir = tools.keys();
        inTheAir.on("Space", "Landed", () -> heard.add("landed"));
        for (int i = 1; i < 8; i++) {
            inTheAir.hint("F" + i, "hint " + i);
        }
        hall().current.set(inTheAir);
        assertThat(texts("aside")).contains("hint 5", "help").doesNotContain("hint 6", "start");
        hall().button.requestFocus();
        Fx.key(scene, KeyCode.SPACE, " ");
        assertThat(heard).containsExactly("landed");
    }

    @Test
    void aPlaceThatCannotBeMadeLeavesTheWindowWhereItIs() {
        Map<PlaceId, Supplier<? extends Place>> makers = new EnumMap<>(PlaceId.class);
        makers.put(PlaceId.HALL, () -> new Sample(PlaceId.HALL));
        makers.put(PlaceId.BENCH, () -> {
            throw new IllegalStateException("no bench");
        });
        Tools own = Fx.tools();
        Fx.show(new Shell(own, makers));
        own.showing().set(PlaceId.BENCH);
        assertThat(own.errors().shownProperty().get()).isNotNull();
        assertThat(own.showing().get()).isEqualTo(PlaceId.HALL);
    }

    @Test
    void everythingInTheRailSaysWhatItIs() {
        assertThat(scene.getRoot().lookupAll(".rail-item"))
                .hasSize(7)
                .allSatisfy(node -> assertThat(node.getAccessibleText()).isNotBlank());
    }
}
