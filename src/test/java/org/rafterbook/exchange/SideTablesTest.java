package org.rafterbook.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SideTablesTest {

    private final List<ImportProblem> problems = new ArrayList<>();

    private static final List<String> TEXTS = List.of("""
            venue,site_height_m,official_height_m,usable_height_m,notes
            Saltmarsh Sports Hall,14,9.4,7.9,
            """, """
            venue,mark,height_m,limit
            Saltmarsh Sports Hall,lamps,7.9,yes
            """, """
            batch,opened_on,width_mm,turns_constant,notes
            May 24,2025-09-01,1.07,44.5,"brown, dry"
            """, """
            motor,batch,loop_length_mm,mass_g,cut_from,fraction,made_on,fate,notes
            M1,May 24,340,1.043,,1,2025-10-20,broke,
            """, """
            model,letter,build,wished_margin_low_percent,wished_margin_high_percent,notes
            Teasel,t,2,4,8,
            """, """
            model,setting,label,unit,step,tolerance,low,high,key_letter
            Teasel,wing.edge_aft_mm,Wing position,mm,1,0.2,90,130,P
            """, """
            session_date,venue,zone,goal,notes
            2025-10-28,Saltmarsh Sports Hall,Europe/London,first trim,
            """, """
            session_date,venue,read_at,temperature_c,humidity_percent,pressure_hpa,pressure_source
            2025-10-28,Saltmarsh Sports Hall,2025-10-28T19:00:00,18.4,45,1012.5,measured
            """, """
            session_date,venue,name,height_m,mark
            2025-10-28,Saltmarsh Sports Hall,balloon,6.5,
            """, """
            motor,wind_no,session_date,venue,wound_at,turns_wound,turns_backed_off,max_torque_nmm,launch_torque_nmm,\
            winder_ratio,end,notes
            M1,3,2025-10-28,Saltmarsh Sports Hall,2025-10-28T19:00:00.250,2140,,5.9,,15,broke,
            """, """
            model,session_date,venue,flight_no,launched_at,kind,at_s,value,mark,notes
            Teasel,2025-10-28,Saltmarsh Sports Hall,1,2025-10-28T19:08:00,top-of-climb,185,7.4,lamps,
            """, """
            motor,wind_no,reading_no,phase,turns,torque_nmm,read_at
            M1,1,2,backing-off,1900,2.9,
            """);

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11})
    void eachTableIsKnownByItsHeadingsAndWrittenAsItStood(int index) {
        CsvTable table = CsvTables.parse(TEXTS.get(index), "some.csv");
        List<SideTable<?>> fitting =
                SideTables.ALL.stream().filter(f -> f.fits(table)).toList();
        assertThat(fitting).containsExactly(SideTables.ALL.get(index));
        assertThat(again(SideTables.ALL.get(index), table)).isEqualTo(TEXTS.get(index));
        assertThat(problems).isEmpty();
    }

    private <R> String again(SideTable<R> form, CsvTable table) {
        return form.write(form.read(table, problems));
    }

    @Test
    void badCellsUnknownColumnsAndMissingOnesAreTold() {
        List<ImportProblem> marks = new ArrayList<>();
        SideTables.MOTORS.read(CsvTables.parse("motor,mass_g\nM1,0\n,1\nM2,one\n", "motors.csv"), problems);
        SideTables.MARKS.read(
                CsvTables.parse("venue,height_m,colour\nS,3,red\n", "venue_marks.csv"), new ArrayList<>(problems) {
                    @Override
                    public boolean add(ImportProblem problem) {
                        return problems.add(problem);
                    }
                });
        assertThat(problems)
                .extracting(ImportProblem::toString)
                .containsExactly(
                        "motors.csv, line 2, column 'mass_g': this is above zero, not 0.",
                        "motors.csv, line 3, column 'motor': nothing stands here, but it is needed.",
                        "motors.csv, line 4, column 'mass_g': “one” does not begin with a number.",
                        "venue_marks.csv, line 1, column 'colour': this column is not known here; known are venue, mark,"
                                + " height_m, limit.",
                        "venue_marks.csv, line 1: there is no column mark.");
    }
}
