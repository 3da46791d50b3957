package org.rafterbook.logbook;

/** How a logbook is opened. */
public enum Mode {
    /** To write in; the file is made when it is absent. */
    CREATE,
    /** To write in; the file must be there. */
    EXISTING,
    /** To read only, also beside a window that writes. */
    READ_ONLY
}
