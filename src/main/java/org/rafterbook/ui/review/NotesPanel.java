package org.rafterbook.ui.review;

import java.util.List;
import javafx.collections.FXCollections;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.kit.KeyCap;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewPoint;

/** The picked flight in a line, and the notes of its version or those that contain what is searched for. */
final class NotesPanel extends VBox {

    private final ReviewModel model;
    private final Label caption = Words.caption("Notes");
    private final Label aside = Words.hint("");
    private final Label flight = Words.prose("");
    private final TextField search = new TextField();
    private final ListView<ReviewPoint> list = new ListView<>();
    private boolean filling;

    NotesPanel(ReviewModel model) {
        this.model = model;
        getStyleClass().addAll("section", "notes");
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
        list.setPlaceholder(Words.hint(""));
        list.setAccessibleText("Notes");
        list.getSelectionModel().selectedItemProperty().subscribe(point -> {
            if (!filling && point != null) {
                model.flightProperty().set(point);
            }
        });
        flight.setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(Lay.row(8, caption, aside, Lay.space(), search), flight, Lay.grow(list));
        model.answerProperty().subscribe(this::fill);
        model.flightProperty().subscribe(this::fill);
        model.changeProperty().subscribe(this::fill);
        model.searchProperty().subscribe(this::fill);
    }

    /** Shows the key that puts the cursor into the search. */
    NotesPanel key(Action action) {
        ((javafx.scene.layout.HBox) getChildren().get(0)).getChildren().add(new KeyCap(action.key()));
        action.at(search);
        return this;
    }

    void search() {
        search.requestFocus();
        search.selectAll();
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

    private void fill() {
        ModelReview answer = model.answerProperty().get();
        List<ReviewPoint> notes = model.notes();
        String wanted = model.searchProperty().get().strip();
        String version = model.notedVersion()
                .map(v -> answer == null ? "" : answer.versionNames().getOrDefault(v, ""))
                .orElse("");
        caption.setText(wanted.isEmpty() ? version.isEmpty() ? "Notes" : "Notes on " + version : "Notes found");
        aside.setText(notes.size() + " of " + model.allNotes());
        ReviewPoint picked = model.flightProperty().get();
        flight.setText(picked == null ? "" : FlightWords.line(picked));
        Lay.show(flight, picked != null);
        ((Label) list.getPlaceholder())
                .setText(
                        !wanted.isEmpty()
                                ? "No note contains \"" + wanted + "\"."
                                : version.isEmpty()
                                        ? "Notes of flights stand here."
                                        : "Nothing was noted on " + version + ".");
        filling = true;
        if (!list.getItems().equals(notes)) {
            list.setItems(FXCollections.observableArrayList(notes));
        }
        if (picked != null && notes.contains(picked)) {
            list.getSelectionModel().select(picked);
            list.scrollTo(notes.indexOf(picked));
        } else {
            list.getSelectionModel().clearSelection();
        }
        filling = false;
    }

    /** A note with when it was made and its flight's time. */
    private final class NoteCell extends ListCell<ReviewPoint> {

        @Override
        protected void updateItem(@Nullable ReviewPoint item, boolean empty) {
            super.updateItem(item, empty);
            setText(null);
            if (empty || item == null) {
                setGraphic(null);
                return;
            }
            Label when = Words.small(FlightWords.when(item) + ", " + FlightWords.time(item));
            when.setMinWidth(USE_PREF_SIZE);
            Label note = Words.body("\u201c" + item.flight().notes() + "\u201d");
            note.setMinWidth(0);
            var row = Lay.baseline(8, when, note);
            row.setMinWidth(0);
            row.prefWidthProperty().bind(list.widthProperty().subtract(30));
            setGraphic(row);
            setTooltip(note.getText().length() > 60 ? new javafx.scene.control.Tooltip(note.getText()) : null);
        }
    }
}
