package org.rafterbook.ui.bench;

import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SheetPath;
import org.rafterbook.airframe.Surface;
import org.rafterbook.work.BenchDesk;

/** A dragged surface turns the setting that places it, in the setting's own steps. */
final class PointerMoves implements AirframePane.Mover {

    private final BenchModel model;
    private @Nullable SettingDef setting;
    private double stood;

    PointerMoves(BenchModel model) {
        this.model = model;
    }

    @Override
    public void take(Surface surface, boolean turns) {
        BenchDesk.Bench bench = model.bench().get();
        String path =
                new SheetPath(surface.name(), turns ? SheetPath.Key.INCIDENCE : SheetPath.Key.EDGE_AFT).toString();
        setting = bench == null
                ? null
                : BenchModel.shown(bench).settings().stream()
                        .filter(s -> path.equals(s.path()))
                        .findFirst()
                        .orElse(null);
        SettingDef taken = setting;
        Setting value = taken == null ? null : model.value(taken);
        Double number = value == null ? null : value.number();
        if (taken != null && number != null) {
            stood = number;
            model.pick(taken);
        } else {
            setting = null;
        }
    }

    @Override
    public void moved(double by) {
        SettingDef taken = setting;
        if (taken != null) {
            Double step = taken.step();
            double fine = step == null ? 0 : step / 5;
            double to = stood + by;
            double stepped = fine > 0 ? stood + Math.rint(by / fine) * fine : to;
            model.set(taken, Setting.of(TurnedSettings.within(taken, stepped)));
        }
    }
}
