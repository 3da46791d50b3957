package org.rafterbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own: what a shell sees of it. */
class ProgramTest {

    @TempDir
    Path home;

    private CommandRun run(List<String> options, Object... words) throws Exception {
        List<String> all = new ArrayList<>(options);
        all.add("-Duser.home=" + home);
        return CommandRun.asProcess(all, words);
    }

    @Test
    void commandsLoadNoJavaFx() throws Exception {
        Path classes = home.resolve("classes.txt");
        CommandRun flights = run(List.of("-Xlog:class+load:file=" + classes), "flights", "--demo", "--json");
        assertThat(flights.json().get("flights").size()).isEqualTo(224);
        assertThat(Files.readString(classes))
                .contains("org.rafterbook.work.Book ")
                .doesNotContain(" javafx.");
    }

    @Test
    void exitCodesTellBadInputFromWhatCouldNotBeDone() throws Exception {
        CommandRun bad = run(List.of(), "air", "--temperature", "21 apples", "--pressure", "1013hPa");
        assertThat(bad.code()).isEqualTo(2);
        assertThat(bad.err()).isNotEmpty().doesNotContain("\n");
        assertThat(bad.out()).isEmpty();
        Path file = Files.writeString(home.resolve("notes.rafterbook"), "not a logbook");
        CommandRun couldNot = run(List.of(), "check", "--logbook", file);
        assertThat(couldNot.code()).isNotZero();
        assertThat(couldNot.err()).isNotEmpty().doesNotContain("\n").doesNotContain("Exception");
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void withoutADisplayTheReviewIsPrintedAndNoLogbookIsMade() throws Exception {
        CommandRun text = run(List.of("-Dglass.platform=gtk"));
        assertThat(text.err()).isEmpty();
        assertThat(text.code()).isZero();
        assertThat(text.out().lines())
                .first()
                .isEqualTo("There is no display here, so the review is printed instead of a window.");
        assertThat(text.out()).contains("Marram", "Quire", "Teasel", "Same-day comparison");
        assertThat(home.resolve("Documents")).doesNotExist();
    }
}
