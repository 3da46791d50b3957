package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Version;
import org.rafterbook.work.GoBack;
import org.rafterbook.work.Prepared;
import org.rafterbook.work.Rigged;

/**
 * A version to go back to: the last setting first, then those marked as well-behaved and the one with the highest estimate,
 * then the others flown. The best time plays no part.
 *
 * @param name the version's name, such as v8
 * @param why the reason it stands where it stands, empty for none
 */
record BackTo(Version version, String name, String why) {

    /**
     * What 'back' offers; not the version the model stands at.
     *
     * @param highest the version with the highest estimate, null while that is not known
     */
    static List<BackTo> of(Prepared prepared, @Nullable GoBack highest) {
        Rigged rigged = prepared.rigged();
        List<BackTo> all = new ArrayList<>();
        if (rigged == null) {
            return all;
        }
        List<Version> flown = prepared.flown().stream()
                .filter(v -> !v.id().equals(rigged.version().id()))
                .sorted(Comparator.comparingInt(v -> rank(v, prepared, highest)))
                .toList();
        for (Version version : flown) {
            List<String> why = new ArrayList<>();
            if (version.id().equals(prepared.lastSetting())) {
                why.add("last setting");
            }
            if (version.markedGood()) {
                why.add("well-behaved");
            }
            if (isHighest(version, highest)) {
                why.add("highest estimate");
            }
            all.add(new BackTo(version, rigged.model().letter() + version.number(), String.join(", ", why)));
        }
        return all;
    }

    private static int rank(Version version, Prepared prepared, @Nullable GoBack highest) {
        return version.id().equals(prepared.lastSetting())
                ? 0
                : version.markedGood() ? 1 : isHighest(version, highest) ? 2 : 3;
    }

    private static boolean isHighest(Version version, @Nullable GoBack highest) {
        return highest != null && highest.version().id().equals(version.id());
    }

    /** In a choice, such as "v8, well-behaved". */
    String words() {
        return why.isEmpty() ? name : name + ", " + why;
    }
}
