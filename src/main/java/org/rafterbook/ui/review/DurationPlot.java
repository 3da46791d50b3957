package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import javafx.geometry.HPos;
import javafx.geometry.Rectangle2D;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewPoint;

/** Times against the margin or a setting, one mark a flight; only what was flown has a white ground. */
final class DurationPlot extends Drawing {

    private static final double LEFT = 44;
    private static final double RIGHT = 18;
    private static final double TOP = 12;
    private static final double FOOT = 40;
    private static final double SPREAD = 4;

    /** One flight and where it lies across, in the axis's unit or as the number of its word. */
    private record At(ReviewPoint point, double value) {}

    private final ReviewModel model;
    private final List<At> flights = new ArrayList<>();
    private final List<String> words = new ArrayList<>();
    private final List<Rectangle2D> taken = new ArrayList<>();
    private @Nullable TimeScale scale;

    DurationPlot(ReviewModel model) {
        this.model = model;
        wish(-1, -1);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        model.answerProperty().subscribe(answer -> plan());
        model.axisProperty().subscribe(axis -> plan());
        model.flightProperty().subscribe(this::repaint);
        model.changeProperty().subscribe(this::repaint);
        model.onlyItsFlightsProperty().subscribe(this::repaint);
        setOnMouseClicked(event -> pickAt(event.getX(), event.getY()));
    }

    /** Flights drawn, which the caption tells. */
    int count() {
        return flights.size();
    }

    private void plan() {
        flights.clear();
        words.clear();
        ModelReview answer = model.answerProperty().get();
        ReviewAxis axis = model.axisProperty().get();
        scale = answer == null ? null : TimeScale.of(answer);
        if (answer != null) {
            words.addAll(new TreeSet<>(answer.points().stream()
                    .map(p -> String.valueOf(axis.word(p)))
                    .filter(w -> !w.equals("null"))
                    .toList()));
            for (ReviewPoint point : answer.points()) {
                Double value = axis.at(point);
                String word = axis.word(point);
                if (!answer.enters(point) || !point.timed()) {
                    continue;
                }
                if (words.isEmpty() && value != null) {
                    flights.add(new At(point, value));
                } else if (word != null) {
                    flights.add(new At(point, words.indexOf(word)));
                }
            }
        }
        setAccessibleText(flights.size() + " flights: time against " + axis.name());
        repaint();
    }

    private double low() {
        return flights.stream().mapToDouble(At::value).min().orElse(0);
    }

    private double high() {
        return flights.stream().mapToDouble(At::value).max().orElse(1);
    }

    /** Room on both sides of what was flown. */
    private double beyond() {
        double width = high() - low();
        return width > 0 ? width * 0.14 : words.isEmpty() ? Math.max(Math.abs(low()) * 0.05, 0.5) : 0.5;
    }

    private double x(double width, double one, double value) {
        double from = low() - beyond();
        double to = high() + beyond();
        return LEFT * one + (value - from) / (to - from) * (width - (LEFT + RIGHT) * one);
    }

    @Override
    protected void paint(Pen pen) {
        double left = pen.px(LEFT);
        double right = pen.width() - pen.px(RIGHT);
        double top = pen.px(TOP);
        double foot = pen.height() - pen.px(FOOT);
        TimeScale times = scale;
        if (times == null || flights.isEmpty() || foot - top < pen.px(30)) {
            pen.stroke(Token.EDGE, 1).line(left, foot, right, foot).line(left, top, left, foot);
            return;
        }
        double from = x(pen.width(), pen.px(1), low()) - pen.px(9);
        double to = x(pen.width(), pen.px(1), high()) + pen.px(9);
        pen.area(left, top, right - left, foot - top, Token.RAISED);
        pen.area(from, top, to - from, foot - top, Token.SHEET);
        wished(pen, from, to, top, foot);
        times.draw(pen, left, right, top, foot);
        pen.stroke(Token.EDGE, 1).line(left, foot, right, foot).line(left, top, left, foot);
        axis(pen, left, right, foot);
        neverFlown(pen, left, from, right, to, top, foot);
        marks(pen, times, top, foot);
    }

    private void wished(Pen pen, double from, double to, double top, double foot) {
        ModelReview answer = model.answerProperty().get();
        if (answer == null || !model.axisProperty().get().isMargin()) {
            return;
        }
        Double low = answer.model().wishedLow();
        Double high = answer.model().wishedHigh();
        if (low != null && high != null) {
            double a = Math.max(from, x(pen.width(), pen.px(1), 100 * low));
            double b = Math.min(to, x(pen.width(), pen.px(1), 100 * high));
            pen.area(a, top, b - a, foot - top, Token.SOFT);
        }
    }

    private void axis(Pen pen, double left, double right, double foot) {
        double one = pen.px(1);
        if (words.isEmpty()) {
            double step = step((high() - low() + 2 * beyond()) / 5);
            int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
            decimals += step * Math.pow(10, decimals) % 1 > 1e-6 ? 1 : 0;
            for (double v = Math.ceil((low() - beyond()) / step) * step; v <= high() + beyond() + 1e-12; v += step) {
                tick(pen, x(pen.width(), one, v), foot, QuantityFormat.rounded(v, decimals));
            }
        } else {
            for (int i = 0; i < words.size(); i++) {
                tick(pen, x(pen.width(), one, i), foot, words.get(i));
            }
        }
        pen.text(
                model.axisProperty().get().title(),
                right,
                foot + pen.px(30),
                TextRole.SMALL,
                Token.INK_2,
                HPos.RIGHT,
                VPos.CENTER);
    }

    private static void tick(Pen pen, double x, double foot, String label) {
        pen.stroke(Token.EDGE, 1).line(x, foot, x, foot + pen.px(4));
        pen.text(label, x, foot + pen.px(13), TextRole.SMALL, Token.INK_2, HPos.CENTER, VPos.CENTER);
    }

    /** 1, 2, 2.5 or 5 times a power of ten, at or above. */
    private static double step(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double times : new double[] {1, 2, 2.5, 5}) {
            if (times * power >= least) {
                return times * power;
            }
        }
        return 10 * power;
    }

    private static void neverFlown(
            Pen pen, double left, double from, double right, double to, double top, double foot) {
        String text = "never flown";
        double needs = pen.textWidth(text, TextRole.MICRO) + pen.px(8);
        double y = foot - pen.px(9);
        if (from - left > needs) {
            pen.text(text, (left + from) / 2, y, TextRole.MICRO, Token.INK_2, HPos.CENTER, VPos.CENTER);
        }
        if (right - to > needs) {
            pen.text(text, (to + right) / 2, y, TextRole.MICRO, Token.INK_2, HPos.CENTER, VPos.CENTER);
        }
    }

    private void marks(Pen pen, TimeScale times, double top, double foot) {
        ReviewPoint picked = model.flightProperty().get();
        Map<Integer, double[]> highest = new LinkedHashMap<>();
        for (At at : flights) {
            double x = spread(pen.width(), pen.px(1), at);
            double y = times.y(TimeScale.seconds(at.point()), top, foot);
            FlightMarks.draw(
                    pen,
                    at.point(),
                    x,
                    y,
                    FlightMarks.SIZE,
                    model.isInFront(at.point()),
                    at.point().equals(picked));
            if (model.isInFront(at.point())) {
                double[] best = highest.get(at.point().versionNumber());
                if (best == null || y < best[1]) {
                    highest.put(at.point().versionNumber(), new double[] {x, y});
                }
            }
        }
        names(pen, times, highest, top, foot);
    }

    /** Versions named directly at their highest mark, as far as there is room. */
    private void names(Pen pen, TimeScale times, Map<Integer, double[]> highest, double top, double foot) {
        ModelReview answer = model.answerProperty().get();
        if (answer == null) {
            return;
        }
        Map<Integer, String> names = answer.versionNames();
        taken.clear();
        double half = pen.px(FlightMarks.SIZE) / 2;
        for (At at : flights) {
            double x = spread(pen.width(), pen.px(1), at);
            double y = times.y(TimeScale.seconds(at.point()), top, foot);
            taken.add(new Rectangle2D(x - half, y - half, 2 * half, 2 * half));
        }
        highest.forEach((version, at) -> {
            String name = names.getOrDefault(version, "");
            double w = pen.textWidth(name, TextRole.SMALL);
            double h = pen.px(12);
            double[][] places = {
                {at[0], at[1] - pen.px(18)},
                {at[0] + w / 2 + pen.px(11), at[1]},
                {at[0] - w / 2 - pen.px(11), at[1]},
                {at[0] + w / 2 + pen.px(11), at[1] + h},
                {at[0] - w / 2 - pen.px(11), at[1] + h},
                {at[0], at[1] - pen.px(32)}
            };
            for (double[] place : places) {
                Rectangle2D box = new Rectangle2D(place[0] - w / 2, place[1] - h / 2, w, h);
                if (box.getMinY() >= top - pen.px(8) && taken.stream().noneMatch(box::intersects)) {
                    taken.add(box);
                    pen.text(name, place[0], place[1], TextRole.SMALL, Token.INK, HPos.CENTER, VPos.CENTER);
                    break;
                }
            }
        });
    }

    /** Equal values lie beside each other by at most a few pixels, always the same for the same flight. */
    private double spread(double width, double one, At at) {
        double share = Math.floorMod(at.point().flight().id().hashCode(), 9) / 4.0 - 1;
        return x(width, one, at.value()) + share * SPREAD * one;
    }

    private void pickAt(double x, double y) {
        TimeScale times = scale;
        double one = em() / 12.5;
        At best = null;
        double apart = 14 * one;
        for (At at : flights) {
            double dx = spread(getWidth(), one, at) - x;
            double dy =
                    times == null ? 0 : times.y(TimeScale.seconds(at.point()), TOP * one, getHeight() - FOOT * one) - y;
            double away = Math.hypot(dx, dy);
            if (away < apart) {
                apart = away;
                best = at;
            }
        }
        if (best != null) {
            model.flightProperty().set(best.point());
        }
    }
}
