package org.rafterbook.work;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.FlightEventKind;

/** The six ways a landing is told in the Hall, in the order of their number keys. */
public enum LandingEnd {
    MOTOR_TURNING("On the floor, motor turning", "clean end", Ending.CLEAN, null, null),
    DEAD_STICK(
            "On the floor, dead-stick", "propeller had stopped", Ending.CLEAN, null, FlightEventKind.PROPELLER_STOPPED),
    TOUCH("A touch cut it short", "counts as “at least”", Ending.TOUCHED, CutShort.YES, null),
    HUNG("Hung up", "counts as “at least”", Ending.HUNG, null, null),
    MID_AIR("Met another model", "counts as “at least”", Ending.MID_AIR, null, null),
    BY_HAND("Caught or stopped by hand", "counts as “at least”", Ending.STEERED, null, FlightEventKind.STEERED);

    /** Marks the event that an answer at landing has made, so that another answer takes it away again. */
    static final String TOLD_AT_LANDING = "told at landing";

    private final String says;
    private final String means;
    private final Ending ending;
    private final @Nullable CutShort cutShort;
    private final @Nullable FlightEventKind event;

    LandingEnd(String says, String means, Ending ending, @Nullable CutShort cutShort, @Nullable FlightEventKind event) {
        this.says = says;
        this.means = means;
        this.ending = ending;
        this.cutShort = cutShort;
        this.event = event;
    }

    public String says() {
        return says;
    }

    public String means() {
        return means;
    }

    /** How the flight is stored as ended: one that touched something and came down by itself still touched. */
    Ending ending(boolean touched) {
        return ending == Ending.CLEAN && touched ? Ending.TOUCHED : ending;
    }

    @Nullable
    CutShort cutShort() {
        return cutShort;
    }

    @Nullable
    FlightEventKind event() {
        return event;
    }

    /** Which answer a flight carries, null before it was answered. */
    public static @Nullable LandingEnd of(Flight flight, List<FlightEvent> events) {
        Ending ending = flight.ending();
        if (ending == null) {
            return null;
        }
        return switch (ending) {
            case HUNG -> HUNG;
            case MID_AIR -> MID_AIR;
            case STEERED -> BY_HAND;
            case ABORTED -> null;
            case TOUCHED -> flight.cutShort() == CutShort.YES && !toldStopped(events) ? TOUCH : onTheFloor(events);
            case CLEAN -> onTheFloor(events);
        };
    }

    private static LandingEnd onTheFloor(List<FlightEvent> events) {
        return toldStopped(events) ? DEAD_STICK : MOTOR_TURNING;
    }

    private static boolean toldStopped(List<FlightEvent> events) {
        return events.stream().anyMatch(e -> e.kind() == FlightEventKind.PROPELLER_STOPPED);
    }
}
