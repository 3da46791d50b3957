package org.rafterbook.ui.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewPoint;

/**
 * The notes to show.
 *
 * @param flights flights with notes: those that contain what is searched for, else those of the picked version; newest
 *     first
 * @param of how many flights of the model have notes
 * @param wanted what is searched for, empty for nothing
 * @param version name of the version they are of, empty for none
 */
record NotesFound(List<ReviewPoint> flights, int of, String wanted, String version) {

    static NotesFound in(@Nullable ModelReview answer, String search, @Nullable Integer versionNumber) {
        String wanted = search.strip().toLowerCase(Locale.ROOT);
        if (answer == null) {
            return new NotesFound(List.of(), 0, wanted, "");
        }
        List<ReviewPoint> noted = answer.points().stream()
                .filter(p -> !p.flight().notes().isEmpty())
                .toList();
        List<ReviewPoint> found = new ArrayList<>(noted.stream()
                .filter(p -> wanted.isEmpty()
                        ? versionNumber == null || versionNumber == p.versionNumber()
                        : p.flight().notes().toLowerCase(Locale.ROOT).contains(wanted))
                .toList());
        Collections.reverse(found);
        String version = versionNumber == null ? "" : answer.versionNames().getOrDefault(versionNumber, "");
        return new NotesFound(found, noted.size(), wanted, version);
    }

    /** What stands over them, such as "On v8, 3 of 17". */
    String caption() {
        String what = !wanted.isEmpty() ? "Found" : version.isEmpty() ? "All" : "On " + version;
        return what + ", " + flights.size() + " of " + of;
    }

    /** What stands where there are none. */
    String none() {
        return !wanted.isEmpty()
                ? "No note contains \"" + wanted + "\"."
                : version.isEmpty() ? "Notes of flights stand here." : "Nothing was noted on " + version + ".";
    }
}
