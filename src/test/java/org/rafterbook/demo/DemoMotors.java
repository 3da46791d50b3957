package org.rafterbook.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rafterbook.exchange.SideRows.BatchRow;
import org.rafterbook.exchange.SideRows.MotorRow;
import org.rafterbook.units.Unit;

/** The flyer's box: two batches and 31 motors, each with the winds it has had. */
final class DemoMotors {

    /** A batch: its constant of the breaking turns and how much energy it gives back against the first. */
    enum Batch {
        UMBER("Umber 24", LocalDate.of(2025, 9, 14), 1.07, 44.6, 1.0, "brown strip, one box"),
        SEDGE("Sedge 25", LocalDate.of(2025, 11, 30), 1.05, 45.3, 1.02, "a touch livelier than the last");

        final String title;
        final LocalDate opened;
        final double widthMm;
        final double turnsConstant;
        final double energy;
        final String notes;

        Batch(String title, LocalDate opened, double widthMm, double turnsConstant, double energy, String notes) {
            this.title = title;
            this.opened = opened;
            this.widthMm = widthMm;
            this.turnsConstant = turnsConstant;
            this.energy = energy;
            this.notes = notes;
        }
    }

    /** One motor. */
    static final class DemoMotor {
        final String name;
        final DemoModel model;
        final double fraction;
        final Batch batch;
        final DemoMotorSize size;
        final LocalDate made;
        int winds;
        boolean broken;

        DemoMotor(String name, DemoModel model, double fraction, Batch batch, DemoMotorSize size, LocalDate made) {
            this.name = name;
            this.model = model;
            this.fraction = fraction;
            this.batch = batch;
            this.size = size;
            this.made = made;
        }

        double breakingTurns() {
            return size.breakingTurns(batch.turnsConstant);
        }
    }

    private final Map<String, DemoMotor> motors = new LinkedHashMap<>();

    DemoMotors(DemoDice dice) {
        add(6, DemoModel.TEASEL, 1, Batch.UMBER, LocalDate.of(2025, 9, 28), dice);
        add(2, DemoModel.TEASEL, 0.5, Batch.UMBER, LocalDate.of(2025, 9, 28), dice);
        add(4, DemoModel.MARRAM, 1, Batch.UMBER, LocalDate.of(2025, 10, 4), dice);
        add(3, DemoModel.MARRAM, 0.5, Batch.UMBER, LocalDate.of(2025, 10, 4), dice);
        add(4, DemoModel.QUIRE, 1, Batch.UMBER, LocalDate.of(2025, 10, 24), dice);
        add(6, DemoModel.TEASEL, 1, Batch.SEDGE, LocalDate.of(2025, 12, 3), dice);
        add(3, DemoModel.QUIRE, 1, Batch.SEDGE, LocalDate.of(2025, 12, 6), dice);
        add(3, DemoModel.MARRAM, 1, Batch.SEDGE, LocalDate.of(2025, 12, 13), dice);
    }

    private void add(int count, DemoModel model, double fraction, Batch batch, LocalDate made, DemoDice dice) {
        for (int i = 0; i < count; i++) {
            String name = "M" + (motors.size() + 1);
            DemoMotorSize full = model.motor.part(fraction);
            double mass = DemoDice.rounded(full.massG() * (1 + dice.normal(0.008)), 1000);
            motors.put(name, new DemoMotor(name, model, fraction, batch, new DemoMotorSize(full.loopMm(), mass), made));
        }
    }

    /** The rested one: of that model and part, made by that day, with the fewest winds. */
    DemoMotor rested(DemoModel model, double fraction, LocalDate day) {
        return motors.values().stream()
                .filter(m -> m.model == model && m.fraction == fraction && !m.broken && m.made.isBefore(day))
                .min(Comparator.comparingInt(m -> m.winds))
                .orElseThrow();
    }

    List<BatchRow> batchRows() {
        List<BatchRow> rows = new ArrayList<>();
        for (Batch batch : Batch.values()) {
            rows.add(new BatchRow(
                    batch.title, batch.opened, Unit.MM.toSi(batch.widthMm), batch.turnsConstant, batch.notes));
        }
        return rows;
    }

    List<MotorRow> rows() {
        return motors.values().stream()
                .map(m -> new MotorRow(
                        m.name,
                        m.batch.title,
                        Unit.MM.toSi(m.size.loopMm()),
                        Unit.G.toSi(m.size.massG()),
                        null,
                        m.fraction,
                        m.made,
                        m.broken ? "broke while winding" : null,
                        m.fraction < 1 ? "flown with a spacer" : null))
                .toList();
    }
}
