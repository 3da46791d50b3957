package org.rafterbook.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Press;
import org.rafterbook.ui.hall.FirstReading;
import org.rafterbook.ui.imports.ImportPlace;
import org.rafterbook.ui.shell.Dialogs;
import org.rafterbook.ui.shell.Logbooks;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.PlaceId;
import org.rafterbook.ui.shell.Shell;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.ui.start.Choices;
import org.rafterbook.ui.start.ChoicesPlace;
import org.rafterbook.ui.start.FirstSteps;
import org.rafterbook.ui.start.NoLogbookPlace;
import org.rafterbook.ui.start.StartPlace;
import org.rafterbook.ui.start.WaitingPlace;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Job;
import org.rafterbook.work.OpenedBook;
import org.rafterbook.work.ScreenChoices;
import org.rafterbook.work.Shelf;
import org.rafterbook.work.Watches;

/** What is in a window: the logbook open in it, its places, and the way to another logbook. */
final class OpenWindow implements Logbooks, FirstSteps {

    private static final Dialogs.FileKind LOGBOOK = new Dialogs.FileKind("Logbooks", List.of("*.rafterbook"));
    private static final String NEW_NAME = "flights.rafterbook";

    private final Shelf shelf;
    private final Tools tools;
    private final Supplier<FxBackground> backgrounds;
    private final Opening opening;
    private final Choices choices;
    private final Watches watches = new Watches();
    private final Deque<Consumer<BookInWindow>> waiting = new ArrayDeque<>();
    private final Shell shell;
    private final LogbookHead head;
    private final Action again;
    private @Nullable Path last;
    private @Nullable BookInWindow open;
    private @Nullable String refusal;
    private List<String> namedAsLost = List.of();

    /**
     * @param tools with a background for opening and closing logbooks
     * @param backgrounds makes the background of one logbook
     * @param title is told what the window is called
     */
    OpenWindow(Shelf shelf, Tools tools, Supplier<FxBackground> backgrounds, Consumer<String> title, Outset outset) {
        this.shelf = shelf;
        this.tools = tools;
        this.backgrounds = backgrounds;
        this.opening = new Opening(tools.background(), this::nameIt);
        this.choices = new Choices(tools.look(), this::keep);
        this.refusal = outset.refused() == null ? null : outset.refused().sentence();
        Outset.Own own = outset.own();
        if (own != null) {
            choices.wear(own.opened().choices());
            open = new BookInWindow(own.opened(), own.today(), tools.on(backgrounds.get()), this, watches);
        }
        Map<PlaceId, Supplier<? extends Place>> makers = new EnumMap<>(PlaceId.class);
        for (PlaceId id : PlaceId.values()) {
            makers.put(id, () -> make(id));
        }
        shell = new Shell(tools, makers);
        Action another = shell.everywhere().on("Ctrl+O", "Open another logbook", this::openAnother);
        Action mine = shell.everywhere().on("Ctrl+Shift+O", "My logbook", this::openOwn);
        again = shell.everywhere().on("Ctrl+Shift+L", "The logbook opened last", this::openLast);
        again.enabledProperty().set(false);
        head = new LogbookHead(shell, title, another, mine, again);
        shell.everywhere().on("Ctrl+Shift+N", "Make a new logbook", this::makeNew);
        shell.everywhere()
                .on(
                        "Ctrl+Shift+U",
                        "Name, units, look",
                        () -> shell.show(new ChoicesPlace(tools, choices, shell::back)));
        nameIt();
        findLast();
        follow();
        choices.unitsProperty().subscribe((before, now) -> remake());
    }

    Shell shell() {
        return shell;
    }

    /** Makes the flyer's own logbook where there is none yet: after the first frame, since it takes a second. */
    void makeOwn() {
        if (open == null && refusal == null) {
            open(progress -> shelf.openOwn());
        }
    }

    /** Makes the places that take long to make before they are visited. */
    void prepare() {
        BookInWindow book = open;
        DisplayUnits units = choices.unitsProperty().get();
        if (book != null) {
            book.prepare(
                    units,
                    (id, place) ->
                            book == open && units.equals(choices.unitsProperty().get()) && shell.prepare(id, place));
        }
    }

    // ---- Places ----

    private Place make(PlaceId id) {
        BookInWindow book = open;
        if (book != null) {
            return id == PlaceId.HALL && book.isFresh()
                    ? firstStart()
                    : book.place(id, choices.unitsProperty().get());
        }
        if (refusal != null) {
            return new NoLogbookPlace(tools, refusal, this, this);
        }
        return id == PlaceId.HALL ? firstStart() : new WaitingPlace(tools);
    }

    private Place firstStart() {
        return new StartPlace(tools, this, this, choices);
    }

    private void remake() {
        for (PlaceId id : PlaceId.values()) {
            shell.remake(id);
        }
    }

    private void nameIt() {
        head.show(open == null ? null : open.opened(), opening.progress());
    }

    /** The first start gives way to the Hall with the first entry, wherever that is made. */
    private void follow() {
        BookInWindow book = open;
        if (book != null && book.isFresh()) {
            book.whenBegun(() -> {
                if (open == book) {
                    shell.remake(PlaceId.HALL);
                }
            });
        }
    }

    // ---- From one logbook to another ----

    private void open(Job<OpenedBook> job) {
        opening.start(job, this::opened, this::refused);
    }

    private void opened(OpenedBook opened) {
        BookInWindow before = open;
        boolean atTheStart = before == null && refusal == null;
        BookInWindow now = new BookInWindow(
                opened, new FirstReading(opened.book().hall()), tools.on(backgrounds.get()), this, watches);
        open = now;
        refusal = null;
        tools.errors().clear();
        if (!atTheStart || !opened.made()) {
            choices.take(opened.choices());
        }
        for (PlaceId id : PlaceId.values()) {
            // the first start stays as it is, and what is being typed there
            if (!(atTheStart && id == PlaceId.HALL && now.isFresh())) {
                shell.remake(id);
            }
        }
        shell.back();
        nameIt();
        findLast();
        follow();
        tools.kept().say(opened.made() ? "logbook made in " + opened.folder() : "");
        if (opened.kind() == OpenedBook.Kind.DEMO) {
            tools.showing().set(PlaceId.SEASON);
        }
        if (before != null) {
            before.close(tools.background(), () -> {});
        }
        while (!waiting.isEmpty()) {
            waiting.remove().accept(now);
        }
    }

    /** What is open stays open; where nothing is, the place says why. */
    private void refused(Throwable failure) {
        tools.errors().show(failure);
        if (open == null) {
            refusal = failure instanceof UserError error ? error.sentence() : String.valueOf(failure);
            waiting.clear();
            remake();
        }
    }

    private void withBook(Consumer<BookInWindow> what) {
        if (open == null) {
            waiting.add(what);
        } else {
            what.accept(open);
        }
    }

    @Override
    public void openAnother() {
        tools.dialogs()
                .open("Open a logbook", LOGBOOK)
                .ifPresent(file -> open(progress -> {
                    mustBeAnother(file);
                    return shelf.open(file);
                }));
    }

    private void mustBeAnother(Path file) throws IOException {
        BookInWindow book = open;
        if (book != null
                && Files.exists(file)
                && Files.isSameFile(file, book.book().file())) {
            throw UserError.badInput("The logbook " + file.getFileName() + " is open already: in this window.");
        }
    }

    @Override
    public void makeNew() {
        tools.dialogs()
                .save("Make a new logbook", NEW_NAME, LOGBOOK)
                .ifPresent(file -> open(progress -> {
                    mustBeAnother(file);
                    return shelf.make(file);
                }));
    }

    @Override
    public void openDemo() {
        if (open == null || open.opened().kind() != OpenedBook.Kind.DEMO) {
            open(shelf::openDemo);
        }
    }

    @Override
    public void openOwn() {
        if (open == null || open.opened().kind() != OpenedBook.Kind.OWN) {
            open(progress -> shelf.openOwn());
        }
    }

    /** Offers the other logbook that was open last, where it is still there. */
    private void findLast() {
        tools.background().call(progress -> shelf.lastOther()).then(found -> {
            last = found.orElse(null);
            again.enabledProperty().set(last != null);
            again.labelProperty().set(last == null ? "The logbook opened last" : "Open " + OpenedBook.name(last));
            nameIt();
        });
    }

    private void openLast() {
        Path file = last;
        if (file != null && (open == null || open.opened().kind() == OpenedBook.Kind.OWN)) {
            open(progress -> shelf.open(file));
        }
    }

    @Override
    public void tryAgain() {
        openOwn();
    }

    @Override
    public void readTables() {
        withBook(book -> {
            ImportPlace tables = book.tables(choices.unitsProperty().get(), shell::back);
            shell.show(tables);
            tables.choose();
        });
    }

    // ---- First steps ----

    @Override
    public void addModel(String name, Consumer<Throwable> refused) {
        withBook(book -> book.background()
                .call(progress -> book.book().hall().addModel(name))
                .entry()
                .otherwise(refused)
                .then(model -> {}));
    }

    @Override
    public void justTime(Press press) {
        withBook(book -> {
            book.begin();
            shell.remake(PlaceId.HALL);
            book.startTheWatch(press);
        });
    }

    private void keep(ScreenChoices.Name name, String value) {
        withBook(book -> book.background()
                .call(progress -> {
                    ScreenChoices.keep(book.book(), name, value);
                    return true;
                })
                .entry()
                .then(kept -> {}));
    }

    /** Whether the window may be left: what was flown and is not on disk is named first, and left the second time. */
    boolean mayBeLeft() {
        List<String> lost = watches.notOnDisk();
        boolean may = lost.isEmpty() || lost.equals(namedAsLost);
        namedAsLost = lost;
        if (!may) {
            tools.errors()
                    .show(UserError.couldNot(
                            "Not on disk, and lost if you leave: " + String.join("; ", lost)
                                    + ". Note it down, or try again in the Hall; leaving once more leaves it.",
                            null));
        }
        return may;
    }

    /** Leaves the places and closes the logbook once all is on disk; then does what follows. */
    void close(Runnable then) {
        shell.close();
        if (open == null) {
            tools.background().whenQuiet(then);
        } else {
            open.close(tools.background(), then);
        }
    }
}
