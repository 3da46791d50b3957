package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.Planform;
import org.rafterbook.airframe.Surface;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.rules.ClassFinding;
import org.rafterbook.stability.PropellerTerm;
import org.rafterbook.stability.Weights;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.SettingRow;
import org.rafterbook.ui.kit.Sheet;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Rigged;

/** All that is known of a model beside its trim, a line each, and the way to the form in which it is entered. */
final class AirframePage implements BenchPage {

    private static final int MOST_DIGITS = 9;

    private final BenchContext context;
    private final BenchModel model;
    private final Keys keys;
    private final Sheet sheet = new Sheet();
    private final VBox surfaces = Lay.column(0);
    private final List<Action> surfaceKeys = new ArrayList<>();
    private final SettingRow masses;
    private final SettingRow weighing;
    private final SettingRow build;
    private final SettingRow settings;
    private final SettingRow wished;
    private final SettingRow inClass;
    private final SettingRow good;
    private final SettingRow zero;
    private final SettingRow formula;
    private final SettingRow circle;
    private final SettingRow propeller;

    AirframePage(BenchContext context, SheetFiles files) {
        this.context = context;
        this.model = context.model();
        keys = context.keys();
        Action add = keys.on("S", "Add a surface", () -> open(new SurfaceForm(context, null)));
        masses = row("P", "Parts and masses", () -> new MassesForm(context));
        weighing = row("W", "Scale and balance edge", () -> new WeighingForm(context));
        build = row("B", "Build and repairs", () -> new BuildForm(context));
        settings = row("T", "Settings", () -> new SettingForm(context));
        wished = row("G", "Wished margin", () -> new WishedForm(context));
        inClass = row("L", "Class", () -> new ClassForm(context));
        good = line(keys.on("K", "Well-behaved", model::mark));
        zero = row("Z", "Known margin", () -> new ZeroForm(context));
        formula = row("F", "Own formula", () -> new FormulaForm(context));
        circle = row("C", "Circle flown", () -> new CircleForm(context));
        propeller = row("R", "Propeller", () -> new PropellerForm(context));
        SettingRow always = row("V", "It was always so", () -> new AlwaysSoPage(context));
        SettingRow thatTime = row("D", "It was different that time", () -> new FlightsPage(context));
        SettingRow read = line(keys.on("O", "Read a sheet from a file", files::read));
        SettingRow write = line(keys.on("U", "Write a sheet to a file", files::write));
        Action back = keys.on("Esc", "Back to the settings", context.back());
        keys.hint("1 … 9", "a surface");
        keys.hint("Esc", "back");
        VBox rows = new VBox(
                new Sheet.Section("Surfaces", ""),
                surfaces,
                Lay.styled(Lay.row(8, Buttons.secondary(add)), "pad-12"),
                masses,
                weighing,
                build,
                settings,
                inClass,
                wished,
                good,
                zero,
                formula,
                circle,
                propeller,
                new Sheet.Section("Put right what was recorded", ""),
                always,
                thatTime,
                new Sheet.Section("Airframe sheet", ""),
                read,
                write,
                Lay.hairline());
        sheet.getStyleClass().add("bench-right");
        sheet.section("Airframe and measurements", "");
        sheet.add(Lay.rolling(rows));
        sheet.section(Buttons.secondary(back));
        model.bench().subscribe(bench -> {
            if (bench != null) {
                loaded(bench);
            }
        });
    }

    private void open(BenchPage page) {
        context.open().accept(page);
    }

    private SettingRow row(String key, String name, Supplier<BenchPage> page) {
        return line(keys.on(key, name, () -> open(page.get())));
    }

    private static SettingRow line(Action action) {
        return new SettingRow(action).narrow();
    }

    @Override
    public Node node() {
        return sheet;
    }

    @Override
    public Keys keys() {
        return keys;
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        loaded(bench);
    }

    @Override
    public void loaded(BenchDesk.Bench bench) {
        Rigged shown = BenchModel.shown(bench);
        surfaces(shown.geometry());
        BenchDesk.Facts facts = bench.facts();
        masses.show(weights(facts.weights()), null);
        weighing.show(weighed(facts.weighings()), null);
        build.show("build " + shown.version().build(), null);
        settings.show(String.valueOf(shown.settings().size()), null);
        wished.show(wish(bench.now().model().wishedLow(), bench.now().model().wishedHigh()), null);
        inClass.show(inClass(facts), null);
        good.show(shown.version().markedGood() ? "yes" : "no", null);
        zero.show(
                shown.version().zeroShiftM() == null
                        ? "–"
                        : context.format().text(Quantity.LENGTH, shown.version().zeroShiftM()),
                null);
        formula.show(context.format().text(Quantity.LENGTH, facts.ownFormulaM()), null);
        circle.show(context.format().text(Quantity.HEIGHT, bench.in().circleRadiusM()), null);
        PropellerTerm term = bench.in().propeller();
        propeller.show(term == null ? "left out" : context.format().text(Quantity.LENGTH, term.diameterM()), null);
    }

    private void surfaces(@Nullable Airframe airframe) {
        surfaceKeys.forEach(keys::forget);
        surfaceKeys.clear();
        surfaces.getChildren().clear();
        if (airframe == null || airframe.surfaces().isEmpty()) {
            surfaces.getChildren()
                    .add(Lay.styled(
                            new VBox(Words.prose(
                                    "None yet: the drawing and the margin begin with" + " the wing's span and chord.")),
                            "pad-12"));
            return;
        }
        for (Surface surface : airframe.surfaces()) {
            int number = surfaces.getChildren().size() + 1;
            Runnable what = () -> open(new SurfaceForm(context, surface));
            Action edit = number <= MOST_DIGITS
                    ? keys.on(String.valueOf(number), surface.name(), what)
                    : keys.action(surface.name(), what);
            surfaceKeys.add(edit);
            Planform plan = Planform.of(surface);
            QuantityFormat format = context.format();
            int decimals = context.units() == DisplayUnits.METRIC ? 0 : 2;
            surfaces.getChildren()
                    .add(line(edit)
                            .show(
                                    format.number(Quantity.LENGTH, plan.spanM(), decimals) + " × "
                                            + format.text(
                                                    Quantity.LENGTH,
                                                    surface.ribs().get(0).chordM(),
                                                    decimals),
                                    null));
        }
    }

    private static String weights(Weights weights) {
        return BenchWords.grams(weights.sumKg());
    }

    private static String weighed(List<Weighing> weighings) {
        return weighings.isEmpty() ? "–" : weighings.size() == 1 ? "once" : weighings.size() + " times";
    }

    static String wish(@Nullable Double low, @Nullable Double high) {
        return low == null || high == null
                ? "–"
                : QuantityFormat.rounded(low * 100, 1) + " to " + QuantityFormat.rounded(high * 100, 1) + " %";
    }

    private static String inClass(BenchDesk.Facts facts) {
        if (facts.classSheet() == null) {
            return "none";
        }
        long broken = facts.findings().stream()
                .filter(f -> f.standing() == ClassFinding.Standing.BROKEN)
                .count();
        return facts.classSheet().name() + (broken == 0 ? "" : ", " + broken + " broken").toLowerCase(Locale.ROOT);
    }
}
