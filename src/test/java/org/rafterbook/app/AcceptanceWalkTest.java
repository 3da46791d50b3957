package org.rafterbook.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import org.rafterbook.units.QuantityFormat;

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
        int hours = 12 - java.time.LocalTime.now(java.time.ZoneOffset.UTC).getHour();
        TimeZone.setDefault(TimeZone.getTimeZone(java.time.ZoneOffset.ofHours(hours)));
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
            window.press(KeyCode.M, KeyCode.UP, KeyCode.ENTER).sees("Quire q1");
            addMotor(window.press(KeyCode.N), "M20", "2.00 g");
            window.press(KeyCode.ENTER).sees(percent(heavy.get("margin_percent").asDouble()));
            addMotor(window.press(KeyCode.N), "M16", "1.60 g");
            window.press(KeyCode.ENTER).sees(percent(light.get("margin_percent").asDouble()));
            System.out.println(window.texts());
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
}
