package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.Session;
import org.rafterbook.units.UserError;

class RecordTableTest {

    @TempDir
    Path folder;

    static List<Class<? extends Record>> types() {
        return Tables.TYPES;
    }

    @Test
    void theTablesAreThoseOfTheRecordsAndTheHousekeeping() throws Exception {
        try (Logbook logbook = Logbook.open(folder.resolve("l.rafterbook"), Mode.CREATE);
                Sql sql = Connections.reader(logbook.file())) {
            List<String> tables = sql.list(
                    "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'",
                    rows -> rows.getString(1));
            List<String> expected = new ArrayList<>(Tables.names());
            expected.addAll(List.of("preference", "computed", "change_log", "flyway_schema_history"));
            assertThat(tables).containsExactlyInAnyOrderElementsOf(expected);
            for (Class<? extends Record> type : Tables.TYPES) {
                RecordTable<?> table = Tables.of(type);
                assertThat(sql.list("SELECT name FROM pragma_table_info(?)", r -> r.getString(1), table.name()))
                        .as(table.name())
                        .containsExactlyInAnyOrderElementsOf(table.columnNames());
                assertThat(sql.list(
                                "SELECT type FROM pragma_table_info(?) WHERE name = ?",
                                r -> r.getString(1),
                                table.name(),
                                RecordTable.GONE))
                        .containsExactly("TEXT");
            }
            assertThat(sql.number(
                            "SELECT count(*) FROM pragma_table_list WHERE name IN"
                                    + " (SELECT value FROM json_each(?)) AND strict = 1",
                            Json.array(Tables.names())))
                    .isEqualTo(Tables.names().size());
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void everyRecordComesBackFromWhatIsStored(Class<? extends Record> type) throws Exception {
        for (long seed = 1; seed <= 50; seed++) {
            Record row = anyOf(type, new Random(seed));
            assertThat(afterStoring(row)).as("seed %d", seed).isEqualTo(row);
        }
    }

    @SuppressWarnings("unchecked")
    private static <R extends Record> Record afterStoring(R row) {
        RecordTable<R> table = Tables.of((Class<R>) row.getClass());
        // By way of the change log's JSON, so that undo's way back is tried as well.
        return table.record(Json.read(Json.write(table.stored(row))));
    }

    @Test
    void textOrderOfInstantsIsTimeOrder() {
        Instant whole = Instant.parse("2026-01-20T18:00:00Z");
        assertThat(Codec.text(whole)).isEqualTo("2026-01-20T18:00:00.000Z").isLessThan(Codec.text(whole.plusMillis(1)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsRefusedBeforeSqliteMakesNothingOfIt(double noNumber) {
        Session session = Samples.session(null, Samples.DAY);
        assertThatThrownBy(() -> Tables.of(Flight.class).stored(Samples.flight(session, 1, noNumber)))
                .isInstanceOf(UserError.class)
                .hasMessage("The duration is not a number.");
    }

    @Test
    void typedTextsKeepTheirOrderAndTheirCharacters() {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("width", "3/32 in");
        typed.put("a \"quoted\" name\n", "Größe 14½\u2033");
        Object stored = Codec.of(
                        Samples.venue("x").getClass().getRecordComponents()[6].getGenericType())
                .encode(typed);
        Object back = Codec.of(
                        Samples.venue("x").getClass().getRecordComponents()[6].getGenericType())
                .decode(stored);
        assertThat(back).isEqualTo(typed);
        assertThat(((Map<?, ?>) back).keySet().iterator().next()).isEqualTo("width");
    }

    private static Record anyOf(Class<? extends Record> type, Random random) throws Exception {
        RecordComponent[] components = type.getRecordComponents();
        @Nullable Object[] values = new @Nullable Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < values.length; i++) {
            types[i] = components[i].getType();
            boolean mayBeNull = components[i].getAnnotatedType().isAnnotationPresent(Nullable.class);
            values[i] = mayBeNull && random.nextInt(3) == 0 ? null : any(components[i].getType(), random);
        }
        return type.getConstructor(types).newInstance(values);
    }

    private static Object any(Class<?> type, Random random) {
        if (type.isEnum()) {
            return type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)];
        }
        return switch (type.getSimpleName()) {
            case "String" -> text(random);
            case "double", "Double" ->
                random.nextBoolean() ? random.nextGaussian() * 1e-3 : (double) random.nextInt(99);
            case "int", "Integer" -> random.nextInt();
            case "long", "Long" -> random.nextLong();
            case "boolean", "Boolean" -> random.nextBoolean();
            case "Instant" -> Instant.ofEpochMilli(random.nextLong(4_000_000_000_000L));
            case "LocalDate" -> LocalDate.ofEpochDay(random.nextInt(40_000));
            case "ZoneId" -> ZoneId.of(random.nextBoolean() ? "Europe/London" : "+05:45");
            case "Map" ->
                random.ints(random.nextInt(3)).boxed().collect(Collectors.toMap(String::valueOf, i -> text(random)));
            default -> throw new IllegalArgumentException(type.getName());
        };
    }

    private static String text(Random random) {
        return random.ints(8, 1, 0x2FFF).mapToObj(Character::toString).collect(Collectors.joining());
    }
}
