package org.rafterbook.exchange;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.units.Parsed;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.Unit;
import org.rafterbook.units.Worded;

/**
 * The cells of one row, asked for by known heading. An empty cell is null; one that cannot be read is null too and is
 * kept as a problem with its place.
 */
final class Cells {

    private final Binding binding;
    private final CsvTable.Row row;
    private final List<ImportProblem> problems;
    private final Map<String, String> asTyped = new HashMap<>();

    Cells(Binding binding, CsvTable.Row row, List<ImportProblem> problems) {
        this.binding = binding;
        this.row = row;
        this.problems = problems;
    }

    String file() {
        return binding.table().file();
    }

    int line() {
        return row.line();
    }

    /** What was typed where it is not the plain number of the column's own unit, keyed by known heading. */
    Map<String, String> asTyped() {
        return Map.copyOf(asTyped);
    }

    void problem(String heading, String sentence) {
        Binding.Bound bound = binding.columns().get(heading);
        String column = bound == null ? heading : bound.heading();
        problems.add(new ImportProblem(file(), row.line(), column, sentence));
    }

    @Nullable
    String text(String heading) {
        Binding.Bound bound = binding.columns().get(heading);
        if (bound == null || row.cells().get(bound.index()).isEmpty()) {
            return binding.fixed().get(heading);
        }
        String cell = row.cells().get(bound.index());
        return bound.words().isEmpty() ? cell : bound.words().getOrDefault(cell.toLowerCase(Locale.ROOT), cell);
    }

    /** The text, or "" with a problem where there is none. */
    String required(String heading) {
        String text = text(heading);
        if (text == null) {
            problem(heading, "nothing stands here, but it is needed.");
            return "";
        }
        return text;
    }

    @Nullable
    Double number(String heading, Quantity quantity, Unit unit) {
        String text = text(heading);
        if (text == null) {
            return null;
        }
        Unit bare = bareUnit(heading, unit);
        TypedValue value = taken(
                heading, QuantityParser.column(quantity, bare, binding.mark()).read(text));
        if (value == null) {
            return null;
        }
        if (!value.bare() || bare != unit) {
            asTyped.put(heading, value.bare() ? text + " " + bare.symbol() : text);
        }
        return value.si();
    }

    /** A number above zero. */
    @Nullable
    Double positive(String heading, Quantity quantity, Unit unit) {
        Double value = number(heading, quantity, unit);
        if (value != null && value <= 0) {
            problem(heading, "this is above zero, not " + text(heading) + ".");
            return null;
        }
        return value;
    }

    /** A part of a full motor: above 0 and not above 1. */
    @Nullable
    Double part(String heading) {
        Double part = number(heading, Quantity.FRACTION, Unit.FRACTION);
        if (part != null && (part <= 0 || part > 1)) {
            problem(heading, "a part of a full motor is above 0 and not above 1, such as 0.5.");
            return null;
        }
        return part;
    }

    /** Motor turns; a column of winder turns is multiplied by the winder's ratio. */
    @Nullable
    Double turns(String heading) {
        Double turns = number(heading, Quantity.TURNS, Unit.TURNS);
        Binding.Bound bound = binding.columns().get(heading);
        if (turns == null || bound == null || !ColumnRule.WINDER_TURNS.equals(bound.unit())) {
            return turns;
        }
        if (binding.winderRatio() == null) {
            problem(heading, "turns of the winder need its ratio, motor turns for one turn of the handle.");
            return null;
        }
        asTyped.put(heading, text(heading) + " " + ColumnRule.WINDER_TURNS);
        return turns * binding.winderRatio();
    }

    @Nullable
    TypedRange range(String heading, Quantity quantity, Unit unit) {
        String text = text(heading);
        if (text == null) {
            return null;
        }
        Unit bare = bareUnit(heading, unit);
        TypedRange range = taken(
                heading, QuantityParser.column(quantity, bare, binding.mark()).readRange(text));
        if (range != null && bare != unit) {
            asTyped.put(heading, text + " " + bare.symbol());
        }
        return range;
    }

    private Unit bareUnit(String heading, Unit own) {
        Binding.Bound bound = binding.columns().get(heading);
        String unit = bound == null ? null : bound.unit();
        return unit == null ? own : Unit.find(unit, own.dimension()).orElse(own);
    }

    @Nullable
    Integer whole(String heading, int least) {
        String text = text(heading);
        if (text == null) {
            return null;
        }
        try {
            int value = Integer.parseInt(text);
            if (value >= least) {
                return value;
            }
        } catch (NumberFormatException e) {
            // Told below like a number that is too small.
        }
        problem(heading, "'" + text + "' is no whole number from " + least + " up.");
        return null;
    }

    <E extends Enum<E> & Worded> @Nullable E word(String heading, Class<E> type) {
        String text = text(heading);
        if (text == null) {
            return null;
        }
        for (E constant : type.getEnumConstants()) {
            if (plain(constant.word()).equals(plain(text))) {
                return constant;
            }
        }
        String known = Stream.of(type.getEnumConstants()).map(Worded::word).collect(Collectors.joining(", "));
        problem(heading, "'" + text + "' is not one of " + known + ".");
        return null;
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ');
    }

    @Nullable
    Boolean yesNo(String heading) {
        String text = text(heading);
        if (text == null) {
            return null;
        }
        if (text.equalsIgnoreCase("yes") || text.equalsIgnoreCase("no")) {
            return text.equalsIgnoreCase("yes");
        }
        problem(heading, "'" + text + "' is neither yes nor no.");
        return null;
    }

    @Nullable
    LocalDate day(String heading) {
        String text = text(heading);
        return text == null ? null : taken(heading, binding.dates().day(text));
    }

    /** A moment; where the cell has only a time it is one of the given day. */
    @Nullable
    LocalDateTime moment(String heading, @Nullable LocalDate day) {
        String text = text(heading);
        return text == null ? null : taken(heading, binding.dates().moment(text, day));
    }

    private <T> @Nullable T taken(String heading, Parsed<T> parsed) {
        if (parsed instanceof Parsed.Accepted<T> accepted) {
            return accepted.value();
        }
        problem(heading, parsed.refusal().orElse("cannot be read."));
        return null;
    }
}
