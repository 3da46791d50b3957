package org.rafterbook.demo;

import java.time.LocalDate;
import java.util.List;

/** What is flown on each evening: the flyer's programme, in the order flown. */
final class DemoPlan {

    /**
     * One evening.
     *
     * @param goal what the flyer wrote down beforehand
     * @param startC temperature at the start, degrees Celsius
     * @param blocks {@code model [setting=value ...] xN [half]} each; what a block sets stays set
     */
    record Evening(LocalDate date, String goal, double startC, int humidity, double pressureHpa, List<String> blocks) {}

    private DemoPlan() {}

    private static Evening evening(
            String date, String goal, double startC, int humidity, double pressureHpa, String... blocks) {
        return new Evening(LocalDate.parse(date), goal, startC, humidity, pressureHpa, List.of(blocks));
    }

    static final List<Evening> EVENINGS = List.of(
            evening(
                    "2025-10-07",
                    "Teasel and Marram as built, half motors first",
                    19.6,
                    58,
                    1016.2,
                    "Teasel x3 half",
                    "Marram x3 half",
                    "Teasel x4",
                    "Marram x5"),
            evening(
                    "2025-10-21",
                    "Marram: less rudder",
                    19.0,
                    62,
                    1004.8,
                    "Teasel x5",
                    "Marram Rudder=3 x4",
                    "Marram Rudder=4 x2",
                    "Marram Rudder=3 x3"),
            evening(
                    "2025-10-28",
                    "Teasel's incidence, Quire's first flights",
                    18.6,
                    55,
                    1011.5,
                    "Teasel wing.incidence_deg=2.5 x3",
                    "Quire x3",
                    "Teasel wing.incidence_deg=3 x3",
                    "Marram x4",
                    "Teasel wing.incidence_deg=2.5 x3"),
            evening(
                    "2025-11-04",
                    "Teasel with less ballast",
                    18.2,
                    60,
                    998.7,
                    "Teasel ballast.mass_g=0.06 x3",
                    "Quire x5",
                    "Teasel ballast.mass_g=0.09 x2",
                    "Marram x3",
                    "Teasel ballast.mass_g=0.06 x3"),
            evening(
                    "2025-11-11",
                    "Marram: wing 4 mm forward",
                    17.9,
                    52,
                    1020.3,
                    "Marram wing.edge_aft_mm=84 x3",
                    "Teasel x4",
                    "Marram wing.edge_aft_mm=88 x2",
                    "Quire x5",
                    "Marram wing.edge_aft_mm=84 x3"),
            evening(
                    "2025-11-18",
                    "Quire: both wings 4 mm forward",
                    17.4,
                    49,
                    1009.0,
                    "Marram x2 half",
                    "Quire upper.edge_aft_mm=104 lower.edge_aft_mm=124 x4",
                    "Teasel wing.incidence_deg=2 x3",
                    "Quire upper.edge_aft_mm=108 lower.edge_aft_mm=128 x2",
                    "Teasel wing.incidence_deg=2.5 x2",
                    "Quire upper.edge_aft_mm=104 lower.edge_aft_mm=124 x3"),
            evening(
                    "2025-11-25",
                    "Teasel: wing 5 mm forward",
                    17.8,
                    51,
                    992.4,
                    "Teasel wing.edge_aft_mm=101 x3",
                    "Quire x4",
                    "Teasel wing.edge_aft_mm=106 x3",
                    "Marram x4",
                    "Teasel wing.edge_aft_mm=101 x3"),
            evening(
                    "2025-12-02",
                    "Marram: more wash-in; Teasel's rudder",
                    17.1,
                    47,
                    1013.8,
                    "Teasel x2 half",
                    "Marram Wash-in=2 x4",
                    "Teasel Rudder=2 x3",
                    "Marram Wash-in=1 x2",
                    "Teasel Rudder=3 x3",
                    "Marram Wash-in=2 x2"),
            evening(
                    "2025-12-09",
                    "Teasel: wing 98 or 101; Quire's upper incidence",
                    18.4,
                    50,
                    1001.6,
                    "Teasel wing.edge_aft_mm=98 x4",
                    "Quire upper.incidence_deg=2.75 x3",
                    "Teasel wing.edge_aft_mm=101 x2",
                    "Quire upper.incidence_deg=2.25 x2",
                    "Teasel wing.edge_aft_mm=98 x3",
                    "Quire upper.incidence_deg=2.75 x2"),
            evening(
                    "2025-12-16",
                    "Teasel: propeller B with its bearing turned 1 degree left",
                    17.6,
                    45,
                    1022.9,
                    "Teasel Propeller=B Left_thrust=3 x4",
                    "Marram tail.incidence_deg=0 x3",
                    "Teasel Propeller=A Left_thrust=2 x3",
                    "Marram tail.incidence_deg=-0.5 x3",
                    "Teasel Propeller=B Left_thrust=3 x2"),
            evening(
                    "2025-12-30",
                    "Quire: wider gap; Teasel's wash-in",
                    16.8,
                    42,
                    1027.1,
                    "Teasel Propeller=A Left_thrust=2 x2",
                    "Quire upper.rise_mm=72 x4",
                    "Teasel Wash-in=1 x3",
                    "Quire upper.rise_mm=62 x2",
                    "Teasel Wash-in=1.5 x2",
                    "Quire upper.rise_mm=72 x3",
                    "Teasel Wash-in=2 x1"),
            evening(
                    "2026-01-06",
                    "Teasel's tailplane; Marram: wing forward again",
                    16.2,
                    40,
                    1014.4,
                    "Teasel Wash-in=1.5 x2",
                    "Teasel tail.incidence_deg=-0.5 x3",
                    "Marram wing.edge_aft_mm=80 x3",
                    "Teasel tail.incidence_deg=-0.25 x3",
                    "Marram wing.edge_aft_mm=84 x3",
                    "Teasel tail.incidence_deg=-0.5 x2"),
            evening(
                    "2026-01-13",
                    "Quire: upper incidence 3.25 or 2.75; Teasel as in December",
                    17.3,
                    44,
                    1006.2,
                    "Quire upper.incidence_deg=3.25 x3",
                    "Teasel tail.incidence_deg=-0.25 x4",
                    "Quire upper.incidence_deg=2.75 x3",
                    "Marram x6"),
            evening(
                    "2026-01-20",
                    "Teasel: wing 95 or 98, by turns",
                    18.0,
                    41,
                    1010.7,
                    "Teasel wing.edge_aft_mm=95 x1",
                    "Teasel wing.edge_aft_mm=98 x1",
                    "Quire x2",
                    "Teasel wing.edge_aft_mm=98 x1",
                    "Teasel wing.edge_aft_mm=95 x1",
                    "Marram x3",
                    "Teasel wing.edge_aft_mm=95 x1",
                    "Teasel wing.edge_aft_mm=98 x1",
                    "Quire x2",
                    "Marram x2"));
}
