package org.rafterbook.ui.kit;

import javafx.animation.PauseTransition;
import javafx.event.EventHandler;
import javafx.scene.AccessibleRole;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.draw.Drawing;
import org.rafterbook.ui.draw.Pen;
import org.rafterbook.ui.look.Token;
import org.rafterbook.work.Running;
import org.rafterbook.work.Step;

/**
 * How far a job is, as a rule of ten ticks filling from the left, with its sentence and Esc to cancel. Nothing is shown
 * before 400 ms, so that quick work does not flicker.
 */
public final class ProgressRule extends HBox implements FxBackground.Display {

    private static final Duration QUIET = Duration.millis(400);

    private final Label sentence = Words.small("");
    private final TenTicks ticks = new TenTicks();
    private final PauseTransition quiet = new PauseTransition(QUIET);
    private final EventHandler<KeyEvent> escape = this::cancelOnEscape;
    private @Nullable Running running;

    public ProgressRule() {
        getStyleClass().add("progress");
        sentence.setMinWidth(USE_PREF_SIZE);
        KeyCap esc = new KeyCap("Esc");
        esc.setOnMouseClicked(event -> cancel());
        getChildren().addAll(Lay.grow(ticks), sentence, esc);
        setAccessibleRole(AccessibleRole.PROGRESS_INDICATOR);
        quiet.setOnFinished(event -> Lay.show(this, true));
        Lay.show(this, false);
        sceneProperty().subscribe(this::listen);
    }

    private void listen(@Nullable Scene before, @Nullable Scene now) {
        if (before != null) {
            before.removeEventFilter(KeyEvent.KEY_PRESSED, escape);
        }
        if (now != null) {
            now.addEventFilter(KeyEvent.KEY_PRESSED, escape);
        }
    }

    private void cancelOnEscape(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE && Lay.isInSight(this) && running != null) {
            cancel();
            event.consume();
        }
    }

    private void cancel() {
        if (running != null) {
            running.cancel();
        }
    }

    @Override
    public void started(Running job) {
        running = job;
        ticks.fill(0);
        sentence.setText("");
        Lay.show(this, false);
        quiet.playFromStart();
    }

    @Override
    public void at(Running job, Step step) {
        if (running != job) {
            return;
        }
        ticks.fill(step.fraction());
        sentence.setText(step.sentence());
        setAccessibleText(step.sentence());
    }

    @Override
    public void ended(Running job) {
        // an older job's end must not hide a newer one
        if (running == job || running == null) {
            running = null;
            quiet.stop();
            Lay.show(this, false);
        }
    }

    /** Shows the rule at once as it would stand at a step: for a picture. */
    public void still(Step step) {
        ticks.fill(step.fraction());
        sentence.setText(step.sentence());
        Lay.show(this, true);
    }

    /** The rule itself. */
    private static final class TenTicks extends Drawing {

        private double filled;

        private TenTicks() {
            wish(-1, 1.28);
        }

        private void fill(double share) {
            filled = share;
            repaint();
        }

        @Override
        protected void paint(Pen pen) {
            double foot = pen.height() - pen.px(3);
            double width = pen.width() - 1;
            pen.stroke(Token.EDGE, 1).line(0, foot, width, foot);
            for (int tick = 0; tick < 10; tick++) {
                double x = width * tick / 10;
                pen.line(x, foot - pen.px(10), x, foot);
            }
            pen.area(0, foot - pen.px(5), width * filled, pen.px(5), Token.ACCENT);
        }
    }
}
