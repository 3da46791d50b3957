package org.rafterbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What one command answered. */
record CommandRun(int code, String out, String err) {

    /** Runs a command in this process. */
    static CommandRun of(Object... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = CommandLineStart.run(texts(words), new PrintStream(out, true), new PrintStream(err, true));
        return new CommandRun(
                code,
                out.toString(StandardCharsets.UTF_8),
                err.toString(StandardCharsets.UTF_8).strip());
    }

    /** Runs a command as a process of its own, as a flyer does. */
    static CommandRun asProcess(List<String> javaOptions, Object... words) throws IOException, InterruptedException {
        List<String> command = java(javaOptions, Rafterbook.class);
        command.addAll(List.of(texts(words)));
        Path err = Files.createTempFile("command", ".err");
        Process process =
                new ProcessBuilder(command).redirectError(err.toFile()).start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int code = process.waitFor();
        String sentence = Files.readString(err).strip();
        Files.delete(err);
        return new CommandRun(code, out, sentence);
    }

    /** The beginning of a command that runs a class of this program or its tests in a fresh process. */
    static List<String> java(List<String> options, Class<?> main) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-XX:TieredStopAtLevel=1");
        command.add("--enable-native-access=ALL-UNNAMED"); // as the jar's manifest says
        command.addAll(options);
        command.add("-cp");
        command.add(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
        command.add(main.getName());
        return command;
    }

    private static String[] texts(Object... words) {
        return Arrays.stream(words).map(String::valueOf).toArray(String[]::new);
    }

    /** The same, which must have done what it was asked. */
    CommandRun done() {
        assertThat(err).isEmpty();
        assertThat(code).isZero();
        return this;
    }

    /** Its answer as JSON. */
    JsonNode json() {
        done();
        try {
            return new ObjectMapper().readTree(out);
        } catch (JsonProcessingException e) {
            throw new AssertionError(out, e);
        }
    }
}
