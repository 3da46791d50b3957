package org.rafterbook.app;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How a command answers: one strict JSON document with {@code --json}, else a readable table. */
final class Answer {

    /** A number, a time or the dash that stands for neither. */
    private static final Pattern NUMBER = Pattern.compile("[-−–+≥ ]*[0-9.,:]*");

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

    /** Prints rows under their heads, columns of numbers to the right, those of words to the left. */
    void table(List<String> heads, List<List<String>> rows) {
        List<List<String>> all = new ArrayList<>();
        all.add(heads);
        all.addAll(rows);
        int[] widths = new int[heads.size()];
        boolean[] words = new boolean[heads.size()];
        for (int i = 0; i < widths.length; i++) {
            int column = i;
            widths[i] = all.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
            words[i] =
                    rows.stream().anyMatch(r -> !NUMBER.matcher(r.get(column)).matches());
        }
        for (List<String> row : all) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String pad = " ".repeat(widths[i] - row.get(i).length());
                line.append(i == 0 ? "" : "  ").append(words[i] ? row.get(i) + pad : pad + row.get(i));
            }
            out().println(line.toString().stripTrailing());
        }
    }

    private PrintWriter out() {
        return command.commandLine().getOut();
    }
}
