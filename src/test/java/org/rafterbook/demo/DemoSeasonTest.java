package org.rafterbook.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DemoSeasonTest {

    private static final Path SAMPLE_DATA = Path.of("sample-data");

    @Test
    void theCommittedFilesAreWhatTheSimulationWrites() throws IOException {
        Map<String, String> files = DemoSeason.files();
        try (Stream<Path> listed = Files.list(SAMPLE_DATA)) {
            assertThat(listed.map(p -> String.valueOf(p.getFileName())))
                    .containsExactlyInAnyOrderElementsOf(new TreeSet<>(files.keySet()));
        }
        for (Map.Entry<String, String> file : files.entrySet()) {
            assertThat(SAMPLE_DATA.resolve(file.getKey())).hasContent(file.getValue());
        }
    }
}
