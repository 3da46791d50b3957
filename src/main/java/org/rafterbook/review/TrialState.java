package org.rafterbook.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.TrialPlan.Side;
import org.rafterbook.units.Counted;

/**
 * How far an open trial is: flights done and left, and what to fly next. It carries no times, so that nothing can be read
 * from it before the trial is judged.
 *
 * @param plan the trial
 * @param slots one a planned flight, in the order drawn
 * @param extra flights with one of the two values beyond those planned
 * @param notCounted flights of the trial that do not count, left out or without a time
 * @param days sessions the flights were flown in
 * @param pairsSplit pairs whose two flights were flown on different days
 */
public record TrialState(TrialPlan plan, List<Slot> slots, int extra, int notCounted, int days, int pairsSplit) {

    public TrialState {
        slots = List.copyOf(slots);
    }

    /**
     * A flight made while the trial was open.
     *
     * @param value the trial's setting as flown
     * @param counts false where its time does not count at all
     */
    public record TrialFlight(String flightId, String sessionId, Level value, boolean counts) {}

    /**
     * One planned flight.
     *
     * @param flightId the flight that filled it, null while to be flown
     * @param sessionId the session of that flight
     */
    public record Slot(
            Side side, @Nullable String flightId, @Nullable String sessionId) {
        public boolean isFlown() {
            return flightId != null;
        }
    }

    /**
     * The state after these flights. A flight fills the first open slot with its value, so that a flyer who took the
     * other value first loses nothing.
     *
     * @param flights the flights made while the trial was open, in flying order
     */
    public static TrialState of(TrialPlan plan, List<TrialFlight> flights) {
        List<Slot> slots = new ArrayList<>();
        plan.order().forEach(side -> slots.add(new Slot(side, null, null)));
        Set<String> days = new LinkedHashSet<>();
        int extra = 0;
        int notCounted = 0;
        for (TrialFlight flight : flights) {
            Side side = plan.side(flight.value());
            if (side == null) {
                continue;
            }
            if (!flight.counts()) {
                notCounted++;
                continue;
            }
            days.add(flight.sessionId());
            int open = firstOpen(slots, side);
            if (open < 0) {
                extra++;
            } else {
                slots.set(open, new Slot(side, flight.flightId(), flight.sessionId()));
            }
        }
        int split = 0;
        for (int i = 0; i < slots.size(); i += 2) {
            String one = slots.get(i).sessionId();
            String other = slots.get(i + 1).sessionId();
            split += one != null && other != null && !one.equals(other) ? 1 : 0;
        }
        return new TrialState(plan, slots, extra, notCounted, days.size(), split);
    }

    public int flown() {
        return (int) slots.stream().filter(Slot::isFlown).count();
    }

    public int left() {
        return slots.size() - flown();
    }

    /** Planned flights done with this value. */
    public int flown(Side side) {
        return (int) slots.stream().filter(s -> s.side() == side && s.isFlown()).count();
    }

    /** True where all planned flights are flown, so that the trial is to be judged. */
    public boolean isComplete() {
        return left() == 0;
    }

    /** Index of the slot to fly next, -1 where all are flown. */
    public int nextSlot() {
        for (int i = 0; i < slots.size(); i++) {
            if (!slots.get(i).isFlown()) {
                return i;
            }
        }
        return -1;
    }

    /** The value to fly next, null where all are flown. */
    public @Nullable Level next() {
        int next = nextSlot();
        return next < 0 ? null : plan.level(slots.get(next).side());
    }

    /** Such as "2 of 6 flown". */
    public String progress() {
        return flown() + " of " + slots.size() + " flown";
    }

    /** What to do next and what is to be minded, sentence by sentence. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        Level next = next();
        sentences.add(
                next == null
                        ? "All " + slots.size() + " flights are flown: the trial is judged."
                        : "Next: " + plan.setting().label() + " "
                                + plan.setting().show(next) + ".");
        if (pairsSplit > 0) {
            sentences.add(Counted.of(pairsSplit, "pair") + " had "
                    + (pairsSplit == 1
                            ? "its two values flown on different days and tells less for it."
                            : "their two values flown on different days and tell less for it."));
        } else if (days > 1) {
            sentences.add("Flown on " + days + " days; each pair was completed on one day, so the comparison holds.");
        }
        if (notCounted > 0) {
            sentences.add(Counted.of(notCounted, "flight") + " left out: its place is flown again.");
        }
        if (extra > 0) {
            sentences.add(Counted.of(extra, "flight") + " beyond the plan; judged with the others.");
        }
        return List.copyOf(sentences);
    }

    private static int firstOpen(List<Slot> slots, Side side) {
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).side() == side && !slots.get(i).isFlown()) {
                return i;
            }
        }
        return -1;
    }
}
