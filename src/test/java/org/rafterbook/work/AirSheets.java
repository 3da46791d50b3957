package org.rafterbook.work;

/** Airframe sheets for tests of imports and exports. */
final class AirSheets {

    static final String TEASEL = """
            {"rafterbook": "airframe sheet", "edition": 1, "model": "Teasel", "version": "a", "balance_mm": 70.0,
             "surfaces": [
              {"name": "wing", "role": "wing", "edge_aft_mm": 20, "incidence_deg": 2, "camber_percent": 4,
               "span_mm": 420, "chord_mm": 110},
              {"name": "tail", "role": "tailplane", "edge_aft_mm": 340, "rise_mm": 25, "span_mm": 270, "chord_mm": 80}],
             "masses": [{"name": "wing", "mass_g": 0.9, "aft_mm": 60}, {"name": "stick", "mass_g": 1.1, "aft_mm": 100}],
             "motor": {"mass_g": 1.6, "aft_mm": 120}}
            """;

    private AirSheets() {}
}
