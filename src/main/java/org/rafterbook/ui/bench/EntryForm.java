package org.rafterbook.ui.bench;

import javafx.scene.Node;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.FormSheet;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Job;
import org.rafterbook.work.Rigged;

/** A form in the right column: Enter keeps what is typed and goes back, Esc goes back without. */
abstract class EntryForm implements BenchPage {

    final BenchContext context;
    final BenchModel model;
    final FormSheet form;

    EntryForm(BenchContext context, String title, String aside) {
        this.context = context;
        this.model = context.model();
        form = new FormSheet(context.keys(), title, aside);
    }

    /** Adds the main action and the way out; called last by each form. */
    final void actions(String keep, Runnable what) {
        form.keep(keep, what);
        form.leave(this::back);
    }

    /** Enters it in the logbook and goes back; a refusal stands in the form. */
    final <T> void enter(Job<? extends T> entry) {
        model.enter(entry, done -> back(), form::refuse);
    }

    /** Goes back; what was only looked at is let go. */
    final void back() {
        model.look((Airframe) null);
        context.back().run();
    }

    @Override
    public final Node node() {
        return form.node();
    }

    @Override
    public final Keys keys() {
        return form.keys();
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        form.focusFirst();
    }

    /** The version on the bench, null while nothing is loaded. */
    final @Nullable Rigged shown() {
        BenchDesk.Bench bench = model.bench().get();
        return bench == null ? null : BenchModel.shown(bench);
    }

    final String versionId() {
        Rigged shown = shown();
        return shown == null ? "" : shown.version().id();
    }

    final String modelId() {
        Rigged shown = shown();
        return shown == null ? "" : shown.model().id();
    }
}
