package org.rafterbook.ui;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.rafterbook.review.Word;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.chart.Gauge;
import org.rafterbook.ui.chart.GaugeLayers;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.MarginBar;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.Symbols;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.CautionBox;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.EffectWordView;
import org.rafterbook.ui.kit.EmptyBox;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Notice;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.ui.kit.Segments;
import org.rafterbook.ui.kit.SettingRow;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.ToDo;
import org.rafterbook.ui.kit.WatchFace;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.look.Token;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.Step;

/** All parts side by side, to be compared with each other and looked at in every theme. */
final class PartsSheet {

    private PartsSheet() {}

    static Parent make(Tools tools) {
        Keys keys = tools.keys();
        Sheet signs = new Sheet("Ground and ink", "", colours());
        signs.section("Version marks", "filled: clean flight; open, with tick: at least", marks());
        signs.section("Words for an effect", "", verdicts());
        signs.section("Balance stands on an edge, lift hangs from an eye", "", new BalanceSigns());
        MarginBar margin = new MarginBar();
        margin.show(new MarginBar.Margin(5.1, 7.1, 1.1, 4.0, 8.0));
        signs.section("Stability margin", "blade now, bar ± 1.1 to v8", margin);

        Sheet forms = new Sheet("Numbers", "", numbers());
        forms.section("Forms", "", fields(keys));
        forms.section(Lay.row(
                12,
                Buttons.primary(keys.on("Enter", "Keep", () -> {})),
                Buttons.secondary(keys.on("M", "Compare", () -> {})),
                Buttons.link(keys.action("Leave it", () -> {})),
                disabled(keys)));
        forms.section("Trim", "letter, then ← or →");
        forms.add(settings(keys));
        forms.section(Buttons.main(
                keys.on("Space", "Start the watch", () -> {}),
                Words.body("Kept from the first instant."),
                Words.body("Ctrl+Z takes it back.")));

        ProgressRule progress = new ProgressRule();
        progress.still(new Step(128, 200, "versions"));
        Notice wrong = Notice.wrong(Buttons.link(keys.action("Close", () -> {})));
        wrong.say("The disk is full.", "All up to flight 5 is kept.");
        Sheet bars = new Sheet("Progress", "", progress);
        bars.section("Undo and errors", "", wrong);
        bars.section(
                "Nothing here yet",
                "",
                new EmptyBox(
                        "No winds of M20 yet.",
                        "The first curve appears with the second reading.",
                        keys.on("F3", "Log a wind", () -> {})));
        bars.section(new CautionBox(
                "While you wind:",
                "eyes covered, nobody in line with the motor, off the model or in a tube. Check for nicks first."));
        Gauge gauge = new Gauge(Graduation.minutes()).unit("minutes");
        gauge.show(
                0,
                720,
                List.of(
                        GaugeLayers.range(555, 624, "expected"),
                        GaugeLayers.filled(0, 402),
                        GaugeLayers.event(192, "lamp"),
                        GaugeLayers.below(612, "best today 10:12")),
                "6:42 in the air");
        bars.section("In the air", "", gauge);
        CheckBox full = new CheckBox("Full motors only");
        full.setSelected(true);
        bars.section(Lay.row(
                16,
                full,
                new ToDo("add"),
                new Segments<>("Theme", List.of("Light", "Dark", "Dim"), t -> t).choose("Light")));
        HBox page = Lay.styled(Lay.row(12, Lay.grow(signs), Lay.grow(forms), Lay.grow(bars)), "page");
        for (Node node : page.getChildren()) {
            ((Sheet) node).setPrefWidth(400);
            ((Sheet) node).setMinWidth(0);
        }
        page.setFillHeight(true);
        return page;
    }

    private static Node colours() {
        FlowPane pane = new FlowPane(10, 6);
        for (Token token : Token.values()) {
            Drawing patch = new Drawing() {
                @Override
                protected void paint(Pen pen) {
                    pen.area(0, 0, pen.width(), pen.height(), Token.EDGE)
                            .area(1, 1, pen.width() - 2, pen.height() - 2, token);
                }
            };
            patch.wish(1.6, 1.4);
            HBox entry = Lay.row(4, patch, Words.small(token.css()));
            entry.setPrefWidth(84);
            pane.getChildren().add(entry);
        }
        return pane;
    }

    private static Node marks() {
        GridPane grid = new GridPane();
        grid.setHgap(8);
        for (int i = 0; i < 12; i++) {
            VersionMark mark = VersionMark.dealt(i);
            HBox pair = Lay.row(8, new MarkView(mark), new MarkView(mark, MarkStyle.AT_LEAST));
            grid.add(Lay.column(0, pair, Words.small("  " + (i + 1))), i % 6, i / 6);
        }
        return grid;
    }

    private static Node verdicts() {
        GridPane grid = new GridPane();
        grid.setHgap(24);
        grid.setVgap(3);
        Word[] all = Word.values();
        for (int i = 0; i < all.length; i++) {
            grid.add(new EffectWordView(all[i]), i / 5, i % 5);
        }
        return grid;
    }

    private static Node numbers() {
        WatchFace watch = new WatchFace(WatchFace.Size.SECOND);
        watch.show(641.35);
        return Lay.baseline(
                12,
                watch,
                Words.readout("5.1 %", 2),
                Words.figure("10:12"),
                Words.body("2.6 N·mm"),
                Words.hint("n = 23"));
    }

    private static Node fields(Keys keys) {
        Field<TypedValue> chord = Field.quantity("Chord", Quantity.LENGTH, DisplayUnits.METRIC);
        chord.key(keys.on("C", "Chord", chord::edit));
        chord.fill("110");
        Field<TypedValue> gap =
                Field.quantity("Gap", Quantity.LENGTH, DisplayUnits.METRIC).quietly("was 95 mm");
        gap.prompt("105");
        Field<TypedValue> turns = Field.quantity("Turns left", Quantity.TURNS, DisplayUnits.METRIC)
                .refuseIf(value -> value.si() > 1980, value -> "More than 1980 wound.");
        turns.fill("2300");
        Field<TypedValue> time =
                Field.quantity("Time", Quantity.TIME, DisplayUnits.METRIC).large();
        time.fill("1050");
        ChoiceField<String> units = new ChoiceField<String>("Units on screen", name -> name)
                .offer(List.of("mm, g, N·mm", "in, g, in-oz"), "mm, g, N·mm")
                .quietly("Any unit may be typed: 14.5 in");
        Field<String> note = Field.words("Note").prompt("anything worth remembering");
        HBox first = new HBox(chord, gap, turns);
        HBox second = new HBox(time, units, note);
        for (HBox row : List.of(first, second)) {
            row.setSpacing(10);
            row.getChildren().forEach(Lay::grow);
            row.getChildren().forEach(field -> ((VBox) field).setPrefWidth(100));
        }
        return Lay.column(8, first, second);
    }

    private static Node disabled(Keys keys) {
        Action action = keys.action("Not now", () -> {});
        action.enabledProperty().set(false);
        return Buttons.secondary(action);
    }

    private static Node settings(Keys keys) {
        SettingRow wing = new SettingRow(keys.on("P", "Wing position", () -> {})).show("146 mm", "149");
        wing.picked(true);
        return new VBox(
                wing,
                new SettingRow(keys.on("W", "Wing incidence", () -> {}))
                        .show("2.50°", null)
                        .step("step 0.25°"),
                SettingRow.computed("Decalage, follows").show("3.00°", null));
    }

    /** The signs of balance and neutral point from the side and from above. */
    private static final class BalanceSigns extends Drawing {

        private BalanceSigns() {
            wish(-1, 5);
        }

        @Override
        protected void paint(Pen pen) {
            double stick = pen.px(40);
            pen.stroke(Token.WOOD, 3).line(0, stick, pen.px(170), stick);
            Symbols.balanceFromSide(pen, pen.px(80), stick + pen.px(2));
            Symbols.neutralBand(pen, pen.px(104), pen.px(136), 2, pen.px(34));
            Symbols.neutralFromSide(pen, pen.px(120), pen.px(27));
            pen.text("balance", pen.px(68), pen.px(52), TextRole.SMALL_BOLD, Token.INK, HPos.RIGHT, VPos.CENTER);
            pen.text("neutral ± band", pen.px(142), pen.px(18), TextRole.SMALL_BOLD, Token.INK, HPos.LEFT, VPos.CENTER);
            double above = pen.px(280);
            pen.stroke(Token.WOOD, 3).line(above, pen.px(22), above + pen.px(90), pen.px(22));
            Symbols.neutralBand(pen, above + pen.px(54), above + pen.px(74), pen.px(6), pen.px(38));
            Symbols.balanceFromAbove(pen, above + pen.px(36), pen.px(22));
            Symbols.neutralFromAbove(pen, above + pen.px(64), pen.px(22));
            pen.text(
                    "from above",
                    above + pen.px(45),
                    pen.px(52),
                    TextRole.SMALL,
                    Token.INK_3,
                    HPos.CENTER,
                    VPos.CENTER);
        }
    }
}
