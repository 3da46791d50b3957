package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.logbook.Mode;
import org.rafterbook.review.Answer;
import org.rafterbook.review.Comparison;
import org.rafterbook.review.Peak;

/** What only a table of flights says of them is reviewed as what it means. */
class ImportedReviewTest {

    @TempDir
    Path folder;

    private Book book;

    @BeforeEach
    void open() {
        book = Book.open(folder.resolve("season.rafterbook"), Mode.CREATE, OneEvening.CLOCK);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private ModelReview review(String table) {
        book.imports()
                .carryOut(book.imports().plan(List.of(new ImportFile("flights.csv", table)), ImportChoices.none()));
        return book.review().review(book.review().models().get(0).id(), true, Progress.none());
    }

    @Test
    void aFlightThatEndedTouchedCameAtLeastAsHighAsReadElseAsWhatIsInTheWay() {
        ModelReview review = review("""
                model,session_date,venue,ceiling_m,duration_s,ending,launch_torque_nmm,peak_height_m
                Teasel,2026-01-06,Saltmarsh,9,300,clean,3.0,7.5
                Teasel,2026-01-06,Saltmarsh,9,310,touched,3.4,8.5
                Teasel,2026-01-06,Saltmarsh,9,320,touched,3.6,
                """);

        assertThat(review.points())
                .extracting(p -> p.flight().peak())
                .containsExactly(new Peak(7.5, 7.5, null), new Peak(8.5, 8.5, 8.5), new Peak(null, null, 9.0));
        TouchRisk risk = ((Answer.Known<TouchRisk>) review.ceiling()).value();
        assertThat(risk.ceiling().flights()).isEqualTo(3);
        assertThat(risk.ceiling().touched()).isEqualTo(2);
    }

    @Test
    void aFlightThatEndedSteeredWasSteeredOnce() {
        ModelReview review = review("""
                model,session_date,duration_s,ending,setting.pitch
                Teasel,2026-01-06,300,clean,20
                Teasel,2026-01-06,310,steered,20
                Teasel,2026-01-06,320,clean,22
                """);

        assertThat(review.changes().get(0).handlingFrom().steers().count()).isEqualTo(1);
        assertThat(review.changes().get(0).handlingTo().steers().count()).isZero();
    }

    @Test
    void flightsOnPartialMotorsAreNotSetAsideWhereThereAreNoOthers() {
        ModelReview review = review("""
                model,session_date,duration_s,ending,partial_fraction,setting.pitch
                Teasel,2026-01-06,150,clean,0.5,20
                Teasel,2026-01-06,152,clean,0.5,22
                Teasel,2026-01-06,151,clean,0.5,20
                Teasel,2026-01-06,153,clean,0.5,22
                """);

        assertThat(review.setAside()).isZero();
        assertThat(review.counted()).isEqualTo(4);
        assertThat(review.changes().get(0).comparison()).isEqualTo(Comparison.SAME_DAY);
    }

    @Test
    void twoHallsOfOneDayComeInTheOrderOfTheirLaunches() {
        ModelReview review = review("""
                model,session_date,venue,launched_at,duration_s,setting.pitch
                Teasel,2026-01-06,Marsh Hall,2026-01-06T18:00,320,24
                Teasel,2026-01-06,Marsh Hall,2026-01-06T18:20,325,
                Teasel,2026-01-06,Saltmarsh,2026-01-06T10:00,300,20
                Teasel,2026-01-06,Saltmarsh,2026-01-06T10:20,310,22
                """);

        assertThat(review.points()).extracting(p -> p.flight().durationS()).containsExactly(300.0, 310.0, 320.0, 325.0);
        assertThat(review.changes())
                .extracting(c -> c.from().label() + " to " + c.to().label())
                .containsExactly("20 to 22", "22 to 24");
    }

    @Test
    void eachFlightHasTheAirOfItsOwnRow() {
        ModelReview review = review("""
                model,session_date,launched_at,duration_s,temperature_c,pressure_hpa
                Teasel,2026-01-06,2026-01-06T10:00,300,18,1010
                Teasel,2026-01-06,2026-01-06T10:30,300,18,1010
                Teasel,2026-01-06,2026-01-06T10:40,300,24,1010
                Teasel,2026-01-06,2026-01-06T10:45,300,18,1010
                """);

        List<Double> density =
                review.points().stream().map(p -> p.flight().densityKgM3()).toList();
        assertThat(density.get(1)).isEqualTo(density.get(0));
        assertThat(density.get(2)).isLessThan(density.get(0));
        assertThat(density.get(3)).isEqualTo(density.get(0));
    }

    @Test
    void whatTheDocumentCannotTellHasItsSentence() {
        ModelReview review = review("""
                model,session_date,ceiling_m,duration_s,ending,launch_torque_nmm,peak_height_m,setting.pitch
                Teasel,2026-01-06,6,300,clean,3.0,5.9,20
                Teasel,2026-01-06,6,310,clean,3.4,5.9,22
                Teasel,2026-01-06,6,312,steered,3.2,5.9,22
                Teasel,2026-01-06,6,30,aborted,3.2,5.9,22
                Teasel,2026-01-06,6,315,touched,3.2,5.9,24
                """);

        List<String> unsaid = new ArrayList<>();
        nulls(ReviewDocument.of(List.of(review)), "", false, unsaid);

        assertThat(unsaid).isEmpty();
    }

    private static void nulls(@Nullable Object value, String path, boolean said, List<String> unsaid) {
        if (value == null && !said) {
            unsaid.add(path);
        } else if (value instanceof Map<?, ?> map) {
            boolean here = said
                    || map.keySet().stream().anyMatch(k -> String.valueOf(k).contains("missing"));
            map.forEach((key, held) -> nulls(held, path + "." + key, here, unsaid));
        } else if (value instanceof List<?> list) {
            list.forEach(held -> nulls(held, path, said, unsaid));
        }
    }

    @Test
    void anAbortedFlightWithATimeCountsUntilTheFlyerSaysOtherwise() {
        ModelReview review = review("""
                model,session_date,duration_s,ending
                Teasel,2026-01-06,300,clean
                Teasel,2026-01-06,12,aborted
                """);

        assertThat(review.counted()).isEqualTo(2);
        assertThat(review.remarks()).anyMatch(r -> r.contains("aborted: flagged at an unknown moment, so it counts"));
        assertThat(review.flagged()).hasSize(1);
        book.review().countLateFlags(review.model().id(), true);
        assertThat(book.review()
                        .review(review.model().id(), true, Progress.none())
                        .counted())
                .isEqualTo(1);
    }
}
