package org.rafterbook.ui.hall;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEventKind;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.TypedValue;
import org.rafterbook.work.Evening;
import org.rafterbook.work.HallDesk;
import org.rafterbook.work.LandingEnd;
import org.rafterbook.work.Launch;

/** The flight on the landing sheet: its time, and everything that is answered about it. */
public final class LandingModel {

    /**
     * The flight on the landing sheet.
     *
     * @param durationS as stopped, shown before it is on disk
     * @param flight as kept, null until then
     * @param refused why the stopped time could not be kept, null while nothing is wrong
     */
    public record Landed(
            String flightId,
            String name,
            double durationS,
            @Nullable Flight flight,
            @Nullable String refused) {

        private Landed as(@Nullable Flight kept, @Nullable String why) {
            return new Landed(flightId, name, durationS, kept, why);
        }
    }

    private final HallModel hall;
    private final ReadOnlyObjectWrapper<@Nullable Landed> landed = new ReadOnlyObjectWrapper<>(this, "landed");

    private BooleanSupplier mayLeave = () -> true;

    LandingModel(HallModel hall) {
        this.hall = hall;
    }

    public ReadOnlyObjectProperty<@Nullable Landed> landedProperty() {
        return landed.getReadOnlyProperty();
    }

    /** Shows the sheet of a flight that was just stopped and is on its way to disk. */
    void stopped(Timed timed, double durationS) {
        landed.set(new Landed(timed.flightId(), timed.name(), durationS, null, null));
        hall.stateProperty().set(HallState.LANDING);
    }

    /** The stopped flight is on disk. */
    void kept(Flight flight) {
        Landed shown = landed.get();
        if (shown != null && shown.flightId().equals(flight.id())) {
            landed.set(shown.as(flight, null));
        }
    }

    /** The stopped time could not be written down: it stays on the sheet. */
    void refused(String flightId, String why) {
        Landed shown = landed.get();
        if (shown != null && shown.flightId().equals(flightId)) {
            landed.set(shown.as(null, why));
        } else if (hall.stateProperty().get() == HallState.PREPARING) {
            hall.air().offerRefused();
        }
    }

    /** Asked before the sheet shows another flight: what is typed is kept first; false where it was refused. */
    void beforeAnother(BooleanSupplier asked) {
        mayLeave = asked;
    }

    /** Shows the sheet of a flight that is on disk. */
    void show(Flight flight, String name, double durationS) {
        landed.set(new Landed(flight.id(), name, durationS, flight, null));
        hall.stateProperty().set(HallState.LANDING);
    }

    void sync(Evening evening) {
        Landed shown = landed.get();
        if (shown == null || hall.air().isUnkept(shown.flightId())) {
            return;
        }
        FlightLine line = evening.find(shown.flightId());
        Double duration = line == null ? null : line.flight().durationS();
        if (line != null && duration != null) {
            landed.set(new Landed(shown.flightId(), HallModel.name(line), duration, line.flight(), null));
            return;
        }
        landed.set(null);
        if (hall.stateProperty().get() == HallState.LANDING) {
            hall.air().pick(shown.flightId());
            goOn();
        }
    }

    private void goOn() {
        if (hall.air().offerRefused()) {
            return;
        }
        hall.stateProperty().set(hall.air().watches().isEmpty() ? HallState.PREPARING : HallState.IN_THE_AIR);
    }

    /** Opens the landing sheet of a flight of this evening. */
    public void open(FlightLine line) {
        Landed shown = landed.get();
        Double duration = line.flight().durationS();
        boolean another = shown != null
                && hall.stateProperty().get() == HallState.LANDING
                && !shown.flightId().equals(line.flight().id());
        if (duration != null && (!another || mayLeave.getAsBoolean())) {
            show(line.flight(), HallModel.name(line), duration);
        }
    }

    /** Opens the flight before (-1) or after (1) the one on the landing sheet. */
    public void openNext(int direction) {
        HallData read = hall.data();
        Landed shown = landed.get();
        if (read == null) {
            return;
        }
        List<FlightLine> timed = read.evening().flights().stream()
                .filter(l -> l.flight().durationS() != null)
                .toList();
        int at = timed.size();
        for (int i = 0; i < timed.size(); i++) {
            if (shown != null && timed.get(i).flight().id().equals(shown.flightId())) {
                at = i;
            }
        }
        int wanted = at + direction;
        if (wanted >= 0 && wanted < timed.size()) {
            open(timed.get(wanted));
        }
    }

    /** The stop was wrong: the watch has run on. */
    public void stillFlying() {
        Landed shown = landed.get();
        if (shown != null && hall.air().isUnkept(shown.flightId())) {
            landed.set(null);
            hall.air().runOn(shown.flightId());
        } else if (shown != null) {
            hall.change(d -> d.flying().stillFlying(shown.flightId()), flight -> {
                landed.set(null);
                hall.air().runOn(flight, shown.name());
            });
        }
    }

    /**
     * Ready for the next flight, or for the one still in the air; a flight of the open trial takes that further. A time
     * that could not be kept is tried again instead.
     */
    public void done() {
        Landed shown = landed.get();
        if (shown != null && shown.refused() != null) {
            hall.air().keepStop(shown.flightId());
            return;
        }
        if (shown != null) {
            hall.trial().landed(shown.flightId());
        }
        goOn();
    }

    public void end(LandingEnd end) {
        change((d, id) -> d.answers().end(id, end));
    }

    /** It was no flight but an aborted launch, to be left out; its time is kept. */
    public void aborted() {
        change((d, id) -> d.answers().aborted(id));
    }

    public void costTime(CutShort answer) {
        change((d, id) -> d.answers().costTime(id, answer));
    }

    public void turnsLeft(@Nullable TypedValue turns, Consumer<Throwable> otherwise) {
        change((d, id) -> d.answers().turnsLeft(id, turns), otherwise);
    }

    public void peak(@Nullable TypedRange range, Consumer<Throwable> otherwise) {
        change((d, id) -> d.answers().peak(id, range), otherwise);
    }

    public void notes(@Nullable String text, Consumer<Throwable> otherwise) {
        change((d, id) -> d.answers().notes(id, text == null ? "" : text), otherwise);
    }

    /** Something it did in the landed flight, its second not known. */
    public void did(FlightEventKind kind) {
        change((d, id) -> d.flying().note(id, kind, null, null, null, null));
    }

    /** Flags the landed flight, or with null takes the flag away. */
    public void leaveOut(@Nullable String why, Consumer<Throwable> otherwise) {
        change((d, id) -> d.answers().leaveOut(id, why), otherwise);
    }

    public void correctTime(TypedValue time, Runnable kept, Consumer<Throwable> otherwise) {
        Landed shown = landed.get();
        if (shown != null) {
            Launch unwritten = hall.air().launchOfUnkept(shown.flightId());
            hall.change(
                    d -> d.flying().correctTime(shown.flightId(), time, unwritten),
                    flight -> {
                        hall.air().typedInstead(flight.id());
                        kept(flight);
                        kept.run();
                    },
                    otherwise);
        }
    }

    public void giveModel(String modelId) {
        change((d, id) -> d.answers().giveModel(id, modelId));
    }

    /** An entry about the landed flight. */
    private interface Entry<T> {
        T make(HallDesk desk, String flightId);
    }

    private <T> void change(Entry<T> entry) {
        change(entry, hall::show);
    }

    private <T> void change(Entry<T> entry, Consumer<Throwable> otherwise) {
        Landed shown = landed.get();
        if (shown != null) {
            Function<HallDesk, T> what = d -> entry.make(d, shown.flightId());
            hall.change(what, value -> {}, otherwise);
        }
    }
}
