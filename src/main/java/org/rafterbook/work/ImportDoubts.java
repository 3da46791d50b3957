package org.rafterbook.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hipparchus.stat.descriptive.rank.Median;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.exchange.FlightField;
import org.rafterbook.exchange.FlightRow;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Reader;
import org.rafterbook.power.Motor;
import org.rafterbook.power.MotorLimits;
import org.rafterbook.power.RubberBatch;
import org.rafterbook.power.Wind;

/**
 * Finds figures of new flights that are wildly out of line: a column in another unit, a digit too many. Nothing is refused for
 * it. The bounds are wide on purpose (common practice, no source): flights differ, units differ by seven, ten or sixty.
 */
final class ImportDoubts {

    /** No indoor flight on rubber comes near it. */
    private static final double ENDLESS_S = 2 * 3600;

    private static final double TIMES_AS_LONG = 10;
    private static final double TIMES_AS_MUCH = 5;
    private static final double TIMES_BREAKING_TORQUE = 1.5;

    /** Fewer than these make nothing usual. */
    private static final int ENOUGH = 5;

    private record Measured(
            FlightField field,
            Function<FlightRow, @Nullable Double> ofRow,
            Function<FlightLine, @Nullable Double> ofLine) {}

    private static final Measured TIME = new Measured(
            FlightField.DURATION_S, FlightRow::durationS, l -> l.flight().durationS());
    private static final Measured TURNS =
            new Measured(FlightField.TURNS_WOUND, r -> r.wind().turnsWound(), l -> wind(l, Wind::turnsWound));
    private static final Measured TORQUE = new Measured(
            FlightField.LAUNCH_TORQUE_NMM, r -> r.wind().launchTorqueNm(), l -> wind(l, Wind::launchTorqueNm));
    private static final Measured HIGHEST =
            new Measured(FlightField.MAX_TORQUE_NMM, r -> r.wind().maxTorqueNm(), l -> wind(l, Wind::maxTorqueNm));

    private final Reader reader;
    private final ImportBasics basics;
    private final List<ImportDoubt> found = new ArrayList<>();

    ImportDoubts(Reader reader, ImportBasics basics) {
        this.reader = reader;
        this.basics = basics;
    }

    private static @Nullable Double wind(FlightLine line, Function<Wind, @Nullable Double> figure) {
        return line.wind() == null ? null : figure.apply(line.wind());
    }

    /** The doubtful figures of flights that are not written yet, those of one model after those of another. */
    List<ImportDoubt> of(List<ImportedFlight> fresh) {
        Map<String, List<ImportedFlight>> byModel = new LinkedHashMap<>();
        fresh.forEach(f -> byModel.computeIfAbsent(ImportBasics.key(f.row.model()), m -> new ArrayList<>())
                .add(f));
        byModel.forEach((key, flights) -> {
            List<FlightLine> before = before(key);
            for (Measured measured : List.of(TIME, TURNS, TORQUE, HIGHEST)) {
                look(measured, flights, before);
            }
        });
        return found;
    }

    private List<FlightLine> before(String modelKey) {
        return reader.all(Model.class).stream()
                .filter(m -> ImportBasics.key(m.name()).equals(modelKey))
                .findFirst()
                .map(m -> reader.flights().ofModel(m.id()))
                .orElse(List.of());
    }

    private void look(Measured measured, List<ImportedFlight> fresh, List<FlightLine> before) {
        Double inTable = median(fresh.stream().map(f -> measured.ofRow().apply(f.row)));
        Double inLogbook = median(before.stream().map(measured.ofLine()));
        if (inTable != null && inLogbook != null && measured != TIME && apart(inTable, inLogbook)) {
            add(fresh.get(0), measured, ImportDoubt.Kind.OTHER_THAN_BEFORE, inTable, inLogbook);
            return;
        }
        Double usual = inLogbook == null ? inTable : inLogbook;
        for (ImportedFlight flight : fresh) {
            Double value = measured.ofRow().apply(flight.row);
            if (value != null) {
                look(measured, flight, value, usual);
            }
        }
    }

    private static boolean apart(double a, double b) {
        return a > TIMES_AS_MUCH * b || b > TIMES_AS_MUCH * a;
    }

    private void look(Measured measured, ImportedFlight flight, double value, @Nullable Double usual) {
        Double breaks = measured == TIME ? null : breaking(measured, flight);
        double most = measured == TIME ? TIMES_AS_LONG : TIMES_AS_MUCH;
        if (measured == TIME && value > ENDLESS_S) {
            add(flight, measured, ImportDoubt.Kind.ENDLESS, value, ENDLESS_S);
        } else if (breaks != null && value > breaks * (measured == TURNS ? 1 : TIMES_BREAKING_TORQUE)) {
            ImportDoubt.Kind kind =
                    measured == TURNS ? ImportDoubt.Kind.BEYOND_BREAKING : ImportDoubt.Kind.TORQUE_BEYOND_BREAKING;
            add(flight, measured, kind, value, breaks);
        } else if (usual != null && value > most * usual) {
            add(flight, measured, measured == TIME ? ImportDoubt.Kind.LONG : ImportDoubt.Kind.HIGH, value, usual);
        }
    }

    /** The upper end of the turns at which the flight's motor breaks, or the torque at which it does; null where unknown. */
    private @Nullable Double breaking(Measured measured, ImportedFlight flight) {
        String name = flight.row.wind().motor();
        Motor motor = name == null ? null : basics.motorNamed(name);
        Double loop = motor == null ? null : motor.loopLengthM();
        Double mass = motor == null ? null : motor.massKg();
        if (motor == null || loop == null || mass == null) {
            return null;
        }
        if (measured != TURNS) {
            return MotorLimits.breakingTorqueNm(loop, mass);
        }
        RubberBatch batch = motor.batchId() == null ? null : reader.find(RubberBatch.class, motor.batchId());
        return MotorDesk.breakingTurns(loop, mass, batch).turns().high();
    }

    private void add(ImportedFlight flight, Measured measured, ImportDoubt.Kind kind, double value, double against) {
        found.add(new ImportDoubt(flight.table.file(), flight.row.line(), measured.field(), kind, value, against));
    }

    private static @Nullable Double median(Stream<@Nullable Double> figures) {
        double[] known = figures.filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .filter(f -> f > 0)
                .toArray();
        return known.length < ENOUGH ? null : (Double) new Median().evaluate(known);
    }
}
