package org.rafterbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rafterbook.flight.CutShort;
import org.rafterbook.flight.Ending;
import org.rafterbook.flight.Recovered;
import org.rafterbook.units.DecimalMark;
import org.rafterbook.units.UserError;

class FlightTablesTest {

    private final List<ImportProblem> problems = new ArrayList<>();

    private FlightTable own(String text) {
        CsvTable table = CsvTables.parse(text, "flights.csv");
        return FlightTables.read(table, MappingProposal.own(table), problems);
    }

    private FlightTable mapped(String text, Mapping mapping) {
        return FlightTables.read(CsvTables.parse(text, "club.csv"), mapping, problems);
    }

    @Test
    void ownHeadingsAreReadIntoSi() {
        FlightTable table = own("""
                model,session_date,venue,ceiling_m,launched_at,duration_s,ending,cut_short,turns_wound,turns_backed_off,\
                turns_left,launch_torque_nmm,peak_height_m,temperature_c,humidity_percent,pressure_hpa,motor,build,\
                partial_fraction,recovered,stalls,launch_no_of_wind,notes,setting.wing.edge_aft_mm,setting.gurney
                Teasel,2025-10-28,Saltmarsh,7.9,2025-10-28T19:08:00,541.5,touched,cannot say,1980,110,560,2.6,7.9,18.4,45,\
                1012.5,M4,2,0.5,not tried,3,1,"a, b",149,strip
                """);
        assertThat(problems).isEmpty();
        FlightRow row = table.rows().get(0);
        assertThat(row.date()).isEqualTo(LocalDate.of(2025, 10, 28));
        assertThat(row.launchedAt()).isEqualTo(LocalDateTime.of(2025, 10, 28, 19, 8));
        assertThat(row.durationS()).isEqualTo(541.5);
        assertThat(row.ending()).isEqualTo(Ending.TOUCHED);
        assertThat(row.cutShort()).isEqualTo(CutShort.CANNOT_SAY);
        assertThat(row.recovered()).isEqualTo(Recovered.NOT_TRIED);
        assertThat(row.wind().launchTorqueNm()).isEqualTo(0.0026);
        assertThat(row.air()).isEqualTo(new FlightRow.Air(291.55, 0.45, 101250.0));
        assertThat(row.peakLowM()).isEqualTo(7.9).isEqualTo(row.peakHighM());
        assertThat(row.partialFraction()).isEqualTo(0.5);
        assertThat(row.notes()).isEqualTo("a, b");
        assertThat(row.settings()).isEqualTo(Map.of("wing.edge_aft_mm", "149", "gurney", "strip"));
        assertThat(row.asTyped()).isEmpty();
    }

    @Test
    void whatWasReadIsWrittenAsItStood() {
        String text = """
                model,session_date,venue,ceiling_m,launched_at,duration_s,ending,cut_short,turns_wound,turns_backed_off,\
                turns_left,launch_torque_nmm,peak_height_m,temperature_c,humidity_percent,pressure_hpa,motor,build,\
                partial_fraction,recovered,stalls,launch_no_of_wind,notes,setting.wing.edge_aft_mm,peak_low_m,peak_high_m
                Teasel,2025-10-28,Saltmarsh,7.9,2025-10-28T19:08:00,541.5,mid-air,yes,1980,110,560,2.65,8.65,18.4,45,1012.5,\
                M4,2,0.5,no,3,1,"a, ""b\""",149.3,7.9,9.4
                Teasel,2025-10-28,Saltmarsh,7.9,,0.1,,,,,,,,,,,,,,,,1,,,,
                """;
        FlightTable table = own(text);
        assertThat(problems).isEmpty();
        assertThat(FlightsText.of(table.rows(), List.of("wing.edge_aft_mm"), true))
                .isEqualTo(text);
    }

    @Test
    void aFlyersOwnHeadingsUnitsAndWordsAreRead() {
        Mapping mapping = new Mapping(
                "club",
                List.of(
                        ColumnRule.parse("Datum=session_date"),
                        ColumnRule.parse("Zeit=duration_s"),
                        ColumnRule.parse("Moment=launch_torque_nmm:in-oz"),
                        ColumnRule.parse("Kurbel=turns_wound:winder turns"),
                        ColumnRule.parse("Spitze=peak_height_m:ft"),
                        ColumnRule.parse("Anstell=setting.wing incidence:deg"),
                        ColumnRule.parse("Farbe=ignore"),
                        new ColumnRule("Ende", "ending", null, Map.of("decke", "touched", "sauber", "clean"))),
                Map.of("model", "Quire"),
                DecimalMark.EITHER,
                15.0,
                "d.M.yyyy");
        FlightTable table = mapped("""
                Datum;Zeit;Moment;Kurbel;Spitze;Anstell;Farbe;Ende
                4.11.2025;8:47;0,35;120;24 to 26;2,5;rot;Decke
                4.11.2025;10,5 min;0,4;121,5;25;2,25;blau;sauber
                """, mapping);
        assertThat(problems).isEmpty();
        assertThat(table.mark()).isEqualTo(DecimalMark.COMMA);
        FlightRow first = table.rows().get(0);
        assertThat(first.model()).isEqualTo("Quire");
        assertThat(first.date()).isEqualTo(LocalDate.of(2025, 11, 4));
        assertThat(first.durationS()).isEqualTo(527);
        assertThat(first.ending()).isEqualTo(Ending.TOUCHED);
        // 1 in-oz is 7.06155 N mm (international inch and ounce, exact).
        assertThat(first.wind().launchTorqueNm()).isCloseTo(0.35 * 0.00706155181, within(1e-11));
        assertThat(first.wind().turnsWound()).isEqualTo(1800);
        assertThat(first.peakLowM()).isCloseTo(24 * 0.3048, within(1e-12));
        assertThat(first.peakHighM()).isCloseTo(26 * 0.3048, within(1e-12));
        assertThat(first.asTyped())
                .containsEntry("turns_wound", "120 winder turns")
                .containsEntry("launch_torque_nmm", "0,35 in-oz")
                .containsEntry("duration_s", "8:47");
        assertThat(table.rows().get(1).durationS()).isEqualTo(630);
        assertThat(table.rows().get(1).wind().turnsWound()).isEqualTo(1822.5);
        assertThat(table.settings()).containsExactly(new FlightTable.SettingColumn("wing incidence", "Anstell", "deg"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            duration_s   | ten      | line 3, column 'duration_s': “ten” does not begin with a number
            duration_s   | 0        | line 3, column 'duration_s': a time aloft is above 0 s and under a day, not 0.
            duration_s   |          | line 3, column 'duration_s': a flight needs its time; only one that was aborted can be without.
            session_date | 30.2.25  | line 3, column 'session_date': '30.2.25' is no date that reads as 2025-10-28.
            session_date | 2025-02-30 | line 3, column 'session_date': '2025-02-30' is no date
            model        |          | line 3, column 'model': nothing stands here, but it is needed.
            ending       | landed   | line 3, column 'ending': 'landed' is not one of clean, touched, steered, mid-air, hung, aborted.
            turns_left   | 2000     | line 3, column 'turns_left': more turns are left (2000) than were on the motor.
            turns_backed_off | 2000 | line 3, column 'turns_backed_off': more turns were backed off (2000) than wound (1900).
            turns_wound  | -1       | line 3, column 'turns_wound': The number of turns cannot be negative.
            launched_at  | 2025-10-31T19:08:00 | line 3, column 'launched_at': 2025-10-31T19:08 is not in the session of 2025-10-28.
            launched_at  | 19h      | line 3, column 'launched_at': '19h' is no moment
            humidity_percent | 145  | line 3, column 'humidity_percent': The humidity cannot be above 100 %.
            temperature_c | 184     | line 3, column 'temperature_c': air to fly in has between -43 and 56 °C.
            build        | 1.5      | line 3, column 'build': '1.5' is no whole number from 1 up.
            partial_fraction | 2    | line 3, column 'partial_fraction': a part of a full motor is above 0
            """)
    void aBadCellIsNamedByFileLineAndColumn(String column, String cell, String sentence) {
        List<String> headings = List.of(
                "model",
                "session_date",
                "duration_s",
                "ending",
                "turns_wound",
                "turns_backed_off",
                "turns_left",
                "launched_at",
                "humidity_percent",
                "temperature_c",
                "build",
                "partial_fraction");
        List<String> good =
                List.of("Teasel", "2025-10-28", "541", "clean", "1900", "100", "500", "19:08", "45", "18", "1", "1");
        List<String> bad = new ArrayList<>(good);
        bad.set(headings.indexOf(column), cell == null ? "" : cell);
        own(String.join(",", headings) + "\n" + String.join(",", good) + "\n" + String.join(",", bad) + "\n");
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).toString()).startsWith("flights.csv, " + sentence);
    }

    @Test
    void everyProblemOfATableIsTold() {
        own("model,session_date,duration_s\nT,2025-10-28,x\n,2025-10-28,5\nT,soon,y\n");
        assertThat(problems).extracting(ImportProblem::line).containsExactly(2, 3, 4, 4);
    }

    @Test
    void anAbortedFlightMayBeWithoutItsTime() {
        FlightTable table = own("model,session_date,duration_s,ending\nT,2025-10-28,,aborted\n");
        assertThat(problems).isEmpty();
        assertThat(table.rows().get(0).durationS()).isNull();
    }

    @Test
    void unknownColumnsAndMissingOnesAreTold() {
        own("model,session_date,Colour\nT,2025-10-28,red\n");
        assertThat(problems)
                .extracting(ImportProblem::toString)
                .containsExactly(
                        "flights.csv, line 1, column 'Colour': this column is not known; say what it is,"
                                + " setting.<name> or ignore.",
                        "flights.csv, line 1: no column is duration_s (time aloft), which is needed.");
    }

    @Test
    void aNumberThatReadsTwoWaysIsRefused() {
        own("model;session_date;duration_s;turns_wound\nT;2025-10-28;500;1,900\n");
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).column()).isEqualTo("turns_wound");
    }

    @Test
    void winderTurnsNeedTheRatio() {
        mapped(
                "m,d,t,w\nT,2025-10-28,500,120\n",
                Mapping.of(
                        "x",
                        List.of(
                                ColumnRule.parse("m=model"),
                                ColumnRule.parse("d=session_date"),
                                ColumnRule.parse("t=duration_s"),
                                ColumnRule.parse("w=turns_wound:winder turns"))));
        assertThat(problems)
                .extracting(ImportProblem::toString)
                .containsExactly("club.csv, line 2, column 'w': turns of the winder need its ratio, motor turns for"
                        + " one turn of the handle.");
    }

    @Test
    void aMappingSurvivesItsFile() {
        Mapping mapping = new Mapping(
                "club",
                List.of(
                        ColumnRule.parse("a=b=model"),
                        ColumnRule.parse("t=duration_s:min"),
                        new ColumnRule("e", "ending", null, Map.of("x", "clean"))),
                Map.of("venue", "Hall"),
                DecimalMark.COMMA,
                15.0,
                "d.M.yyyy");
        assertThat(MappingJson.read(MappingJson.write(mapping), "club.json")).isEqualTo(mapping);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Zeit             | 'Zeit' does not read as heading=field or heading=field:unit.
            Zeit=duration    | The column 'Zeit' cannot be 'duration': it can be a known field such as duration_s
            Zeit=duration_s:mm | The column 'Zeit' cannot be in 'mm': it is a time, in s, min, h.
            Zeit=setting.    | The column 'Zeit' cannot be 'setting.'
            Zeit=notes:mm    | The column 'Zeit' cannot be in 'mm'.
            """)
    void aColumnThatCannotBeMeantIsRefused(String text, String sentence) {
        assertThatThrownBy(() -> ColumnRule.parse(text))
                .isInstanceOf(UserError.class)
                .hasMessageStartingWith(sentence);
    }

    @Test
    void headingsThatSayAFieldWithItsUnitAreProposed() {
        CsvTable table = CsvTables.parse(
                "Model,Date,Duration (min),Launch torque [in-oz],Turns wound,Ceiling (kg),Prop\n", "club.csv");
        assertThat(MappingProposal.draft(table, "club").columns())
                .containsExactly(
                        new ColumnRule("Model", "model", null),
                        new ColumnRule("Date", "session_date", null),
                        new ColumnRule("Duration (min)", "duration_s", "min"),
                        new ColumnRule("Launch torque [in-oz]", "launch_torque_nmm", "in-oz"),
                        new ColumnRule("Turns wound", "turns_wound", null));
        assertThat(MappingProposal.certain(table, List.of())).isEmpty();
    }

    @Test
    void aRememberedMappingServesATableWhoseHeadingsItHas() {
        CsvTable table = CsvTables.parse("m,d,t\n", "club.csv");
        Mapping other = Mapping.of("other", List.of(ColumnRule.parse("m=model")));
        Mapping club = Mapping.of(
                "club",
                List.of(
                        ColumnRule.parse("M=model"),
                        ColumnRule.parse("d=session_date"),
                        ColumnRule.parse("t=duration_s")));
        assertThat(MappingProposal.certain(table, List.of(other, club))).contains(club);
    }
}
