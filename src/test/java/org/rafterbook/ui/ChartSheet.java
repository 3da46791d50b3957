package org.rafterbook.ui;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.rafterbook.review.Word;
import org.rafterbook.ui.chart.Axis;
import org.rafterbook.ui.chart.Chart;
import org.rafterbook.ui.chart.FlightMark;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.IntervalBar;
import org.rafterbook.ui.chart.IntervalHead;
import org.rafterbook.ui.chart.Layer;
import org.rafterbook.ui.chart.Layers;
import org.rafterbook.ui.chart.Rule;
import org.rafterbook.ui.chart.RuleLayers;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.kit.EffectWordView;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Table;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.look.Token;
import org.rafterbook.ui.shell.Tools;

/** Rules, charts, a table with intervals: everything drawn on a canvas at once, with invented figures. */
final class ChartSheet {

    private record Effect(
            String change,
            int from,
            int to,
            String compared,
            String effect,
            IntervalBar.Interval interval,
            Word verdict,
            String upsets) {}

    private ChartSheet() {}

    static Parent make(Tools tools) {
        VBox sheets = Lay.styled(
                Lay.column(12, rules(), Lay.row(12, effects(), Lay.column(12, margin("kit"), torque()))), "page");
        return new VBox(strip(), sheets);
    }

    private static Node rules() {
        Rule clock = new Rule("The clock of the evening", Graduation.clock(ZoneOffset.UTC));
        double start = Instant.parse("2026-01-20T18:30:00Z").getEpochSecond();
        clock.show(
                start,
                start + 3.5 * 3600,
                List.of(
                        RuleLayers.flight(start + 2280, start + 2820, VersionMark.dealt(0), false),
                        RuleLayers.flight(start + 4920, start + 5460, VersionMark.dealt(0), true),
                        RuleLayers.flight(start + 5940, start + 6540, VersionMark.dealt(2), false),
                        RuleLayers.now(start + 7860, "now")));
        Rule turns = new Rule("Turns on the motor", Graduation.numbers()).unit("turns");
        turns.show(
                0,
                2400,
                List.of(
                        RuleLayers.ground(1930, 2137, Token.CAUTION_SOFT),
                        RuleLayers.beyond(2137, 2400),
                        RuleLayers.bar(0, 1760, Token.ACCENT),
                        RuleLayers.now(1760, "now 1760"),
                        RuleLayers.at(1980, "stop 1980", Token.INK),
                        RuleLayers.at(2137, "limit 2137", Token.STOP)));
        Rule millimetres = new Rule("Millimetres from the propeller bearing", Graduation.numbers()).unitFirst("mm");
        millimetres.leftSide(60);
        millimetres.show(-30, 620, List.of());
        Rule season = new Rule("Days of the season", Graduation.days()).labelsBeside();
        double first = LocalDate.of(2025, 9, 29).toEpochDay();
        List<Layer> sessions = new ArrayList<>();
        for (int day = 8; day < 170; day += 7) {
            sessions.add(RuleLayers.peg(first + day, Token.INK_2, day > 113));
        }
        sessions.add(RuleLayers.nowAmongLabels(first + 113, "tonight"));
        season.show(first, first + 180, sessions);
        return Lay.column(8, clock, turns, millimetres, season);
    }

    private static Node strip() {
        Chart<Integer> chart = new Chart<Integer>("History of Teasel, 60 flights").asStrip();
        List<FlightMark<Integer>> marks = new ArrayList<>();
        List<Layer> changes = new ArrayList<>();
        Random random = new Random(7);
        for (int i = 0; i < 60; i++) {
            int version = i / 6;
            boolean atLeast = i % 9 == 4;
            marks.add(new FlightMark<>(
                    i,
                    i,
                    480 + 12 * version + random.nextInt(60),
                    VersionMark.dealt(version),
                    atLeast,
                    false,
                    "flight " + i));
            if (i % 6 == 0) {
                changes.add(Layers.change(
                        i - 0.5, "v" + (version + 2) + (version % 3 == 0 ? " rudder" : ""), version % 4 == 3));
            }
        }
        chart.show(new Chart.Content<>(
                new Axis("", "", -1, 60.5, Graduation.every(6, 6, value -> (int) value / 6 * 7 + 1 + " Nov")),
                Axis.minutes(360, 740),
                changes,
                marks,
                List.of()));
        return chart;
    }

    static Node margin(String caption) {
        Chart<Integer> chart = new Chart<>("Time against margin, n = 60");
        Random random = new Random(3);
        List<FlightMark<Integer>> marks = new ArrayList<>();
        double[] centres = {5.2, 6.4, 9.0, 9.8, 11.7};
        for (int i = 0; i < 60; i++) {
            double x = centres[i % 5] + (i % 3) * 0.1;
            double peak = 600 - 4 * (x - 6.4) * (x - 6.4);
            marks.add(new FlightMark<>(
                    i,
                    x,
                    peak - 30 + random.nextInt(60),
                    VersionMark.dealt(i % 5),
                    i % 11 == 0,
                    i % 17 == 0,
                    "v8, 10:12, margin 6.4 %"));
        }
        double[] xs = new double[60];
        double[] y = new double[60];
        double[] low = new double[60];
        double[] high = new double[60];
        for (int i = 0; i < 60; i++) {
            xs[i] = 3 + i / 6.0;
            y[i] = 600 - 4 * (xs[i] - 6.4) * (xs[i] - 6.4);
            low[i] = y[i] - 15;
            high[i] = y[i] + 15;
        }
        chart.show(new Chart.Content<>(
                        Axis.of("stability margin", "%", 3, 13),
                        Axis.minutes(360, 720),
                        List.of(
                                Layers.range(5.1, 8.3, "best between", "5.1 and 8.3 %"),
                                Layers.band(xs, low, high),
                                Layers.curve(xs, y)),
                        marks,
                        List.of(Layers.words(6.4, 650, "v8", TextRole.SMALL, Token.INK, HPos.CENTER)))
                .flown(5.1, 11.9));
        chart.pick((Integer) 22);
        Sheet sheet = new Sheet();
        Lay.grow(sheet.section("Time against margin", "n = 60, one peak, band 90 %", Lay.grow(chart)));
        sheet.setId(caption);
        sheet.setPrefSize(345, 245);
        return sheet;
    }

    private static Node torque() {
        Chart<Integer> chart = new Chart<>("Torque against turns, 8 readings");
        double[] x = {0, 200, 500, 800, 1100, 1300, 1500, 1650, 1760};
        double[] y = {0, 0.55, 0.8, 1.0, 1.27, 1.52, 1.88, 2.23, 2.55};
        double[] x2 = {0, 200, 600, 1000, 1500, 1700, 1870};
        double[] y2 = {0, 0.3, 0.45, 0.6, 0.9, 1.4, 2.6};
        double[] x3 = {1760, 1870, 1980};
        chart.show(new Chart.Content<>(
                Axis.of("turns of the motor", "", 0, 2400),
                Axis.of("torque", "N·mm", 0, 5),
                List.of(
                        Layers.limit(2137, "over the", "limit"),
                        Layers.level(4.2, "torque limit 4.2 N·mm", Token.STOP, HPos.LEFT),
                        Layers.expectedBand(x3, new double[] {2.5, 2.85, 3.2}, new double[] {2.6, 3.05, 3.6}),
                        Layers.trace(x, y, Token.CHART_1, true),
                        Layers.expected(x2, y2)),
                List.of(),
                List.of()));
        Sheet sheet = new Sheet();
        Lay.grow(sheet.section("Torque against turns", "8 readings kept", Lay.grow(chart)));
        sheet.setPrefSize(345, 245);
        return sheet;
    }

    private static Node effects() {
        IntervalBar.Range range = new IntervalBar.Range(-15, 20, 5);
        Table<Effect> table = new Table<Effect>("trim changes").rowHeight(2.64);
        table.text("what changed", 12, Effect::change).styled("strong").grow();
        table.node(
                "from, to",
                8,
                row -> Lay.row(
                        4,
                        new MarkView(VersionMark.dealt(row.from())),
                        Words.body("v" + row.from() + " →"),
                        new MarkView(VersionMark.dealt(row.to())),
                        Words.body("v" + row.to())));
        table.text("compared", 8, Effect::compared);
        table.number("effect, and at\nusual time 8:32", "", 7.5, Effect::effect);
        table.node("", 9, row -> new IntervalBar(range, row.interval()))
                .head(new IntervalHead(range))
                .styled("whole");
        table.node("in words", 11, row -> new EffectWordView(row.verdict()));
        table.text("upsets\nrecovered", 6.5, Effect::upsets);
        table.rows(List.of(
                new Effect("Wing 5 mm forward", 4, 8, "same day", "+9 %, +0:46", in(5, 9, 13), Word.RAISED, "3 of 4"),
                new Effect(
                        "Ballast 0.06, was 0.09 g",
                        3,
                        4,
                        "same day",
                        "+5 %, +0:26",
                        in(1, 5, 9),
                        Word.VERY_PROBABLY_RAISED,
                        "2 of 4"),
                new Effect(
                        "Incidence 2.5°, was 3.0°",
                        2,
                        3,
                        "same day",
                        "+3 %, +0:15",
                        in(-2, 3, 8),
                        Word.PROBABLY_RAISED,
                        "1 of 3"),
                new Effect(
                        "Tail −0.50°",
                        9,
                        11,
                        "across days",
                        "−1 %, −0:05",
                        in(-6, -1, 30),
                        Word.NO_CLEAR_DIFFERENCE,
                        "4 of 5"),
                new Effect(
                        "Rudder 2.0°",
                        4,
                        6,
                        "same day",
                        "−4 %, −0:20",
                        new IntervalBar.Interval(-9, -4, 1, true),
                        Word.PROBABLY_LOWERED,
                        "5 of 6")));
        table.select(table.rows().get(0));
        table.asHighAsItsRows();
        Sheet sheet = new Sheet();
        sheet.section("Which trim change raised the time?", "60 flights, 8 of them “at least”; 90 % intervals", table);
        HBox.setHgrow(sheet, Priority.ALWAYS);
        sheet.setMinWidth(0);
        return sheet;
    }

    private static IntervalBar.Interval in(double low, double estimate, double high) {
        return new IntervalBar.Interval(low, estimate, high, false);
    }
}
