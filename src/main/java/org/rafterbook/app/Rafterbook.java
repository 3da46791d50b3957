package org.rafterbook.app;

/** The program's entry: a window without arguments, the command line with them. */
public final class Rafterbook {

    private Rafterbook() {}

    public static void main(String[] args) {
        System.out.println("Rafterbook");
    }
}
