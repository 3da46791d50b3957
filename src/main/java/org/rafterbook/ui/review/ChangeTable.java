package org.rafterbook.ui.review;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.Comparison;
import org.rafterbook.review.HandlingSummary;
import org.rafterbook.ui.kit.EffectWordView;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewChange;
import org.rafterbook.work.ReviewWords;

/** Every pair of values that were changed into each other: how they were compared, the interval and the word. */
final class ChangeTable extends TableView<ReviewChange> {

    private final ReviewModel model;
    private boolean filling;
    private double em = 12.5;

    ChangeTable(ReviewModel model) {
        this.model = model;
        getStyleClass().add("change-table");
        setAccessibleText("Trim changes compared");
        setColumnResizePolicy(UNCONSTRAINED_RESIZE_POLICY);
        Label none =
                Words.prose("No setting was changed yet, so there is nothing to compare. Change one in the Hall and"
                        + " fly both values on one day, turn about: two flights of each are the least.");
        none.setMaxWidth(460);
        setPlaceholder(none);
        model.answerProperty().subscribe(this::fill);
        getSelectionModel().selectedItemProperty().subscribe(change -> {
            if (!filling && change != null) {
                model.changeProperty().set(change);
            }
        });
        model.changeProperty().subscribe(this::select);
        widthProperty().subscribe(() -> em(em));
    }

    private void select(@Nullable ReviewChange change) {
        if (change != null && change != getSelectionModel().getSelectedItem()) {
            filling = true;
            getSelectionModel().select(change);
            filling = false;
        }
    }

    private void fill(@Nullable ModelReview answer) {
        filling = true;
        List<ReviewChange> changes = answer == null ? List.of() : answer.changes();
        double reach = ForestBar.reach(changes);
        double usual = model.usualTimeS();
        java.util.Map<Integer, String> names = answer == null ? java.util.Map.of() : answer.versionNames();
        getColumns()
                .setAll(List.of(
                        column("what changed", 9.9, ChangeTable::title),
                        column("from, to", 8.5, c -> pair(c, names)),
                        column("compared", 8.5, c -> Words.body(c.comparison().word())),
                        column(
                                Double.isNaN(usual)
                                        ? "effect"
                                        : "effect, and at\nusual time " + ReviewWords.time(usual),
                                8.1,
                                c -> effect(c, usual)),
                        forest(reach),
                        column("in words", 12.3, c -> new EffectWordView(c.word())),
                        column(
                                "upsets\nrecovered",
                                9.5,
                                c -> Words.body(recovered(c.handlingFrom()) + ", " + recovered(c.handlingTo())))));
        em(em);
        setItems(FXCollections.observableArrayList(changes));
        filling = false;
    }

    private static TableColumn<ReviewChange, ReviewChange> column(
            String head, double widthEm, Function<ReviewChange, Node> draw) {
        TableColumn<ReviewChange, ReviewChange> column = new TableColumn<>(head);
        column.setUserData(widthEm);
        column.setSortable(false);
        column.setReorderable(false);
        column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue()));
        column.setCellFactory(any -> new DrawnCell(draw));
        return column;
    }

    private static TableColumn<ReviewChange, ReviewChange> forest(double reach) {
        TableColumn<ReviewChange, ReviewChange> column = column("", 8.3, c -> new ForestBar(c, reach));
        ForestBar axis = ForestBar.axis(reach);
        axis.prefWidthProperty().bind(column.widthProperty().subtract(2));
        column.setGraphic(axis);
        column.getStyleClass().add("forest");
        column.setCellFactory(any -> {
            DrawnCell cell = new DrawnCell(c -> {
                ForestBar bar = new ForestBar(c, reach);
                bar.prefWidthProperty().bind(column.widthProperty().subtract(2));
                return bar;
            });
            cell.getStyleClass().add("forest");
            return cell;
        });
        return column;
    }

    /** Sets the columns' widths, which are kept in em, for this text size. */
    void em(double px) {
        em = px;
        double total = 0;
        for (TableColumn<ReviewChange, ?> column : getColumns()) {
            total += (Double) column.getUserData() * px;
        }
        // a little room is left for the bar that scrolls down, so that none is needed across
        double fit = getWidth() > 0 ? Math.min(1, (getWidth() - px - 2) / total) : 1;
        for (TableColumn<ReviewChange, ?> column : getColumns()) {
            column.setPrefWidth((Double) column.getUserData() * px * fit);
        }
    }

    private static Node title(ReviewChange change) {
        var both = Lay.column(
                0,
                Words.bold(change.setting().label()),
                Words.small(ReviewWords.value(change, change.to()) + ", was "
                        + change.from().label()));
        both.setAlignment(Pos.CENTER_LEFT);
        return both;
    }

    private static Node pair(ReviewChange change, java.util.Map<Integer, String> names) {
        var row = Lay.row(
                4,
                new VersionSign(change.fromVersion()),
                Words.body(names.getOrDefault(change.fromVersion(), "") + " →"),
                new VersionSign(change.toVersion()),
                Words.body(names.getOrDefault(change.toVersion(), "")));
        var both = Lay.column(0, row, Words.hint("n = " + change.flightsFrom() + ", " + change.flightsTo()));
        both.setAlignment(Pos.CENTER_LEFT);
        return both;
    }

    private static String recovered(HandlingSummary handling) {
        return handling.recovered().isKnown() ? handling.recovered().counts() : "–";
    }

    private static Node effect(ReviewChange change, double usual) {
        Double effect = change.effectPercent();
        if (effect == null) {
            return Words.hint("–");
        }
        boolean joint = change.comparison() == Comparison.MOVED_TOGETHER;
        Label percent = Words.bold((joint ? "both " : "") + ReviewWords.percent(effect));
        if (Double.isNaN(usual) || joint) {
            return percent;
        }
        long seconds = Math.round(usual * effect / 100);
        String time = (seconds > 0 ? "+" : seconds < 0 ? "−" : "") + ReviewWords.time(Math.abs(seconds));
        return Lay.row(4, percent, Words.body(time));
    }

    /** A cell that draws its row's change. */
    private static final class DrawnCell extends TableCell<ReviewChange, ReviewChange> {

        private final Function<ReviewChange, Node> draw;

        private DrawnCell(Function<ReviewChange, Node> draw) {
            this.draw = draw;
        }

        @Override
        protected void updateItem(ReviewChange item, boolean empty) {
            super.updateItem(item, empty);
            setText(null);
            setGraphic(empty || item == null ? null : draw.apply(item));
        }
    }
}
