package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.SheetSettings;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.SettingWords;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityParser;
import org.rafterbook.units.TypedValue;
import org.rafterbook.units.Unit;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Rigged;
import org.rafterbook.work.SettingList;

/** Adds a setting or changes one: what it is called, in which unit and steps, within which limits, and what it sets. */
final class SettingForm extends EntryForm {

    private static final SettingDef NEW =
            new SettingDef("", "", "a new setting", "LENGTH", "mm", null, null, null, null, null, null, 0);
    private static final String FREE = "nothing on the sheet";

    private final ChoiceField<SettingDef> which = new ChoiceField<>("Which", SettingDef::label);
    private final Field<String> label = Field.words("Name").required();
    private final ChoiceField<SettingKind> kind = new ChoiceField<>("It is", SettingKind::words);
    private final ChoiceField<String> path = new ChoiceField<>("It sets", SettingForm::pathWords);
    private final VBox numbers = Lay.column(12);
    private final VBox standing = Lay.column(0);
    private Field<TypedValue> step = number("Usual step", Unit.MM);
    private Field<TypedValue> tolerance = number("Same within ±", Unit.MM);
    private Field<TypedValue> low = number("Slider from", Unit.MM);
    private Field<TypedValue> high = number("Slider to", Unit.MM);
    private Field<String> stands = Field.words("Has stood at");
    private SettingDef edited = NEW;
    private @Nullable Rigged shown;

    SettingForm(BenchContext context) {
        super(context, "Settings", "");
        which.onChosen(this::edit);
        kind.offer(List.of(SettingKind.values()), SettingKind.LENGTH).onChosen(this::measure);
        path.onChosen(this::named);
        form.add(which, label).beside(kind, path).add(numbers, standing);
        actions("Keep the setting", this::keep);
    }

    private static Field<TypedValue> number(String label, Unit unit) {
        Quantity quantity = quantity(unit);
        return Field.number(label, QuantityParser.typed(quantity, unit)::read).unit(unit.symbol());
    }

    private static Quantity quantity(Unit unit) {
        return switch (unit) {
            case MM -> Quantity.LENGTH;
            case DEG -> Quantity.ANGLE;
            case G -> Quantity.MASS;
            case PERCENT -> Quantity.FRACTION;
            default -> Quantity.PLAIN;
        };
    }

    private static String pathWords(String path) {
        SheetPath of = SheetPath.parse(path);
        return of == null ? path : SheetSettings.offerFor(of).label().toLowerCase(Locale.ROOT);
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        shown = bench.now();
        List<SettingDef> all = new ArrayList<>(bench.now().settings());
        all.add(0, NEW);
        which.offer(all, NEW);
        edit(NEW);
        super.opened(bench);
    }

    private void edit(SettingDef setting) {
        edited = setting;
        label.fill(setting == NEW ? "" : setting.label());
        SettingKind of = SettingKind.of(setting);
        kind.offer(setting == NEW ? List.of(SettingKind.values()) : List.of(of), of);
        measure(of);
        fill(step, setting.step(), of);
        fill(tolerance, setting.tolerance(), of);
        fill(low, setting.low(), of);
        fill(high, setting.high(), of);
        String letter = setting.keyLetter();
        label.quietly(
                setting == NEW
                        ? "its key letter is dealt when it is kept and stays"
                        : letter == null ? "no letter was free" : "key " + letter);
    }

    private void measure(SettingKind of) {
        Unit unit = of.unit();
        Lay.show(numbers, unit != null);
        Lay.show(path, unit != null);
        if (unit != null) {
            step = number("Usual step", unit);
            tolerance = number("Same within", unit);
            low = number("Slider from", unit);
            high = number("Slider to", unit);
            tolerance.quietly("half of it either way");
            numbers.getChildren().setAll(Lay.even(12, step, tolerance), Lay.even(12, low, high));
            paths(of);
        }
        stands = Field.words("Has stood at, in every version so far");
        if (unit != null) {
            stands.unit(unit.symbol());
        }
        stands.quietly("empty: not recorded until it is set");
        Lay.show(standing, edited == NEW);
        standing.getChildren().setAll(stands);
    }

    private void paths(SettingKind of) {
        List<String> choices = new ArrayList<>(List.of(FREE));
        if (shown != null) {
            SettingList.paths(shown.geometry(), of.quantity()).forEach(p -> choices.add(p.toString()));
        }
        String now = edited.path();
        if (now != null && !choices.contains(now)) {
            choices.add(now);
        }
        path.offer(choices, Objects.requireNonNullElse(now, FREE));
    }

    /** A setting of the sheet gets its usual name, step and tolerance. */
    private void named(String chosen) {
        SheetPath of = SheetPath.parse(chosen);
        SettingKind measured = kind.chosen();
        Lay.show(standing, edited == NEW && of == null);
        if (of != null && edited == NEW && measured != null) {
            SheetSettings.Offer offer = SheetSettings.offerFor(of);
            if (label.typed().isBlank()) {
                label.fill(offer.label());
            }
            fill(step, offer.step(), measured);
            fill(tolerance, offer.tolerance(), measured);
        }
    }

    private static void fill(Field<TypedValue> field, @Nullable Double si, SettingKind of) {
        Unit unit = of.unit();
        String text = si == null || unit == null ? "" : SettingWords.inUnit(si, unit);
        field.fill(unit == null ? "" : text.replace(unit.symbol(), "").strip());
    }

    private void keep() {
        SettingKind of = kind.chosen();
        if (of == null || !label.check()) {
            return;
        }
        step.refuseIf(v -> v.si() <= 0, v -> "A step is above zero.");
        tolerance.refuseIf(v -> v.si() < 0, v -> "A tolerance is not below zero.");
        if (of.unit() != null && !(step.check() & tolerance.check() & low.check() & high.check())) {
            return;
        }
        TypedValue least = low.value();
        TypedValue most = high.value();
        if (of.unit() != null && least != null && most != null && least.si() > most.si()) {
            high.refuse("The upper end lies below the lower end.");
            return;
        }
        boolean number = of.unit() != null;
        String chosen = path.chosen();
        SettingList.Form typed = new SettingList.Form(
                label.typed().strip(),
                of.quantity(),
                of.unit() == null ? "" : of.unit().symbol(),
                number ? si(step) : null,
                number ? si(tolerance) : null,
                number ? si(low) : null,
                number ? si(high) : null,
                !number || chosen == null || chosen.equals(FREE) ? null : chosen);
        if (edited == NEW) {
            add(typed);
        } else {
            String id = edited.id();
            enter(progress -> context.book().bench().settings().change(id, typed));
        }
    }

    private void add(SettingList.Form typed) {
        String text = typed.path() == null ? stands.typed().strip() : "";
        Setting stood = null;
        if (!text.isEmpty()) {
            SettingDef as = new SettingDef(
                    "", "", typed.label(), typed.quantity(), typed.unit(), null, null, null, null, null, null, 0);
            var read = SettingWords.read(as, text);
            if (read.refusal().isPresent()) {
                stands.refuse(read.refusal().orElse(""));
                return;
            }
            stood = read.toOptional().orElse(null);
        }
        Setting has = stood;
        String id = modelId();
        enter(progress -> context.book().bench().settings().add(id, typed, has));
    }

    private static @Nullable Double si(Field<TypedValue> field) {
        TypedValue value = field.value();
        return value == null ? null : (Double) value.si();
    }
}
