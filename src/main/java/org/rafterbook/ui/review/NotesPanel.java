package org.rafterbook.ui.review;

import javafx.collections.FXCollections;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.ReviewPoint;

/** The picked flight in a line, and the notes of its version or those that contain what is searched for. */
final class NotesPanel extends VBox {

    private static final int SHORT = 60;

    private final ReviewModel model;
    private final Label caption = Words.hint("");
    private final Label flight = Words.prose("");
    private final Label own = Words.prose("");
    private final TextField search = new TextField();
    private final ListView<ReviewPoint> list = new ListView<>();
    private final Label none = Words.hint("");
    private final HBox picked;
    private boolean filling;

    /**
     * @param different puts right that the picked flight flew otherwise than recorded
     */
    NotesPanel(ReviewModel model, Action different) {
        this.model = model;
        getStyleClass().addAll("notes", "gap-4");
        search.setPromptText("search all notes");
        search.setAccessibleText("Search all notes");
        search.textProperty().bindBidirectional(model.searchProperty());
        search.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.DOWN) {
                goToList();
                event.consume();
            }
        });
        list.setCellFactory(any -> new NoteCell());
        list.setPlaceholder(none);
        list.setAccessibleText("Notes");
        list.setMinSize(0, 0);
        list.getSelectionModel().selectedItemProperty().subscribe(point -> {
            if (!filling && point != null) {
                model.flightProperty().set(point);
            }
        });
        flight.setMinHeight(USE_PREF_SIZE);
        flight.setMinWidth(0);
        own.setMinWidth(0);
        own.setMinHeight(USE_PREF_SIZE);
        picked = Lay.row(8, Lay.grow(Lay.column(0, flight, own)), Buttons.secondary(different));
        picked.setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(Lay.row(8, search, Lay.space(), caption), picked, Lay.grow(list));
        model.part(this::find, model.flightProperty(), model.changeProperty(), model.searchProperty());
    }

    void search() {
        search.requestFocus();
        search.selectAll();
    }

    boolean isSearching() {
        return search.isFocused();
    }

    /** Goes from the search into what it found; false where the cursor was not in the search. */
    boolean leaveSearch() {
        if (!search.isFocused()) {
            return false;
        }
        goToList();
        return true;
    }

    private void goToList() {
        if (!list.getItems().isEmpty()) {
            list.requestFocus();
            list.getSelectionModel().selectFirst();
        }
    }

    private void find() {
        model.findNotes(this::fill);
    }

    private void fill(NotesFound notes) {
        caption.setText(notes.caption());
        none.setText(notes.none());
        ReviewPoint point = model.flightProperty().get();
        flight.setText(point == null ? "" : FlightWords.line(point));
        String note = point == null ? null : point.flight().notes();
        own.setText(note == null || note.isBlank() ? "" : quoted(note));
        Lay.show(own, !own.getText().isEmpty());
        Lay.show(picked, point != null);
        filling = true;
        if (!list.getItems().equals(notes.flights())) {
            list.setItems(FXCollections.observableArrayList(notes.flights()));
        }
        int at = point == null ? -1 : notes.flights().indexOf(point);
        if (at >= 0) {
            list.getSelectionModel().select(at);
            list.scrollTo(at);
        } else {
            list.getSelectionModel().clearSelection();
        }
        filling = false;
    }

    private static String quoted(String note) {
        return "\u201c" + note + "\u201d";
    }

    /** A note with when it was made and its flight's time. */
    private final class NoteCell extends ListCell<ReviewPoint> {

        private final Label when = Words.small("");
        private final Label note = Words.body("");
        private final HBox row = Lay.baseline(8, when, note);
        private final Tooltip whole = new Tooltip();

        private NoteCell() {
            when.setMinWidth(USE_PREF_SIZE);
            note.setMinWidth(0);
            row.setMinWidth(0);
            row.prefWidthProperty().bind(list.widthProperty().subtract(30));
        }

        @Override
        protected void updateItem(@Nullable ReviewPoint item, boolean empty) {
            super.updateItem(item, empty);
            setText(null);
            if (empty || item == null) {
                setGraphic(null);
                setTooltip(null);
                return;
            }
            String words = quoted(String.valueOf(item.flight().notes()));
            when.setText(FlightWords.when(item) + ", " + FlightWords.time(item));
            note.setText(words);
            whole.setText(words);
            setGraphic(row);
            setTooltip(words.length() > SHORT ? whole : null);
        }
    }
}
