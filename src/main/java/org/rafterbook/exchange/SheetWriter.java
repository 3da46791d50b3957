package org.rafterbook.exchange;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Surface;
import org.rafterbook.units.MachineNumber;
import org.rafterbook.units.Unit;

/** Writes one airframe sheet by hand, so that a flyer can read and edit it: one rib, one mass a line. */
final class SheetWriter {

    private static final int MOST_TYPED_DIGITS = 12;

    private SheetWriter() {}

    static String write(AirframeSheet sheet) {
        Airframe airframe = sheet.airframe();
        List<String> lines = new ArrayList<>();
        lines.add(entry("rafterbook", quoted(SheetReader.KIND)));
        lines.add(entry("edition", String.valueOf(SheetReader.EDITION)));
        lines.add(entry("model", quoted(sheet.model())));
        if (!sheet.version().isEmpty()) {
            lines.add(entry("version", quoted(sheet.version())));
        }
        if (airframe.measuredBalanceM() != null) {
            lines.add(number("balance_mm", airframe.measuredBalanceM(), Unit.MM));
        }
        lines.add(entry(
                "surfaces",
                list(airframe.surfaces().stream().map(SheetWriter::surface).toList(), "  ")));
        lines.add(entry(
                "masses", list(airframe.masses().stream().map(SheetWriter::mass).toList(), "  ")));
        MotorPlace motor = airframe.motor();
        if (motor != null) {
            lines.add(entry(
                    "motor",
                    object(number("mass_g", motor.massKg(), Unit.G), number("aft_mm", motor.aftM(), Unit.MM))));
        }
        return "{\n  " + String.join(",\n  ", lines) + "\n}\n";
    }

    private static String surface(Surface surface) {
        List<String> entries = new ArrayList<>();
        entries.add(entry("name", quoted(surface.name())));
        entries.add(entry("role", quoted(surface.role().name().toLowerCase(Locale.ROOT))));
        entries.add(number("edge_aft_mm", surface.edgeAftM(), Unit.MM));
        entries.add(number("rise_mm", surface.riseM(), Unit.MM));
        entries.add(number("incidence_deg", surface.incidenceRad(), Unit.DEG));
        entries.add(number("camber_percent", surface.camber(), Unit.PERCENT));
        if (surface.offsetLeftM() != 0) {
            entries.add(number("offset_left_mm", surface.offsetLeftM(), Unit.MM));
        }
        if (surface.tiltRad() != 0) {
            entries.add(number("tilt_deg", surface.tiltRad(), Unit.DEG));
        }
        optional(entries, "zero_lift_deg", surface.zeroLiftRad(), Unit.DEG);
        optional(entries, "cm_quarter", surface.cmQuarter(), Unit.ONE);
        if (isRectangle(surface.ribs())) {
            entries.add(number("span_mm", 2 * surface.ribs().get(1).outM(), Unit.MM));
            entries.add(number("chord_mm", surface.ribs().get(1).chordM(), Unit.MM));
        } else {
            entries.add(ribs("ribs", surface.ribs()));
        }
        if (surface.ribsLeft() != null) {
            entries.add(ribs("ribs_left", surface.ribsLeft()));
        }
        return object(entries.toArray(String[]::new));
    }

    private static boolean isRectangle(List<Rib> ribs) {
        return ribs.size() == 2
                && ribs.get(0).equals(new Rib(0, 0, ribs.get(1).chordM(), 0, 0))
                && ribs.get(1).equals(new Rib(ribs.get(1).outM(), 0, ribs.get(0).chordM(), 0, 0));
    }

    private static String ribs(String key, List<Rib> ribs) {
        return "\n     " + entry(key, list(ribs.stream().map(SheetWriter::rib).toList(), "     "));
    }

    private static String rib(Rib rib) {
        return object(
                number("out_mm", rib.outM(), Unit.MM),
                number("edge_aft_mm", rib.edgeAftM(), Unit.MM),
                number("chord_mm", rib.chordM(), Unit.MM),
                number("rise_mm", rib.riseM(), Unit.MM),
                number("twist_deg", rib.twistRad(), Unit.DEG));
    }

    private static String mass(MassItem mass) {
        return object(
                entry("name", quoted(mass.name())),
                number("mass_g", mass.massKg(), Unit.G),
                number("aft_mm", mass.aftM(), Unit.MM),
                number("rise_mm", mass.riseM(), Unit.MM));
    }

    private static void optional(List<String> entries, String key, @Nullable Double si, Unit unit) {
        if (si != null) {
            entries.add(number(key, si, unit));
        }
    }

    private static String number(String key, double si, Unit unit) {
        return entry(key, text(si, unit));
    }

    /** As typed where it was typed; a value that was computed gets the digits that read back as the same double. */
    private static String text(double si, Unit unit) {
        BigDecimal shortest = new BigDecimal(MachineNumber.text(si, unit));
        double off = si - unit.toSi(shortest);
        if (off == 0 || shortest.precision() <= MOST_TYPED_DIGITS) {
            return shortest.toPlainString();
        }
        BigDecimal step = new BigDecimal(unit.toSi(BigDecimal.ONE));
        return shortest.add(new BigDecimal(off).divide(step, MathContext.DECIMAL64))
                .setScale(20, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String entry(String key, String value) {
        return quoted(key) + ": " + value;
    }

    private static String object(String... entries) {
        return "{" + String.join(", ", entries) + "}";
    }

    private static String list(List<String> items, String indent) {
        String next = "\n" + indent + "  ";
        return items.isEmpty() ? "[]" : "[" + next + String.join("," + next, items) + "\n" + indent + "]";
    }

    private static String quoted(String text) {
        return "\"" + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text)) + "\"";
    }
}
