package org.rafterbook.ui.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.TakesArrows;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.look.Token;

/**
 * A chart of flights on graph paper: axes, layers of estimates, one mark a flight. A mark can be picked with the mouse
 * or, once the chart has the focus, with the arrow keys, and opened with a click or Enter; its words are shown and read
 * out. The caption with {@code n =} stands in the section's head above the chart.
 *
 * <pre>
 * Chart&lt;FlightId&gt; chart = new Chart&lt;&gt;("Time against margin, n = 60");
 * chart.show(new Content&lt;&gt;(x, y, below, marks, above).flown(5.1, 11.8));
 * chart.onOpen(this::openFlight);
 * </pre>
 */
public final class Chart<K> extends Drawing implements TakesArrows {

    /**
     * All that is on a chart.
     *
     * @param below layers under the marks
     * @param above layers over the marks
     * @param flownLow lowest x that was flown; raised ground lies beyond it
     */
    public record Content<K>(
            Axis x,
            Axis y,
            List<Layer> below,
            List<FlightMark<K>> marks,
            List<Layer> above,
            double flownLow,
            double flownHigh) {

        public Content {
            below = List.copyOf(below);
            marks = List.copyOf(marks);
            above = List.copyOf(above);
        }

        /** A chart of which every x was flown. */
        public Content(Axis x, Axis y, List<Layer> below, List<FlightMark<K>> marks, List<Layer> above) {
            this(x, y, below, marks, above, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }

        /** The same with the range of x that was flown. */
        public Content<K> flown(double low, double high) {
            return new Content<>(x, y, below, marks, above, low, high);
        }
    }

    private static final double REACH_PX = 9;
    private static final double LEAST_SCALE = 0.4;
    private static final double STRIP_EM = 178 / 12.5;

    private String says;
    private final ReadOnlyObjectWrapper<@Nullable K> picked = new ReadOnlyObjectWrapper<>(this, "picked");
    private @Nullable Content<K> content;
    private boolean strip;
    private List<PlacedMark<K>> placed = List.of();
    private @Nullable FlightMark<K> pickedMark;
    private Consumer<? super K> opened = key -> {};

    /**
     * @param says what the chart shows and on how many flights it rests, for accessible text
     */
    public Chart(String says) {
        this.says = says;
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(says);
        setAccessibleHelp("Arrow keys go from flight to flight, Enter opens one");
        wish(-1, -1);
        setMinSize(0, 0);
        layered();
        setOnMouseMoved(event -> pickPlaced(nearest(event)));
        setOnMouseExited(event -> {
            if (!isFocused()) {
                pickMark(null);
            }
        });
        setOnMouseClicked(event -> {
            requestFocus();
            pickPlaced(nearest(event));
            open();
        });
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        focusedProperty().subscribe(focused -> repaintOver());
    }

    /** Says from now on, for those who do not see it, that the chart shows this. */
    public Chart<K> says(String words) {
        says = words;
        setAccessibleText(words);
        return this;
    }

    /** Room for the words of trim changes above the plot, as on the history strip; the ground is raised. */
    public Chart<K> asStrip() {
        strip = true;
        setMinHeight(USE_COMPUTED_SIZE);
        wish(-1, STRIP_EM);
        return this;
    }

    /** Shows this from now on; what was picked stays picked if it is still there. */
    public void show(Content<K> now) {
        content = now;
        pickedMark = pickedMark == null
                ? null
                : now.marks().stream()
                        .filter(mark -> mark.key().equals(picked.get()))
                        .findFirst()
                        .orElse(null);
        picked.set(pickedMark == null ? null : pickedMark.key());
        repaint();
    }

    /** Called with the flight whose mark was clicked or opened with Enter. */
    public Chart<K> onOpen(Consumer<? super K> taker) {
        opened = taker;
        return this;
    }

    /** The flight whose words are shown, null for none. */
    public ReadOnlyObjectProperty<@Nullable K> pickedProperty() {
        return picked.getReadOnlyProperty();
    }

    /** Picks the flight's mark, as when its row is selected in a table; null for none. */
    public void pick(@Nullable K key) {
        pickMark(
                content == null
                        ? null
                        : content.marks().stream()
                                .filter(mark -> mark.key().equals(key))
                                .findFirst()
                                .orElse(null));
    }

    private void pickPlaced(@Nullable PlacedMark<K> mark) {
        pickMark(mark == null ? null : mark.mark());
    }

    private void pickMark(@Nullable FlightMark<K> mark) {
        if (mark != pickedMark) {
            pickedMark = mark;
            picked.set(mark == null ? null : mark.key());
            setAccessibleText(mark == null ? says : says + ". " + mark.says());
            notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
            repaintOver();
        }
    }

    private void open() {
        if (pickedMark != null) {
            opened.accept(pickedMark.key());
        }
    }

    private void key(KeyEvent event) {
        KeyCode code = event.getCode();
        if (code == KeyCode.LEFT || code == KeyCode.UP) {
            step(-1);
        } else if (code == KeyCode.RIGHT || code == KeyCode.DOWN) {
            step(1);
        } else if (code == KeyCode.HOME) {
            pickPlaced(placed.isEmpty() ? null : placed.get(0));
        } else if (code == KeyCode.END) {
            pickPlaced(placed.isEmpty() ? null : placed.get(placed.size() - 1));
        } else if (code == KeyCode.ENTER && pickedMark != null) {
            open();
        } else {
            return;
        }
        event.consume();
    }

    private void step(int by) {
        if (!placed.isEmpty()) {
            int at = IntStream.range(0, placed.size())
                    .filter(i -> placed.get(i).mark() == pickedMark)
                    .findFirst()
                    .orElse(by > 0 ? -1 : placed.size());
            pickPlaced(placed.get(Math.max(0, Math.min(placed.size() - 1, at + by))));
        }
    }

    private @Nullable PlacedMark<K> nearest(MouseEvent event) {
        return placed.stream()
                .filter(mark -> mark.distance(event.getX(), event.getY()) <= REACH_PX * em() / 12.5)
                .min(Comparator.comparingDouble(mark -> mark.distance(event.getX(), event.getY())))
                .orElse(null);
    }

    @Override
    protected void paint(Pen pen) {
        if (content == null) {
            return;
        }
        Paper paper = new Paper(pen, content.x(), content.y(), strip, content.flownLow(), content.flownHigh());
        Frame frame = paper.frame();
        paper.ground();
        content.below().forEach(layer -> layer.paint(frame));
        paper.axes();
        place(frame);
        placed.forEach(mark -> mark.paint(pen));
        content.above().forEach(layer -> layer.paint(frame));
    }

    @Override
    protected void paintOver(Pen pen) {
        for (PlacedMark<K> mark : placed) {
            if (mark.mark() == pickedMark) {
                mark.point(pen);
            }
        }
        if (isFocused()) {
            pen.stroke(Token.ACCENT, 2)
                    .outline(1, 1, pen.width() - 1, 1, pen.width() - 1, pen.height() - 1, 1, pen.height() - 1);
        }
    }

    private void place(Frame frame) {
        List<FlightMark<K>> shown = content == null ? List.of() : Decimation.thin(content.marks(), frame.x());
        double[] aside = Spread.offsets(shown);
        // a strip has one flight a unit: where they lie close they get smaller instead of covering each other
        double scale = strip
                ? Math.max(
                        LEAST_SCALE,
                        Math.min(1, frame.x().pxPerUnit() / frame.pen().px(10)))
                : 1;
        List<PlacedMark<K>> now = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            FlightMark<K> mark = shown.get(i);
            if (frame.x().holds(mark.x()) && frame.y().holds(mark.y())) {
                now.add(new PlacedMark<>(
                        mark, frame.px(mark.x()) + frame.pen().px(aside[i]), frame.py(mark.y()), scale));
            }
        }
        now.sort(Comparator.comparingDouble(PlacedMark::x));
        placed = List.copyOf(now);
    }

    /** Where the marks lie now, in the order of the arrow keys: for tests. */
    List<PlacedMark<K>> placed() {
        return placed;
    }
}
