package org.rafterbook.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Unit;

/** Proposes how a table of flights is to be read. */
public final class MappingProposal {

    /** Name of the mapping of tables that write the program's own headings. */
    public static final String OWN = "own headings";

    /** A table of this name holds flights that have no model. */
    static final String WITHOUT_MODEL = "flights_without_model";

    private static final Pattern WITH_UNIT = Pattern.compile("(.+?)\\s*[(\\[]\\s*([^)\\]]+?)\\s*[)\\]]");

    /** What flyers often write over a column, in the spelling that headings are compared in. */
    private static final Map<String, FlightField> OFTEN = Map.ofEntries(
            Map.entry("date", FlightField.SESSION_DATE),
            Map.entry("day", FlightField.SESSION_DATE),
            Map.entry("plane", FlightField.MODEL),
            Map.entry("hall", FlightField.VENUE),
            Map.entry("site", FlightField.VENUE),
            Map.entry("place", FlightField.VENUE),
            Map.entry("time", FlightField.DURATION_S),
            Map.entry("flight_time", FlightField.DURATION_S),
            Map.entry("time_aloft", FlightField.DURATION_S),
            Map.entry("launch_time", FlightField.LAUNCHED_AT),
            Map.entry("turns", FlightField.TURNS_WOUND),
            Map.entry("winds", FlightField.TURNS_WOUND),
            Map.entry("back_off", FlightField.TURNS_BACKED_OFF),
            Map.entry("backed_off", FlightField.TURNS_BACKED_OFF),
            Map.entry("torque", FlightField.LAUNCH_TORQUE_NMM),
            Map.entry("height", FlightField.PEAK_HEIGHT_M),
            Map.entry("temp", FlightField.TEMPERATURE_C),
            Map.entry("remarks", FlightField.NOTES),
            Map.entry("comment", FlightField.NOTES),
            Map.entry("comments", FlightField.NOTES),
            Map.entry("note", FlightField.NOTES));

    private MappingProposal() {}

    /**
     * The mapping of a table whose headings need no explanation: all its headings are the program's own, or one of the
     * remembered mappings has them all. Empty where somebody has to say what a column means.
     */
    public static Optional<Mapping> certain(CsvTable table, List<Mapping> remembered) {
        Mapping own = own(table);
        if (own.covers(table)) {
            return Optional.of(own);
        }
        return remembered.stream().filter(m -> m.covers(table)).findFirst();
    }

    /** Rules for those headings that are the program's own; the others have none. */
    public static Mapping own(CsvTable table) {
        List<ColumnRule> rules = new ArrayList<>();
        for (String heading : table.headings()) {
            ColumnRule rule = ownRule(heading);
            if (rule != null) {
                rules.add(rule);
            }
        }
        Mapping plain = Mapping.of(OWN, rules);
        return table.file().toLowerCase(Locale.ROOT).startsWith(WITHOUT_MODEL)
                ? new Mapping(OWN, rules, Map.of(FlightField.MODEL.heading(), ""), plain.mark(), null, null)
                : plain;
    }

    private static @Nullable ColumnRule ownRule(String heading) {
        Optional<FlightField> field = FlightField.of(heading);
        if (field.isPresent()) {
            return new ColumnRule(heading, field.get().heading(), null);
        }
        String lower = heading.toLowerCase(Locale.ROOT);
        return lower.startsWith(ColumnRule.SETTING) && lower.length() > ColumnRule.SETTING.length()
                ? new ColumnRule(heading, ColumnRule.SETTING + heading.substring(ColumnRule.SETTING.length()), null)
                : null;
    }

    /**
     * A first draft for somebody to look over: own headings, and headings that say a field's name in words, or what
     * flyers often call it, with its unit in brackets, such as "Launch torque (in-oz)".
     */
    public static Mapping draft(CsvTable table, String name) {
        List<ColumnRule> rules = new ArrayList<>();
        for (String heading : table.headings()) {
            ColumnRule own = ownRule(heading);
            ColumnRule rule = own != null ? own : spoken(heading);
            boolean taken =
                    rule != null && rules.stream().anyMatch(r -> r.target().equals(rule.target()));
            if (rule != null && !taken) {
                rules.add(rule);
            }
        }
        return Mapping.of(name, rules);
    }

    private static @Nullable ColumnRule spoken(String heading) {
        Matcher bracketed = WITH_UNIT.matcher(heading);
        String words = bracketed.matches() ? bracketed.group(1) : heading;
        String unit = bracketed.matches() ? bracketed.group(2) : null;
        String wanted = words.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
        for (FlightField field : FlightField.values()) {
            String known = field.heading();
            int last = known.lastIndexOf('_');
            boolean bare =
                    field.unit() != null && last > 0 && known.substring(0, last).equals(wanted);
            boolean often = OFTEN.get(wanted) == field;
            if (field.standard() && (known.equals(wanted) || bare || often)) {
                Unit own = field.unit();
                boolean fits = unit != null
                        && own != null
                        && Unit.find(unit, own.dimension()).isPresent();
                return unit != null && !fits ? null : new ColumnRule(heading, known, unit);
            }
        }
        return null;
    }
}
