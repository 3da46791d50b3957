package org.rafterbook.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.MassItem;
import org.rafterbook.airframe.MotorPlace;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.units.Unit;
import org.rafterbook.units.UserError;

/** Reads one airframe sheet; what it cannot take it refuses with the place and the key. */
final class SheetReader {

    static final String KIND = "airframe sheet";
    static final int EDITION = 1;

    private static final List<String> SHEET =
            List.of("rafterbook", "edition", "model", "version", "balance_mm", "surfaces", "masses", "motor");
    private static final List<String> SURFACE = List.of(
            "name",
            "role",
            "edge_aft_mm",
            "rise_mm",
            "incidence_deg",
            "camber_percent",
            "span_mm",
            "chord_mm",
            "ribs",
            "ribs_left",
            "offset_left_mm",
            "tilt_deg",
            "zero_lift_deg",
            "cm_quarter");
    private static final List<String> RIB = List.of("out_mm", "edge_aft_mm", "chord_mm", "rise_mm", "twist_deg");
    private static final List<String> MASS = List.of("name", "mass_g", "aft_mm", "rise_mm");
    private static final List<String> MOTOR = List.of("mass_g", "aft_mm");

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final String source;

    SheetReader(String source) {
        this.source = source;
    }

    AirframeSheet read(String json) {
        SheetObject sheet = new SheetObject(parse(json), source, SHEET);
        checkKind(sheet);
        String model = sheet.text("model").strip();
        String version = sheet.textOr("version", "").strip();
        sheet.required("surfaces");
        List<Surface> surfaces = new ArrayList<>();
        for (JsonNode node : sheet.list("surfaces")) {
            surfaces.add(surface(node, surfaces.size() + 1));
        }
        refuseDoubles(surfaces);
        List<MassItem> masses = new ArrayList<>();
        for (JsonNode node : sheet.list("masses")) {
            masses.add(mass(node, masses.size() + 1));
        }
        return new AirframeSheet(
                model,
                version,
                new Airframe(surfaces, masses, sheet.numberOrNull("balance_mm", Unit.MM), motor(sheet)));
    }

    private JsonNode parse(String json) {
        if (json.isBlank()) {
            throw UserError.badInput(source + " is empty.");
        }
        try {
            return MAPPER.readTree(json);
        } catch (JsonProcessingException e) {
            throw UserError.badInput(source + ", line " + e.getLocation().getLineNr() + ", character "
                    + e.getLocation().getColumnNr() + ": not readable as JSON: " + inShort(e.getOriginalMessage()));
        }
    }

    /** The parser's first sentence without its remarks about its own state. */
    private static String inShort(String message) {
        String first = message.lines().findFirst().orElse("");
        return first.replaceAll("( \\(start marker|: enable `).*", "") + ".";
    }

    private void checkKind(SheetObject sheet) {
        if (!sheet.has("rafterbook") || !KIND.equals(sheet.text("rafterbook"))) {
            throw UserError.badInput(source + " is no airframe sheet: it needs \"rafterbook\": \"" + KIND + "\".");
        }
        double edition = sheet.number("edition", Unit.ONE);
        if (edition != EDITION) {
            throw sheet.error("has edition " + sheet.required("edition") + "; this program reads edition " + EDITION);
        }
    }

    private void refuseDoubles(List<Surface> surfaces) {
        Set<String> names = new HashSet<>();
        for (Surface surface : surfaces) {
            if (!names.add(surface.name())) {
                throw UserError.badInput(
                        source + " has two surfaces named '" + surface.name() + "'; each needs a name of its own.");
            }
        }
    }

    private Surface surface(JsonNode node, int number) {
        String where = source + ": " + called("surface", node, number);
        SheetObject surface = new SheetObject(node, where, SURFACE);
        List<Rib> ribs = surface.has("ribs") ? ribs(surface, "ribs") : rectangle(surface);
        if (surface.has("ribs") && (surface.has("span_mm") || surface.has("chord_mm"))) {
            throw surface.error("has 'ribs' and 'span_mm' or 'chord_mm'; give one of the two");
        }
        return new Surface(
                surface.text("name").strip(),
                role(surface),
                surface.number("edge_aft_mm", Unit.MM),
                surface.numberOr("rise_mm", Unit.MM, 0),
                surface.numberOr("incidence_deg", Unit.DEG, 0),
                surface.numberOr("camber_percent", Unit.PERCENT, 0),
                ribs,
                surface.has("ribs_left") ? ribs(surface, "ribs_left") : null,
                surface.numberOr("offset_left_mm", Unit.MM, 0),
                surface.numberOr("tilt_deg", Unit.DEG, 0),
                surface.numberOrNull("zero_lift_deg", Unit.DEG),
                surface.numberOrNull("cm_quarter", Unit.ONE));
    }

    private static Role role(SheetObject surface) {
        String role = surface.text("role");
        return Arrays.stream(Role.values())
                .filter(r -> r.name().equalsIgnoreCase(role))
                .findFirst()
                .orElseThrow(() -> surface.error("has the role '" + role + "'; it can be wing, tailplane or fin"));
    }

    private static List<Rib> rectangle(SheetObject surface) {
        if (!surface.has("span_mm") && !surface.has("chord_mm")) {
            throw surface.error("has neither 'ribs' nor 'span_mm' and 'chord_mm'");
        }
        double half = surface.number("span_mm", Unit.MM) / 2;
        double chord = surface.number("chord_mm", Unit.MM);
        if (half <= 0 || chord <= 0) {
            throw surface.error("needs a 'span_mm' and a 'chord_mm' above zero");
        }
        return List.of(new Rib(0, 0, chord, 0, 0), new Rib(half, 0, chord, 0, 0));
    }

    private static List<Rib> ribs(SheetObject surface, String key) {
        List<Rib> ribs = new ArrayList<>();
        for (JsonNode node : surface.list(key)) {
            int number = ribs.size() + 1;
            SheetObject rib = new SheetObject(node, surface.where() + ", " + key + " number " + number, RIB);
            Rib read = new Rib(
                    rib.notNegative("out_mm", Unit.MM),
                    rib.numberOr("edge_aft_mm", Unit.MM, 0),
                    rib.notNegative("chord_mm", Unit.MM),
                    rib.numberOr("rise_mm", Unit.MM, 0),
                    rib.numberOr("twist_deg", Unit.DEG, 0));
            if (number > 1 && read.outM() < ribs.get(number - 2).outM()) {
                throw rib.error("lies nearer the middle than the rib before it; ribs run outward");
            }
            ribs.add(read);
        }
        if (ribs.size() < 2 || ribs.get(ribs.size() - 1).outM() <= ribs.get(0).outM()) {
            throw surface.error("needs at least two '" + key + "' at different 'out_mm'");
        }
        if (ribs.stream().allMatch(rib -> rib.chordM() == 0)) {
            throw surface.error("has no '" + key + "' with a chord above zero");
        }
        return ribs;
    }

    private MassItem mass(JsonNode node, int number) {
        SheetObject mass = new SheetObject(node, source + ": " + called("mass", node, number), MASS);
        return new MassItem(
                mass.text("name").strip(),
                mass.notNegative("mass_g", Unit.G),
                mass.number("aft_mm", Unit.MM),
                mass.numberOr("rise_mm", Unit.MM, 0));
    }

    private @Nullable MotorPlace motor(SheetObject sheet) {
        if (!sheet.has("motor")) {
            return null;
        }
        SheetObject motor = new SheetObject(sheet.required("motor"), source + ": the motor", MOTOR);
        return new MotorPlace(motor.notNegative("mass_g", Unit.G), motor.number("aft_mm", Unit.MM));
    }

    private static String called(String what, JsonNode node, int number) {
        String name = node.path("name").asText("");
        return name.isBlank() ? what + " number " + number : what + " '" + name + "'";
    }
}
