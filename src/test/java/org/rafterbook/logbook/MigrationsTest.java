package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.rafterbook.logbook.Samples.list;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.units.UserError;

class MigrationsTest {

    private static final String STANDARD = "classpath:migrations";

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void oldLogbook() throws IOException {
        file = folder.resolve("season.rafterbook");
        new Migrations(1, List.of(STANDARD)).make(file);
        try (InputStream rows = Objects.requireNonNull(getClass().getResourceAsStream("/logbook/edition-1.sql"));
                Sql sql = Connections.writer(file)) {
            new String(rows.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith("INSERT"))
                    .forEach(sql::execute);
        }
    }

    @Test
    void theKnownEditionIsThatOfTheNewestMigration() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("migrations"))) {
            int newest = files.map(each -> each.getFileName().toString())
                    .mapToInt(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                    .max()
                    .orElseThrow();
            assertThat(Migrations.STANDARD.edition()).isEqualTo(newest);
        }
    }

    @Test
    void theFirstEditionsRowsComeThroughAllMigrations() {
        Map<String, Long> before = rowsOf(file);
        assertThat(before).as("a row in every table").doesNotContainValue(0L);
        try (Logbook logbook = Logbook.open(file, Mode.EXISTING)) {
            assertThat(logbook.check()).isEmpty();
            for (Class<? extends Record> type : Tables.TYPES) {
                assertThat(list(logbook, r -> List.<Record>copyOf(r.all(type))))
                        .as(type.getSimpleName())
                        .isNotEmpty();
            }
        }
        assertThat(rowsOf(file)).containsAllEntriesOf(before);
        assertThat(version("user_version")).isEqualTo(Migrations.STANDARD.edition());
        assertThat(version("application_id")).isEqualTo(Migrations.APPLICATION_ID);
    }

    @Test
    void theResultOfTheFlyersOwnFormulaMovesFromThePreferencesToItsVersion() {
        try (Sql sql = Connections.writer(file)) {
            sql.run("INSERT INTO preference VALUES ('bench.own_neutral_point_m.v2', '0.171')");
        }
        try (Logbook logbook = Logbook.open(file, Mode.EXISTING)) {
            assertThat(logbook.read(r -> r.get(Version.class, "v2")).ownNeutralPointM())
                    .isEqualTo(0.171);
            assertThat(logbook.read(r -> r.get(Version.class, "v1")).ownNeutralPointM())
                    .isNull();
            assertThat(logbook.<String>find(r -> r.preference("bench.own_neutral_point_m.v2")))
                    .isNull();
        }
    }

    @Test
    void aRebuiltParentKeepsItsChildrenAndACopyOfBeforeIsKept() {
        Map<String, Long> before = rowsOf(file);
        try (Logbook logbook = Logbook.open(file, Mode.EXISTING, later("rebuild", 4))) {
            assertThat(list(logbook, r -> r.all(Session.class))).hasSize(1);
            assertThat(list(logbook, r -> r.all(Flight.class))).hasSize(1);
            assertThat(logbook.check()).isEmpty();
        }
        assertThat(rowsOf(file)).isEqualTo(before);
        assertThat(version("user_version")).isEqualTo(4);
        Path copy = folder.resolve("season, edition 1.rafterbook");
        assertThat(rowsOf(copy)).isEqualTo(before);
        Logbook.open(copy, Mode.EXISTING).close();
    }

    @Test
    void aLogbookUpToDateIsNotMigratedAgain() {
        Logbook.open(file, Mode.EXISTING, later("rebuild", 4)).close();
        Logbook.open(file, Mode.EXISTING, later("rebuild", 4)).close();
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder("season.rafterbook", "season, edition 1.rafterbook");
    }

    @ParameterizedTest
    @CsvSource({"dangling, 4", "broken, 3"})
    void aMigrationThatFailsLeavesTheLogbookAsItWas(String what, int edition) {
        Map<String, Long> before = rowsOf(file);
        Logger flyway = Logger.getLogger("org.flywaydb");
        Level level = flyway.getLevel();
        flyway.setLevel(Level.OFF);
        assertThatThrownBy(() -> Logbook.open(file, Mode.EXISTING, later(what, edition)))
                .isInstanceOf(UserError.class)
                .hasMessage("The logbook " + file + " could not be brought up to date and is as it was; a copy of it is"
                        + " season, edition 1.rafterbook.");
        flyway.setLevel(level);
        assertThat(rowsOf(file)).isEqualTo(before);
        assertThat(version("user_version")).isEqualTo(1);
        try (Logbook logbook = Logbook.open(file, Mode.EXISTING)) {
            assertThat(logbook.check()).isEmpty();
        }
    }

    @Test
    void anOlderLogbookOpenedForReadingIsNotChanged() {
        assertThatThrownBy(() -> Logbook.open(file, Mode.READ_ONLY, later("rebuild", 4)))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("is of an older edition (1)");
        assertThat(version("user_version")).isEqualTo(1);
    }

    @Test
    void missingMigrationsAreAFailureAndNoEmptyLogbook() {
        Path other = folder.resolve("other.rafterbook");
        assertThatThrownBy(() -> Logbook.open(other, Mode.CREATE, new Migrations(1, List.of("classpath:nowhere"))))
                .isInstanceOf(UserError.class);
        assertThat(other).doesNotExist();
    }

    private static Migrations later(String what, int edition) {
        return new Migrations(edition, List.of(STANDARD, "classpath:logbook/" + what));
    }

    private long version(String pragma) {
        try (Sql sql = Connections.reader(file)) {
            return sql.number("PRAGMA " + pragma);
        }
    }

    private static Map<String, Long> rowsOf(Path logbook) {
        Map<String, Long> rows = new TreeMap<>();
        try (Sql sql = Connections.reader(logbook)) {
            List<String> tables = sql.list(
                    "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
                            + " AND name <> 'flyway_schema_history'",
                    r -> r.getString(1));
            tables.forEach(table -> rows.put(table, sql.number("SELECT count(*) FROM \"" + table + "\"")));
        }
        return rows;
    }
}
