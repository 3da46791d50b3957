package org.rafterbook.ui.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.look.EmRegion;

/**
 * The one table: small quiet head with the unit in it, rows of 28 px on hairlines, numbers right, nothing edited inside.
 * Column widths are in em; some may grow.
 *
 * <pre>
 * Table&lt;Row&gt; table = new Table&lt;&gt;("flights of this evening");
 * table.node("version", 5, row -&gt; Table.marked(row.mark(), row.version()));
 * table.number("torque", "N·mm", 4, Row::torque);
 * table.text("aim", 10, Row::aim).grow();
 * table.rows(rows);
 * </pre>
 */
public final class Table<R> extends EmRegion {

    private static final String FITS = "fits-across";
    private static final String TWO_LINES = "two-lines";
    private static final double ONE_LINE_EM = 2.16;
    private static final double TWO_LINES_EM = 3.2;
    private static final double SCROLL_BAR_EM = 0.9;

    private final TableView<R> view = new TableView<>();
    private final List<Column> columns = new ArrayList<>();
    private double rowEm = 2.24;
    private int mostRows;

    /**
     * @param says what the table holds, for accessible text and, with "No" before it, for the empty table
     */
    public Table(String says) {
        view.setAccessibleText(says);
        view.setPlaceholder(Words.hint("No " + says.toLowerCase(Locale.ROOT) + "."));
        view.setColumnResizePolicy(TableView.UNCONSTRAINED_RESIZE_POLICY);
        getStyleClass().add("table");
        getChildren().add(view);
    }

    /** Higher rows, for cells of two lines. */
    public Table<R> rowHeight(double em) {
        rowEm = em;
        view.setFixedCellSize(rowPx());
        return this;
    }

    /** What stands where there are no rows. */
    public Table<R> ifEmpty(String sentence) {
        view.setPlaceholder(Words.hint(sentence));
        return this;
    }

    /** A column of text. */
    public Column text(String head, double widthEm, Function<? super R, String> value) {
        return add(new Column(head, widthEm, cell(row -> null, value)));
    }

    /** A column of numbers, right, with the unit in the head (empty for none). */
    public Column number(String head, String unit, double widthEm, Function<? super R, String> value) {
        String title = unit.isEmpty() ? head : head + "\n" + unit;
        return text(title, widthEm, value).styled("number");
    }

    /** A column of nodes, such as a mark with a name; made anew for each row shown. */
    public Column node(String head, double widthEm, Function<? super R, ? extends @Nullable Node> maker) {
        return add(new Column(head, widthEm, cell(maker, row -> "")));
    }

    private void twoLines() {
        if (!view.getStyleClass().contains(TWO_LINES)) {
            view.getStyleClass().add(TWO_LINES);
        }
    }

    private Column add(Column column) {
        if (column.column.getText().contains("\n")) {
            twoLines();
        }
        columns.add(column);
        view.getColumns().add(column.column);
        return column;
    }

    private Function<TableColumn<R, R>, TableCell<R, R>> cell(
            Function<? super R, ? extends @Nullable Node> maker, Function<? super R, String> value) {
        return column -> new TableCell<>() {
            @Override
            protected void updateItem(@Nullable R row, boolean empty) {
                super.updateItem(row, empty);
                boolean blank = empty || row == null;
                setText(blank ? null : value.apply(row));
                setGraphic(blank ? null : maker.apply(row));
            }
        };
    }

    /** Shows these rows; what was selected stays so if it is among them. */
    public Table<R> rows(List<? extends R> rows) {
        R selected = selected();
        view.setItems(FXCollections.observableArrayList(rows));
        if (selected != null && rows.contains(selected)) {
            view.getSelectionModel().select(selected);
        }
        return this;
    }

    /** The rows shown. */
    public ObservableList<R> rows() {
        return view.getItems();
    }

    public @Nullable R selected() {
        return view.getSelectionModel().getSelectedItem();
    }

    public ReadOnlyObjectProperty<@Nullable R> selectedProperty() {
        return view.getSelectionModel().selectedItemProperty();
    }

    /** Selects a row and brings it into sight. */
    public void select(R row) {
        view.getSelectionModel().select(row);
        view.scrollTo(row);
    }

    /** Called with a row on a double click or Enter. */
    public Table<R> onOpen(Consumer<? super R> taker) {
        view.setOnMouseClicked(event -> {
            R row = selected();
            if (event.getClickCount() == 2 && row != null) {
                taker.accept(row);
            }
        });
        view.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            R row = selected();
            if (event.getCode() == KeyCode.ENTER && row != null) {
                taker.accept(row);
                event.consume();
            }
        });
        return this;
    }

    /** The control itself, for focus and tests. */
    public TableView<R> view() {
        return view;
    }

    /** A mark or other small node with a name beside it, for {@link #node}. */
    public static Node marked(Node mark, String name) {
        return Lay.row(8, mark, Words.body(name));
    }

    /** Makes the table as high as its rows, for short ones that never scroll. */
    public Table<R> asHighAsItsRows() {
        // laid out once before it has grown, each of the two bars would stay for the room the other takes
        view.getStyleClass().add("whole-rows");
        return asHighAsItsRows(Integer.MAX_VALUE);
    }

    /** Makes the table as high as its rows but no higher than so many, beyond which it scrolls. */
    public Table<R> asHighAsItsRows(int most) {
        view.itemsProperty().subscribe(items -> requestLayout());
        mostRows = most;
        return this;
    }

    @Override
    protected double computePrefHeight(double width) {
        return mostRows > 0
                ? headPx() + rowPx() * Math.max(1, Math.min(mostRows, rows().size())) + 2
                : view.prefHeight(width);
    }

    @Override
    protected double computeMinHeight(double width) {
        return mostRows > 0 ? computePrefHeight(width) : headPx() + rowPx();
    }

    @Override
    protected double computePrefWidth(double height) {
        return columns.stream().mapToDouble(column -> column.widthEm).sum() * em();
    }

    @Override
    protected void restyled() {
        view.setFixedCellSize(rowPx());
        super.restyled();
    }

    private double rowPx() {
        return Math.round(rowEm * em());
    }

    private double headPx() {
        return (view.getStyleClass().contains(TWO_LINES) ? TWO_LINES_EM : ONE_LINE_EM) * em();
    }

    @Override
    protected void layoutChildren() {
        boolean scrolls = headPx() + rowPx() * rows().size() > getHeight() + 1;
        double room = Math.floor(getWidth() - (scrolls ? SCROLL_BAR_EM * em() : 0)) - 1;
        double fixed = columns.stream().mapToDouble(this::widthPx).sum();
        double spare = Math.max(0, room - fixed)
                / columns.stream().mapToDouble(c -> c.share).sum();
        for (Column column : columns) {
            column.column.setPrefWidth(widthPx(column) + (column.share > 0 ? column.share * spare : 0));
        }
        boolean fits = fixed <= room;
        if (fits != view.getStyleClass().contains(FITS)) {
            if (fits) {
                view.getStyleClass().add(FITS); // a bar that came while the columns were wider would stay
            } else {
                view.getStyleClass().remove(FITS);
            }
        }
        view.resizeRelocate(0, 0, getWidth(), getHeight());
    }

    /** Whole pixels, so that the sum does not outgrow the table by a rounding. */
    private double widthPx(Column column) {
        return !column.column.isVisible() ? 0 : Math.floor(column.widthEm * em());
    }

    /** A column, to be refined while the table is built. */
    public final class Column {

        private final TableColumn<R, R> column;
        private final double widthEm;
        private double share;

        private Column(String head, double widthEm, Function<TableColumn<R, R>, TableCell<R, R>> cells) {
            this.widthEm = widthEm;
            column = new TableColumn<>(head);
            column.setSortable(false);
            column.setReorderable(false);
            column.setResizable(true);
            column.setCellValueFactory(row -> new SimpleObjectProperty<>(row.getValue()));
            column.setCellFactory(cells::apply);
        }

        /** Adds a style class: {@code number}, {@code strong}, {@code time} or {@code quiet}. */
        public Column styled(String styleClass) {
            column.getStyleClass().add(styleClass);
            return this;
        }

        /** Takes what room is left. */
        public Column grow() {
            return grow(1);
        }

        /** Takes its share of what room is left, beside other columns that grow. */
        public Column grow(double ofTheRoom) {
            share = ofTheRoom;
            return this;
        }

        /** Shows the column, or leaves its room to the others. */
        public void show(boolean shown) {
            column.setVisible(shown);
            requestLayout();
        }

        /** A node in the head instead of its text, such as the scale of interval bars. */
        public Column head(Node node) {
            twoLines();
            column.setGraphic(node);
            column.setText("");
            return this;
        }

        /** The table, to go on building. */
        public Table<R> and() {
            return Table.this;
        }
    }
}
