package org.rafterbook.ui.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.exchange.ColumnRule;
import org.rafterbook.exchange.FlightField;
import org.rafterbook.units.Unit;

/**
 * What a column of a flyer's table can be.
 *
 * @param field null for the others
 */
record Becoming(Kind kind, @Nullable FlightField field) {

    enum Kind {
        FIELD,
        OWN_SETTING,
        SHEET_SETTING,
        LEFT_OUT
    }

    private static final Becoming OWN = new Becoming(Kind.OWN_SETTING, null);
    private static final Becoming SHEET = new Becoming(Kind.SHEET_SETTING, null);
    private static final Becoming OUT = new Becoming(Kind.LEFT_OUT, null);

    /** Everything a column can be; what is rarely needed only where a column is that already. */
    static List<Becoming> all(boolean sheets, @Nullable Becoming now) {
        List<Becoming> all = new ArrayList<>();
        all.add(OUT);
        all.add(OWN);
        if (sheets || SHEET.equals(now)) {
            all.add(SHEET);
        }
        Stream.of(FlightField.values())
                .filter(field -> field.standard() || now != null && now.field == field)
                .forEach(field -> all.add(new Becoming(Kind.FIELD, field)));
        return all;
    }

    static @Nullable Becoming of(@Nullable ColumnRule rule) {
        if (rule == null) {
            return null;
        }
        if (rule.field() != null) {
            return new Becoming(Kind.FIELD, rule.field());
        }
        String setting = rule.setting();
        return setting == null ? OUT : SheetPath.parse(setting) == null ? OWN : SHEET;
    }

    /** In a list of choices. */
    String label() {
        return switch (kind) {
            case FIELD -> label(Objects.requireNonNull(field));
            case OWN_SETTING -> "a setting of my own";
            case SHEET_SETTING -> "a setting of the airframe sheet";
            case LEFT_OUT -> "left out";
        };
    }

    private static String label(FlightField field) {
        return switch (field) {
            case ENDING -> "how it ended";
            case CUT_SHORT -> "whether that cost time";
            case RECOVERED -> "whether it recovered from an upset";
            default -> field.meaning();
        };
    }

    /** The rule of a column that becomes this; the setting's name is taken from the rule before, else from the heading. */
    ColumnRule rule(String heading, String sheetSetting) {
        return switch (kind) {
            case FIELD -> new ColumnRule(heading, Objects.requireNonNull(field).heading(), null);
            case OWN_SETTING -> new ColumnRule(heading, ColumnRule.SETTING + heading, null);
            case SHEET_SETTING -> new ColumnRule(heading, ColumnRule.SETTING + sheetSetting, null);
            case LEFT_OUT -> new ColumnRule(heading, ColumnRule.IGNORE, null);
        };
    }

    /** What a column by this rule is, in a table. */
    static String words(@Nullable ColumnRule rule) {
        Becoming now = of(rule);
        if (now == null || rule == null) {
            return "say what it is";
        }
        String setting = rule.setting();
        return setting == null ? now.label() : "setting " + setting;
    }

    /** The units its bare numbers can be in, the usual one first; none where it holds no numbers with a unit. */
    static List<String> units(@Nullable ColumnRule rule) {
        Becoming now = of(rule);
        if (now == null || now.kind == Kind.LEFT_OUT || rule == null) {
            return List.of();
        }
        Unit own = now.field == null ? null : now.field.unit();
        if (now.kind != Kind.FIELD) {
            List<String> units = new ArrayList<>();
            units.add("");
            Stream.of(Unit.values())
                    .map(Unit::symbol)
                    .filter(symbol -> !symbol.isEmpty())
                    .distinct()
                    .forEach(units::add);
            return units;
        }
        if (own == null || own == Unit.ONE) {
            return List.of();
        }
        List<String> units = new ArrayList<>(List.of(own.symbol()));
        Unit.of(own.dimension()).stream()
                .map(Unit::symbol)
                .filter(symbol -> !symbol.equals(own.symbol()) && !symbol.isEmpty())
                .forEach(units::add);
        if (own == Unit.TURNS) {
            units.add(ColumnRule.WINDER_TURNS);
        }
        return units;
    }

    /** The unit a column's bare numbers are in. */
    static String unit(@Nullable ColumnRule rule) {
        if (rule == null) {
            return "";
        }
        Becoming now = of(rule);
        Unit own = now == null || now.field == null ? null : now.field.unit();
        return rule.unit() != null ? rule.unit() : own == null ? "" : own.symbol();
    }
}
