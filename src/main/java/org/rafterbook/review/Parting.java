package org.rafterbook.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.TrialProposal.Open;

/**
 * Which trial parts what always moved together: parting one setting from those it moved with parts them from it, so it is one
 * trial for all of them.
 */
final class Parting {

    private final List<TrimStep> steps;
    private final List<ChangeEffect> changes;

    Parting(List<TrimStep> steps, List<ChangeEffect> changes) {
        this.steps = steps;
        this.changes = changes;
    }

    /** The proposals without those that part what one before them parts. */
    List<TrialProposal> once(List<TrialProposal> sorted) {
        List<TrialProposal> kept = new ArrayList<>();
        for (TrialProposal proposal : sorted) {
            boolean parted = changes.stream()
                    .filter(change -> parts(proposal, change))
                    .anyMatch(change -> parting(change, kept) != null);
            if (!parted) {
                kept.add(proposal);
            }
        }
        return List.copyOf(kept);
    }

    /** The changes, those that moved together with the one trial that parts them. */
    List<ChangeEffect> advised(List<TrialProposal> proposals) {
        List<ChangeEffect> advised = new ArrayList<>();
        for (ChangeEffect change : changes) {
            TrialProposal parting = parting(change, proposals);
            List<String> sentences = new ArrayList<>(change.sentences());
            if (parting != null) {
                sentences.add(parting.toSeparate());
            }
            advised.add(change.with(sentences));
        }
        return List.copyOf(advised);
    }

    private @Nullable TrialProposal parting(ChangeEffect change, List<TrialProposal> proposals) {
        return proposals.stream()
                .filter(p -> changes.stream().anyMatch(c -> parts(p, c) && movedWith(change, c)))
                .findFirst()
                .orElse(null);
    }

    private static boolean parts(TrialProposal proposal, ChangeEffect change) {
        return proposal.open() == Open.MOVED_TOGETHER
                && proposal.setting().key().equals(change.setting().key())
                && proposal.from().same(change.from())
                && proposal.to().same(change.to());
    }

    /** True where both are the same joint change, seen from two of the settings that moved. */
    private boolean movedWith(ChangeEffect a, ChangeEffect b) {
        return a.comparison() == Comparison.MOVED_TOGETHER
                && b.comparison() == Comparison.MOVED_TOGETHER
                && together(a).equals(together(b))
                && (a.setting().key().equals(b.setting().key())
                        ? a.from().same(b.from()) && a.to().same(b.to())
                        : steps.stream().anyMatch(step -> isMade(step, a) && isMade(step, b)));
    }

    private static boolean isMade(TrimStep step, ChangeEffect change) {
        String key = change.setting().key();
        if (!step.changed().contains(key)) {
            return false;
        }
        Level before = step.from(key);
        Level after = step.to(key);
        return before.same(change.from()) && after.same(change.to())
                || before.same(change.to()) && after.same(change.from());
    }

    private static Set<String> together(ChangeEffect change) {
        Set<String> keys = new HashSet<>(change.togetherWith());
        keys.add(change.setting().key());
        return keys;
    }
}
