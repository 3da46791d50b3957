package org.rafterbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script beside the jar. */
class LauncherTest {

    @TempDir
    Path folder;

    @BeforeEach
    void layOut() throws IOException {
        Files.copy(Path.of("src", "main", "launch", "rafterbook"), folder.resolve("rafterbook"));
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.put(Attributes.Name.MAIN_CLASS, Rafterbook.class.getName());
        main.put(
                Attributes.Name.CLASS_PATH,
                Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                        .map(entry -> Path.of(entry).toUri().toString())
                        .collect(Collectors.joining(" ")));
        new JarOutputStream(Files.newOutputStream(folder.resolve("rafterbook.jar")), manifest).close();
    }

    private record Ended(int code, String out, String err) {}

    private Ended launch(String... arguments) throws IOException, InterruptedException {
        List<String> command =
                new ArrayList<>(List.of("sh", folder.resolve("rafterbook").toString()));
        command.addAll(List.of(arguments));
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        int code = builder.start().waitFor();
        return new Ended(code, Files.readString(out), Files.readString(err));
    }

    @Test
    void passesItsArgumentsOnAndTheExitCodeBack() throws Exception {
        Ended air = launch("air", "--temperature", "21C", "--pressure", "1013 hPa", "--humidity", "45%");
        assertThat(air).isEqualTo(new Ended(0, "1.1952 kg/m³\n", ""));
        Ended wrong = launch("air", "--temperature", "warm", "--pressure", "1013hPa", "--humidity", "45%");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).contains("warm");
    }

    @Test
    void anArchiveOfAnotherBuildIsNoHindrance() throws Exception {
        Files.writeString(folder.resolve("classes-of-the-window.jsa"), "no archive");
        Ended air = launch("air", "--temperature", "21C", "--pressure", "1013hPa", "--humidity", "45%");
        assertThat(air).isEqualTo(new Ended(0, "1.1952 kg/m³\n", ""));
    }
}
