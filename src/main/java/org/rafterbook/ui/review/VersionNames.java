package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.HPos;
import javafx.geometry.Rectangle2D;
import javafx.geometry.VPos;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.chart.FlightMark;
import org.rafterbook.ui.chart.Frame;
import org.rafterbook.ui.chart.Layer;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;

/** Names each version above its highest flight, or beside it, where there is room: marks need no legend. */
record VersionNames(Map<String, List<FlightMark<String>>> byName) implements Layer {

    private static final double ABOVE = 13;
    private static final double BESIDE = 9;
    /** After so many in a row that found no room the chart is full. */
    private static final int FULL = 12;

    /** Versions by name, from their marks. */
    static VersionNames of(List<FlightMark<String>> marks, Map<String, String> nameOfFlight) {
        Map<String, List<FlightMark<String>>> byName = new LinkedHashMap<>();
        for (FlightMark<String> mark : marks) {
            if (!mark.behind()) {
                byName.computeIfAbsent(nameOfFlight.getOrDefault(mark.key(), ""), n -> new ArrayList<>())
                        .add(mark);
            }
        }
        return new VersionNames(byName);
    }

    @Override
    public void paint(Frame frame) {
        List<Rectangle2D> taken = new ArrayList<>();
        List<Rectangle2D> drawn = drawn(frame);
        int without = 0;
        for (Map.Entry<String, List<FlightMark<String>>> one : byName.entrySet()) {
            if (without == FULL) {
                return;
            }
            List<FlightMark<String>> marks = one.getValue();
            FlightMark<String> highest = marks.get(0);
            for (FlightMark<String> mark : marks) {
                highest = mark.y() > highest.y() ? mark : highest;
            }
            double x = frame.px(highest.x());
            double y = frame.py(highest.y());
            without = name(frame, taken, drawn, one.getKey(), x, y) ? 0 : without + 1;
        }
    }

    private List<Rectangle2D> drawn(Frame frame) {
        double half = frame.pen().px(4);
        return byName.values().stream()
                .flatMap(List::stream)
                .map(m -> new Rectangle2D(frame.px(m.x()) - half, frame.py(m.y()) - half, 2 * half, 2 * half))
                .toList();
    }

    /** Beside its mark where nothing is drawn, else over other marks on a patch of ground. */
    private static boolean name(
            Frame frame, List<Rectangle2D> taken, List<Rectangle2D> drawn, String name, double x, double y) {
        Pen pen = frame.pen();
        double wide = pen.textWidth(name, TextRole.SMALL);
        double tall = pen.px(13);
        double up = y - pen.px(ABOVE);
        double side = pen.px(BESIDE);
        double[][] places = {
            {x - wide / 2, up},
            {x + side, y},
            {x - side - wide, y},
            {x - wide / 2, up - tall},
            {x + side, up},
            {x - side - wide, up},
            {x + 2 * side, y},
            {x - 2 * side - wide, y}
        };
        double @Nullable [] crowded = null;
        for (double[] place : places) {
            Rectangle2D box = new Rectangle2D(place[0], place[1] - tall / 2, wide, tall);
            if (place[0] > frame.left()
                    && place[0] + wide < frame.right() + pen.px(10)
                    && place[1] - tall / 2 > frame.top()
                    && taken.stream().noneMatch(box::intersects)) {
                if (drawn.stream().noneMatch(box::intersects)) {
                    taken.add(box);
                    pen.text(name, place[0], place[1], TextRole.SMALL, Token.INK, HPos.LEFT, VPos.CENTER);
                    return true;
                }
                crowded = crowded == null ? place : crowded;
            }
        }
        if (crowded == null) {
            return false;
        }
        taken.add(new Rectangle2D(crowded[0], crowded[1] - tall / 2, wide, tall));
        pen.textOn(Token.SHEET, name, crowded[0], crowded[1], TextRole.SMALL, Token.INK, HPos.LEFT, VPos.CENTER);
        return true;
    }
}
