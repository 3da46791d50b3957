package org.rafterbook.ui.draw;

/** A line drawing of our own on a square of 24 units, stroked 1.5 wide. */
public enum Icon {
    HALL("M3 21 V10 L12 4 L21 10 V21 M3 10 L7 8 L12 10.5 L17 8 L21 10 M7 7.5 V8 M17 7.5 V8 M12 4 V10.5"),
    BENCH("M6 4 H18 A3.5 3.5 0 0 1 18 11 H6 A3.5 3.5 0 0 1 6 4 Z M12 4 V11 M3 7.5 H2.5 M21.5 7.5 H21 M3 16 V20 H21"
            + " V16 M7.5 20 V18 M12 20 V17 M16.5 20 V18"),
    MOTOR_BOX("M12 12 C10 9 8.5 7.5 6.5 7.5 A4.5 4.5 0 0 0 6.5 16.5 C8.5 16.5 10 15 12 12 C14 9 15.5 7.5 17.5 7.5 A4.5"
            + " 4.5 0 0 1 17.5 16.5 C15.5 16.5 14 15 12 12 Z"),
    REVIEW("M3 3 V21 H21 M5 17 C7 14 8 11 10 12 C12 13 13 9 15 7 C17 5.5 18 9 20 12 M8.5 12 h.01 M15 7 h.01"),
    SEASON("M2.5 21 H21.5 M4.5 21 V17 M8 21 V13.5 M11.5 21 V15 M15 21 V10 M18.5 21 V5"),
    THEME("M12 3.5 A8.5 8.5 0 0 1 12 20.5 A8.5 8.5 0 0 1 12 3.5 Z"),
    TEXT("M2.5 19 L8 5 L13.5 19 M4.5 14.5 H11.5 M21 11.5 V19 M21 15.2 A3 3.5 0 1 0 21 15.3"),
    LOCK("M5 11 H19 V20 H5 Z M8 11 V8 A4 4 0 0 1 16 8 V11 M12 14.5 V16.5"),
    BACK("M9 17 L5 13 L9 9 M5 13 H15 A4 4 0 0 0 15 5 H8");

    private final String path;

    Icon(String path) {
        this.path = path;
    }

    String path() {
        return path;
    }
}
