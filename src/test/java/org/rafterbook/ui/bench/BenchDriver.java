package org.rafterbook.ui.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.css.PseudoClass;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import javafx.stage.Stage;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Planforms;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.exchange.AirframeSheet;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.OnShow;
import org.rafterbook.ui.ShownBook;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.work.Book;
import org.rafterbook.work.Rigged;

/** The whole window on a real logbook, worked by keys and by the pointer on the JavaFX thread. */
final class BenchDriver implements AutoCloseable {

    private final ShownBook shown;
    final Book book;
    final Tools tools = Fx.tools();
    private final Stage stage;
    final Scene scene;

    BenchDriver(Path file) {
        shown = new ShownBook(tools, file);
        book = shown.book();
        stage = Fx.window(shown.shell());
        scene = stage.getScene();
        press(KeyCode.F2);
    }

    /** Takes a model in and goes to it. */
    Rigged take(String name, Airframe airframe) {
        Rigged taken = book.sheets().take(new AirframeSheet(name, "", airframe));
        press(KeyCode.F1, KeyCode.F2);
        return taken;
    }

    /** An airframe of one wing with rounded tips and a tailplane. */
    static Airframe teasel(double wingDeg) {
        return new Airframe(
                List.of(
                        Surface.symmetric(
                                "wing",
                                Role.WING,
                                0.10,
                                0.04,
                                Math.toRadians(wingDeg),
                                0.04,
                                Planforms.roundedTips(0.42, 0.11, 0.08, 0.25)),
                        Surface.symmetric("tail", Role.TAILPLANE, 0.44, 0.01, 0, 0, Planforms.rectangle(0.24, 0.07))),
                List.of(new MassItem("wing", 0.0005, 0.15, 0.04), new MassItem("stick", 0.0013, 0.17, 0)),
                null,
                new MotorPlace(0.001, 0.165));
    }

    /** The model's rigging of now. */
    Rigged now() {
        return book.riggings().now(book.riggings().models().get(0).id());
    }

    /** Presses keys one after another. */
    void press(KeyCode... keys) {
        for (KeyCode key : keys) {
            String typed = key.isLetterKey() || key.isDigitKey() ? key.getChar().toLowerCase(Locale.ROOT) : "";
            Fx.key(scene, key, key == KeyCode.ENTER ? "\r" : typed);
            Fx.layOut(scene);
        }
    }

    /** Types into the field that has the focus, in the place of what it holds. */
    void type(String text) {
        if (scene.getFocusOwner() instanceof TextInputControl field) {
            field.setText(text);
        } else {
            throw new AssertionError("no field has the focus but " + scene.getFocusOwner());
        }
        Fx.layOut(scene);
    }

    /** Types into the field of this accessible name. */
    void type(String field, String text) {
        TextInputControl input = input(field);
        input.requestFocus();
        input.setText(text);
        Fx.layOut(scene);
    }

    private TextInputControl input(String field) {
        return find(scene.getRoot(), TextInputControl.class).stream()
                .filter(f ->
                        f.getAccessibleText() != null && f.getAccessibleText().startsWith(field))
                .filter(BenchDriver::isShown)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no field " + field + " among " + texts()));
    }

    /** The table in sight. */
    TableView<?> table() {
        return find(scene.getRoot(), TableView.class).stream()
                .filter(BenchDriver::isShown)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no table"));
    }

    /** The scroll bars to be seen in a node. */
    List<ScrollBar> scrollBars(Node node) {
        return find(node, ScrollBar.class).stream()
                .filter(BenchDriver::isShown)
                .filter(b -> b.getWidth() > 0 && b.getHeight() > 0)
                .toList();
    }

    /** The words in the cells of the table in sight, row by row. */
    List<String> cells() {
        scene.snapshot(null); // a table fills its cells when it is drawn
        return find(table(), TableRow.class).stream()
                .filter(row -> !row.isEmpty())
                .sorted(Comparator.comparing(TableRow::getIndex))
                .flatMap(row -> find(row, TableCell.class).stream())
                .map(cell -> cell.getText() == null ? "" : cell.getText())
                .toList();
    }

    /** Whether the row that begins with this word stands in the frame of what has the focus. */
    boolean isFramed(String word) {
        scene.snapshot(null);
        TableRow<?> found = find(table(), TableRow.class).stream()
                .filter(row -> find(row, TableCell.class).stream().anyMatch(cell -> word.equals(cell.getText())))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row " + word));
        List<BackgroundFill> fills = found.getBackground().getFills();
        return fills.get(fills.size() - 1).getInsets().getTop() > 0;
    }

    /** Loads the model again, as after an entry made elsewhere. */
    void load() {
        press(KeyCode.F1, KeyCode.F2);
    }

    /** Puts the focus on the chooser of this name. */
    ComboBox<?> chooser(String name) {
        ComboBox<?> box = find(scene.getRoot(), ComboBox.class).stream()
                .filter(b -> name.equals(b.getAccessibleText()) && isShown(b))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no chooser " + name));
        box.requestFocus();
        return box;
    }

    /** What stands in the field of this accessible name. */
    String typed(String field) {
        return input(field).getText();
    }

    /** Whether the field of this accessible name is framed as wrong. */
    boolean isMarked(String field) {
        return Objects.requireNonNull(input(field).getParent())
                .getPseudoClassStates()
                .contains(PseudoClass.getPseudoClass("wrong"));
    }

    /** How wide the field of this accessible name is, px. */
    double widthOf(String field) {
        return input(field).getWidth();
    }

    /** The accessible name of what has the focus. */
    String focus() {
        Node focus = scene.getFocusOwner();
        return focus == null || focus.getAccessibleText() == null ? "" : focus.getAccessibleText();
    }

    /** Presses the button of these words. */
    void click(String words) {
        find(scene.getRoot(), ButtonBase.class).stream()
                .filter(b -> b.getText().equals(words) && isShown(b))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + words))
                .fire();
        Fx.layOut(scene);
    }

    /** Ticks the box whose words hold this. */
    void tick(String words) {
        find(scene.getRoot(), CheckBox.class).stream()
                .filter(b -> b.getText().contains(words))
                .forEach(b -> b.setSelected(true));
    }

    /** Drags the pointer over a node. */
    static void drag(Node node, double fromX, double fromY, double toX, double toY) {
        mouse(node, MouseEvent.MOUSE_PRESSED, fromX, fromY);
        for (int i = 1; i <= 5; i++) {
            mouse(node, MouseEvent.MOUSE_DRAGGED, fromX + (toX - fromX) * i / 5, fromY + (toY - fromY) * i / 5);
        }
        mouse(node, MouseEvent.MOUSE_RELEASED, toX, toY);
    }

    private static void mouse(Node node, EventType<MouseEvent> type, double x, double y) {
        Point2D at = node.localToScene(x, y);
        node.fireEvent(new MouseEvent(
                type,
                at.getX(),
                at.getY(),
                at.getX(),
                at.getY(),
                MouseButton.PRIMARY,
                1,
                false,
                false,
                false,
                false,
                true,
                false,
                false,
                true,
                false,
                true,
                null));
    }

    AirframeDrawing drawing() {
        return find(scene.getRoot(), AirframeDrawing.class).get(0);
    }

    /** Which row of the rig strip is marked, from the top; -1 where none is. */
    int markedRow() {
        List<Node> rows = find(scene.getRoot(), Node.class).stream()
                .filter(n -> n.getStyleClass().contains("strip-row"))
                .toList();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).getPseudoClassStates().contains(PseudoClass.getPseudoClass("here"))) {
                return i;
            }
        }
        return -1;
    }

    /** All that is to be read now. */
    List<String> texts() {
        List<String> texts = new ArrayList<>();
        collect(scene.getRoot(), texts);
        return texts;
    }

    boolean sees(String text) {
        return texts().stream().anyMatch(t -> OnShow.plain(t).contains(text));
    }

    /** Whether the words that begin so have the room for all their lines. */
    boolean isWhole(String beginning) {
        Label label = find(scene.getRoot(), Label.class).stream()
                .filter(l -> l.getText() != null && l.getText().startsWith(beginning) && isShown(l))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no words " + beginning));
        return label.getHeight() >= label.prefHeight(label.getWidth()) && label.getWidth() > 0;
    }

    /** Figures and names of the designs side by side that have not the room they need. */
    List<String> cut() {
        return find(scene.getRoot(), Labeled.class).stream()
                .filter(l -> l.getParent().getStyleClass().contains("side-by-side"))
                .filter(l -> !l.isWrapText() && l.getWidth() < l.prefWidth(-1) - 0.5)
                .map(Labeled::getText)
                .toList();
    }

    private static void collect(Node node, List<String> texts) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof Labeled label) {
            if (label.getText() != null && !label.getText().isEmpty()) {
                texts.add(label.getText());
            }
            if (label.getGraphic() != null) {
                collect(label.getGraphic(), texts);
            }
        } else if (node instanceof TextFlow flow) {
            StringBuilder all = new StringBuilder();
            flow.getChildren().forEach(c -> all.append(c instanceof Text t ? t.getText() : ""));
            texts.add(all.toString());
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(c -> collect(c, texts));
        }
    }

    private static boolean isShown(Node node) {
        for (Node n = node; n != null; n = n.getParent()) {
            if (!n.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private static <N extends Node> List<N> find(Node node, Class<N> type) {
        List<N> found = new ArrayList<>();
        if (type.isInstance(node)) {
            found.add(type.cast(node));
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(c -> found.addAll(find(c, type)));
        }
        return found;
    }

    /** The margin as the readout tells it, per cent. */
    double margin() {
        List<String> texts = texts();
        String figure = texts.get(texts.indexOf("Stability margin") + 1);
        return Double.parseDouble(
                Objects.requireNonNull(figure).replace(" %", "").replace('−', '-'));
    }

    @Override
    public void close() {
        stage.close();
        shown.close();
    }
}
