package org.rafterbook.ui.motorbox;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.TurnsUsed;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindDraft;
import org.rafterbook.power.WindEnd;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.work.MotorDesk;
import org.rafterbook.work.WindForm;

/** A wind of the picked motor: turns, torque, how it ended. */
final class WindPage extends PickedPage<Wind> {

    private final MotorBoxModel model;
    private final Entry turns;
    private final Entry backOff;
    private final Entry highest;
    private final Entry torque;
    private final ChoiceField<WindEnd> end =
            new ChoiceField<>("How it ended", e -> e.word().replace('-', ' '));
    private final Node node;
    private @Nullable String motorId;

    WindPage(MotorBoxModel model, DisplayUnits units) {
        this.model = model;
        turns = new Entry("Turns put in", Quantity.TURNS, "turnsWound", units);
        backOff = new Entry("Backed off", Quantity.TURNS, "turnsBackedOff", units);
        highest = new Entry("Highest torque", Quantity.TORQUE, "maxTorqueNm", units);
        torque = new Entry("Launch torque", Quantity.TORQUE, "launchTorqueNm", units);
        end.offer(List.of(WindEnd.values()), WindEnd.LET_DOWN);
        node = Lay.column(8, turns.field(), backOff.field(), highest.field(), torque.field(), end);
    }

    @Override
    public String name() {
        return "Wind";
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public void edit() {
        turns.field().edit();
    }

    /** Adds to this motor from now on. */
    void of(MotorDesk.@Nullable Boxed boxed) {
        motorId = boxed == null ? null : boxed.motor().id();
    }

    @Override
    public void reset() {
        Wind wind = shown();
        turns.fill(wind == null ? null : wind.turnsWound());
        backOff.fill(wind == null ? null : wind.turnsBackedOff());
        highest.fill(wind == null ? null : wind.maxTorqueNm());
        torque.fill(wind == null ? null : wind.launchTorqueNm());
        end.offer(List.of(WindEnd.values()), wind == null ? WindEnd.LET_DOWN : wind.end());
    }

    @Override
    public String picked() {
        Wind wind = shown();
        return wind == null ? "" : "wind " + wind.ordinal();
    }

    private boolean sound() {
        boolean read = entriesAreSound();
        Double wound = turns.si();
        Double back = backOff.si();
        if (read && wound != null) {
            Optional<String> refusal = TurnsUsed.refusal(wound, back == null ? 0 : back, 0);
            refusal.ifPresent(backOff.field()::refuse);
            return refusal.isEmpty();
        }
        return read;
    }

    @Override
    List<Entry> entries() {
        return List.of(turns, backOff, highest, torque);
    }

    @Override
    public void add(Runnable then) {
        String of = motorId;
        if (of == null) {
            turns.field().refuse("Pick the motor first.");
        } else if (sound()) {
            WindEnd how = end.chosen() == null ? WindEnd.LET_DOWN : end.chosen();
            WindForm form =
                    new WindForm(of, turns.si(), backOff.si(), highest.si(), torque.si(), null, typed(Map.of()));
            model.enter(desk -> desk.addWind(form, how), turns.field(), then);
        }
    }

    @Override
    public void correct(Runnable then) {
        Wind was = shown();
        if (was != null && sound()) {
            Wind right = WindDraft.of(was)
                    .turnsWound(turns.si())
                    .turnsBackedOff(backOff.si())
                    .maxTorqueNm(highest.si())
                    .launchTorqueNm(torque.si())
                    .end(end.chosen())
                    .asTyped(typed(was.asTyped()))
                    .done();
            model.enter(desk -> desk.correct(right), turns.field(), then);
        }
    }
}
