package org.rafterbook.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.rafterbook.review.Handling;
import org.rafterbook.review.Level;
import org.rafterbook.review.ReviewFlight;
import org.rafterbook.review.ReviewInput;
import org.rafterbook.review.SameDay;
import org.rafterbook.review.SameDayResult;
import org.rafterbook.review.SettingInfo;
import org.rafterbook.review.TrimStep;

/** The pairs of values of a model's settings that were changed directly into each other. */
final class ReviewChanges {

    private final List<Rigged> strip;
    private final Set<String> openTrials;
    private final ReviewInput input;

    ReviewChanges(List<Rigged> strip, Set<String> openTrials, ReviewInput input) {
        this.strip = strip;
        this.openTrials = openTrials;
        this.input = input;
    }

    /** One unordered pair as it was first changed, and what changed with it every time. */
    private static final class Pair {
        private final String setting;
        private final Level before;
        private final Level after;
        private final int versionBefore;
        private final int versionAfter;
        private final Set<String> others;

        private Pair(String setting, Level before, Level after, int versionBefore, int versionAfter, Set<String> with) {
            this.setting = setting;
            this.before = before;
            this.after = after;
            this.versionBefore = versionBefore;
            this.versionAfter = versionAfter;
            this.others = with;
        }
    }

    /** Every pair in the order of the first change. */
    List<ReviewChange> all(Progress progress) {
        List<Pair> pairs = pairs();
        SameDay sameDay = new SameDay(input);
        List<ReviewChange> changes = new ArrayList<>();
        for (Pair pair : pairs) {
            progress.step(changes.size(), pairs.size(), "comparisons");
            changes.add(change(pair, sameDay));
        }
        return changes;
    }

    private List<Pair> pairs() {
        Map<String, Pair> pairs = new LinkedHashMap<>();
        for (int i = 1; i < strip.size(); i++) {
            Rigged before = strip.get(i - 1);
            Rigged after = strip.get(i);
            if (ReviewDesk.isIn(openTrials, before) || ReviewDesk.isIn(openTrials, after)) {
                continue;
            }
            TrimStep step = ReviewDesk.step(before, after);
            for (String setting : step.changed()) {
                Level from = level(step.before(), setting);
                Level to = level(step.after(), setting);
                Set<String> with = new LinkedHashSet<>(step.changed());
                with.remove(setting);
                String key = setting + "\n" + String.join("\n", new TreeSet<>(List.of(from.key(), to.key())));
                Pair known = pairs.get(key);
                if (known == null) {
                    pairs.put(
                            key,
                            new Pair(
                                    setting,
                                    from,
                                    to,
                                    before.version().number(),
                                    after.version().number(),
                                    with));
                } else {
                    known.others.retainAll(with);
                }
            }
        }
        return List.copyOf(pairs.values());
    }

    private static Level level(Map<String, Level> levels, String setting) {
        Level level = levels.get(setting);
        if (level == null) {
            throw new IllegalStateException("changed setting without a value");
        }
        return level;
    }

    private ReviewChange change(Pair pair, SameDay sameDay) {
        boolean swapped = firstFlown(pair.setting, pair.after) < firstFlown(pair.setting, pair.before);
        Level from = swapped ? pair.after : pair.before;
        Level to = swapped ? pair.before : pair.after;
        SameDayResult result = sameDay.compare(pair.setting, from, to);
        int cleanFrom = clean(pair.setting, from);
        int cleanTo = clean(pair.setting, to);
        Comparison comparison = result != null
                ? Comparison.SAME_DAY
                : cleanFrom == 0 || cleanTo == 0
                        ? Comparison.ONE_SIDE_UNFLOWN
                        : pair.others.isEmpty() ? Comparison.ACROSS_DAYS : Comparison.MOVED_TOGETHER;
        return new ReviewChange(
                info(pair.setting),
                from,
                to,
                swapped ? pair.versionAfter : pair.versionBefore,
                swapped ? pair.versionBefore : pair.versionAfter,
                comparison,
                result,
                result == null ? cleanFrom : result.flightsFrom(),
                result == null ? cleanTo : result.flightsTo(),
                pair.others.stream().map(s -> info(s).label()).toList(),
                upsets(pair.setting, from),
                upsets(pair.setting, to));
    }

    private SettingInfo info(String key) {
        return input.settings().stream()
                .filter(s -> s.key().equals(key))
                .findFirst()
                .orElseGet(() -> SettingInfo.named(key));
    }

    private int firstFlown(String setting, Level level) {
        for (int i = 0; i < input.flights().size(); i++) {
            if (holds(input.flights().get(i), setting, level)) {
                return i;
            }
        }
        return Integer.MAX_VALUE;
    }

    private int clean(String setting, Level level) {
        return (int) input.flights().stream()
                .filter(f -> holds(f, setting, level)
                        && f.isExact()
                        && !(input.fullMotorsOnly() && f.motor().isPartial()))
                .count();
    }

    private UpsetCount upsets(String setting, Level level) {
        int recovered = 0;
        int upset = 0;
        for (ReviewFlight flight : input.flights()) {
            Handling.Recovery recovery = flight.handling().recovery();
            if (holds(flight, setting, level) && recovery != null && recovery != Handling.Recovery.NOT_TRIED) {
                upset++;
                recovered += recovery == Handling.Recovery.YES ? 1 : 0;
            }
        }
        return new UpsetCount(recovered, upset);
    }

    private static boolean holds(ReviewFlight flight, String setting, Level level) {
        Level flown = flight.settings().get(setting);
        return flown != null && flown.same(level);
    }
}
