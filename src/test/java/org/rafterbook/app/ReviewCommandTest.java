package org.rafterbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.logbook.Mode;
import org.rafterbook.work.Book;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.Progress;
import org.rafterbook.work.ReviewWords;

/** Plain tables of flights, imported and reviewed on the command line: what is said is true of these flights. */
class ReviewCommandTest {

    @TempDir
    Path folder;

    private final List<String> rows = new ArrayList<>();

    private Path logbook() {
        return folder.resolve("season.rafterbook");
    }

    /** A flight of Quire: its day, what the heading's other columns hold, its time. */
    private void fly(int day, double seconds, Object... others) {
        StringBuilder row = new StringBuilder("Quire,2026-01-" + (day < 10 ? "0" : "") + day + ",Saltmarsh," + seconds);
        for (Object other : others) {
            row.append(',').append(other);
        }
        rows.add(row.toString());
    }

    private void keep(String columns) {
        Path table = folder.resolve("flights.csv");
        try {
            Files.writeString(
                    table, "model,session_date,venue,duration_s" + columns + "\n" + String.join("\n", rows) + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        CommandRun.of("import", "--logbook", logbook(), table).done();
    }

    private String text() {
        return CommandRun.of("review", "--logbook", logbook()).done().out();
    }

    private JsonNode json() {
        return CommandRun.of("review", "--json", "--logbook", logbook()).json();
    }

    @Test
    void onlyWhatIsInTheModelIsSaidToBeHeldEqual() {
        for (int i = 0; i < 6; i++) {
            fly(5, 480 + 7 * (i * 5 % 4), 2 + i % 2);
        }
        keep(",setting.wing_inc");

        assertThat(text()).contains("Every effect is what is left with order in the session held equal.");
        assertThat(json().at("/models/0/held_equal")).hasToString("[\"order in the session\"]");
    }

    @Test
    void everythingThatIsHeldEqualIsNamed() {
        for (int i = 0; i < 12; i++) {
            fly(
                    i < 6 ? 5 : 12,
                    480 + 7 * (i * 5 % 4),
                    1400 + 10 * (i * 7 % 5),
                    18 + i,
                    1005,
                    i % 3 == 0 ? "m1" : "m2",
                    2 + i % 2);
        }
        keep(",turns_wound,temperature_c,pressure_hpa,motor,setting.wing_inc");

        assertThat(text())
                .contains("Every effect is what is left with the season's trend, turns, air density, order in the"
                        + " session, the motor and the winds it had before held equal.");
    }

    @Test
    void noScatterOfDaysIsToldWhereEveryDayHoldsOneFlight() {
        for (int i = 0; i < 8; i++) {
            fly(5 + 3 * i, 480 + 7 * (i * 5 % 4), 2 + i % 2);
        }
        keep(",setting.wing_inc");

        assertThat(text())
                .doesNotContain("the day alone moves your times by about")
                .contains(
                        "how far the day alone moves your times cannot be told, as no day holds two flights that count."
                                + " Fly both on one day.");
        JsonNode model = json().at("/models/0");
        assertThat(model.get("day_scatter_percent").isNull()).isTrue();
        assertThat(model.get("day_scatter_missing").asText()).startsWith("No day holds two flights");
    }

    @Test
    void whereEveryFlightWasCutShortCleanOnesAreAskedForAndNotDays() {
        for (int i = 0; i < 12; i++) {
            fly(i < 6 ? 5 : 12, 480 + 7 * (i * 5 % 4), "touched", 2 + i % 2);
        }
        keep(",ending,setting.wing_inc");

        assertThat(text())
                .contains("no clean flight at either value yet, 12 flights there were cut short")
                .contains("Fly both values again, alternating, so that nothing cuts a flight short")
                .contains("So far there are not clean flights at both.")
                .doesNotContain("no day holds both")
                .doesNotContain("on one day, 3 + 3, alternating")
                .doesNotContain("Not compared on one day");
    }

    @Test
    void aDayThatHoldsBothWithoutCleanFlightsAtOneIsNotSaidToHoldOnlyOne() {
        for (int day : List.of(5, 12)) {
            fly(day, 480, "clean", 2);
            fly(day, 470, "touched", 3);
            fly(day, 486, "clean", 2);
        }
        fly(19, 490, "clean", 3);
        fly(20, 485, "clean", 3);
        keep(",ending,setting.wing_inc");

        assertThat(text()).contains("no day holds clean flights at both").doesNotContain("no day holds both");
    }

    @Test
    void equalTimesHaveNoDifferenceAndNothingDisagrees() {
        for (int i = 0; i < 16; i++) {
            fly(i < 8 ? 5 : 12, 480, 2 + i % 2);
        }
        keep(",setting.wing_inc");

        assertThat(text())
                .contains("A difference, if there is any, is smaller than 1 %.")
                .doesNotContain("disagree")
                .doesNotContain("effect of 0 %")
                .doesNotContain("± 0 %")
                .doesNotContain("scatter by 0 %");
    }

    @Test
    void whatMovedTogetherHasOneRecipeInItsSentenceAndAmongTheTrials() {
        for (int i = 0; i < 18; i++) {
            int at = i % 2;
            fly(5 + 7 * (i / 6), 480 + 12 * (i * 5 % 7) + 20 * at, 24 + 2 * at, 350 + 20 * at, 3 - at);
        }
        keep(",setting.pitch,setting.motor_len,setting.rudder");

        JsonNode proposals = json().at("/models/0/proposals");
        assertThat(proposals).hasSize(1);
        JsonNode proposal = proposals.get(0);
        String setting = proposal.get("setting").asText();
        List<String> others = new ArrayList<>(List.of("pitch", "motor_len", "rudder"));
        others.remove(setting);
        assertThat(proposal.at("/sentences/1").asText())
                .startsWith("So far " + setting + " was never changed without ");
        String forecast = proposal.at("/sentences/2").asText();
        for (JsonNode change : json().get("changes")) {
            assertThat(change.get("sentences"))
                    .extracting(JsonNode::asText)
                    .filteredOn(s -> s.contains("o separate"))
                    .singleElement()
                    .asString()
                    .startsWith("To separate them fly " + setting + " ")
                    .contains(" alternating, " + String.join(" and ", others) + " kept. ")
                    .endsWith(forecast);
        }
    }

    @Test
    void noTrialIsProposedForADifferenceKnownToBeSmall() {
        for (int i = 0; i < 60; i++) {
            fly(5 + 3 * (i / 10), 480 + 3 * (i * 7 % 9), 2 + i % 2);
        }
        keep(",setting.wing_inc");

        JsonNode model = json().at("/models/0");
        assertThat(model.get("proposals")).isEmpty();
        assertThat(model.at("/settled/0").asText())
                .startsWith(
                        "You are there, within what 6 flights can show: wing_inc 2 and 3 differ by no more than 1 %");
        assertThat(text()).contains("  - You are there, within what 6 flights can show");
    }

    @Test
    void aTrialThatWouldHardlyTellSaysSo() {
        for (int i = 0; i < 18; i++) {
            fly(5 + 7 * (i / 6), i % 5 == 0 ? 240 : 480 + 3 * (i * 7 % 9), 2 + i % 2);
        }
        keep(",setting.wing_inc");

        assertThat(text()).contains("So few would hardly tell: fly more of each, or leave it. ");
    }

    @Test
    void everyFlightLeftOutStandsInTheTextWithItsReason() {
        fly(5, 480, "clean", "", 2);
        fly(5, 490, "steered", "", 3);
        fly(5, 484, "clean", "bad launch", 2);
        fly(5, 488, "clean", "", 3);
        keep(",ending,left_out_why,setting.wing_inc");

        assertThat(text())
                .contains("1 left out.")
                .contains("  Left out: flight 2 of 5 Jan 2026, steered, nobody noted when.\n");
    }

    @Test
    void whereThereIsNoCurveTheTextSaysWhy() {
        for (int i = 0; i < 6; i++) {
            fly(5, 480 + 7 * (i * 5 % 4), 2 + i % 2);
        }
        keep(",setting.wing_inc");

        assertThat(text())
                .contains("  - No flight that counts tells its stability margin.")
                .contains("  - Only two values were flown for wing_inc, 2 and 3. A curve needs three: fly one more.");
    }

    @Test
    void aFlightOnAPartOfAMotorIsSetAsideAndNotLeftOut() {
        for (int i = 0; i < 9; i++) {
            fly(5, i % 4 == 3 ? 240 : 480 + 7 * (i * 5 % 4), i % 4 == 3 ? 0.5 : 1, 2 + i % 2);
        }
        keep(",partial_fraction,setting.wing_inc");
        try (Book book = Book.open(logbook(), Mode.EXISTING, OneEvening.CLOCK)) {
            ModelReview review =
                    book.review().review(book.review().models().get(0).id(), true, Progress.none());

            assertThat(ReviewWords.basis(review, review.changes().get(0)))
                    .anyMatch(s -> s.startsWith("At 3: 2 clean flights on 1 day, 2 on a part of a motor set aside;"))
                    .noneMatch(s -> s.contains("left out"));
        }
    }

    @Test
    void flightsTheFlyerTookOutAfterTheirTimeAreSaidInTheEffectAndInTheSeason() {
        for (int day : List.of(5, 12, 19)) {
            for (int i = 0; i < 6; i++) {
                boolean bad = i == 3;
                fly(day, bad ? 120 : 480 + 7 * (i * 5 % 4), bad ? "bad launch" : "", bad ? "no" : "", 2 + i % 2);
            }
        }
        keep(",left_out_why,left_out_before_time,setting.wing_inc");
        assertThat(text()).doesNotContain("by the flyer");
        try (Book book = Book.open(logbook(), Mode.EXISTING, OneEvening.CLOCK)) {
            book.review().countLateFlags(book.review().models().get(0).id(), true);
        }

        assertThat(json().at("/changes/0/sentences/0").asText())
                .contains("6 at 3, 3 days hold both; 3 left out by the flyer although flagged after their time was"
                        + " known or nobody knows when");
        String season =
                "3 flights are left out by the flyer although flagged after their time was known or nobody knows"
                        + " when: what is said rests on that choice.";
        assertThat(json().at("/models/0/sentences"))
                .extracting(JsonNode::asText)
                .contains(season);
        assertThat(text())
                .contains(season)
                .contains("Left out: flight 4 of 5 Jan 2026, bad launch: left out by the flyer although flagged");
    }

    @Test
    void everyNullOfAChangeHasItsSentenceAndRatesSayOnHowManyFlightsTheyRest() {
        for (int i = 0; i < 6; i++) {
            fly(5, 480 + 7 * (i * 5 % 4), i < 4 ? 1 : "", 24 + 2 * (i % 2), 350 + 20 * (i % 2));
        }
        keep(",stalls,setting.pitch,setting.motor_len");

        JsonNode change = json().at("/changes/0");
        assertThat(change.get("comparison").asText()).isEqualTo("moved together");
        assertThat(change.get("same_day_effect_percent").isNull()).isTrue();
        assertThat(change.get("same_day_missing").asText()).startsWith("Not compared on one day");
        assertThat(change.at("/handling_from/flights").asInt()).isEqualTo(3);
        assertThat(change.at("/handling_from/stalls_flights").asInt()).isEqualTo(2);
        assertThat(change.at("/handling_from/steers_flights").asInt()).isZero();
    }
}
