package org.rafterbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParserTest {

    private static TypedValue metric(Quantity quantity, String text) {
        return QuantityParser.typed(quantity, DisplayUnits.METRIC).read(text).orThrow();
    }

    private static String refusal(Quantity quantity, String text) {
        return QuantityParser.typed(quantity, DisplayUnits.METRIC)
                .read(text)
                .refusal()
                .orElse("accepted");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "LENGTH; 14.5 in; 0.3683",
                "LENGTH; 14 1/2 in; 0.3683",
                "LENGTH; 14-1/2 in; 0.3683",
                "LENGTH; 14½ in; 0.3683",
                "LENGTH; 14,5\"; 0.3683",
                "LENGTH; 3/32 in; 0.00238125",
                "LENGTH; 3⁄32in; 0.00238125",
                "LENGTH; 31 mm; 0.031",
                "LENGTH; 31; 0.031",
                "LENGTH; −2,5; -0.0025",
                "LENGTH; - 2.5 mm; -0.0025",
                "LENGTH; +2.5 mm; 0.0025",
                "LENGTH; .5 cm; 0.005",
                "STRIP_WIDTH; 42 thou; 0.0010668",
                "HEIGHT; 26 ft 3 in; 8.001",
                "HEIGHT; 26' 3 1/2\"; 8.0137",
                "HEIGHT; 9.4; 9.4",
                "MASS; 1.4; 0.0014",
                "MASS; 1,050 g; 0.00105",
                "MASS; 430 mg; 0.00043",
                "MASS; 1 oz; 0.028349523125",
                "TORQUE; 0,25 in-oz; 0.0017653879535565109",
                "TORQUE; 0.25 oz in; 0.0017653879535565109",
                "TORQUE; 41.5 g cm; 0.00406975975",
                "TORQUE; 41.5 gf·cm; 0.00406975975",
                "TORQUE; 0.579 mN·m; 0.000579",
                "TORQUE; 2.6 N.mm; 0.0026",
                "TORQUE; 2.6; 0.0026",
                "ANGLE; 180°; 3.141592653589793",
                "ANGLE; 180 deg; 3.141592653589793",
                "ANGLE; 1 rad; 1",
                "TEMPERATURE; 21C; 294.15",
                "TEMPERATURE; 21 °C; 294.15",
                "TEMPERATURE; −5; 268.15",
                "TEMPERATURE; 68 °F; 293.15",
                "TEMPERATURE; 293.15 K; 293.15",
                "PRESSURE; 1013hPa; 101300",
                "PRESSURE; 1013.25; 101325",
                "PRESSURE; 1013 mbar; 101300",
                "PRESSURE; 101.3 kPa; 101300",
                "PRESSURE; 1.013 bar; 101300",
                "HUMIDITY; 45%; 0.45",
                "HUMIDITY; 45; 0.45",
                "FRACTION; 5,1 %; 0.051",
                "TURNS; 1850; 1850",
                "TURNS; 1850 turns; 1850",
                "SPEED; 3.6 km/h; 1",
                "SPECIFIC_ENERGY; 4000 ft-lb/lb; 11956.26768",
                "LINEAR_DENSITY; 1.2 g/m; 0.0012",
                "PLAIN; 1e-3; 0.001",
                "COUNT; 3; 3",
            })
    void readsWhatFlyersType(Quantity quantity, String text, double si) {
        assertThat(metric(quantity, text).si()).isEqualTo(si);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "10:50; 650; 10:50",
                "10.50 min; 630; 10:30",
                "10,5 min; 630; 10:30",
                "650 s; 650; 10:50",
                "1050; 1050; 17:30",
                "95; 95; 1:35",
                "1:02:03; 3723; 62:03",
                "69:32; 4172; 69:32",
                "0:10:50; 650; 10:50",
                "9:58.6; 598.6; 9:58.6",
                "9:58,64; 598.64; 9:58.64",
                "10 min 50 s; 650; 10:50",
                "10min50s; 650; 10:50",
                "10' 50\"; 650; 10:50",
                "10′50″; 650; 10:50",
                "1 h 2 min 3 s; 3723; 62:03",
                "10.50; 10.5; 0:10.5",
                "0; 0; 0:00",
            })
    void readsTimesAndReadsThemBackInFull(String text, double seconds, String readBack) {
        TypedValue value = metric(Quantity.TIME, text);
        assertThat(value.si()).isEqualTo(seconds);
        assertThat(value.readBack()).isEqualTo(readBack);
    }

    @Test
    void aNumberWithoutUnitIsMarkedAsBare() {
        assertThat(metric(Quantity.TIME, "1050").bare()).isTrue();
        assertThat(metric(Quantity.TIME, "10:50").bare()).isFalse();
        assertThat(metric(Quantity.LENGTH, "31").bare()).isTrue();
        assertThat(metric(Quantity.LENGTH, "31 mm").bare()).isFalse();
    }

    @Test
    void keepsWhatWasTypedBesideWhatWasUnderstood() {
        TypedValue value = metric(Quantity.LENGTH, "  14 1/2 in ");
        assertThat(value.asTyped()).isEqualTo("14 1/2 in");
        assertThat(value.unit()).isEqualTo(Unit.IN);
        assertThat(value.readBack()).isEqualTo("14.5 in = 368.3 mm");
        assertThat(metric(Quantity.TORQUE, "0,25 in-oz").readBack()).isEqualTo("0.25 in-oz = 1.7654 N·mm");
        assertThat(metric(Quantity.ANGLE, "-0.5°").readBack()).isEqualTo("−0.5°");
        assertThat(metric(Quantity.LENGTH, "31").readBack()).isEqualTo("31 mm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "TIME; 10:75; has 75 seconds",
                "TIME; 10:5; two digits",
                "TIME; 1:75:00; 00 to 59",
                "TIME; -10:50; is not a time",
                "TIME; 10:50 min; is not a time",
                "TIME; 10::50; is not a time",
                "TIME; -5; cannot be negative",
                "TIME; 10 min 75 s; less than 60 s",
                "TIME; 10 min 50; less than 60 s",
                "TIME; 10.5 min 20 s; cannot be read",
                "TIME; 31 mm; measures a length",
                "TIME; ten; does not begin with a number",
                "LENGTH; 12 parsecs; is not a unit known here",
                "LENGTH; 1.2.3; more than one decimal mark",
                "LENGTH; 1,2,3; more than one decimal mark",
                "LENGTH; 1,234.5; a comma and a point",
                "LENGTH; 1.234,5; a comma and a point",
                "LENGTH; 1 234; is not one number",
                "LENGTH; 5.; no digits after",
                "LENGTH; 10:50; is a time",
                "LENGTH; 5 1/0; divides by zero",
                "LENGTH; 5 3/2 in; one or more",
                "LENGTH; 5.5 1/2 in; is not one number",
                "LENGTH; NaN; does not begin with a number",
                "LENGTH; Infinity; does not begin with a number",
                "LENGTH; 1e999; is too large",
                "LENGTH; 0x1F; is not a unit known here",
                "LENGTH; 5 in in; is not a unit known here",
                "LENGTH; 26 ft 13 in; less than 12 in",
                "LENGTH; 26 ft 3 mm; less than 12 in",
                "LENGTH; 26 m 3 in; cannot be read as part",
                "LENGTH; 14 °C; measures a temperature",
                "TORQUE; 3 in; measures a length",
                "MASS; -1 g; cannot be negative",
                "TURNS; 1,050; could be 1050 or 1.05",
                "TURNS; 1.050; could be 1050 or 1.05",
                "PRESSURE; 1,013 hPa; could be 1013 or 1.013",
                "HUMIDITY; 145 %; above 100 %",
                "HUMIDITY; -4; cannot be negative",
                "TEMPERATURE; -300 °C; absolute zero",
                "PLAIN; 5 mm; without a unit",
                "LENGTH; ` `; Nothing is typed",
            })
    void refusesWhatCannotBeReadInOneWay(Quantity quantity, String text, String part) {
        assertThat(refusal(quantity, text)).contains(part).endsWith(".");
    }

    @Test
    void refusalNamesTheUnitsThatMayBeTyped() {
        assertThat(refusal(Quantity.TORQUE, "12 parsecs"))
                .isEqualTo(
                        "“parsecs” is not a unit known here; a torque is asked for here, in N·m, mN·m, N·mm, in-oz, gf·cm.");
    }

    @Test
    void veryLongTextIsRefusedShortened() {
        assertThat(refusal(Quantity.LENGTH, "1".repeat(500)))
                .hasSizeLessThan(100)
                .contains("too long");
    }

    @Test
    void refusalThrowsBadInputWhereNoFieldCanShowIt() {
        assertThatThrownBy(() -> metric(Quantity.TIME, "10:75"))
                .isInstanceOfSatisfying(
                        UserError.class, e -> assertThat(e.kind()).isEqualTo(UserError.Kind.BAD_INPUT));
    }

    @ParameterizedTest
    @ValueSource(strings = {"7.9 to 9.4", "7.9–9.4", "7.9-9.4 m", "7,9 .. 9,4", "7.9 m to 9.4 m", "7.9 … 9.4"})
    void readsARange(String text) {
        TypedRange range = QuantityParser.typed(Quantity.HEIGHT, DisplayUnits.METRIC)
                .readRange(text)
                .orThrow();
        assertThat(range.lowSi()).isEqualTo(7.9);
        assertThat(range.highSi()).isEqualTo(9.4);
        assertThat(range.asTyped()).isEqualTo(text);
    }

    @Test
    void unitAtTheEndOfARangeCountsForBothEnds() {
        TypedRange range = QuantityParser.typed(Quantity.HEIGHT, DisplayUnits.METRIC)
                .readRange("26 to 31 ft")
                .orThrow();
        assertThat(range.lowSi()).isEqualTo(7.9248);
        assertThat(range.highSi()).isEqualTo(9.4488);
        assertThat(range.readBack()).isEqualTo("26 ft = 7.9248 m to 31 ft = 9.4488 m");
    }

    @Test
    void oneValueIsARangeOfEqualEnds() {
        TypedRange range = QuantityParser.typed(Quantity.HEIGHT, DisplayUnits.METRIC)
                .readRange("7.9")
                .orThrow();
        assertThat(range.lowSi()).isEqualTo(range.highSi()).isEqualTo(7.9);
        assertThat(range.readBack()).isEqualTo("7.9 m");
    }

    @ParameterizedTest
    @ValueSource(strings = {"9.4 to 7.9", "1 to 2 to 3", "to 3", "7.9 to", "7.9 to high", "7.9 kg to 9"})
    void refusesARangeThatIsNone(String text) {
        assertThat(QuantityParser.typed(Quantity.HEIGHT, DisplayUnits.METRIC)
                        .readRange(text)
                        .refusal())
                .isPresent();
    }

    @Test
    void columnReadsInItsMappedUnitAndDecimalMarkOnly() {
        QuantityParser comma = QuantityParser.column(Quantity.LENGTH, Unit.IN, DecimalMark.COMMA);
        assertThat(comma.read("14,5").orThrow().si()).isEqualTo(0.3683);
        assertThat(comma.read("14.5").refusal()).hasValue("“14.5” has the other decimal mark than this column.");
        assertThat(comma.read("31 mm").orThrow().si()).isEqualTo(0.031);
        QuantityParser turns = QuantityParser.column(Quantity.TURNS, Unit.TURNS, DecimalMark.POINT);
        assertThat(turns.read("1.050").orThrow().si()).isEqualTo(1.05);
        assertThat(turns.read("1,050").refusal()).isPresent();
        QuantityParser minutes = QuantityParser.column(Quantity.TIME, Unit.MIN, DecimalMark.POINT);
        assertThat(minutes.read("10.5").orThrow().si()).isEqualTo(630);
        assertThat(minutes.read("10:30").orThrow().si()).isEqualTo(630);
        assertThat(minutes.read("10:30,5").refusal()).isPresent();
    }

    @Test
    void anyTextIsReadOrRefusedWithoutFailing() {
        String alphabet = "0123456789.,:/-−+ eEinmsgNoz°%CFh'\"½()~x\u00A0\t";
        long seed = 20260120;
        System.out.println("seed " + seed);
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(12);
            for (int j = 0; j < length; j++) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            Quantity quantity = Quantity.values()[random.nextInt(Quantity.values().length)];
            QuantityParser parser = QuantityParser.typed(quantity, DisplayUnits.INCH);
            Parsed<TypedValue> parsed = parser.read(text.toString());
            parser.readRange(text.toString());
            parsed.toOptional()
                    .ifPresent(v -> assertThat(v.si()).as(text.toString()).isFinite());
            parsed.refusal().ifPresent(s -> assertThat(s).endsWith("."));
        }
    }

    @Test
    void whatIsShownReadsBackAsTheSameValue() {
        long seed = 3_1415;
        System.out.println("seed " + seed);
        Random random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            String typed = String.format(Locale.ROOT, "%.3f", random.nextDouble() * 500);
            for (Unit unit : Unit.values()) {
                double si = unit.toSi(Double.parseDouble(typed));
                assertThat(unit.fromSi(si)).as(unit.name()).isEqualTo(Double.parseDouble(typed));
                assertThat(unit.toSi(unit.fromSi(si / 3))).isCloseTo(si / 3, within(8 * Math.ulp(si)));
            }
        }
    }
}
