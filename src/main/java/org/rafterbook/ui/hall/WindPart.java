package org.rafterbook.ui.hall;

import java.util.List;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import org.jspecify.annotations.Nullable;
import org.rafterbook.power.Wind;
import org.rafterbook.review.Answer;
import org.rafterbook.review.Ceiling;
import org.rafterbook.review.ExpectedFlight;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.FittingRow;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Outlook;
import org.rafterbook.work.Prepared;
import org.rafterbook.work.TouchRisk;

/** Motor and wind of the prepared flight, and what its launch torque risks. */
final class WindPart {

    private final HallModel model;
    private final QuantityFormat format;
    private final Label wind = Words.prose("");
    private final Label risk = Words.prose("");
    private final ReadOnlyStringWrapper summary = new ReadOnlyStringWrapper(this, "summary", "");
    private final Action relaunch;
    private final Sheet.Section node;

    WindPart(
            HallModel model,
            QuantityFormat format,
            Action windStep,
            Action relaunch,
            Action openLast,
            Followed followed) {
        this.model = model;
        this.format = format;
        this.relaunch = relaunch;
        for (Label label : List.of(wind, risk)) {
            label.setMinHeight(Label.USE_PREF_SIZE);
        }
        FittingRow buttons = new FittingRow();
        buttons.getStyleClass().add("gap-8");
        buttons.getChildren()
                .addAll(Buttons.secondary(windStep), Buttons.secondary(relaunch), Buttons.secondary(openLast));
        node = new Sheet.Section("Motor and wind", "", wind, risk, buttons);
        followed.follow(model.preparing().relaunchProperty(), again -> show());
        followed.follow(model.outlookProperty(), outlook -> show());
        followed.follow(model.computingProperty(), computing -> show());
    }

    /** What is most worth knowing where the part is folded to one line. */
    ObservableValue<String> summary() {
        return summary.getReadOnlyProperty();
    }

    Sheet.Section node() {
        return node;
    }

    void show() {
        HallData data = model.data();
        if (data == null) {
            return;
        }
        Prepared prepared = data.prepared();
        relaunch.enabledProperty().set(prepared.again() != null);
        wind.setText(wind(prepared));
        risk.setText(risk(prepared));
        summary.set(summary(prepared));
        Lay.show(risk, !risk.getText().isEmpty());
    }

    private String summary(Prepared prepared) {
        if (model.preparing().relaunchProperty().get() && prepared.again() != null) {
            return "relaunch";
        }
        Wind on = prepared.wind();
        Outlook outlook = model.outlookProperty().get().orElse(null);
        TouchRisk touch = outlook == null ? null : outlook.risk();
        if (on == null) {
            Ceiling.@Nullable Advice advice = touch == null ? null : touch.advice();
            return advice == null
                    ? "no wind yet"
                    : "no wind yet, up to " + format.text(Quantity.TORQUE, advice.torqueNm(), 2);
        }
        if (on.launchTorqueNm() == null) {
            return Texts.turns(Texts.atLaunch(on)) + " turns at launch";
        }
        String torque = format.text(Quantity.TORQUE, on.launchTorqueNm());
        Double chance = outlook == null ? null : outlook.chance();
        return chance == null || touch == null
                ? torque
                : torque + ": " + TouchRisk.inHundred(chance) + " touch "
                        + touch.limit().name();
    }

    private String wind(Prepared prepared) {
        if (model.preparing().relaunchProperty().get() && prepared.again() != null) {
            return "Relaunch on the wind of the last flight, without winding again.";
        }
        Wind on = prepared.wind();
        if (on != null) {
            String motor = prepared.motor() == null ? "Motor" : prepared.motor().name();
            return motor + ": " + Texts.turns(Texts.atLaunch(on)) + " turns at launch, "
                    + format.text(Quantity.TORQUE, on.launchTorqueNm()) + " launch torque";
        }
        return "No wind written down."
                + (prepared.proposed() == null
                        ? ""
                        : " " + prepared.proposed().name() + " is of the same size and has rested.")
                + hint(prepared);
    }

    private String hint(Prepared prepared) {
        Wind last = prepared.last() == null ? null : prepared.last().wind();
        return last == null
                ? ""
                : " Last time " + Texts.turns(Texts.atLaunch(last)) + " turns, "
                        + format.text(Quantity.TORQUE, last.launchTorqueNm()) + ".";
    }

    /** Such as "2.6 N·mm: 9 in 100 would touch lamps. Up to 2.7 N·mm for your limit of 15 in 100." */
    private String risk(Prepared prepared) {
        Outlook outlook = model.outlookProperty().get().orElse(null);
        if (model.preparing().relaunchProperty().get() || prepared.rigged() == null) {
            return "";
        }
        if (outlook == null) {
            return model.computingProperty().get() ? "The chance to touch is being computed." : "";
        }
        if (outlook.touching() instanceof Answer.CannotTell<TouchRisk> open) {
            // where no height can be told, what to expect says so already
            ExpectedFlight expected = outlook.expected();
            boolean said = expected != null
                    && expected.peak() instanceof Answer.CannotTell<ExpectedFlight.PeakHeight> peak
                    && peak.sentence().equals(open.sentence());
            return said ? "" : open.sentence();
        }
        TouchRisk touch = ((Answer.Known<TouchRisk>) outlook.touching()).value();
        Double chance = outlook.chance();
        Wind on = prepared.wind();
        String now = chance == null || on == null
                ? ""
                : format.text(Quantity.TORQUE, on.launchTorqueNm()) + ": " + TouchRisk.inHundred(chance)
                        + " would touch " + touch.limit().name() + ". ";
        return now + upTo(touch);
    }

    private String upTo(TouchRisk touch) {
        Ceiling.@Nullable Advice advice = touch.advice();
        String limit = TouchRisk.inHundred(touch.chosen());
        return advice == null
                ? "Even the lowest torque flown touches more often than " + limit + "."
                : "Up to " + format.text(Quantity.TORQUE, advice.torqueNm(), 2) + " for your limit of " + limit
                        + (advice.limitedByFlown() ? ", no more was flown." : ".");
    }
}
