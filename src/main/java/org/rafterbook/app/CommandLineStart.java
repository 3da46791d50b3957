package org.rafterbook.app;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.rafterbook.units.UserError;
import picocli.CommandLine;

/** Runs one command: its answer on standard output, an error as one sentence on standard error. */
final class CommandLineStart {

    private static final int BAD_INPUT = 2;
    private static final int COULD_NOT = 1;

    private CommandLineStart() {}

    /** The exit code: 0 done, 2 for bad input, 1 when it could not be done. */
    static int run(String[] args, PrintStream out, PrintStream err) {
        PrintWriter answers = new PrintWriter(out, true, StandardCharsets.UTF_8);
        PrintWriter sentences = new PrintWriter(err, true, StandardCharsets.UTF_8);
        CommandLine line = new CommandLine(new Commands(answers));
        line.setOut(answers);
        line.setErr(sentences);
        line.setParameterExceptionHandler((e, parsed) -> {
            sentences.println(oneLine(String.valueOf(e.getMessage())));
            return BAD_INPUT;
        });
        line.setExecutionExceptionHandler((e, failed, parsed) -> {
            if (e instanceof UserError error) {
                sentences.println(error.sentence());
                return error.kind() == UserError.Kind.BAD_INPUT ? BAD_INPUT : COULD_NOT;
            }
            sentences.println("This could not be done: " + oneLine(String.valueOf(e)));
            return COULD_NOT;
        });
        int code = line.execute(args);
        answers.flush();
        return code;
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s*\\R\\s*", " ");
    }
}
