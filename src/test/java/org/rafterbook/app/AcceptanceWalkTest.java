package org.rafterbook.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TimeZone;
import java.util.stream.StreamSupport;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.OneEvening;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.logbook.Mode;
import org.rafterbook.units.ClockTime;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Book;
import org.rafterbook.work.Progress;
import org.rafterbook.work.Rigged;

/**
 * One logbook from its first flight to its backup, as a flyer fills it: the window by its keys, in this process and in
 * one that is killed, and the command line. The steps go on from each other.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class AcceptanceWalkTest {

    private static final int FORTY = 40;

    @TempDir
    static Path home;

    private static final TimeZone ZONE = TimeZone.getDefault();

    /** An evening that does not pass midnight, whenever the test runs. */
    @BeforeAll
    static void noon() {
        int hours = 12 - LocalTime.now(ZoneOffset.UTC).getHour();
        TimeZone.setDefault(TimeZone.getTimeZone(ZoneOffset.ofHours(hours)));
        System.setProperty("user.timezone", TimeZone.getDefault().getID());
    }

    @AfterAll
    static void back() {
        System.clearProperty("user.timezone");
        TimeZone.setDefault(ZONE);
    }

    /** Where the program looks for it by itself. */
    private static Path logbook() {
        return home.resolve("Documents").resolve("Rafterbook").resolve("flights.rafterbook");
    }

    private static CommandRun command(String name, Object... words) {
        List<Object> all = new ArrayList<>(List.of(name, "--logbook", logbook()));
        all.addAll(List.of(words));
        return CommandRun.of(all.toArray());
    }

    private static List<JsonNode> flights(Object... words) {
        List<Object> all = new ArrayList<>(List.of(words));
        all.add("--json");
        return list(command("flights", all.toArray()).json().get("flights"));
    }

    private static List<JsonNode> list(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }

    private static String percent(double value) {
        return QuantityFormat.rounded(value, 1) + " %";
    }

    @Test
    @Order(1)
    void aModelWithOnlyANameFliesATypedFlight() throws IOException {
        try (WindowRobot window = WindowRobot.open(logbook())) {
            window.sees("A new logbook, nothing in it yet")
                    .press(KeyCode.ENTER)
                    .type("Teasel")
                    .press(KeyCode.ENTER)
                    .sees("Teasel t1");
            window.type("1050").sees("17:30");
            assertThat(flights()).as("shown in full before it is kept").isEmpty();
            window.press(KeyCode.ENTER).sees("How did it end?").press(KeyCode.DIGIT1, KeyCode.ENTER);
            window.sees("Flight 2");
        }
        assertThat(flights()).singleElement().satisfies(flight -> {
            assertThat(flight.get("model").asText()).isEqualTo("Teasel");
            assertThat(flight.get("duration_s").asDouble()).isEqualTo(1050);
            assertThat(flight.get("ending").asText()).isEqualTo("clean");
            assertThat(flight.get("margin_percent").isNull()).isTrue();
        });
    }

    /** Forty flights of Marram with three settings that the program does not know. */
    private static Path table(String seventeenthTime) throws IOException {
        Random random = new Random(40);
        StringBuilder text = new StringBuilder(
                "model,session_date,venue,duration_s,ending,notes,setting.wing incidence,setting.pitch,setting.flap\n");
        for (int i = 0; i < FORTY; i++) {
            text.append("Marram,")
                    .append(LocalDate.of(2026, 1, 6).plusDays(7L * (i / 10)))
                    .append(",Saltmarsh Sports Hall,")
                    .append(i == 16 ? seventeenthTime : String.valueOf(600 + random.nextInt(60)))
                    .append(",clean,")
                    .append(i % 5 == 0 ? "flat circles" : "")
                    .append(',')
                    .append(2 + i / 5 % 2 * 0.5)
                    .append(',')
                    .append(480 + i / 20 * 10)
                    .append(',')
                    .append(i < 10 ? "up" : "down")
                    .append('\n');
        }
        return Files.writeString(home.resolve("winter.csv"), text);
    }

    @Test
    @Order(2)
    void fortyFlightsOfATableGoInWholeOrNotAtAll() throws IOException {
        try (WindowRobot window = WindowRobot.open(logbook())) {
            window.sees("Start the watch");
            assertThat(command("import", table("615")).err()).contains("open").doesNotContain("\n");
        }
        CommandRun refused = command("import", table("ten minutes"));
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err())
                .startsWith("winter.csv, line 18, column 'duration_s': “ten minutes” does not begin with a number");
        assertThat(flights()).as("nothing of it went in").hasSize(1);
        assertThat(command("import", table("615"), "--json")
                        .json()
                        .get("flights_added")
                        .asInt())
                .isEqualTo(FORTY);
        JsonNode again = command("import", home.resolve("winter.csv"), "--json").json();
        assertThat(again.get("flights_added").asInt()).isZero();
        assertThat(again.get("flights_already_there").asInt()).isEqualTo(FORTY);
        assertThat(flights("--model", "Marram"))
                .hasSize(FORTY)
                .allSatisfy(flight -> assertThat(List.of("setting.wing incidence", "setting.pitch", "setting.flap"))
                        .allSatisfy(setting -> assertThat(flight.hasNonNull(setting))
                                .as(setting)
                                .isTrue()));
    }

    /** Airframe 3.40 g balancing bare at 150 mm, of which the lower wing is 0.90 g; the motor at 120 mm. */
    private static Path sheet(double motorG) throws IOException {
        return Files.writeString(home.resolve("quire-" + motorG + ".json"), String.format(Locale.ROOT, """
                {"rafterbook": "airframe sheet", "edition": 1, "model": "Quire", "version": "a",
                 "surfaces": [
                  {"name": "lower", "role": "wing", "edge_aft_mm": 130, "rise_mm": 20, "incidence_deg": 2,
                   "camber_percent": 4, "span_mm": 340, "chord_mm": 100},
                  {"name": "upper", "role": "wing", "edge_aft_mm": 110, "rise_mm": 115, "incidence_deg": 2.5,
                   "camber_percent": 4, "span_mm": 380, "chord_mm": 105},
                  {"name": "tail", "role": "tailplane", "edge_aft_mm": 430, "rise_mm": 30, "incidence_deg": -0.5,
                   "span_mm": 260, "chord_mm": 80}],
                 "masses": [{"name": "lower", "mass_g": 0.90, "aft_mm": 180, "rise_mm": 20},
                            {"name": "the rest", "mass_g": 2.50, "aft_mm": 139.2, "rise_mm": 5}],
                 "motor": {"mass_g": %s, "aft_mm": 120}}
                """, motorG));
    }

    @Test
    @Order(3)
    void aHeavierMotorMovesTheBalanceOfATwoWingModelAndItsMargin() throws Exception {
        // by hand: (3.40 x 150 + 1.60 x 120) / 5.00 = 140.40 mm; (3.40 x 150 + 2.00 x 120) / 5.40 = 138.89 mm
        JsonNode answers =
                CommandRun.of("margin", sheet(1.60), sheet(2.00), "--json").json();
        JsonNode light = answers.get(0);
        JsonNode heavy = answers.get(1);
        assertThat(light.get("balance_mm").asDouble()).isCloseTo(140.40, within(0.005));
        assertThat(heavy.get("balance_mm").asDouble()).isCloseTo(138.89, within(0.005));
        double moved =
                light.get("balance_mm").asDouble() - heavy.get("balance_mm").asDouble();
        assertThat(moved).isCloseTo(1.51, within(0.005));
        double points = heavy.get("margin_percent").asDouble()
                - light.get("margin_percent").asDouble();
        assertThat(points).isCloseTo(100 * moved / light.get("mean_chord_mm").asDouble(), within(1e-9));
        assertThat(CommandRun.asProcess(List.of(), "margin", sheet(1.60), sheet(2.00), "--json")
                        .json())
                .as("the same from a process of its own")
                .isEqualTo(answers);

        command("import", sheet(1.60)).done();
        try (WindowRobot window = WindowRobot.open(logbook())) {
            window.sees("Start the watch")
                    .press(KeyCode.M, KeyCode.UP, KeyCode.ENTER)
                    .sees("Quire q1");
            addMotor(window.press(KeyCode.N), "M20", "2.00 g");
            window.press(KeyCode.ENTER).sees(percent(heavy.get("margin_percent").asDouble()));
            addMotor(window.press(KeyCode.N), "M16", "1.60 g");
            window.press(KeyCode.ENTER).sees(percent(light.get("margin_percent").asDouble()));
        }
    }

    private static void addMotor(WindowRobot window, String name, String mass) {
        window.press(KeyCode.A)
                .type(name)
                .into("Loop")
                .type("340 mm")
                .into("Mass")
                .type(mass);
        window.click("Add this motor").sees(name);
    }

    @Test
    @Order(4)
    void aSlidWingIsOneChangeAlthoughBalanceAndMarginMoveWithIt() {
        try (WindowRobot window = WindowRobot.open(logbook())) {
            wind(window.sees("Start the watch"), "1400");
            fly(window, 400);
            note(window.press(KeyCode.DIGIT1), "steady, flat circles");

            // the relaunch: the same wind, and a stop that was wrong
            window.sees("Flight 3").press(KeyCode.K).sees("Relaunch on the wind of the last flight");
            fly(window, 200);
            window.press(KeyCode.BACK_SPACE).sees("Landed: stop");
            sleep(200);
            window.press(KeyCode.SPACE).sees("How did it end?").press(KeyCode.DIGIT1);
            note(window, "let go again on what was left");

            // 0.90 g slid 10 mm aft at 5.00 g all-up: 0.90 / 5.00 x 10 = 1.80 mm
            window.press(KeyCode.F2).sees("Quire, version q1").sees("140.4 mm").press(KeyCode.L);
            for (int i = 0; i < 10; i++) {
                window.press(KeyCode.RIGHT);
            }
            window.sees("142.2 mm").press(KeyCode.ENTER).sees("Quire, version q2");
            assertThat(window.texts())
                    .filteredOn(t -> t.contains(", was "))
                    .containsExactly("Lower position 140 mm, was 130 mm");
            String onBench = window.texts().get(window.texts().indexOf("Stability margin") + 1);
            window.press(KeyCode.F1).sees("lower position 130 mm → 140 mm").sees(onBench);
            JsonNode before = command("margin", "--model", "Quire", "--json")
                    .json()
                    .get("versions")
                    .get(0);
            assertThat(before.get("balance_mm").asDouble()).isCloseTo(140.40, within(0.005));

            typed(window, "0.9 s", "nose a little high");
            JsonNode after = command("margin", "--model", "Quire", "--json")
                    .json()
                    .get("versions")
                    .get(1);
            assertThat(after.get("balance_mm").asDouble()
                            - before.get("balance_mm").asDouble())
                    .isCloseTo(1.80, within(1e-9));
            assertThat(percent(after.get("margin_percent").asDouble())).isEqualTo(onBench);
        }
    }

    @Test
    @Order(5)
    void anEveningTurnAboutWithATouchAKilledProgramAndAWrongStop() throws Exception {
        try (WindowRobot window = WindowRobot.open(logbook())) {
            // the second of the slid wing: it touches the wall, which cuts it short
            window.sees("Start the watch")
                    .press(KeyCode.SPACE)
                    .sees("Landed: stop")
                    .press(KeyCode.W);
            window.sees("Touched wall")
                    .press(KeyCode.SPACE)
                    .sees("How did it end?")
                    .press(KeyCode.DIGIT3);
            note(window, "brushed the wall, came down");
            // back to how it was
            window.press(KeyCode.F)
                    .opensAList()
                    .press(KeyCode.DOWN, KeyCode.ENTER)
                    .sees("lower position 140 mm → 130 mm");
        }
        assertThat(flights("--model", "Quire")).hasSize(4);

        WindowPilot.launchAndKill(home);

        assertThat(command("check").done().out()).contains("sound");
        try (WindowRobot window = WindowRobot.open(logbook())) {
            window.sees("Landed: stop Quire q1").sees("its time goes by the wall clock");
            window.press(KeyCode.SPACE).sees("How did it end?").press(KeyCode.DIGIT1);
            note(window, "the program was gone, the watch was not");
            fly(window, 300);
            note(window.press(KeyCode.DIGIT1), "steady again");
            window.press(KeyCode.F)
                    .opensAList()
                    .press(KeyCode.DOWN, KeyCode.ENTER)
                    .sees("lower position 130 mm → 140 mm");
            typed(window, "1.1 s", "slower, nose high");
            fly(window, 500);
            note(window.press(KeyCode.DIGIT1), "as the one before");
            assertThat(window.texts()).contains("9 flights, 1 touched");
        }
        List<JsonNode> evening = flights("--model", "Quire");
        assertThat(texts(evening, "version")).containsExactly("q1", "q1", "q2", "q2", "q1", "q1", "q2", "q2");
        assertThat(texts(evening, "launch_no_of_wind")).startsWith("1", "2");
        assertThat(texts(evening, "ending"))
                .containsExactly("clean", "clean", "clean", "touched", "clean", "clean", "clean", "clean");
        assertThat(texts(evening, "cut_short").get(3)).isEqualTo("yes");
        assertThat(evening.get(1).get("duration_s").asDouble())
                .as("the wrong stop did not count")
                .isGreaterThan(0.4);
    }

    @Test
    @Order(6)
    void whatWasMistypedAllAlongAndOneFlightAreCorrected() {
        List<JsonNode> before = flights("--model", "Quire");
        try (Book book = Book.open(logbook(), Mode.EXISTING, OneEvening.CLOCK)) {
            Rigged quire = rigged(book, "Quire");
            SettingDef incidence = setting(quire, "tail.incidence_deg");
            Setting wrong = Objects.requireNonNull(quire.values().get(incidence.id()));
            Setting right = Setting.of(Math.toRadians(-0.75));
            assertThat(book.corrections().carriers(quire.model().id(), incidence.id(), wrong))
                    .hasSize(2);
            assertThat(book.corrections().alwaysSo(quire.model().id(), incidence.id(), wrong, right))
                    .isEqualTo(2);
            String fifth = book.season().load(null, Progress.none()).season().flights().stream()
                    .filter(f -> f.model().equals("Quire"))
                    .toList()
                    .get(4)
                    .flightId();
            String position = setting(quire, "lower.edge_aft_mm").id();
            book.corrections().thatTime(List.of(fifth), Map.of(position, Setting.of(0.140)));
        }
        List<JsonNode> after = flights("--model", "Quire");
        assertThat(texts(after, "version")).containsExactly("q1", "q1", "q2", "q2", "q2", "q1", "q2", "q2");
        assertThat(after)
                .allSatisfy(f -> assertThat(f.get("setting.tail.incidence_deg").asDouble())
                        .isCloseTo(-0.75, within(1e-9)));
        assertThat(texts(after, "duration_s")).isEqualTo(texts(before, "duration_s"));
        assertThat(texts(after, "notes")).isEqualTo(texts(before, "notes"));
    }

    private static Rigged rigged(Book book, String model) {
        return book.riggings().models().stream()
                .filter(m -> m.name().equals(model))
                .map(m -> book.riggings().now(m.id()))
                .findFirst()
                .orElseThrow();
    }

    private static SettingDef setting(Rigged rigged, String path) {
        return rigged.settings().stream()
                .filter(d -> path.equals(d.path()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    @Order(7)
    void reviewShowsEveryFlightOnItsMarginAndIncidenceAndComparesTheChange() {
        JsonNode review = command("review", "--model", "Quire", "--json").json();
        JsonNode model = review.get("models").get(0);
        assertThat(model.get("flights").asInt()).isEqualTo(8);
        assertThat(model.get("at_least").asInt()).isEqualTo(1);
        assertThat(model.get("riggings").asInt()).isEqualTo(4);
        assertThat(model.get("versions").asInt()).isEqualTo(2);
        assertThat(model.get("trim_changes").asInt()).isEqualTo(3);
        JsonNode change = review.get("changes").get(0);
        assertThat(review.get("changes")).hasSize(1);
        assertThat(change.get("setting").asText()).isEqualTo("lower.edge_aft_mm");
        assertThat(change.get("label").asText()).isEqualTo("Lower position");
        assertThat(change.get("same_day_flights_from").asInt()).isEqualTo(3);
        assertThat(change.get("same_day_flights_to").asInt())
                .as("the touched one is no measured time")
                .isEqualTo(4);
        assertThat(change.get("same_day_days").asInt()).isEqualTo(1);
        String compared = String.format(
                Locale.ROOT,
                "Same-day comparison: %s %% (90 %% interval %s to %s %%), 3 flights and 4 on 1 day.",
                signed(change.get("same_day_effect_percent").asDouble()),
                signed(change.get("same_day_low_percent").asDouble()),
                signed(change.get("same_day_high_percent").asDouble()));
        try (WindowRobot window = WindowRobot.open(logbook())) {
            window.press(KeyCode.F4)
                    .sees("Review: Quire")
                    .sees("8 flights, 1 of them \"at least\"")
                    .sees(compared);
            window.press(KeyCode.R).sees("8 flights on 2 versions, 4 riggings, 3 changes.");
            window.press(KeyCode.ESCAPE);
            window.hears("8 flights: time against stability margin").hears("History of 8 flights");
            List<JsonNode> flown = flights("--model", "Quire");
            window.press(KeyCode.H, KeyCode.HOME);
            for (JsonNode flight : flown) {
                double seconds = flight.get("duration_s").asDouble();
                String time = flight.get("ending").asText().equals("touched")
                        ? ClockTime.atLeast(seconds)
                        : ClockTime.minutesSeconds(seconds);
                window.sees(", " + flight.get("version").asText() + ", " + time + ", margin "
                        + percent(flight.get("margin_percent").asDouble()));
                window.sees("\u201c" + flight.get("notes").asText());
                window.press(KeyCode.RIGHT);
            }
            window.press(KeyCode.V);
            for (int i = 0; i < 10 && !window.shows("Tail incidence"); i++) {
                window.press(KeyCode.DOWN);
            }
            window.press(KeyCode.ENTER).hears("8 flights: time against Tail incidence");
        }
    }

    private static String signed(double percent) {
        long whole = Math.round(percent);
        return (whole < 0 ? "−" : whole > 0 ? "+" : "") + Math.abs(whole);
    }

    @Test
    @Order(8)
    void theBackupHoldsTheSameNumbersAndWhatWasUndoneStaysUndone() {
        Path copy = home.resolve("copy.rafterbook");
        command("backup", "--to", copy).done();
        for (String question : List.of("flights", "margin", "review")) {
            assertThat(CommandRun.of(question, "--logbook", copy, "--json").json())
                    .as(question)
                    .isEqualTo(command(question, "--json").json());
        }
        assertThat(CommandRun.of("check", "--logbook", copy).done().out()).contains("sound");
        try (WindowRobot window = WindowRobot.open(copy)) {
            window.press(KeyCode.F5).sees("9, 1 “at least”");
        }
        try (WindowRobot window = WindowRobot.open(logbook())) {
            typed(window.sees("Start the watch"), "1.2 s", "the last but one");
            window.press(KeyCode.E).type("1.3 s").press(KeyCode.ENTER).sees("11 flights");
            window.together(KeyCode.CONTROL, KeyCode.Z).sees("ndone: flight of 0:01.3");
            window.sees("10 flights");
        }
        try (WindowRobot window = WindowRobot.open(logbook())) {
            window.sees("10 flights").sees("Flight 11");
        }
        assertThat(flights("--model", "Quire")).hasSize(9);
    }

    private static List<String> texts(List<JsonNode> flights, String key) {
        return flights.stream().map(f -> f.get(key).asText()).toList();
    }

    private static void wind(WindowRobot window, String turns) {
        window.press(KeyCode.N).sees("This wind").press(KeyCode.T).type(turns).press(KeyCode.ENTER);
        window.sees("turns at launch").press(KeyCode.ENTER);
    }

    private static void fly(WindowRobot window, int millis) {
        window.sees("Start the watch").press(KeyCode.SPACE).sees("Landed: stop");
        sleep(millis);
        window.press(KeyCode.SPACE).sees("How did it end?");
    }

    private static void typed(WindowRobot window, String time, String note) {
        window.press(KeyCode.E)
                .type(time)
                .press(KeyCode.ENTER)
                .sees("How did it end?")
                .press(KeyCode.DIGIT1);
        note(window, note);
    }

    private static void note(WindowRobot window, String text) {
        window.press(KeyCode.N).type(text).press(KeyCode.ENTER).sees("Start the watch");
    }

    private static void sleep(int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
