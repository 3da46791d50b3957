package org.rafterbook.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ResponsesTest {

    private static SettingInfo setting(@Nullable Double step, @Nullable Double low, @Nullable Double high) {
        return new SettingInfo("wing.incidence", "wing incidence", "°", step, null, low, high);
    }

    private static Response known(Answer<Response> answer) {
        assertThat(answer).isInstanceOf(Answer.Known.class);
        return ((Answer.Known<Response>) answer).value();
    }

    private static String sentence(Answer<Response> answer) {
        assertThat(answer).isInstanceOf(Answer.CannotTell.class);
        return ((Answer.CannotTell<Response>) answer).sentence();
    }

    @Test
    void aCurveNeedsThreeValues() {
        List<ResponsePoint> two = List.of(
                new ResponsePoint("", 2, "a", 6.0, false),
                new ResponsePoint("", 2.5, "a", 6.1, false),
                new ResponsePoint("", 2.5, "a", 6.1, true));

        assertThat(sentence(Responses.of(setting(0.5, null, null), two)))
                .isEqualTo("Only two values were flown for wing incidence, 2° and 2.5°. A curve needs three: fly one"
                        + " more.");
        assertThat(sentence(Responses.of(setting(0.5, null, null), two.subList(0, 1))))
                .startsWith("Only 2° was flown");
        assertThat(sentence(Responses.of(setting(0.5, null, null), List.of()))).startsWith("No flight that counts");
    }

    @Test
    void valuesWithinTheToleranceAreOne() {
        SettingInfo margin = new SettingInfo("", "stability margin", "%", null, 0.25, null, null);
        List<ResponsePoint> points = List.of(
                new ResponsePoint("", 5.1, "a", 6.0, false),
                new ResponsePoint("", 5.2, "a", 6.1, false),
                new ResponsePoint("", 8.0, "a", 6.1, false));

        assertThat(sentence(Responses.of(margin, points))).contains("Only two values");
    }

    @Test
    void aMarginIsToldToATenthAndFlownByATrimThatHasIt() {
        SettingInfo margin = new SettingInfo("", "stability margin", "%", null, 0.25, null, null);
        NextTry next = new NextTry(margin, 7.7, 8.981959062, 0.004, 0.6, 0.004, 0.01);

        assertThat(next.sentence())
                .isEqualTo("Try stability margin 7.7 %: expected gain +0.4 %, chance that it beats 9 %: about 3 in 5."
                        + " Fly it alternately with a trim flown at 9 %, 3 + 3.");
        assertThat(next.sentence("m6")).endsWith(" Fly it alternately with m6, flown at 9 %, 3 + 3.");
        assertThat(new NextTry(margin, 7.7, 7.37227739, 0, 0.5, 0, 0).sentence())
                .isEqualTo("You are there, within what 6 flights can show: stability margin 7.4 %.");
        assertThat(sentence(Responses.of(
                        margin,
                        List.of(
                                new ResponsePoint("", 7.1171234, "a", 6.0, false),
                                new ResponsePoint("", 10.1712345, "a", 6.1, false)))))
                .contains("7.1 % and 10.2 %");
    }

    @Test
    void aSettingOfLargeNumbersHasNoMorePlacesToTryThanAnother() {
        List<ResponsePoint> points = List.of(
                new ResponsePoint("", 2_000_000, "a", 6.0, false),
                new ResponsePoint("", 3_000_000, "a", 6.1, false),
                new ResponsePoint("", 4_000_000, "a", 6.05, false));

        Response response = known(Responses.of(setting(null, null, null), points));

        assertThat(response.next().value() % 10_000).isZero();
        assertThat(response.best().low()).isBetween(1_500_000.0, 4_500_000.0);
    }

    @Test
    void theReferenceSetReadsInItsOwnUnit() {
        // The same flights as quad_demo2, the axis stretched to 2..4 degrees: x 0.7 is 3.4 degrees.
        List<ResponsePoint> points = OnePeakTest.points("quad_demo2.csv").stream()
                .map(p -> new ResponsePoint("", 2 + 2 * p.value(), p.session(), p.logDuration(), false))
                .toList();

        Response response = known(Responses.of(setting(null, 2.0, 4.0), points));

        assertThat(response.curve()).hasSize(41);
        assertThat(response.curve().get(28).value()).isCloseTo(3.4, within(1e-9));
        assertThat(response.best()).isEqualTo(new Span(2.95, 4));
        assertThat(response.littleLost()).isEqualTo(new Span(2.9, 3.85));
        // Fieller's interval of the reference, 0.62671275 to 0.76241272 of the range (R 4.2.2, own computation).
        Span vertex = Objects.requireNonNull(response.parabola());
        assertThat(vertex.low()).isCloseTo(2 + 2 * 0.62671275, within(1e-6));
        assertThat(vertex.high()).isCloseTo(2 + 2 * 0.76241272, within(1e-6));
        assertThat(response.sentences())
                .containsExactly(
                        "Best wing incidence probably 2.95° or more (90 %); nothing above 3.8° was flown.",
                        "Anything from 2.9 to 3.8° costs less than 1 %.",
                        "From 15 flights at 9 values on 3 days.",
                        "A plain parabola through the same flights has its top between 3.25 and 3.52° (90 %).");
        assertThat(response.flown()).isEqualTo(new Span(2.2, 3.8));
        response.curve().forEach(p -> assertThat(p.logDuration()).isBetween(p.logLow(), p.logHigh()));
    }

    @Test
    void aValueWithoutACleanFlightMakesNoCurve() {
        List<ResponsePoint> points = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double x = 2 + 0.25 * (i % 3);
            points.add(new ResponsePoint("", x, "s", 6 + 0.1 * x + 0.01 * (i % 4), i % 3 == 2));
        }

        assertThat(sentence(Responses.of(setting(null, 2.0, 4.0), points)))
                .isEqualTo(
                        "Of the values of wing incidence only 2° and 2.25° have clean flights; elsewhere all were cut"
                                + " short. A curve needs clean flights at three.");
    }

    @Test
    void noValueThatWasNeverFlownIsSaidToCostLittle() {
        List<ResponsePoint> points = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double x = 2 + 0.25 * (i % 3);
            points.add(new ResponsePoint("", x, "s", 6 + 0.2 * x, false));
        }

        Response response = known(Responses.of(setting(null, 2.0, 4.0), points));

        assertThat(response.best().high()).isGreaterThan(2.6);
        assertThat(response.sentences())
                .startsWith(
                        "Best wing incidence probably above 2.5°, the highest flown (90 %).",
                        "Too little is known to say which values cost less than 1 %.");
        assertThat(response.bestFlown()).isNull();
    }

    @Test
    void theBandHoldsTheTruthAboutAsOftenAsItSays() {
        Random random = new Random(97);
        int held = 0;
        int asked = 0;
        for (int season = 0; season < 12; season++) {
            List<ResponsePoint> points = new ArrayList<>();
            for (int i = 0; i < 24; i++) {
                double x = (i % 4) / 3.0;
                points.add(new ResponsePoint("", x, "s", 6 + truth(x) + 0.05 * random.nextGaussian(), false));
            }
            Response response = known(Responses.of(setting(null, 0.0, 1.0), points));
            for (int k = 0; k <= 40; k += 10) {
                Response.CurvePoint p = response.curve().get(k);
                double at = 6 + truth(p.value());
                held += p.logLow() <= at && at <= p.logHigh() ? 1 : 0;
                asked++;
            }
        }

        assertThat((double) held / asked).as("seed 97").isBetween(0.85, 1.0);
    }

    private static double truth(double x) {
        return -0.2 * (x - 0.4) * (x - 0.4);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void nothingIsSuggestedFurtherThanAQuarterOfTheRangeFromAnythingFlown(long seed) {
        Random random = new Random(seed);
        List<ResponsePoint> points = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            double x = 2 + 0.25 * (i % 3);
            points.add(new ResponsePoint("", x, "s" + i / 3, 6 + 0.3 * x + 0.01 * random.nextGaussian(), false));
        }

        NextTry next = known(Responses.of(setting(0.25, 1.0, 6.0), points)).next();

        assertThat(next.value()).as("seed %d", seed).isLessThanOrEqualTo(2.5 + 5 / 4.0 + 1e-9);
        assertThat((next.value() - 2) / 0.25).isCloseTo(Math.rint((next.value() - 2) / 0.25), within(1e-9));
        assertThat(next.isWorthwhile()).isTrue();
        assertThat(next.sentence()).startsWith("Try wing incidence ").contains("alternately with");
    }

    @Test
    void whereNothingIsLeftToGainItSaysSo() {
        List<ResponsePoint> points = new ArrayList<>();
        for (int i = 0; i < 120; i++) {
            double x = (i % 5) / 4.0;
            points.add(new ResponsePoint(
                    "", x, "s" + i / 12, 6 - 0.3 * (x - 0.5) * (x - 0.5) + 0.01 * Math.sin(12.9 * i), false));
        }

        NextTry next = known(Responses.of(setting(0.25, 0.0, 1.0), points)).next();

        assertThat(next.isWorthwhile()).isFalse();
        assertThat(next.sentence()).isEqualTo("You are there, within what 6 flights can show: wing incidence 0.5°.");
    }

    @Test
    void aWarningStandsWhereOnePeakDoesNotFit() {
        List<ResponsePoint> points = new ArrayList<>();
        Random random = new Random(20260120);
        for (int i = 0; i < 60; i++) {
            double x = (i % 6) / 5.0;
            points.add(new ResponsePoint(
                    "", x, "s" + i / 10, 6 + 0.06 * Math.cos(4 * Math.PI * x) + 0.03 * random.nextGaussian(), false));
        }

        Response response = known(Responses.of(setting(null, 0.0, 1.0), points));

        assertThat(response.isDoubtful()).isTrue();
        assertThat(response.sentences()).anyMatch(s -> s.contains("do not fit a curve with one peak"));
    }

    @Test
    void flightsCutShortWeighLessAndAreCounted() {
        List<ResponsePoint> points = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            points.add(new ResponsePoint("", i % 3, "s" + i / 6, 6 + (i % 3 == 2 ? 0.05 : 0), i % 3 == 2 && i > 2));
        }
        List<ResponsePoint> exact = points.stream()
                .map(p -> new ResponsePoint("", p.value(), p.session(), p.logDuration(), false))
                .toList();

        Response weak = known(Responses.of(setting(1.0, 0.0, 2.0), points));
        Response strong = known(Responses.of(setting(1.0, 0.0, 2.0), exact));

        assertThat(weak.atLeast()).isEqualTo(3);
        assertThat(weak.sentences().get(2))
                .isEqualTo("From 12 flights at 3 values on 2 days, 3 of them counted as \"at least\".");
        assertThat(width(weak)).isGreaterThan(width(strong));
    }

    private static double width(Response response) {
        Response.CurvePoint last = response.curve().get(40);
        return last.logHigh() - last.logLow();
    }

    @Test
    void oddsReadAsTheyAreSaid() {
        assertThat(Figures.odds(0.30)).isEqualTo("about 1 in 3");
        assertThat(Figures.odds(0.66)).isEqualTo("about 2 in 3");
        assertThat(Figures.odds(0.05)).isEqualTo("about 1 in 20");
        assertThat(Figures.odds(0.001)).isEqualTo("less than 1 in 100");
        assertThat(Figures.value(7.5, 0.25)).isEqualTo("7.5");
        assertThat(Figures.value(-0.5, 0.1)).isEqualTo("−0.5");
        assertThat(Figures.value(146, 1)).isEqualTo("146");
    }
}
