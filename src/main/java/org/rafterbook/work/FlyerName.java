package org.rafterbook.work;

/** Who sits at this computer, for what is noted with a name. */
final class FlyerName {

    private FlyerName() {}

    /** The name of the computer's user. */
    static String now() {
        return System.getProperty("user.name", "");
    }
}
