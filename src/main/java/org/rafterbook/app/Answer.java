package org.rafterbook.app;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How a command answers: one strict JSON document with {@code --json}, else a readable table. */
final class Answer {

    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(names = "--json", description = "Answer with one JSON document, units in the keys.")
    private boolean json;

    @SuppressWarnings("NullAway.Init")
    Answer() {}

    boolean json() {
        return json;
    }

    /** Prints a document made of maps, lists, text and finite numbers. */
    void document(Object document) {
        try {
            out().println(JSON.writeValueAsString(document));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    void line(String text) {
        out().println(text);
    }

    /** Prints rows under their heads, numbers (all but the first column) to the right. */
    void table(List<String> heads, List<List<String>> rows) {
        List<List<String>> all = new ArrayList<>();
        all.add(heads);
        all.addAll(rows);
        int[] widths = new int[heads.size()];
        for (List<String> row : all) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        for (List<String> row : all) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String pad = " ".repeat(widths[i] - row.get(i).length());
                line.append(i == 0 ? row.get(i) + pad : "  " + pad + row.get(i));
            }
            out().println(line.toString().stripTrailing());
        }
    }

    private PrintWriter out() {
        return command.commandLine().getOut();
    }
}
