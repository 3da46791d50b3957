package org.rafterbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.airframe.Model;
import org.rafterbook.logbook.Mode;
import org.rafterbook.work.Book;

class JoinCommandTest {

    @TempDir
    Path folder;

    private Path file(String name) {
        return folder.resolve(name + ".rafterbook");
    }

    private void fly(String logbook, String model, String day) throws IOException {
        Path table = Files.writeString(
                folder.resolve(logbook + model + day + ".csv"),
                "model,session_date,duration_s,motor,turns_wound\n" + model + "," + day + ",521," + model + "1,1800\n");
        CommandRun.of("import", "--logbook", file(logbook), table).done();
    }

    private CommandRun join(String logbook, String other) {
        return CommandRun.of("join", "--logbook", file(logbook), file(other), "--json");
    }

    @Test
    void whatIsNewIsAddedOnceAndOneUndoTakesItBack() throws IOException {
        fly("a", "Teasel", "2025-10-28");
        fly("b", "Marram", "2025-11-04");
        assertThat(join("a", "b").json().get("added").get("flight").asInt()).isEqualTo(1);
        assertThat(CommandRun.of("check", "--logbook", file("a")).code()).isZero();
        assertThat(CommandRun.of("flights", "--logbook", file("a"), "--json")
                        .json()
                        .get("flights"))
                .hasSize(2);
        assertThat(join("a", "b").json().get("added")).isEmpty();
        try (Book book = Book.open(file("a"), Mode.EXISTING, OneEvening.CLOCK)) {
            assertThat(book.undo().why()).isEqualTo("joining of b.rafterbook");
            assertThat(book.riggings().models()).extracting(Model::name).containsExactly("Teasel");
        }
        assertThat(join("a", "b").json().get("added").get("flight").asInt()).isEqualTo(1);
    }

    @Test
    void aCopyThatWentOnWithAnotherModelIsJoined() throws IOException {
        fly("a", "Teasel", "2025-10-28");
        CommandRun.of("backup", "--logbook", file("a"), "--to", file("b")).done();
        fly("b", "Marram", "2025-11-04");
        assertThat(join("a", "b").json().get("added").get("model").asInt()).isEqualTo(1);
    }

    @Test
    void whatIsNotAlikeIsRefusedWholeWithASentence() throws IOException {
        fly("a", "Teasel", "2025-10-28");
        CommandRun.of("backup", "--logbook", file("a"), "--to", file("b")).done();
        try (Book book = Book.open(file("b"), Mode.EXISTING, OneEvening.CLOCK)) {
            String model = book.riggings().models().get(0).id();
            book.bench().classes().wish(model, 0.05, 0.1);
            book.riggings().addModel("Quire");
        }
        CommandRun refused = join("a", "b");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err())
                .isEqualTo("The model 'Teasel' is not alike in the two logbooks (wished low). Nothing was taken in.");
        try (Book book = Book.open(file("a"), Mode.EXISTING, OneEvening.CLOCK)) {
            assertThat(book.riggings().models()).hasSize(1);
        }
    }

    @Test
    void twoModelsOfOneNameAreRefused() throws IOException {
        fly("a", "Teasel", "2025-10-28");
        fly("b", "Teasel", "2025-11-04");
        CommandRun refused = join("a", "b");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).startsWith("The model 'Teasel' of the other logbook cannot be taken in: ");
    }

    @Test
    void copiesThatBothWentOnWithOneMotorAreRefused() throws IOException {
        fly("a", "Teasel", "2025-10-28");
        CommandRun.of("backup", "--logbook", file("a"), "--to", file("b")).done();
        fly("a", "Teasel", "2025-11-04");
        fly("b", "Teasel", "2025-11-11");
        CommandRun refused = join("a", "b");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("went on separately with the motor Teasel1 (wind 2)");
    }

    @Test
    void aLogbookIsNotJoinedWithItself() throws IOException {
        fly("a", "Teasel", "2025-10-28");
        assertThat(join("a", "a").err()).isEqualTo("That is the same logbook.");
        assertThat(join("a", "none").code()).isNotZero();
    }
}
