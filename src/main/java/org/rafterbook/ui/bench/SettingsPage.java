package org.rafterbook.ui.bench;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.draw.Icon;
import org.rafterbook.ui.draw.IconView;
import org.rafterbook.ui.kit.FoldingColumn;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Looked;

/** The right column while nothing is entered: margin, settings, what they mean, and where the wing must sit. */
final class SettingsPage implements BenchPage {

    private final BenchModel model;
    private final Keys keys;
    private final FoldingColumn column = new FoldingColumn();
    private final MarginBlock margin;
    private final SettingsBlock settings;
    private final MeansBlock means;
    private final WhereBlock where;
    private final TextFlow frozen = new TextFlow();
    private final HBox frozenRow;
    private final ScrollPane rolling;
    private final VBox whereBlock;

    SettingsPage(BenchContext context, Keys keys, Action more) {
        this.model = context.model();
        margin = new MarginBlock(context.format());
        means = new MeansBlock(context.format());
        this.keys = keys;
        settings = new SettingsBlock(model, keys);
        Action ask = keys.on("Q", "Where must the wing sit?", this::ask);
        where = new WhereBlock(context, ask, more);
        whereBlock = new VBox(Lay.hairline(), where.node());
        keys.on("E", "Type the picked setting", settings::type);
        keys.on("PgDn", "Further down in what it means", () -> roll(0.8));
        keys.on("PgUp", "Further up", () -> roll(-0.8));
        frozenRow = Lay.styled(Lay.row(8, new IconView(Icon.LOCK, 1.2), Lay.grow(frozen)), "frozen");
        VBox middle = new VBox(settings.node(), Lay.hairline(), means.node());
        rolling = Lay.styled(Lay.rolling(middle), "bench-roll");
        column.getStyleClass().addAll("sheet", "bench-right");
        column.add(margin.node())
                .add(Lay.hairline())
                .addGrowing(rolling)
                .add(whereBlock, 1, ask)
                .add(new VBox(Lay.hairline(), frozenRow));
        settings.node().heightProperty().subscribe(height -> wish());
        means.node().heightProperty().subscribe(height -> wish());
        model.bench().subscribe(now -> show());
        model.preview().subscribe(now -> show());
        model.beside().subscribe(now -> show());
        model.picked().subscribe(now -> turned());
        model.turns().subscribe(now -> turned());
    }

    @Override
    public Node node() {
        return column;
    }

    @Override
    public Keys keys() {
        return keys;
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        show();
    }

    /** Room for the settings and about half of what they mean, before anything else folds. */
    private void wish() {
        rolling.setPrefHeight(settings.node().getHeight() + means.node().getHeight() * 0.55);
    }

    /** Enter in the field of the wished margin answers it and keeps nothing; false where the cursor is elsewhere. */
    boolean leaveWish() {
        boolean typing = where.isTyping();
        if (typing) {
            column.requestFocus();
        }
        return typing;
    }

    /** Takes the cursor out of whichever field it is in, and closes that of a setting; false where it is in none. */
    boolean leaveFields() {
        boolean typing = settings.isTyping() || where.isTyping();
        if (typing) {
            settings.close();
            column.requestFocus();
        }
        return typing;
    }

    private void roll(double pages) {
        double hidden = rolling.getContent().getLayoutBounds().getHeight()
                - rolling.getViewportBounds().getHeight();
        if (hidden > 0) {
            double by = pages * rolling.getViewportBounds().getHeight() / hidden;
            rolling.setVvalue(Math.max(0, Math.min(1, rolling.getVvalue() + by)));
        }
    }

    private void ask() {
        column.unfold(whereBlock);
        where.edit();
    }

    /** What a setting stands at is shown at once, what follows from it as soon as it is computed. */
    private void turned() {
        BenchDesk.Bench bench = model.bench().get();
        if (bench != null) {
            settings.deal(bench);
            settings.show(bench);
        }
    }

    private void show() {
        BenchDesk.Bench bench = model.bench().get();
        if (bench == null) {
            return;
        }
        Looked preview = model.preview().get();
        boolean turned = preview != null;
        Looked now = preview == null ? bench.shown() : preview;
        Looked beside = turned ? bench.shown() : model.beside().get();
        margin.show(bench, now, turned ? bench.shown() : null, beside);
        settings.deal(bench);
        settings.show(bench);
        means.show(now, beside, bench.in(), turned ? null : bench.facts().ownFormulaM());
        where.show(bench, now);
        frozen(bench);
    }

    private void frozen(BenchDesk.Bench bench) {
        String name = BenchModel.shown(bench).name();
        boolean flown = bench.flown() > 0;
        boolean sketch = BenchModel.shown(bench).version().sketch();
        Lay.show(frozenRow, flown || sketch || !bench.showsNow());
        Text lead = new Text(
                flown
                        ? name + " has flown, so it is frozen. "
                        : sketch ? name + " is a sketch. " : name + " is not what the model is rigged as. ");
        lead.getStyleClass().add("text-bold");
        Text rest = new Text(
                flown
                        ? bench.showsNow()
                                ? "A turn of any setting starts the next version."
                                : "The model is rigged as " + bench.now().name() + "."
                        : sketch ? "It flies when it is taken to the Hall." : "");
        rest.getStyleClass().add("text-aside");
        frozen.getChildren().setAll(lead, rest);
    }
}
