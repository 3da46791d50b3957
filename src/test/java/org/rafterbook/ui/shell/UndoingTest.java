package org.rafterbook.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.logbook.Mode;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.work.Book;

@FxTest
class UndoingTest {

    @TempDir
    Path folder;

    private final Tools tools = Fx.tools();
    private Book book;
    private Subscription following;

    @BeforeEach
    void open() {
        book = Book.open(folder.resolve("a.rafterbook"), Mode.CREATE, OneEvening.CLOCK);
        book.motors().addBatch("B1");
        following = Undoing.of(tools, book);
    }

    @AfterEach
    void close() {
        book.close();
    }

    @Test
    void whatWasThereAlreadyCanBeUndone() {
        assertThat(tools.kept().undoesProperty().get()).isEqualTo("batch B1");
        assertThat(tools.kept().saysProperty().get()).isEmpty();
    }

    @Test
    void eachEntryIsToldAndUndoSaysWhatItUndid() {
        book.motors().addBatch("B2");
        assertThat(tools.kept().saysProperty().get()).startsWith("kept ");
        assertThat(tools.kept().undoesProperty().get()).isEqualTo("batch B2");
        tools.kept().undo();
        assertThat(tools.kept().saysProperty().get()).isEqualTo("undone: batch B2");
        assertThat(tools.kept().undoesProperty().get()).isEqualTo("batch B1");
        tools.kept().undo();
        assertThat(tools.kept().undoesProperty().get()).isEmpty();
        assertThat(book.motors().load().batches()).isEmpty();
    }

    @Test
    void anotherLogbookIsNoLongerFollowed() {
        following.cancel();
        book.motors().addBatch("B2");
        assertThat(tools.kept().undoesProperty().get()).isEqualTo("batch B1");
    }
}
