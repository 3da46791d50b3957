package org.rafterbook.app;

/** The program's entry: a window without arguments, the command line with them. */
public final class Rafterbook {

    private Rafterbook() {}

    public static void main(String[] args) {
        System.exit(args.length == 0 ? WindowStart.run() : CommandLineStart.run(args, System.out, System.err));
    }
}
