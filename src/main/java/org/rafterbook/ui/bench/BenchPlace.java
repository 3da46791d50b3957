package org.rafterbook.ui.bench;

import java.time.ZoneId;
import javafx.application.Platform;
import javafx.beans.value.ObservableValue;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;
import org.rafterbook.logbook.Subscription;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Book;
import org.rafterbook.work.Looked;

/** The Bench: rig strip, airframe to scale, and at the right its settings or a form. */
public final class BenchPlace implements Place {

    private final Book book;
    private final FxBackground background;
    private final FxBackground.Slot computing = new FxBackground.Slot();
    private final BenchModel model;
    private final BenchCommands commands;
    private final StripPane strip;
    private final AirframePane drawing;
    private final BenchFrame frame;
    private final BenchHead head;
    private @Nullable Subscription listening;

    /**
     * @param units in which lengths and masses are typed in its forms
     */
    public BenchPlace(Tools tools, Book book, DisplayUnits units) {
        this.book = book;
        this.background = tools.background();
        model = new BenchModel(book, background, units);
        drawing = new AirframePane(new PointerMoves(model));
        commands = new BenchCommands(new BenchContext(tools, model, units, this::open, this::back), drawing);
        head = new BenchHead(new QuantityFormat(units), Buttons.secondary(commands.newModel()));
        strip = commands.strip(ZoneId.systemDefault());
        frame = new BenchFrame(commands, strip, drawing);
        model.bench().subscribe(this::loaded);
        model.preview().subscribe(now -> draw());
        model.beside().subscribe(now -> draw());
    }

    private void open(BenchPage page) {
        frame.open(page);
    }

    private void back() {
        frame.back();
    }

    private void loaded(BenchDesk.@Nullable Bench now) {
        if (now == null) {
            head.clear();
            commands.nothing();
            drawing.show(AirframeDrawing.Subject.NOTHING);
        } else {
            strip.show(now);
        }
        frame.loaded(now);
        draw();
    }

    private void draw() {
        BenchDesk.Bench now = model.bench().get();
        if (now == null) {
            return;
        }
        Looked preview = model.preview().get();
        Looked looked = preview == null ? now.shown() : preview;
        Looked beside = preview == null ? model.beside().get() : now.shown();
        commands.follow(now);
        drawing.show(new AirframeDrawing.Subject(
                looked.airframe(),
                beside == null ? null : beside.airframe(),
                looked.margin(),
                now.now().model().wishedLow(),
                now.now().model().wishedHigh()));
        head.show(now, looked);
    }

    /** The view model, for tests and pictures. */
    BenchModel model() {
        return model;
    }

    @Override
    public Node node() {
        return frame.node();
    }

    @Override
    public ObservableValue<Keys> keys() {
        return frame.keys();
    }

    @Override
    public ObservableValue<String> subtitle() {
        return head.subtitle();
    }

    @Override
    public ObservableList<Node> figures() {
        return head.figures();
    }

    @Override
    public void shown() {
        listening = book.onChange(() -> Platform.runLater(model::load));
        model.load();
        background
                .call(book.margins()::computeAll)
                .in(computing)
                .showing(strip.progress())
                .then(versions -> {});
    }

    @Override
    public void hidden() {
        computing.cancel();
        if (listening != null) {
            listening.cancel();
            listening = null;
        }
    }
}
