package org.rafterbook.ui.bench;

import javafx.scene.Node;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.correct.ThatTimeForm;
import org.rafterbook.work.BenchDesk;

/** The flights of the version looked at, of which some were different that time. */
final class FlightsPage implements BenchPage {

    private final ThatTimeForm form;

    FlightsPage(BenchContext context) {
        BenchDesk.Bench bench = context.model().bench().get();
        String version = bench == null ? "" : BenchModel.shown(bench).version().id();
        form = ThatTimeForm.ofVersion(context.tools(), context.book(), version, () -> {
            context.model().load();
            context.back().run();
        });
    }

    @Override
    public Node node() {
        return form.node();
    }

    @Override
    public Keys keys() {
        return form.keys();
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        form.opened();
    }
}
