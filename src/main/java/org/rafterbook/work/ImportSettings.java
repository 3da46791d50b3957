package org.rafterbook.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.SheetSettings;
import org.rafterbook.exchange.FlightTable;
import org.rafterbook.exchange.SideRows.SettingRow;
import org.rafterbook.logbook.Writer;
import org.rafterbook.units.DecimalMark;
import org.rafterbook.units.Dimension;
import org.rafterbook.units.Parsed;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.Unit;

/** The settings of one model in an import: which column is which, made where there is none, and what its cells say. */
final class ImportSettings {

    /** Quantity of a setting that is a word. */
    static final String TEXT = "TEXT";

    /** Stands in the unit's place of a setting that is a word, in settings.csv. */
    static final String WORD = "word";

    /** In a table: this version has no value of the setting, though the one before had. */
    static final String NOT_RECORDED = "(not recorded)";

    /**
     * Something a cell says.
     *
     * @param value null where it says that nothing is recorded
     */
    record Said(@Nullable Setting value) {}

    private final Writer w;
    private final Model model;
    private final Map<String, ImportPlan.Placed<SettingRow>> details;
    private final List<SettingDef> defs;
    private final Map<String, SettingDef> byName = new HashMap<>();
    private final Map<List<String>, Parsed<Said>> parsed = new HashMap<>();

    ImportSettings(Writer writer, Model model, Map<String, ImportPlan.Placed<SettingRow>> details) {
        this.w = writer;
        this.model = model;
        this.details = details;
        this.defs = new ArrayList<>(VersionBook.definitions(writer, model.id()));
    }

    List<SettingDef> defs() {
        return defs;
    }

    /** The settings a sheet comes with. */
    void ofSheet(Airframe sheet) {
        SheetSettings.of(sheet).forEach(offer -> tied(offer));
    }

    /** The settings of settings.csv. */
    void ofDetails(ImportTally tally) {
        for (Map.Entry<String, ImportPlan.Placed<SettingRow>> entry : details.entrySet()) {
            SettingRow row = entry.getValue().row();
            String unit = row.unit();
            boolean numeric = !WORD.equals(unit);
            if (numeric && unit != null && Unit.find(unit).isEmpty()) {
                tally.problem(entry.getValue().file(), row.line(), "unit", "'" + unit + "' is no unit known here.");
            } else {
                byName(row.setting(), numeric ? unit : null, numeric);
            }
        }
    }

    /** The setting of this name in a table, made where there is none. */
    SettingDef byName(String name, @Nullable String unit, boolean numeric) {
        SettingDef known = byName.get(name);
        if (known != null) {
            return known;
        }
        SheetPath path = SheetPath.parse(name);
        SettingDef def = path != null ? tied(SheetSettings.offerFor(path)) : free(name, unit, numeric);
        byName.put(name, def);
        return def;
    }

    private SettingDef tied(SheetSettings.Offer offer) {
        String path = offer.path().toString();
        for (SettingDef def : defs) {
            if (path.equals(def.path())) {
                return def;
            }
        }
        SettingRow row = row(path);
        String wanted = row == null || row.label() == null ? offer.label() : row.label();
        boolean taken = defs.stream().anyMatch(d -> d.label().equalsIgnoreCase(wanted));
        SettingDef def = detailed(
                NewSetting.add(
                        w,
                        model.id(),
                        taken ? path : wanted,
                        offer.path().key().quantity(),
                        offer.path().key().unit(),
                        offer.step(),
                        offer.tolerance(),
                        path),
                row);
        defs.add(def);
        return def;
    }

    private SettingDef free(String name, @Nullable String unit, boolean numeric) {
        SettingRow row = row(name);
        for (SettingDef def : defs) {
            if (def.label().equalsIgnoreCase(name)
                    || row != null && row.label() != null && def.label().equalsIgnoreCase(row.label())) {
                return def;
            }
        }
        String label = row == null || row.label() == null ? name : row.label();
        Unit in = unit == null ? null : Unit.find(unit).stream().findFirst().orElse(null);
        SettingDef def = detailed(
                NewSetting.add(
                        w,
                        model.id(),
                        label,
                        numeric ? quantity(in).name() : TEXT,
                        in == null || !numeric ? "" : in.symbol(),
                        null,
                        null,
                        null),
                row);
        defs.add(def);
        return def;
    }

    private @Nullable SettingRow row(String setting) {
        ImportPlan.Placed<SettingRow> placed = details.get(ImportBasics.key(setting));
        return placed == null ? null : placed.row();
    }

    /** Any quantity of the unit's dimension whose values may be negative: what a free setting measures nobody knows. */
    static Quantity quantity(@Nullable Unit unit) {
        return switch (unit == null ? Dimension.NUMBER : unit.dimension()) {
            case LENGTH -> Quantity.LENGTH;
            case AREA -> Quantity.AREA;
            case MASS -> Quantity.MASS;
            case LINEAR_DENSITY -> Quantity.LINEAR_DENSITY;
            case TORQUE -> Quantity.TORQUE;
            case ANGLE -> Quantity.ANGLE;
            case TIME -> Quantity.TIME;
            case TEMPERATURE -> Quantity.TEMPERATURE;
            case PRESSURE -> Quantity.PRESSURE;
            case FRACTION -> Quantity.FRACTION;
            case TURNS -> Quantity.TURNS;
            case ROTATION -> Quantity.ROTATION;
            case SPEED -> Quantity.SPEED;
            case DENSITY -> Quantity.DENSITY;
            case ENERGY -> Quantity.ENERGY;
            case SPECIFIC_ENERGY -> Quantity.SPECIFIC_ENERGY;
            case POWER -> Quantity.POWER;
            case NUMBER -> Quantity.PLAIN;
        };
    }

    /** Step, tolerance, limits and letter of settings.csv, over those customary. */
    private SettingDef detailed(SettingDef def, @Nullable SettingRow row) {
        if (row == null) {
            return def;
        }
        Unit unit = unitOf(def);
        String letter = row.keyLetter();
        boolean free =
                letter != null && letter.length() == 1 && defs.stream().noneMatch(d -> letter.equals(d.keyLetter()));
        return w.update(new SettingDef(
                def.id(),
                def.modelId(),
                def.label(),
                def.quantity(),
                def.unit(),
                row.step() == null ? def.step() : Double.valueOf(width(unit, row.step())),
                row.tolerance() == null ? def.tolerance() : Double.valueOf(width(unit, row.tolerance())),
                row.low() == null ? def.low() : Double.valueOf(unit.toSi(row.low())),
                row.high() == null ? def.high() : Double.valueOf(unit.toSi(row.high())),
                free ? letter : def.keyLetter(),
                def.path(),
                def.ordinal()));
    }

    /** A difference in a unit, in SI. */
    private static double width(Unit unit, double value) {
        return unit.toSi(value) - unit.toSi(0.0);
    }

    static Unit unitOf(SettingDef def) {
        if (def.quantity().equals(TEXT) || def.unit().isEmpty()) {
            return Unit.ONE;
        }
        return Unit.find(def.unit(), Quantity.valueOf(def.quantity()).dimension())
                .orElse(Unit.ONE);
    }

    /** What a cell says; each text is read once. */
    Parsed<Said> read(SettingDef def, FlightTable.SettingColumn column, String text, DecimalMark mark) {
        return parsed.computeIfAbsent(
                List.of(def.id(), Objects.requireNonNullElse(column.unit(), ""), text, mark.name()),
                key -> reading(def, column, text, mark));
    }

    private static Parsed<Said> reading(
            SettingDef def, FlightTable.SettingColumn column, String text, DecimalMark mark) {
        if (text.equals(NOT_RECORDED)) {
            return Parsed.accepted(new Said(null));
        }
        if (def.quantity().equals(TEXT)) {
            return Parsed.accepted(new Said(Setting.of(text)));
        }
        Quantity quantity = Quantity.valueOf(def.quantity());
        Unit own = unitOf(def);
        String unit = column.unit();
        Unit bare = unit == null ? own : Unit.find(unit, quantity.dimension()).orElse(null);
        if (bare == null) {
            return Parsed.refused("the setting is in " + own.symbol() + ", which '" + unit + "' is not.");
        }
        return QuantityParser.column(quantity, bare, mark)
                .read(text)
                .then(value -> Parsed.accepted(new Said(new Setting(value.si(), null, typed(value, text, own)))));
    }

    private static @Nullable String typed(TypedValue value, String text, Unit own) {
        if (value.bare() && value.unit() == own) {
            return null;
        }
        return value.bare() ? text + " " + value.unit().symbol() : text;
    }

    /** True where every cell of the column reads as a number. */
    static boolean isNumeric(FlightTable.SettingColumn column, List<FlightTable> tables) {
        String unit = column.unit();
        Unit bare =
                unit == null ? Unit.ONE : Unit.find(unit).stream().findFirst().orElse(Unit.ONE);
        for (FlightTable table : tables) {
            QuantityParser parser = QuantityParser.column(quantity(bare), bare, table.mark());
            for (var row : table.rows()) {
                String cell = row.settings().get(column.name());
                if (cell != null
                        && !cell.equals(NOT_RECORDED)
                        && parser.read(cell).toOptional().isEmpty()) {
                    return false;
                }
            }
        }
        return true;
    }
}
