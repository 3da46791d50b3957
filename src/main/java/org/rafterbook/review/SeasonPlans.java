package org.rafterbook.review;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a model's season says about where to go: how duration goes with each setting and with the margin, which trials are
 * worth flying, and what to go back to.
 *
 * @param responses setting key to the response of duration, in the order of the settings
 * @param margin the response of duration to the stability margin
 * @param proposals trials worth flying, the most promising first
 * @param settled a sentence for each two values between which nothing worth flying for is open any more
 * @param back what 'back' offers
 * @param advice what is said of planning any change
 */
public record SeasonPlans(
        Map<String, Answer<Response>> responses,
        Answer<Response> margin,
        List<TrialProposal> proposals,
        List<String> settled,
        List<BackChoice> back,
        List<String> advice) {

    /** Changes whenever the same input would give another answer or other words. */
    public static final String EDITION = Effects.EDITION + ".10";

    private static final String NO_ESTIMATE =
            "Nothing can be told yet: two flights that count are needed, one of them clean.";

    public SeasonPlans {
        responses = Collections.unmodifiableMap(new LinkedHashMap<>(responses));
        proposals = List.copyOf(proposals);
        settled = List.copyOf(settled);
        back = List.copyOf(back);
        advice = List.copyOf(advice);
    }

    /** The effects and the plans, from one fit. */
    public record WithEffects(ReviewAnswer effects, SeasonPlans plans) {}

    /**
     * Effects and plans of a season.
     *
     * @throws java.util.concurrent.CancellationException where {@code progress} says they are no longer wanted
     */
    public static WithEffects of(ReviewInput input, PlanWishes wishes, Progress progress) {
        Effects.Judged judged = Effects.judge(input, progress.part(0, 0.8));
        ReviewAnswer answer = judged.answer();
        SeasonPlans plans = plans(input, answer, judged.fit(), wishes, progress.part(0.8, 1));
        return new WithEffects(
                answer.with(new Parting(input.steps(), answer.changes()).advised(plans.proposals())), plans);
    }

    private static SeasonPlans plans(
            ReviewInput input, ReviewAnswer answer, @Nullable SeasonFit fit, PlanWishes wishes, Progress progress) {
        Map<String, Answer<Response>> responses = new LinkedHashMap<>();
        Answer<Response> margin = Answer.cannotTell(NO_ESTIMATE);
        List<String> keys = input.settingKeys();
        List<NextTry> suggestions = new ArrayList<>();
        for (int k = 0; k < keys.size(); k++) {
            progress.report((double) k / (keys.size() + 1));
            SettingInfo setting = input.setting(keys.get(k));
            Answer<Response> response = along(setting, input, fit);
            responses.put(setting.key(), response);
            if (response instanceof Answer.Known<Response> known) {
                suggestions.add(known.value().next());
            }
        }
        TrialProposals.Found found = new TrialProposals.Found(TrialProposals.beforeALog(answer.changes()), List.of());
        if (fit != null) {
            Progress last = progress.part((double) keys.size() / (keys.size() + 1), 1);
            last.report(0);
            margin = Responses.of(wishes.margin(), new CorrectedFlights(fit).alongMargin(wishes.marginMovers()));
            found = new TrialProposals(
                            input, fit, StrictMath.log1p(wishes.differencePercent() / 100), wishes.marginMovers())
                    .of(answer.changes(), suggestions, last);
        }
        return new SeasonPlans(
                responses,
                margin,
                found.worthFlying(),
                found.settled(),
                new BackChoices(input, wishes.now()).of(wishes.markedGood(), fit),
                advice(answer.season(), wishes));
    }

    private static Answer<Response> along(SettingInfo setting, ReviewInput input, @Nullable SeasonFit fit) {
        if (fit == null) {
            return Answer.cannotTell(NO_ESTIMATE);
        }
        List<ResponsePoint> points = new CorrectedFlights(fit).along(setting.key());
        Map<String, Level> levels = new LinkedHashMap<>();
        input.flights().stream()
                .map(f -> f.settings().get(setting.key()))
                .filter(Objects::nonNull)
                .forEach(level -> levels.putIfAbsent(level.key(), level));
        return points.isEmpty() && !levels.isEmpty()
                ? Answer.cannotTell(words(setting, levels.values()) + "; a curve needs three that are numbers.")
                : Responses.of(setting, points);
    }

    private static String words(SettingInfo setting, Collection<Level> levels) {
        long words = levels.stream().filter(level -> level.asNumber() == null).count();
        String values = "of the values of " + setting.label();
        return words == 1 && levels.size() > 1
                ? "One " + values + " is a word"
                : words > 0 && words < levels.size()
                        ? words + " " + values + " are words"
                        : "The values of " + setting.label() + " are words";
    }

    private static List<String> advice(@Nullable SeasonFigures season, PlanWishes wishes) {
        double scatter = season == null ? FlightsNeeded.USUAL_SCATTER : season.flightScatter();
        double days =
                season == null || season.dayScatter() == null ? FlightsNeeded.USUAL_DAY_SCATTER : season.dayScatter();
        return List.of(
                FlightsNeeded.alternateSentence(scatter, days),
                FlightsNeeded.sentence(wishes.differencePercent() / 100, scatter));
    }
}
