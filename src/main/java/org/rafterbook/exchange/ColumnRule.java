package org.rafterbook.exchange;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Unit;
import org.rafterbook.units.UserError;

/**
 * What one column of a flyer's own table means.
 *
 * @param heading as the table writes it
 * @param target heading of a {@link FlightField}, {@code setting.<name>}, or {@link #IGNORE}
 * @param unit unit its bare numbers are in, or {@link #WINDER_TURNS}; null for the target's own
 * @param words the table's words (in lower case) and what they mean here, such as "touch" for "touched"
 */
public record ColumnRule(
        String heading, String target, @Nullable String unit, Map<String, String> words) {

    /** Target of a column that is left out. */
    public static final String IGNORE = "ignore";

    /** Before the name of a setting. */
    public static final String SETTING = "setting.";

    /** Unit of a column that counts turns of the winder's handle. */
    public static final String WINDER_TURNS = "winder turns";

    public ColumnRule {
        words = Map.copyOf(words);
        heading = heading.strip();
        target = target.strip();
        unit = unit == null || unit.isBlank() ? null : unit.strip();
        check(heading, target, unit);
    }

    public ColumnRule(String heading, String target, @Nullable String unit) {
        this(heading, target, unit, Map.of());
    }

    /**
     * Reads {@code heading=field} or {@code heading=field:unit}, as the command line gives it.
     *
     * @throws UserError of bad input
     */
    public static ColumnRule parse(String text) {
        int equals = text.lastIndexOf('=');
        if (equals <= 0 || equals == text.length() - 1) {
            throw UserError.badInput("'" + text + "' does not read as heading=field or heading=field:unit.");
        }
        String target = text.substring(equals + 1);
        int colon = target.lastIndexOf(':');
        return colon < 0
                ? new ColumnRule(text.substring(0, equals), target, null)
                : new ColumnRule(text.substring(0, equals), target.substring(0, colon), target.substring(colon + 1));
    }

    private static void check(String heading, String target, @Nullable String unit) {
        if (heading.isEmpty()) {
            throw UserError.badInput("A column is named by its heading.");
        }
        Optional<FlightField> field = FlightField.of(target);
        if (field.isEmpty() && !isSetting(target) && !target.equals(IGNORE)) {
            throw UserError.badInput("The column '" + heading + "' cannot be '" + target
                    + "': it can be a known field such as duration_s, setting.<name> or " + IGNORE + ".");
        }
        if (unit == null) {
            return;
        }
        Unit own = field.map(FlightField::unit).orElse(null);
        boolean fits = unit.equals(WINDER_TURNS)
                ? own == Unit.TURNS
                : isSetting(target)
                        ? !Unit.find(unit).isEmpty()
                        : own != null && Unit.find(unit, own.dimension()).isPresent();
        if (!fits) {
            throw UserError.badInput("The column '" + heading + "' cannot be in '" + unit + "'"
                    + (own == null ? "." : ": it is " + own.dimension().phrase() + ", in " + units(own) + "."));
        }
    }

    private static String units(Unit own) {
        Stream<String> known = Unit.of(own.dimension()).stream().map(Unit::symbol);
        Stream<String> all = own == Unit.TURNS ? Stream.concat(known, Stream.of(WINDER_TURNS)) : known;
        return all.collect(Collectors.joining(", "));
    }

    private static boolean isSetting(String target) {
        return target.startsWith(SETTING) && target.length() > SETTING.length();
    }

    /** The field it fills, null for settings and ignored columns. */
    public @Nullable FlightField field() {
        return FlightField.of(target).orElse(null);
    }

    /** The name of the setting it holds, null for other columns. */
    public @Nullable String setting() {
        return isSetting(target) ? target.substring(SETTING.length()).strip() : null;
    }
}
