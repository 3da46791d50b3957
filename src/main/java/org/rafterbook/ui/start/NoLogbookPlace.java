package org.rafterbook.ui.start;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.shell.Logbooks;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;

/** Stands in every place while no logbook is open: why that is so, that nothing was harmed, and what can be done. */
public final class NoLogbookPlace implements Place {

    private final ReadOnlyObjectWrapper<Keys> keys;
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("Rafterbook");
    private final VBox page;

    /**
     * @param why one sentence with the file
     */
    public NoLogbookPlace(Tools tools, String why, FirstSteps steps, Logbooks logbooks) {
        Keys own = tools.keys();
        Action again = own.action("Try again", steps::tryAgain);
        Action open = own.on("O", "Open a logbook", logbooks::openAnother);
        Action make = own.on("N", "Make a new logbook", logbooks::makeNew);
        Action demo = own.action("Open the demo", logbooks::openDemo);
        Offers offers = new Offers(
                own,
                List.of(
                        Words.head("The logbook is not open."),
                        Words.body(why),
                        Words.aside("Nothing in the file was changed.")),
                List.of(
                        new OfferRow(
                                own.on("1", "Try it again", again::run),
                                "Try it again",
                                "Once what is in the way is gone: the other window closed, the file free to be written"
                                        + " to.",
                                again),
                        new OfferRow(
                                own.on("2", "Open another logbook", open::run),
                                "Open another logbook",
                                "A copy made with backup is a logbook too.",
                                open),
                        new OfferRow(
                                own.on("3", "Begin a new logbook", make::run),
                                "Begin a new logbook",
                                "In a file of its own, so that flights can be timed now.",
                                make),
                        new OfferRow(
                                own.on("4", "Look round the demo season", demo::run),
                                "Look round the demo season",
                                "About 220 invented flights, in a logbook of its own.",
                                demo)));
        own.on("Enter", "Do what is picked", offers::run);
        own.hint("1 … 4", "choose");
        own.hint("Enter", "do it");
        keys = new ReadOnlyObjectWrapper<>(own);
        Sheet sheet = new Sheet();
        sheet.add(offers);
        page = Lay.styled(Lay.column(0, sheet), "page");
    }

    @Override
    public Node node() {
        return page;
    }

    @Override
    public ObservableValue<Keys> keys() {
        return keys.getReadOnlyProperty();
    }

    @Override
    public ObservableValue<String> title() {
        return title.getReadOnlyProperty();
    }

    @Override
    public ObservableValue<String> subtitle() {
        return Place.always("no logbook is open");
    }
}
