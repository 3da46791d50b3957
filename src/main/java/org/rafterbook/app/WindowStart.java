package org.rafterbook.app;

/** Opens the window. */
final class WindowStart {

    private WindowStart() {}

    static int run() {
        return 0;
    }
}
