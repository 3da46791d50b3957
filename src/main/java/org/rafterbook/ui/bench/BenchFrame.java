package org.rafterbook.ui.bench;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.EmptyBox;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.work.BenchDesk;

/** The three columns of the Bench: the strip, the drawing, and at the right the settings or the page laid on them. */
final class BenchFrame {

    private static final double GAP = 12;

    /** Narrower than this, in em, a form takes the place of the strip. */
    private static final double LEAST_EM = 84;

    private final BorderPane node = new BorderPane();
    private final Deque<BenchPage> pages = new ArrayDeque<>();
    private final BenchPage settings;
    private final StripPane strip;
    private final AirframePane drawing;
    private final EmptyBox noModel;
    private final EmptyBox noGeometry;
    private final ReadOnlyObjectWrapper<Keys> keys;
    private BenchDesk.@Nullable Bench bench;

    BenchFrame(BenchCommands commands, StripPane strip, AirframePane drawing) {
        this.strip = strip;
        this.drawing = drawing;
        settings = commands.settingsPage();
        keys = new ReadOnlyObjectWrapper<>(settings.keys());
        noModel = new EmptyBox(
                "No model yet.",
                "Its drawing, margin and rig strip appear here. A model needs only a name to fly.",
                commands.newModel(),
                commands.readSheet());
        noGeometry = new EmptyBox(
                "No geometry yet.",
                "The drawing and the margin begin with span and chord.",
                commands.airframe(),
                commands.readSheet());
        VBox over = new VBox(noModel, noGeometry);
        over.getStyleClass().add("bench-empty");
        over.setPickOnBounds(false);
        StackPane middle = new StackPane(drawing, over);
        middle.setMinSize(0, 0);
        middle.getStyleClass().addAll("sheet", "bench-middle");
        node.setLeft(strip.node());
        node.setCenter(middle);
        node.setRight(settings.node());
        BorderPane.setMargin(middle, new Insets(0, GAP, 0, GAP));
        node.getStyleClass().add("bench");
        node.getStylesheets()
                .add(Objects.requireNonNull(BenchFrame.class.getResource("bench.css"))
                        .toExternalForm());
        node.widthProperty().subscribe(width -> arrange());
    }

    Node node() {
        return node;
    }

    /** The keys of the page on top. */
    ReadOnlyObjectProperty<Keys> keys() {
        return keys.getReadOnlyProperty();
    }

    /** Lays a page on the right column. */
    void open(BenchPage page) {
        pages.push(page);
        show(page);
    }

    /** Takes the page on top away. */
    void back() {
        if (!pages.isEmpty()) {
            pages.pop();
        }
        show(pages.isEmpty() ? settings : pages.peek());
    }

    private void show(BenchPage page) {
        // the focus must not stay on what goes out of sight
        node.requestFocus();
        node.setRight(page.node());
        arrange();
        keys.set(page.keys());
        BenchDesk.Bench now = bench;
        if (now != null) {
            page.opened(now);
        } else if (page instanceof EntryForm form) {
            form.form.focusFirst();
        }
    }

    private void arrange() {
        boolean narrow = node.getWidth() > 0
                && node.getWidth() < LEAST_EM * drawing.drawing().em();
        boolean form = !pages.isEmpty() && !(pages.peek() instanceof AirframePage);
        Lay.show(strip.node(), bench != null && !(narrow && form));
        Airframe airframe = bench == null ? null : bench.shown().airframe();
        Lay.show(
                noGeometry,
                bench != null
                        && !form
                        && (airframe == null || airframe.surfaces().isEmpty()));
    }

    /** Follows the model; null for an empty logbook. */
    void loaded(BenchDesk.@Nullable Bench now) {
        bench = now;
        arrange();
        Lay.show(node.getRight(), now != null || !pages.isEmpty());
        Lay.show(noModel, now == null);
        BenchPage page = pages.peek();
        if (now != null && page != null) {
            page.loaded(now);
        }
    }
}
