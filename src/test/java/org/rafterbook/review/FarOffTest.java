package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A time that cannot be right among good ones: a season as it is, and the same with one flight of two seconds. */
class FarOffTest {

    private static final PlanWishes WISHES =
            new PlanWishes(Map.of(), List.of(), SettingInfo.named("margin"), Set.of(), 4);

    /** Five values of one setting, best in the middle, 30 flights on 5 days; one of them may be junk. */
    private static SeasonBuilder season(long seed, double junkS) {
        Random random = new Random(seed);
        SeasonBuilder season = new SeasonBuilder();
        int n = 0;
        for (int day = 0; day < 5; day++) {
            season.day(7 * day);
            for (int k = 0; k < 6; k++) {
                double value = 2 + 0.5 * ((k + day) % 5);
                double loss = 0.06 * (value - 3) * (value - 3);
                double seconds = 300 * Math.exp(-loss + 0.03 * random.nextGaussian());
                // the value at the end of what was flown: there one flight bends a curve most
                boolean junk = junkS > 0 && value == 4 && n++ == 2;
                season.fly(junk ? junkS : seconds, "incidence", value);
            }
        }
        return season;
    }

    private static SeasonPlans.WithEffects judged(SeasonBuilder season) {
        return SeasonPlans.of(season.input(), WISHES, Progress.NONE);
    }

    private static Response curve(SeasonPlans.WithEffects judged) {
        return ((Answer.Known<Response>)
                        Objects.requireNonNull(judged.plans().responses().get("incidence")))
                .value();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void oneJunkFlightLeavesTheBestValueWhereItWasAndIsNamed(long seed) {
        SeasonPlans.WithEffects good = judged(season(seed, 0));
        SeasonPlans.WithEffects spoilt = judged(season(seed, 2));
        Response with = curve(spoilt);
        Response without = curve(good);

        assertThat(with.best().low()).isCloseTo(without.best().low(), within(0.2));
        assertThat(with.best().high()).isCloseTo(without.best().high(), within(0.2));
        for (int k = 0; k < 41; k++) {
            assertThat(with.curve().get(k).logDuration())
                    .isCloseTo(without.curve().get(k).logDuration(), within(0.03));
        }
        assertThat(with.isDoubtful()).isFalse();
        assertThat(good.effects().farOff()).isEmpty();
        assertThat(spoilt.effects().farOff()).hasSize(1);
        FarOff far = spoilt.effects().farOff().get(0);
        assertThat(far.expectedS()).isBetween(250.0, 310.0);
        assertThat(spoilt.effects().remarks())
                .anySatisfy(s ->
                        assertThat(s).contains("0:02, lies far off: about 4:").contains("look at it"));
    }
}
