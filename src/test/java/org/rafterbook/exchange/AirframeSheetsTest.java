package org.rafterbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.units.UserError;

class AirframeSheetsTest {

    private static final String TEASEL = """
            {"rafterbook": "airframe sheet", "edition": 1, "model": "Teasel", "version": "a", "balance_mm": 70.0,
             "surfaces": [
              {"name": "wing", "role": "wing", "edge_aft_mm": 149.3, "rise_mm": 0, "incidence_deg": 2.5,
               "camber_percent": 4, "ribs": [
                {"out_mm": 0, "edge_aft_mm": 0, "chord_mm": 110, "rise_mm": 0, "twist_deg": 0},
                {"out_mm": 210, "edge_aft_mm": 12.7, "chord_mm": 80, "rise_mm": 38, "twist_deg": -1.25}]},
              {"name": "tail", "role": "tailplane", "edge_aft_mm": 340, "rise_mm": 25, "incidence_deg": -0.5,
               "span_mm": 270, "chord_mm": 80, "zero_lift_deg": -4.6, "cm_quarter": -0.126}],
             "masses": [{"name": "wing", "mass_g": 0.9, "aft_mm": 60, "rise_mm": 0}],
             "motor": {"mass_g": 1.6, "aft_mm": 120}}
            """;

    private static AirframeSheet teasel() {
        return AirframeSheets.read(TEASEL, "teasel.json");
    }

    @Test
    void lengthsAnglesAndMassesAreReadIntoSi() {
        Airframe airframe = teasel().airframe();
        Surface wing = airframe.surfaces().get(0);
        Surface tail = airframe.surfaces().get(1);
        assertThat(wing.edgeAftM()).isEqualTo(0.1493);
        assertThat(wing.incidenceRad()).isCloseTo(Math.toRadians(2.5), within(1e-16));
        assertThat(wing.camber()).isEqualTo(0.04);
        assertThat(wing.ribs().get(1))
                .isEqualTo(new Rib(0.21, 0.0127, 0.08, 0.038, wing.ribs().get(1).twistRad()));
        assertThat(wing.ribs().get(1).twistRad()).isCloseTo(Math.toRadians(-1.25), within(1e-16));
        assertThat(tail.ribs()).containsExactly(new Rib(0, 0, 0.08, 0, 0), new Rib(0.135, 0, 0.08, 0, 0));
        assertThat(tail.cmQuarter()).isEqualTo(-0.126);
        assertThat(airframe.masses()).containsExactly(new MassItem("wing", 0.0009, 0.06, 0));
        assertThat(airframe.motor()).isEqualTo(new MotorPlace(0.0016, 0.12));
        assertThat(airframe.measuredBalanceM()).isEqualTo(0.07);
    }

    @Test
    void writingThenReadingGivesTheSameAirframe() {
        AirframeSheet sheet = teasel();
        assertThat(AirframeSheets.read(AirframeSheets.write(sheet), "again")).isEqualTo(sheet);
    }

    @Test
    void numbersComeOutAsTyped() {
        assertThat(AirframeSheets.write(teasel()))
                .contains("\"incidence_deg\": 2.5,", "\"edge_aft_mm\": 149.3,", "\"twist_deg\": -1.25}")
                .contains("\"span_mm\": 270, \"chord_mm\": 80", "\"balance_mm\": 70,", "\"mass_g\": 0.9,")
                .doesNotContainPattern("\\d{7}");
    }

    @Test
    void aSurfaceThatIsNotSymmetricKeepsItsOwnKeys() {
        List<Rib> right = List.of(new Rib(0, 0, 0.1, 0, 0), new Rib(0.2, 0, 0.1, 0.03, 0));
        List<Rib> left = List.of(new Rib(0, 0, 0.1, 0, 0), new Rib(0.21, 0, 0.1, 0.03, 0.0349));
        Surface wing = new Surface("wing", Role.WING, 0.1, 0.02, 0, 0.05, right, left, 0.004, 0.02, -0.07, null);
        AirframeSheet sheet = new AirframeSheet("Marram", "", new Airframe(List.of(wing), List.of(), null, null));
        String json = AirframeSheets.write(sheet);
        assertThat(json).contains("\"ribs_left\"", "\"offset_left_mm\": 4,", "\"tilt_deg\"", "\"zero_lift_deg\"");
        assertThat(json).doesNotContain("cm_quarter", "balance_mm", "\"motor\"", "\"version\"");
        assertThat(AirframeSheets.read(json, "again")).isEqualTo(sheet);
    }

    @ParameterizedTest
    @ValueSource(longs = {4101, 4102, 4103, 4104, 4105})
    void anyTypedSheetSurvivesTheRoundTrip(long seed) {
        Random random = new Random(seed);
        StringBuilder json = new StringBuilder("{\"rafterbook\": \"airframe sheet\", \"edition\": 1, \"model\": \"Seed "
                + seed + "\", \"surfaces\": [");
        for (int i = 0; i < 4; i++) {
            json.append(i == 0 ? "" : ",")
                    .append("{\"name\": \"s" + i + "\", \"role\": \"wing\", \"edge_aft_mm\": " + typed(random)
                            + ", \"incidence_deg\": " + typed(random) + ", \"camber_percent\": " + typed(random)
                            + ", \"span_mm\": " + (100 + random.nextInt(400)) + "." + random.nextInt(100)
                            + ", \"chord_mm\": 80.5}");
        }
        json.append("]}");
        AirframeSheet sheet = AirframeSheets.read(json.toString(), "seed");
        String written = AirframeSheets.write(sheet);
        assertThat(AirframeSheets.read(written, "again")).isEqualTo(sheet);
        assertThat(written).doesNotContainPattern("\\d{7}");
    }

    private static String typed(Random random) {
        return (random.nextInt(2000) - 1000) / 10 + "." + random.nextInt(1000);
    }

    @Test
    void keysNotGivenAreZeroOrUnknown() {
        Surface wing = AirframeSheets.read(
                        sheetWith("{\"name\": \"wing\", \"role\": \"wing\", \"edge_aft_mm\": 5, \"ribs\": ["
                                + "{\"out_mm\": 0, \"chord_mm\": 90}, {\"out_mm\": 200, \"chord_mm\": 0}]}"),
                        "x")
                .airframe()
                .surfaces()
                .get(0);
        assertThat(wing)
                .isEqualTo(Surface.symmetric(
                        "wing",
                        Role.WING,
                        0.005,
                        0,
                        0,
                        0,
                        List.of(new Rib(0, 0, 0.09, 0, 0), new Rib(0.2, 0, 0, 0, 0))));
    }

    private static String sheetWith(String surface) {
        return "{\"rafterbook\": \"airframe sheet\", \"edition\": 1, \"model\": \"M\", \"surfaces\": [" + surface
                + "]}";
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "role": "wing"     | "role": "wing", "incidence": 2 | teasel.json: surface 'wing' has an unknown key 'incidence'
            "edition": 1       | "edition": 2                   | teasel.json has edition 2; this program reads edition 1.
            "edition": 1       | "edition": 1, "colour": "red"  | teasel.json has an unknown key 'colour'
            "mass_g": 0.9      | "mass_g": -0.9                 | teasel.json: mass 'wing' has a negative 'mass_g'.
            "role": "tailplane" | "role": "tail"                | teasel.json: surface 'tail' has the role 'tail'; it can be wing, tailplane or fin.
            "span_mm": 270,    |                                | teasel.json: surface 'tail' has no 'span_mm'.
            "span_mm": 270     | "span_mm": 0                   | teasel.json: surface 'tail' needs a 'span_mm' and a 'chord_mm' above zero.
            "edge_aft_mm": 340 | "edge_aft_mm": "340 mm"        | teasel.json: surface 'tail' needs a number for 'edge_aft_mm', not "340 mm".
            "edge_aft_mm": 340 | "edge_aft_mm": 1e99            | teasel.json: surface 'tail' has a 'edge_aft_mm' that is out of all proportion.
            "edge_aft_mm": 340 | "edge_aft_mm": 1e999999999     | teasel.json: surface 'tail' has a 'edge_aft_mm' that is out of all proportion.
            "out_mm": 210      | "out_mm": -1                   | teasel.json: surface 'wing', ribs number 2 has a negative 'out_mm'.
            "out_mm": 210      | "out_mm": 0                    | teasel.json: surface 'wing' needs at least two 'ribs' at different 'out_mm'.
            "out_mm": 210,     | "out_mm": 210, "out_mm": 3,    | teasel.json, line 6, character 29: not readable as JSON: Duplicate field 'out_mm'.
            "name": "tail"     | "name": "wing"                 | teasel.json has two surfaces named 'wing'; each needs a name of its own.
            "name": "tail"     | "title": "tail"                | teasel.json: surface number 2 has an unknown key 'title'
            "model": "Teasel"  | "model": " "                   | teasel.json has an empty 'model'.
            "airframe sheet"   | "something"                    | teasel.json is no airframe sheet: it needs "rafterbook": "airframe sheet".
            "aft_mm": 120}}    | "aft_mm": 120}                 | teasel.json, line 11, character 1: not readable as JSON: Unexpected end-of-input: expected close marker for Object.
            """)
    void whatCannotBeTakenIsRefusedWithItsPlaceAndName(String old, String wrong, String sentence) {
        String json = TEASEL.replace(old, wrong == null ? "" : wrong);
        assertThat(json).isNotEqualTo(TEASEL);
        assertThatThrownBy(() -> AirframeSheets.read(json, "teasel.json"))
                .isInstanceOf(UserError.class)
                .hasMessageStartingWith(sentence);
    }

    @Test
    void ribsThatRunInwardAreRefused() {
        String json = sheetWith("{\"name\": \"wing\", \"role\": \"wing\", \"edge_aft_mm\": 5, \"ribs\": ["
                + "{\"out_mm\": 0, \"chord_mm\": 90}, {\"out_mm\": 200, \"chord_mm\": 80},"
                + "{\"out_mm\": 150, \"chord_mm\": 80}]}");
        assertThatThrownBy(() -> AirframeSheets.read(json, "x.json"))
                .hasMessage("x.json: surface 'wing', ribs number 3 lies nearer the middle than the rib before it;"
                        + " ribs run outward.");
    }

    @Test
    void aFileIsReadWithItsByteOrderMarkAndNamedInErrors(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("teasel.json");
        Files.writeString(file, "\uFEFF" + TEASEL);
        assertThat(AirframeSheets.read(file)).isEqualTo(teasel());
        assertThatThrownBy(() -> AirframeSheets.read(folder.resolve("none.json")))
                .isInstanceOf(UserError.class)
                .hasMessage("There is no file " + folder.resolve("none.json") + ".");
    }
}
