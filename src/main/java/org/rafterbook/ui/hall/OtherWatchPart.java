package org.rafterbook.ui.hall;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.TypedValue;

/** A time from somebody else's watch, typed as fast as one is taken; and the flag that the next flight is not to count. */
final class OtherWatchPart {

    private final PreparingModel model;
    private final Field<TypedValue> time;
    private final Label readBack = Words.readout("", 1);
    private final Field<String> leaveOut = Field.words("Leave it out, because").prompt("it counts");
    private final Label flagged = Words.accent("");
    private final Action type;
    private final VBox node;
    private Runnable unfold = () -> {};
    private boolean onItsWay;

    OtherWatchPart(PreparingModel model, Keys keys, DisplayUnits units, Followed followed) {
        this.model = model;
        time = Field.quantity("Another watch", Quantity.TIME, units)
                .unit("")
                .also(read -> ""); // it is read back beside it, larger
        type = keys.on("E", "Type a time", () -> {
            unfold.run();
            time.edit();
        });
        time.key(type);
        for (int digit = 0; digit <= 9; digit++) {
            String typed = String.valueOf(digit);
            keys.on(typed, "Type a time", () -> begin(typed));
        }
        time.valueProperty().subscribe(v -> readBack.setText(v == null ? "" : v.readBack()));
        leaveOut.key(keys.on("X", "Leave the next flight out", () -> {
            unfold.run();
            leaveOut.edit();
        }));
        leaveOut.onKept(why -> model.leaveOutProperty().set(why == null || why.isBlank() ? null : why));
        readBack.setMinWidth(Label.USE_PREF_SIZE);
        HBox row = Lay.even(12, HallForm.fields(Lay.grow(time), readBack), leaveOut);
        node = Lay.styled(new VBox(row, flagged), "section");
        followed.follow(model.leaveOutProperty(), why -> {
            flagged.setText(why == null ? "" : "The next flight will be left out: " + why);
            Lay.show(flagged, why != null);
            if (why == null) {
                leaveOut.fill("");
            }
        });
    }

    VBox node() {
        return node;
    }

    /** The action that brings the cursor here, for the line that stands for this part where it is folded. */
    Action type() {
        return type;
    }

    /** What is to be done before the cursor comes here. */
    void onType(Runnable what) {
        unfold = what;
    }

    private void begin(String digit) {
        unfold.run();
        time.edit();
        time.input().setText(digit);
        time.input().positionCaret(1);
    }

    /** Keeps the typed time as a flight; it stays in the field until it is kept, and is never kept twice. */
    void keep() {
        TypedValue typed = time.value();
        if (typed != null && time.check() && !onItsWay) {
            onItsWay = true;
            Runnable emptied = HallForm.emptied(time);
            model.typed(
                    typed,
                    () -> {
                        onItsWay = false;
                        emptied.run();
                    },
                    failure -> {
                        onItsWay = false;
                        time.refuse(failure);
                    });
        }
    }
}
