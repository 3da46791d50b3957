package org.rafterbook.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.SessionLimit;
import org.rafterbook.flight.Venue;
import org.rafterbook.flight.VenueMark;
import org.rafterbook.logbook.Reader;

/** What is at which height where a session is flown. */
final class Heights {

    private Heights() {}

    /** Marks of the venue and what hangs in the way on that day, lowest first. */
    static List<HeightMark> of(Reader reader, @Nullable Session session, @Nullable Venue venue) {
        List<HeightMark> heights = new ArrayList<>();
        if (venue != null) {
            for (VenueMark mark : reader.where(VenueMark.class, "venueId", venue.id())) {
                heights.add(new HeightMark(mark.id(), mark.name(), mark.heightM(), mark.limit()));
            }
        }
        if (session != null) {
            for (SessionLimit limit : reader.where(SessionLimit.class, "sessionId", session.id())) {
                heights.removeIf(h -> limit.markId() != null && limit.markId().equals(h.markId()));
                heights.add(new HeightMark(limit.markId(), limit.name(), limit.heightM(), true));
            }
        }
        heights.sort(Comparator.comparingDouble(HeightMark::heightM));
        return List.copyOf(heights);
    }

    /** The lowest thing whose touch costs time, else the height that can be flown under; null where neither is known. */
    static @Nullable HeightMark limiting(List<HeightMark> heights, @Nullable Venue venue) {
        Double usable = venue == null ? null : venue.usableHeightM();
        return heights.stream()
                .filter(HeightMark::limit)
                .findFirst()
                .orElse(usable == null ? null : new HeightMark(null, ImportSessions.USABLE, usable, true));
    }
}
