package org.rafterbook.ui.shell;

/** The ways from one logbook to another, and from files into the one that is open; one logbook is open at a time. */
public interface Logbooks {

    /** Has the flyer choose a logbook and opens it; where it is refused, what was open stays open. */
    void openAnother();

    /** Opens the demo season, which has a logbook of its own. */
    void openDemo();

    /** Goes back to the flyer's own logbook. */
    void openOwn();

    /** Has the flyer say where, and makes a new logbook there. */
    void makeNew();

    /** Shows the screen on which tables and airframe sheets are read into the logbook that is open. */
    void readTables();
}
