package org.rafterbook.ui.bench;

import java.util.List;
import org.rafterbook.exchange.AirframeSheets;
import org.rafterbook.ui.shell.Dialogs;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Rigged;

/** Airframe sheets from and to files. */
final class SheetFiles {

    private static final Dialogs.FileKind KIND = new Dialogs.FileKind("Airframe sheet", List.of("*.json"));

    private final BenchContext context;

    SheetFiles(BenchContext context) {
        this.context = context;
    }

    /** Takes a sheet in; its model comes on the bench. */
    void read() {
        context.tools()
                .dialogs()
                .open("Airframe sheet", KIND)
                .ifPresent(file -> context.model()
                        .enter(
                                progress -> context.book().sheets().take(AirframeSheets.read(file)),
                                (Rigged taken) -> context.model().choose(taken.model())));
    }

    /** Writes the version looked at. */
    void write() {
        BenchDesk.Bench bench = context.model().bench().get();
        if (bench == null) {
            return;
        }
        Rigged shown = BenchModel.shown(bench);
        String name = shown.model().name() + " " + shown.name() + ".json";
        context.tools()
                .dialogs()
                .save("Write an airframe sheet", name, KIND)
                .ifPresent(file -> context.model()
                        .background()
                        .call(progress ->
                                context.book().sheets().write(shown.version().id(), file))
                        .then(written -> context.tools().kept().say(written + " written")));
    }
}
