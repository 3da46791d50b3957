package org.rafterbook.ui.bench;

import javafx.scene.Node;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.correct.AlwaysSoForm;
import org.rafterbook.work.BenchDesk;

/** 'It was always so' beside the drawing. */
final class AlwaysSoPage implements BenchPage {

    private final AlwaysSoForm form;

    AlwaysSoPage(BenchContext context) {
        BenchDesk.Bench bench = context.model().bench().get();
        String modelId = bench == null ? "" : bench.now().model().id();
        form = new AlwaysSoForm(context.tools(), context.book(), context.units(), modelId, () -> {
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
