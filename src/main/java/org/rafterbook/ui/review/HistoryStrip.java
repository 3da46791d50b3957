package org.rafterbook.ui.review;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.TakesArrows;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.draw.TextRole;
import org.rafterbook.ui.look.Token;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewPoint;

/** The history along the top: one tick a flight, its mark at its time, every trim change an upright hairline. */
final class HistoryStrip extends Drawing implements TakesArrows {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final double HEIGHT_EM = 14.24;
    private static final double LOW_EM = 9.6;
    private static final double LEFT = 56;
    private static final double RIGHT = 20;
    private static final double TOP = 30;
    private static final double FOOT = 31;

    private final ReviewModel model;
    private @Nullable StripPlan plan;
    private @Nullable TimeScale scale;

    HistoryStrip(ReviewModel model) {
        this.model = model;
        wish(-1, HEIGHT_EM);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        model.answerProperty().subscribe(this::plan);
        model.flightProperty().subscribe(this::repaintAndTell);
        model.changeProperty().subscribe(this::repaint);
        model.onlyItsFlightsProperty().subscribe(this::repaint);
        focusedProperty().subscribe(this::repaint);
        setOnMouseClicked(event -> {
            requestFocus();
            pickAt(event.getX());
        });
        setOnKeyPressed(event -> {
            switch (event.getCode()) {
                case LEFT -> model.step(-1);
                case RIGHT -> model.step(1);
                case HOME -> model.step(-1_000_000);
                case END -> model.step(1_000_000);
                default -> {
                    return;
                }
            }
            event.consume();
        });
    }

    private void plan(@Nullable ModelReview answer) {
        plan = answer == null ? null : StripPlan.of(answer);
        scale = answer == null ? null : TimeScale.of(answer);
        repaintAndTell();
    }

    /** Lower where the window has little height for its text size. */
    void low(boolean low) {
        wish(-1, low ? LOW_EM : HEIGHT_EM);
    }

    private void repaintAndTell() {
        ReviewPoint picked = model.flightProperty().get();
        int count = plan == null ? 0 : plan.flights().size();
        setAccessibleText(
                "History of " + count + " flights" + (picked == null ? "" : ", picked: " + FlightWords.line(picked)));
        repaint();
    }

    private double x(Pen pen, StripPlan now, double place) {
        double left = pen.px(LEFT);
        return left + place / now.width() * (pen.width() - left - pen.px(RIGHT));
    }

    private void pickAt(double x) {
        StripPlan now = plan;
        if (now != null && !now.flights().isEmpty()) {
            double one = em() / 12.5;
            double left = LEFT * one;
            int at = now.nearest((x - left) / (getWidth() - left - RIGHT * one) * now.width());
            model.flightProperty().set(now.flights().get(at));
        }
    }

    @Override
    protected void paint(Pen pen) {
        double top = pen.px(TOP);
        double foot = pen.height() - pen.px(FOOT);
        double left = pen.px(LEFT);
        double right = pen.width() - pen.px(RIGHT);
        StripPlan now = plan;
        TimeScale times = scale;
        if (now == null || times == null || now.flights().isEmpty()) {
            pen.stroke(Token.EDGE, 1).line(left, foot, right, foot);
            return;
        }
        times.draw(pen, left, right, top, foot);
        turns(pen, now, top, foot);
        ruler(pen, now, foot);
        flights(pen, now, times, top, foot);
        if (isFocused()) {
            pen.stroke(Token.ACCENT, 2);
            pen.canvas().strokeRect(1, 1, pen.width() - 2, pen.height() - 2);
        }
    }

    private void ruler(Pen pen, StripPlan now, double foot) {
        pen.stroke(Token.EDGE, 1).line(x(pen, now, 0), foot, x(pen, now, now.width()), foot);
        double tick = pen.px(5);
        if (x(pen, now, 1) - x(pen, now, 0) > 3) {
            for (double place : now.places()) {
                pen.line(x(pen, now, place), foot, x(pen, now, place), foot + tick);
            }
        }
        double free = 0;
        for (int i = 0; i < now.days().size(); i++) {
            StripPlan.Day day = now.days().get(i);
            pen.stroke(Token.EDGE, 1).line(x(pen, now, day.from()), foot, x(pen, now, day.from()), foot + 2 * tick);
            String date = (i == 0 ? YEAR : DAY).format(day.date());
            double middle = (x(pen, now, day.from()) + x(pen, now, day.to())) / 2;
            double half = pen.textWidth(date, TextRole.SMALL) / 2;
            middle = Math.min(Math.max(middle, half + pen.px(4)), pen.width() - half - pen.px(4));
            if (middle - half > free) {
                pen.text(date, middle, foot + pen.px(19), TextRole.SMALL, Token.INK_2, HPos.CENTER, VPos.CENTER);
                free = middle + half + pen.px(10);
            }
        }
    }

    private void turns(Pen pen, StripPlan now, double top, double foot) {
        List<StripPlan.Turn> turns = now.turns();
        double free = 0;
        for (int i = 0; i < turns.size(); i++) {
            StripPlan.Turn turn = turns.get(i);
            double x = x(pen, now, turn.place());
            pen.stroke(turn.back() ? Token.LINE : Token.EDGE, 1);
            if (turn.back()) {
                pen.dashed(2, 3);
            }
            pen.line(x, pen.px(8), x, foot);
            if (turn.repeated() || x < free) {
                continue;
            }
            double next = pen.width();
            for (int k = i + 1; k < turns.size(); k++) {
                if (!turns.get(k).repeated()) {
                    next = x(pen, now, turns.get(k).place());
                    break;
                }
            }
            String label = fits(pen, turn.label(), x, next) ? turn.label() : turn.version();
            if (fits(pen, label, x, pen.width())) {
                pen.text(
                        label,
                        x + pen.px(4),
                        pen.px(14),
                        TextRole.SMALL,
                        turn.back() ? Token.INK_3 : Token.INK,
                        HPos.LEFT,
                        VPos.CENTER);
                free = x + pen.textWidth(label, TextRole.SMALL) + pen.px(8);
            }
        }
        pen.stroke(Token.EDGE, 1);
    }

    private static boolean fits(Pen pen, String label, double x, double next) {
        return x + pen.px(10) + pen.textWidth(label, TextRole.SMALL) < next;
    }

    private void flights(Pen pen, StripPlan now, TimeScale times, double top, double foot) {
        double each = x(pen, now, 1) - x(pen, now, 0);
        double size = Math.max(3.5, Math.min(FlightMarks.SIZE, each / pen.px(1) * 0.9));
        ReviewPoint picked = model.flightProperty().get();
        double lastX = -1;
        for (int i = 0; i < now.flights().size(); i++) {
            ReviewPoint point = now.flights().get(i);
            double x = x(pen, now, now.places()[i]);
            boolean isPicked = point.equals(picked);
            // above two points a pixel only what differs is drawn: cut short ones always, others as far as they part
            if (each < 0.5 && !isPicked && !point.atLeast() && x - lastX < 0.5) {
                continue;
            }
            lastX = x;
            FlightMarks.draw(
                    pen,
                    point,
                    x,
                    times.y(TimeScale.seconds(point), top, foot),
                    size,
                    model.isInFront(point),
                    isPicked);
        }
    }
}
