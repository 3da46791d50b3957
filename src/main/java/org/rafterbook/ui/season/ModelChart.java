package org.rafterbook.ui.season;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import org.rafterbook.ui.chart.Axis;
import org.rafterbook.ui.chart.Chart;
import org.rafterbook.ui.chart.FlightMark;
import org.rafterbook.ui.chart.Frame;
import org.rafterbook.ui.chart.Graduation;
import org.rafterbook.ui.chart.Layer;
import org.rafterbook.ui.chart.Tick;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.ClockTime;
import org.rafterbook.work.Season;

/** What is on the chart of one model's season: its flights over the days, its changes, its best so far. */
final class ModelChart {

    private static final double MINUTE_S = 60;

    /** Of the range of times, kept free above for the names of versions. */
    private static final double HEADROOM = 0.22;

    private final Season.ModelSeason model;
    private final DayPlaces places;
    private final double today;

    ModelChart(Season.ModelSeason model, DayPlaces places, double today) {
        this.model = model;
        this.places = places;
        this.today = today;
    }

    Chart.Content<String> content() {
        List<FlightMark<String>> marks = new ArrayList<>();
        for (Season.Flown flown : model.flights()) {
            if (flown.durationS() != null && flown.counts()) {
                marks.add(new FlightMark<>(
                        flown.flightId(),
                        places.of(flown),
                        flown.fullS(),
                        VersionMark.dealt(Math.max(0, flown.versionNumber() - 1)),
                        flown.atLeast(),
                        flown.fraction() != 1,
                        SeasonWords.line(flown)));
            }
        }
        Axis days = new Axis("", "", places.low(), places.high(), unlabelled(Graduation.days()));
        return new Chart.Content<>(days, minutes(marks), List.of(this::changes, this::best), marks, List.of(this::now));
    }

    /** The months stand on the rule above. */
    private static Graduation unlabelled(Graduation graduation) {
        return (low, high, pxPerUnit) -> graduation.ticks(low, high, pxPerUnit).stream()
                .filter(tick -> tick.level() == Tick.Level.TEN)
                .map(tick -> new Tick(tick.value(), tick.level(), ""))
                .toList();
    }

    private static Axis minutes(List<FlightMark<String>> marks) {
        double low = marks.stream().mapToDouble(FlightMark::y).min().orElse(0);
        double high = marks.stream().mapToDouble(FlightMark::y).max().orElse(10 * MINUTE_S);
        double foot = Math.max(0, Math.floor((low - 10) / MINUTE_S) * MINUTE_S);
        double range = Math.max(high - foot, 2 * MINUTE_S);
        return Axis.minutes(foot, foot + range * (1 + HEADROOM));
    }

    /** An upright line where a flight flies another version than the one before; a return is dotted and quiet. */
    private void changes(Frame frame) {
        List<Season.Flown> turns =
                model.flights().stream().filter(f -> f.turn() != null).toList();
        Pen pen = frame.pen();
        double free = frame.px(places.low());
        for (int i = 0; i < turns.size(); i++) {
            Season.Flown flown = turns.get(i);
            Season.Turn turn = java.util.Objects.requireNonNull(flown.turn());
            double x = frame.px(places.of(flown)) - pen.px(5);
            pen.stroke(turn.back() ? Token.LINE : Token.EDGE, 1);
            if (turn.back()) {
                pen.dashed(2, 3);
            }
            pen.line(x, pen.px(2), x, frame.py(frame.y().low()));
            double next =
                    i + 1 < turns.size() ? frame.px(places.of(turns.get(i + 1))) - pen.px(8) : frame.px(places.high());
            String label = fitting(pen, flown, turn, next - x - pen.px(3));
            if (!label.isEmpty() && x >= free) {
                pen.text(
                        label,
                        x + pen.px(3),
                        pen.px(9),
                        TextRole.MICRO,
                        turn.back() ? Token.INK_3 : Token.INK,
                        HPos.LEFT,
                        VPos.CENTER);
                free = x + pen.px(6) + pen.textWidth(label, TextRole.MICRO);
            }
        }
    }

    /** The version with its change, the version alone, or nothing, as there is room before the next. */
    private static String fitting(Pen pen, Season.Flown flown, Season.Turn turn, double room) {
        String change = turn.back() ? "" : SeasonWords.change(turn.changes());
        String whole = change.isEmpty() ? flown.version() : flown.version() + " " + change;
        for (String label : new String[] {whole, flown.version()}) {
            if (pen.textWidth(label, TextRole.MICRO) <= room) {
                return label;
            }
        }
        return "";
    }

    /** The best so far of full motors, as dotted stairs: diary, here and nowhere else. */
    private void best(Frame frame) {
        Pen pen = frame.pen();
        pen.stroke(Token.INK_3, 1).dashed(2, 2);
        double best = 0;
        double from = 0;
        for (Season.Flown flown : model.flights()) {
            if (flown.clean() && flown.fraction() == 1 && flown.fullS() > best) {
                double x = frame.px(places.of(flown));
                double y = frame.py(flown.fullS());
                if (best > 0) {
                    pen.line(from, frame.py(best), x, frame.py(best));
                    pen.line(x, frame.py(best), x, y);
                }
                best = flown.fullS();
                from = x;
            }
        }
        if (best > 0) {
            String words = "best " + ClockTime.minutesSeconds(best);
            double right = frame.px(places.high());
            double width = pen.textWidth(words, TextRole.SMALL_BOLD);
            double y = frame.py(best);
            pen.line(from, y, Math.max(from, right - width - pen.px(8)), y);
            pen.textOn(Token.SHEET, words, right, y, TextRole.SMALL_BOLD, Token.INK, HPos.RIGHT, VPos.CENTER);
        }
    }

    private void now(Frame frame) {
        if (frame.x().holds(today)) {
            Layer line = at -> at.pen()
                    .stroke(Token.ACCENT, 1)
                    .line(at.px(today), 0, at.px(today), at.py(at.y().low()));
            line.paint(frame);
        }
    }
}
