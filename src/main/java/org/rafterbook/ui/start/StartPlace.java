package org.rafterbook.ui.start;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.Rule;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.FittingFrame;
import org.rafterbook.ui.kit.FoldingColumn;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.RollingPane;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.shell.Logbooks;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.UserError;

/** The first start, in the Hall's place: a name or a press of the space bar make the first flight. */
public final class StartPlace implements Place {

    private static final double RULE_S = 15 * 60;

    /** Narrower than this there is no room for what the margin needs. */
    private static final double NARROW_EM = 72;

    private final FirstSteps steps;
    private final Field<String> name =
            Field.words("Name of the model").required().prompt("such as Teasel");
    private final OfferRow model;
    private final Offers offers;
    private final ReadOnlyObjectWrapper<Keys> keys;
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("Rafterbook");
    private final Sheet needs = MarginNeeds.sheet();
    private final FittingFrame node =
            new FittingFrame((widthEm, heightEm, emPx) -> Lay.show(needs, widthEm >= NARROW_EM));
    private final Rule rule = new Rule("Minutes aloft, none yet", Graduation.minutes());

    public StartPlace(Tools tools, FirstSteps steps, Logbooks logbooks, Choices choices) {
        this.steps = steps;
        Keys own = tools.keys();
        Action add = own.action("Add a model", this::askName);
        Action time = own.onPress("Space", "Start the watch", steps::justTime);
        Action demo = own.action("Open the demo", logbooks::openDemo);
        Action table = own.action("Read a table", logbooks::readTables);
        Action open = own.on("O", "Open a logbook", logbooks::openAnother);
        model = new OfferRow(
                own.on("1", "Start with my own model", add::run),
                "Start with my own model",
                "Name is enough to time flights; span, chord and balance give the margin. Add them whenever you like.",
                add);
        OfferRow just = new OfferRow(
                own.onPress("2", "Just time a flight", steps::justTime),
                "Just time a flight",
                "No model needed. Give the flight a model later.",
                time);
        OfferRow season = new OfferRow(
                own.on("3", "Look round the demo season", demo::run),
                "Look round the demo season",
                "About 220 invented flights by R. Aldous in Saltmarsh Sports Hall, in a logbook of its own.",
                demo);
        OfferRow tables = new OfferRow(
                own.on("4", "Read in my own table", table::run),
                "Read in my own table",
                "A CSV file with your own headings: you say once what each column means. Or a logbook from another"
                        + " machine.",
                table,
                open);
        offers = new Offers(
                own,
                List.of(
                        Words.head("Time every flight. See which change of trim kept it up longer."),
                        Words.aside(
                                "A name and a press of the space bar make the first flight. All else can wait until the"
                                        + " model is in the air, or until tomorrow.")),
                List.of(model, just, season, tables));
        own.on("Enter", "Do what is picked", this::enter);
        own.on("Esc", "Leave the field", this::leaveName);
        node.show(page(new ChoicesForm(choices), own));
        own.hint("1 … 4", "choose");
        own.hint("F1 … F5", "the five places");
        own.hint("C", "name, units, theme");
        own.hint("Alt", "show every key");
        keys = new ReadOnlyObjectWrapper<>(own);
        rule.remark("minutes aloft, none yet").show(0, RULE_S, List.of());
    }

    private HBox page(ChoicesForm choices, Keys own) {
        ScrollPane rolling = new RollingPane(offers);
        rolling.setFitToWidth(true);
        rolling.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        rolling.setFocusTraversable(false);
        rolling.setMinSize(0, 0);
        offers.onPicked(rolling::setVvalue);
        FoldingColumn parts = new FoldingColumn();
        VBox framed = new VBox(Lay.hairline(), choices);
        Action choose = own.on("C", "Name, units, theme, text size", () -> {
            parts.unfold(framed);
            choices.edit();
        });
        parts.addGrowing(rolling).add(framed, 1, choose);
        parts.setMinSize(0, 0);
        Sheet left = new Sheet();
        left.add(Lay.grow(parts));
        left.setMinSize(0, 0);
        HBox page = Lay.styled(Lay.row(12, left, needs), "page");
        page.setFillHeight(true);
        left.setMaxHeight(Double.MAX_VALUE);
        needs.setMaxHeight(Double.MAX_VALUE);
        left.prefWidthProperty().bind(page.widthProperty().multiply(0.565));
        needs.prefWidthProperty().bind(page.widthProperty().multiply(0.4));
        HBox.setHgrow(left, Priority.ALWAYS);
        return page;
    }

    private void enter() {
        if (name.input().isFocused()) {
            keepName();
        } else {
            offers.run();
        }
    }

    private void askName() {
        if (name.typed().isBlank()) {
            offers.pick(0);
            model.instead(name);
            name.edit();
        } else {
            keepName();
        }
    }

    private void keepName() {
        if (name.check()) {
            steps.addModel(
                    name.typed().strip(),
                    failure -> name.refuse(
                            failure instanceof UserError error
                                    ? error.sentence()
                                    : "This could not be kept: " + failure.getMessage()));
        }
    }

    private void leaveName() {
        node.requestFocus();
        if (name.typed().isBlank()) {
            model.instead(null);
        }
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public Node rule() {
        return rule;
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
        return Place.always("A new logbook, nothing in it yet");
    }
}
