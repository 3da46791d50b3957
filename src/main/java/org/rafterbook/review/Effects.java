package org.rafterbook.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Which trim change raised duration, by how much and how sure that is.
 *
 * <p>A mixed model on the logarithm of duration with day effects, pooled effects of the settings, physical covariates and
 * flights that were cut short as lower bounds; what cannot be told apart gets no number of its own. Beside it stands the
 * same-day comparison, which fits nothing.
 */
public final class Effects {

    /** Changes whenever the same input would give another answer; part of the key under which answers are kept. */
    public static final String EDITION = "7";

    private final ReviewInput input;
    private final SameDay sameDay;
    private final List<Pair> pairs;

    private Effects(ReviewInput input) {
        this.input = input;
        sameDay = new SameDay(input);
        pairs = Pair.of(input);
    }

    /** The answer, watched by nobody. */
    public static ReviewAnswer of(ReviewInput input) {
        return of(input, Progress.NONE);
    }

    /**
     * The answer.
     *
     * @throws java.util.concurrent.CancellationException where {@code progress} says it is no longer wanted
     */
    public static ReviewAnswer of(ReviewInput input, Progress progress) {
        return judge(input, progress).answer();
    }

    /**
     * The answer and the fit it rests on, for what else is read from the same fit.
     *
     * @param fit null where too little was flown for one
     */
    record Judged(ReviewAnswer answer, @Nullable SeasonFit fit) {}

    static Judged judge(ReviewInput input, Progress progress) {
        return new Effects(input).answer(true, progress);
    }

    /** What can be said at once: the same-day comparisons and how far each change was compared, without effects. */
    public static ReviewAnswer atOnce(ReviewInput input) {
        return new Effects(input).answer(false, Progress.NONE).answer();
    }

    private Judged answer(boolean compute, Progress progress) {
        List<ReviewFlight> counted = input.counted();
        int exact = (int) counted.stream().filter(ReviewFlight::isExact).count();
        JudgedSeason season =
                exact > 0 && counted.size() > 1 ? new JudgedSeason(input, pairs, sameDay, compute, progress) : null;
        List<ChangeEffect> changes = new ArrayList<>();
        for (int k = 0; k < pairs.size(); k++) {
            changes.add(change(k, season));
        }
        SeasonFigures figures = season == null ? null : season.figures();
        SeasonFit fit = season == null ? null : season.fit();
        List<FarOff> farOff = fit == null ? List.of() : fit.farOff();
        SeasonSentences sentences = new SeasonSentences(input, counted, season == null ? null : season.design());
        ReviewAnswer answer = new ReviewAnswer(
                input.model(),
                changes,
                figures,
                exact,
                counted.size() - exact,
                input.flights().size() - counted.size(),
                (int) counted.stream().map(ReviewFlight::sessionId).distinct().count(),
                new Claims(season == null ? 0 : season.judged()),
                sentences.of(figures, pairs.size(), farOff),
                farOff);
        return new Judged(answer, fit);
    }

    private ChangeEffect change(int index, @Nullable JudgedSeason season) {
        Pair pair = pairs.get(index);
        List<ReviewFlight> from = input.counted().stream().filter(pair::isFrom).toList();
        List<ReviewFlight> to = input.counted().stream().filter(pair::isTo).toList();
        Set<String> daysFrom = days(from);
        Set<String> daysTo = days(to);
        Set<String> common = new HashSet<>(daysFrom);
        common.retainAll(daysTo);
        Verdict verdict = season == null ? Verdict.alone(Comparison.ONE_SIDE_UNFLOWN, null) : season.verdict(index);
        Estimate effect = season == null ? null : season.estimate(index);
        Word word = switch (verdict.comparison()) {
            case MOVED_TOGETHER -> Word.CANNOT_BE_TOLD_APART;
            case ONE_SIDE_UNFLOWN -> Word.NO_ANSWER_YET;
            case SAME_DAY, ACROSS_DAYS ->
                effect == null ? Word.NO_ANSWER_YET : Word.of(effect.probabilityRaised(), verdict.onOneDay());
        };
        SameDayResult beside = sameDay.compare(pair.setting(), pair.from(), pair.to());
        ChangeEffect bare = new ChangeEffect(
                input.setting(pair.setting()),
                pair.from(),
                pair.to(),
                verdict.comparison(),
                effect,
                word,
                clean(from),
                clean(to),
                from.size() - clean(from),
                to.size() - clean(to),
                daysFrom.size(),
                daysTo.size(),
                common.size(),
                verdict.names(),
                beside,
                season == null ? null : season.probabilityBest(index),
                moreTurns(from, to),
                season == null || !word.isClaim() ? null : season.confirmation(index),
                touchedThird(from) || touchedThird(to),
                List.of());
        return new EffectSentences(input, bare, verdict, season == null ? null : season.context(index)).complete();
    }

    private static Set<String> days(List<ReviewFlight> flights) {
        Set<String> days = new HashSet<>();
        flights.stream().filter(ReviewFlight::isExact).forEach(f -> days.add(f.sessionId()));
        return days;
    }

    private static int clean(List<ReviewFlight> flights) {
        return (int) flights.stream().filter(ReviewFlight::isExact).count();
    }

    private static boolean touchedThird(List<ReviewFlight> flights) {
        long touched = flights.stream().filter(ReviewFlight::isCutShortByTouch).count();
        return touched > 0 && 3 * touched >= flights.size();
    }

    private static @Nullable Double moreTurns(List<ReviewFlight> from, List<ReviewFlight> to) {
        Predicate<ReviewFlight> known = f -> f.isExact() && f.motor().fullTurns() != null;
        Covariate a = Covariate.lnTurns(from.stream().filter(known).toList());
        Covariate b = Covariate.lnTurns(to.stream().filter(known).toList());
        return a == null || b == null ? null : Double.valueOf(b.mean() - a.mean());
    }
}
