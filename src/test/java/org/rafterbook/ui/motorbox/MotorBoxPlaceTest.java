package org.rafterbook.ui.motorbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.logbook.Mode;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindDraft;
import org.rafterbook.power.WindEnd;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Shell;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.work.Book;
import org.rafterbook.work.MotorDesk.Boxed;
import org.rafterbook.work.WindForm;

@FxTest
class MotorBoxPlaceTest {

    @TempDir
    Path folder;

    private final Tools tools = Fx.tools();
    private Book book;
    private Stage stage;

    @BeforeEach
    void open() {
        book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, OneEvening.CLOCK);
        show(DisplayUnits.METRIC);
    }

    private void show(DisplayUnits units) {
        if (stage != null) {
            stage.close();
        }
        MotorBoxPlace place = new MotorBoxPlace(tools, book, units);
        Map<PlaceId, Supplier<? extends Place>> makers = new EnumMap<>(PlaceId.class);
        for (PlaceId id : PlaceId.values()) {
            makers.put(id, () -> place);
        }
        stage = Fx.window(new Shell(tools, makers));
        Fx.layOut(scene());
    }

    @AfterEach
    void close() {
        stage.close();
        book.close();
    }

    private Scene scene() {
        return stage.getScene();
    }

    private void key(KeyCode code, String typed) {
        Fx.key(scene(), code, typed);
        Fx.layOut(scene());
    }

    /** Presses a key of the place, not of a field. */
    private void press(KeyCode code, String typed) {
        scene().getRoot().requestFocus();
        key(code, typed);
    }

    private void into(String label, String text) {
        TextField field = field(label);
        field.requestFocus();
        field.setText(text);
    }

    private static boolean inSight(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private boolean shows(String text) {
        return scene().getRoot().lookupAll("*").stream()
                .filter(MotorBoxPlaceTest::inSight)
                .anyMatch(node -> node instanceof Labeled l
                        && l.getText() != null
                        && l.getText().contains(text));
    }

    @SuppressWarnings("unchecked")
    private <T> TableView<T> table(String says) {
        return (TableView<T>) scene().getRoot().lookupAll(".table-view").stream()
                .filter(node -> says.equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow();
    }

    private Boxed only() {
        List<Boxed> motors = book.motors().load().motors();
        assertThat(motors).hasSize(1);
        return motors.get(0);
    }

    private void addM1() {
        press(KeyCode.M, "m");
        into("Motor", "M1");
        into("Loop when tied", "14.5 in");
        into("Mass of the rubber", "1,04 g");
        press(KeyCode.A, "a");
    }

    @Test
    void aMotorIsAddedAsTyped() {
        addM1();
        Motor motor = only().motor();
        assertThat(motor.name()).isEqualTo("M1");
        assertThat(motor.loopLengthM()).isEqualTo(0.3683);
        assertThat(motor.asTyped()).containsEntry("loopLengthM", "14.5 in").containsEntry("massKg", "1,04 g");
        assertThat(shows("M1")).isTrue();
    }

    @Test
    void aSecondMotorOfTheNameIsRefusedBesideTheName() {
        addM1();
        addM1();
        only();
        assertThat(shows("There is a motor named 'M1' already.")).isTrue();
    }

    @Test
    void puttingTheNameRightLeavesTheMeasuresToTheLastDigit() {
        addM1();
        table("motors").getSelectionModel().select(0);
        into("Motor", "M7");
        into("What became of it", "cut up");
        press(KeyCode.ENTER, "\r");
        Motor motor = only().motor();
        assertThat(motor.name()).isEqualTo("M7");
        assertThat(motor.fate()).isEqualTo("cut up");
        assertThat(motor.loopLengthM()).isEqualTo(0.3683);
        assertThat(motor.asTyped()).containsEntry("loopLengthM", "14.5 in");
    }

    @Test
    void aBatchGivesItsMotorsItsOwnConstant() {
        press(KeyCode.B, "b");
        into("Name", "Umber 24");
        into("Its own turns constant", "47");
        press(KeyCode.A, "a");
        assertThat(book.motors().load().batches())
                .singleElement()
                .satisfies(batch -> assertThat(batch.turnsConstant()).isEqualTo(47));
        book.motors().addMotor("M1", book.motors().load().batches().get(0).id(), 0.3683, 0.00104, Map.of());
        assertThat(only().limit().expected())
                .as("published formula K L^1.5 / m^0.5")
                .isCloseTo(47 * Math.pow(14.5, 1.5) / Math.sqrt(1.04), within(1e-6));
    }

    @Test
    void aWindOfThePickedMotorIsAdded() {
        addM1();
        table("motors").getSelectionModel().select(0);
        press(KeyCode.W, "w");
        into("Turns put in", "1900");
        into("Backed off", "100");
        press(KeyCode.A, "a");
        assertThat(only().winds()).singleElement().satisfies(wind -> {
            assertThat(wind.turnsWound()).isEqualTo(1900);
            assertThat(wind.end()).isEqualTo(WindEnd.LET_DOWN);
        });
        assertThat(only().state()).isEqualTo("ready");
    }

    @Test
    @SuppressWarnings("unchecked")
    void theWindInWhichAMotorBrokeEndsTheMotor() {
        addM1();
        table("motors").getSelectionModel().select(0);
        press(KeyCode.W, "w");
        into("Turns put in", "2210");
        ComboBox<WindEnd> end = (ComboBox<WindEnd>) scene().getRoot().lookupAll(".combo-box").stream()
                .filter(node -> "How it ended".equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow();
        end.getSelectionModel().select(WindEnd.BROKE);
        press(KeyCode.A, "a");
        assertThat(only().state()).isEqualTo("broke");
        assertThat(book.undo().why()).isEqualTo("wind broke");
        assertThat(only().state()).isEqualTo("ready");
    }

    @Test
    void moreBackedOffThanWoundIsRefused() {
        addM1();
        table("motors").getSelectionModel().select(0);
        press(KeyCode.W, "w");
        into("Turns put in", "100");
        into("Backed off", "200");
        press(KeyCode.A, "a");
        assertThat(only().winds()).isEmpty();
        assertThat(shows("×")).isTrue();
    }

    @Test
    void aWindIsPutRight() {
        aWindOfThePickedMotorIsAdded();
        table("winds of the motor picked").getSelectionModel().select(0);
        into("Turns put in", "1950");
        press(KeyCode.ENTER, "\r");
        assertThat(only().winds()).extracting(Wind::turnsWound).containsExactly(1950.0);
        assertThat(only().winds()).extracting(Wind::turnsBackedOff).containsExactly(100.0);
    }

    @Test
    void aWindNeedsItsMotor() {
        press(KeyCode.W, "w");
        into("Turns put in", "1900");
        press(KeyCode.A, "a");
        assertThat(shows("Pick the motor first.")).isTrue();
    }

    @Test
    void lengthsStandInTheFlyersUnit() {
        addM1();
        show(DisplayUnits.INCH);
        assertThat(shows("14.50")).isTrue();
    }

    @Test
    void motorsSortByTheirNumber() {
        for (String name : List.of("M10", "M9", "M1")) {
            book.motors().addMotor(name, null, null, null, Map.of());
        }
        assertThat(book.motors().load().motors())
                .extracting(b -> b.motor().name())
                .containsExactly("M1", "M9", "M10");
    }

    @Test
    void enterInAFieldAddsWhatIsNewAndTheNextCanBeTypedAtOnce() {
        press(KeyCode.M, "m");
        into("Motor", "M1");
        key(KeyCode.ENTER, "\r");
        assertThat(only().motor().name()).isEqualTo("M1");
        assertThat(field("Motor").getText()).isEmpty();
        assertThat(field("Motor").isFocused()).isTrue();
        into("Motor", "M2");
        key(KeyCode.ENTER, "\r");
        assertThat(book.motors().load().motors()).hasSize(2);
    }

    @Test
    void enterOnTheListEditsThePickedMotorAndEscLeavesItAsItIs() {
        addM1();
        table("motors").getSelectionModel().select(0);
        table("motors").requestFocus();
        key(KeyCode.ENTER, "\r");
        assertThat(field("Motor").isFocused()).isTrue();
        assertThat(shows("Put M1 right")).isTrue();
        into("Motor", "M9");
        key(KeyCode.ESCAPE, "");
        assertThat(field("Motor").getText()).isEqualTo("M1");
        assertThat(table("motors").isFocused()).isTrue();
        assertThat(only().motor().name()).isEqualTo("M1");
    }

    @Test
    void whatIsTypedStaysWhenSomethingElseIsEntered() {
        addM1();
        table("motors").getSelectionModel().select(0);
        into("Motor", "M9");
        book.motors().addMotor("M2", null, null, null, Map.of());
        Fx.layOut(scene());
        assertThat(field("Motor").getText()).isEqualTo("M9");
        assertThat(table("motors").getSelectionModel().getSelectedIndex()).isZero();
    }

    @Test
    void aMotorPutRightCannotTakeAnothersName() {
        addM1();
        Motor other = book.motors().addMotor("M2", null, null, null, Map.of());
        table("motors").getSelectionModel().select(1);
        into("Motor", "m1");
        press(KeyCode.ENTER, "\r");
        assertThat(shows("There is a motor named 'm1' already.")).isTrue();
        assertThat(book.motors().load().motors())
                .extracting(b -> b.motor().name())
                .contains(other.name());
    }

    @Test
    void aWindBelongsToTodaysVisitWhereThereIsOne() {
        addM1();
        String id = only().motor().id();
        assertThat(book.motors().addWind(form(id), WindEnd.LET_DOWN).sessionId())
                .isNull();
        book.hall().winding().keep(null, form(id)); // begins today's visit
        assertThat(book.motors().addWind(form(id), WindEnd.LET_DOWN).sessionId())
                .isNotNull();
    }

    @Test
    void aBreakPutRightMakesTheMotorReadyAgain() {
        addM1();
        Wind broke = book.motors().addWind(form(only().motor().id()), WindEnd.BROKE);
        assertThat(only().state()).isEqualTo("broke");
        book.motors().correct(WindDraft.of(broke).end(WindEnd.LET_DOWN).done());
        assertThat(only().state()).isEqualTo("ready");
    }

    private static WindForm form(String motorId) {
        return new WindForm(motorId, 1900.0, null, null, null, null, Map.of());
    }

    private TextField field(String label) {
        return (TextField) scene().getRoot().lookupAll(".text-field").stream()
                .filter(node -> String.valueOf(node.getAccessibleText()).startsWith(label) && inSight(node))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no field " + label));
    }
}
