package org.rafterbook.ui.bench;

import java.util.function.Consumer;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Book;

/**
 * What every page of the Bench is handed.
 *
 * @param open lays another page on the right column
 * @param back takes the page on top away again
 */
record BenchContext(Tools tools, BenchModel model, DisplayUnits units, Consumer<BenchPage> open, Runnable back) {

    Keys keys() {
        return tools.keys();
    }

    /** Figures in the flyer's units. */
    QuantityFormat format() {
        return new QuantityFormat(units);
    }

    Book book() {
        return model.book();
    }
}
