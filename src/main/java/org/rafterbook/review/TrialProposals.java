package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.review.TrialProposal.Open;

/**
 * Which trials are worth flying: what a season leaves open and the values the curves suggest, those first from whose
 * answer most is to be gained.
 */
final class TrialProposals {

    private final ReviewInput input;
    private final SeasonFit fit;
    private final Forecaster forecaster;
    private final double difference;
    private final Set<String> marginMovers;

    /**
     * Prepares.
     *
     * @param marginMovers keys of the settings that move the margin
     * @param difference the difference of log duration the flyer cares about
     */
    TrialProposals(ReviewInput input, SeasonFit fit, double difference, Set<String> marginMovers) {
        this.input = input;
        this.fit = fit;
        this.difference = difference;
        this.marginMovers = marginMovers;
        forecaster = new Forecaster(fit);
    }

    /** Trials for what was changed before enough was flown to forecast any. */
    static List<TrialProposal> beforeALog(List<ChangeEffect> changes) {
        return changes.stream()
                .map(c -> new TrialProposal(
                        c.setting(), c.from(), c.to(), Open.UNFLOWN, List.of(), List.of(), null, null))
                .toList();
    }

    /**
     * What was found.
     *
     * @param worthFlying the trials, the most promising first, ventures and those with little chance of a clear result last
     * @param settled a sentence for each two values between which nothing worth flying for is open
     */
    record Found(List<TrialProposal> worthFlying, List<String> settled) {}

    Found of(List<ChangeEffect> changes, List<NextTry> suggestions, Progress progress) {
        // Two values of a setting are proposed once, whatever raised the question.
        Map<List<Object>, TrialProposal> proposals = new LinkedHashMap<>();
        for (int k = 0; k < changes.size(); k++) {
            progress.report((double) k / changes.size());
            ChangeEffect change = changes.get(k);
            Open open = open(change);
            if (open != null) {
                add(proposals, proposal(change, open));
            }
        }
        for (NextTry suggestion : suggestions) {
            if (suggestion.isWorthwhile()) {
                add(proposals, proposal(suggestion));
            }
        }
        List<TrialProposal> sorted = new ArrayList<>(proposals.values());
        sorted.removeIf(p -> !p.isWorthFlying(difference));
        sorted.sort(Comparator.comparing(TrialProposals::hasLittleChance)
                .thenComparing(TrialProposals::isVenture)
                .thenComparing(Comparator.comparingDouble(TrialProposals::worth).reversed()));
        return new Found(
                new Parting(input.steps(), changes).once(sorted),
                proposals.values().stream()
                        .filter(p -> !p.isWorthFlying(difference))
                        .map(TrialProposal::settled)
                        .toList());
    }

    private static boolean hasLittleChance(TrialProposal proposal) {
        Forecast forecast = proposal.forecast();
        return forecast != null && forecast.hasLittleChance();
    }

    /** Beyond anything flown, and the margin goes with it: not what is proposed first. */
    private static boolean isVenture(TrialProposal proposal) {
        return proposal.cautions().size() > 1;
    }

    private static double worth(TrialProposal proposal) {
        Forecast forecast = proposal.forecast();
        return forecast == null ? 0 : forecast.worth();
    }

    private static void add(Map<List<Object>, TrialProposal> proposals, TrialProposal proposal) {
        proposals.putIfAbsent(
                List.of(
                        proposal.setting().key(),
                        Set.of(proposal.from().key(), proposal.to().key())),
                proposal);
    }

    private static @Nullable Open open(ChangeEffect change) {
        return switch (change.comparison()) {
            case MOVED_TOGETHER -> Open.MOVED_TOGETHER;
            case ONE_SIDE_UNFLOWN -> Open.UNFLOWN;
            case ACROSS_DAYS -> Open.ACROSS_DAYS;
            case SAME_DAY -> {
                if (!change.word().isClaim()) {
                    yield Open.UNCLEAR;
                }
                Confirmation confirmation = change.confirmation();
                yield confirmation == null || confirmation.isToBeConfirmed() ? Open.TO_BE_CONFIRMED : null;
            }
        };
    }

    private TrialProposal proposal(ChangeEffect change, Open open) {
        boolean own = open != Open.MOVED_TOGETHER && open != Open.UNFLOWN;
        Estimate now = own ? change.effect() : null;
        String setting = change.setting().key();
        return new TrialProposal(
                change.setting(),
                change.from(),
                change.to(),
                open,
                change.togetherWith().stream()
                        .filter(key -> !key.equals(Confounding.DATE))
                        .map(key -> input.setting(key).label())
                        .toList(),
                List.of(),
                forecaster.of(setting, change.from(), change.to(), TrialPlan.USUAL_PER_SIDE, now),
                forecaster.smallestFor(setting, change.from(), change.to(), difference, now));
    }

    private TrialProposal proposal(NextTry suggestion) {
        double variance = fit.flightVariance();
        int perSide = TrialPlan.USUAL_PER_SIDE;
        Forecast forecast = Forecast.alone(perSide, suggestion.difference(), suggestion.sd(), variance);
        Forecast larger = forecast;
        while (larger.halfWidth() > difference && perSide < TrialPlan.MOST_PER_SIDE) {
            larger = Forecast.alone(++perSide, suggestion.difference(), suggestion.sd(), variance);
        }
        return new TrialProposal(
                suggestion.axis(),
                NextTry.level(suggestion.against()),
                NextTry.level(suggestion.value()),
                Open.WORTH_TRYING,
                List.of(),
                cautions(suggestion),
                forecast,
                larger);
    }

    /** What is to be known before a value is tried that only the curve speaks for. */
    private List<String> cautions(NextTry suggestion) {
        SettingInfo axis = suggestion.axis();
        List<String> cautions = new ArrayList<>();
        DoubleSummaryStatistics flown = input.flights().stream()
                .filter(ReviewFlight::counts)
                .map(f -> f.settings().get(axis.key()))
                .filter(Objects::nonNull)
                .map(Level::value)
                .filter(Objects::nonNull)
                .mapToDouble(v -> v)
                .summaryStatistics();
        if (suggestion.value() < flown.getMin() || suggestion.value() > flown.getMax()) {
            cautions.add("It lies beyond anything flown, "
                    + Level.number(flown.getMin()).label() + " to " + axis.show(Level.number(flown.getMax())) + ".");
        }
        if (marginMovers.contains(axis.key())) {
            cautions.add("It moves the margin too: see first what the curve over the margin says of going there.");
        }
        return cautions;
    }
}
