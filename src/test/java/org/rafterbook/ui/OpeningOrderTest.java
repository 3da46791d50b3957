package org.rafterbook.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.work.OpenedBook;
import org.rafterbook.work.Shelf;

@FxTest
class OpeningOrderTest {

    @TempDir
    Path folder;

    @Test
    void ofSeveralOpeningsAskedForDuringAnotherTheLastIsMadeAfterIt() {
        WaitingBackground waiting = new WaitingBackground();
        Opening opening = new Opening(new FxBackground(waiting, Runnable::run, new Errors()), () -> {});
        Shelf shelf = new Shelf(folder.resolve("own.rafterbook"), OneEvening.CLOCK);
        List<String> opened = new ArrayList<>();
        for (String name : List.of("a", "b", "c")) {
            opening.start(
                    progress -> shelf.make(folder.resolve(name + ".rafterbook")),
                    book -> opened.add(name + close(book)),
                    failure -> opened.add(name + " refused"));
        }
        waiting.run();
        assertThat(opened).containsExactly("a", "c");
    }

    private static String close(OpenedBook opened) {
        opened.book().close();
        return "";
    }
}
