package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.PlanformGuess;
import org.rafterbook.airframe.Rib;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;

/** A planform by preset or by ribs; a preset may have its tips raised and twisted. */
final class PlanformFields {

    private final ChoiceField<PlanformGuess.Kind> kind = new ChoiceField<>("Planform", PlanformFields::name);
    private final Amount span;
    private final Amount chord;
    private final Amount tipChord;
    private final Amount tipLength;
    private final Amount straight;
    private final Amount breakAt;
    private final Amount raised;
    private final Amount twist;
    private final RibRows ribs;
    private final VBox preset = Lay.column(12);
    private final VBox node;

    PlanformFields(Keys keys, DisplayUnits units, Runnable changed) {
        span = new Amount("Span", Quantity.LENGTH, units);
        chord = new Amount("Chord at the root", Quantity.LENGTH, units);
        tipChord = new Amount("Chord at the tip", Quantity.LENGTH, units).decimals(2);
        tipLength = new Amount("Length of each rounded tip", Quantity.LENGTH, units).decimals(2);
        straight = new Amount("Straight line at", Quantity.FRACTION, units);
        breakAt = new Amount("Tips begin, from the middle", Quantity.LENGTH, units);
        raised = new Amount("Tips raised by", Quantity.LENGTH, units);
        twist = new Amount("Wash-in of the tips", Quantity.ANGLE, units).decimals(2);
        straight.field().quietly("of the chord: 0 leading edge, 25 quarter, 100 trailing edge");
        breakAt.field().quietly("empty: raised from the middle on");
        twist.field().quietly("washed out: negative");
        ribs = new RibRows(keys, units, changed);
        kind.offer(List.of(PlanformGuess.Kind.values()), PlanformGuess.Kind.RECTANGLE);
        kind.onChosen(chosen -> {
            if (chosen == PlanformGuess.Kind.RIBS) {
                ribs.fill(fromPreset(PlanformGuess.Kind.RECTANGLE));
            }
            show(chosen);
            changed.run();
        });
        for (Amount amount : all()) {
            amount.field().valueProperty().subscribe((before, now) -> changed.run());
        }
        preset.getChildren()
                .addAll(
                        Lay.even(12, span.field(), chord.field()),
                        Lay.even(12, tipChord.field(), tipLength.field(), straight.field()),
                        Lay.even(12, raised.field(), breakAt.field()),
                        twist.field());
        node = Lay.column(12, kind, preset, ribs.node());
    }

    private List<Amount> all() {
        return List.of(span, chord, tipChord, tipLength, straight, breakAt, raised, twist);
    }

    private static String name(PlanformGuess.Kind kind) {
        return switch (kind) {
            case RECTANGLE -> "rectangle";
            case TAPER -> "straight taper";
            case ELLIPSE -> "ellipse";
            case ROUNDED_TIPS -> "rounded tips";
            case RIBS -> "by ribs";
        };
    }

    Node node() {
        return node;
    }

    /** Fills the fields with ribs of one half. */
    void fill(List<Rib> now) {
        PlanformGuess guess = PlanformGuess.of(now);
        boolean bent = now.stream().anyMatch(r -> r.riseM() != 0 || r.twistRad() != 0);
        PlanformGuess.Kind of = bent ? PlanformGuess.Kind.RIBS : guess.kind();
        kind.offer(List.of(PlanformGuess.Kind.values()), of);
        span.fill(guess.spanM());
        chord.fill(guess.chordM());
        tipChord.fill(of == PlanformGuess.Kind.TAPER ? guess.tipM() : guess.chordM() * 0.6);
        tipLength.fill(of == PlanformGuess.Kind.ROUNDED_TIPS ? guess.tipM() : guess.spanM() / 8);
        straight.fill(guess.straightAt());
        ribs.fill(now);
        show(of);
    }

    /** Empty fields for a new surface of a usual shape. */
    void fresh() {
        all().forEach(a -> a.fill(null));
        straight.fill(0.25);
        show(PlanformGuess.Kind.RECTANGLE);
    }

    private void show(PlanformGuess.Kind of) {
        Lay.show(preset, of != PlanformGuess.Kind.RIBS);
        Lay.show(ribs.node(), of == PlanformGuess.Kind.RIBS);
        Lay.show(tipChord.field(), of == PlanformGuess.Kind.TAPER);
        Lay.show(tipLength.field(), of == PlanformGuess.Kind.ROUNDED_TIPS);
        Lay.show(straight.field(), of != PlanformGuess.Kind.RECTANGLE);
    }

    /** Whether a planform can be made of what is typed; refusals stand beside their fields. */
    boolean check() {
        if (kind.chosen() == PlanformGuess.Kind.RIBS) {
            return ribs.check();
        }
        boolean sound = above(span) & above(chord);
        if (kind.chosen() == PlanformGuess.Kind.TAPER) {
            sound &= tipChord.field().check() && atLeastNothing(tipChord);
        }
        if (kind.chosen() == PlanformGuess.Kind.ROUNDED_TIPS) {
            sound &= above(tipLength);
            if (sound && tipLength.si(0) > span.si(0) / 2) {
                tipLength.field().refuse("A tip is at most half the span long.");
                sound = false;
            }
        }
        sound &= straight.field().check()
                & raised.field().check()
                & twist.field().check()
                & breakAt.field().check();
        if (sound && breakAt.si() != null && breakAt.si(0) >= span.si(0) / 2) {
            breakAt.field().refuse("The tips begin within half the span.");
            sound = false;
        }
        return sound;
    }

    private static boolean above(Amount amount) {
        boolean sound = amount.field().check();
        @Nullable Double si = amount.si();
        if (sound && (si == null || si <= 0)) {
            amount.field().refuse(si == null ? "This is needed." : "It must be above zero.");
            return false;
        }
        return sound;
    }

    private static boolean atLeastNothing(Amount amount) {
        Double si = amount.si();
        if (si == null || si < 0) {
            amount.field().refuse(si == null ? "This is needed." : "It cannot be below zero.");
            return false;
        }
        return true;
    }

    /** The ribs of one half as typed; empty where too little is. */
    List<Rib> read() {
        PlanformGuess.Kind of = kind.chosen();
        if (of == null || of == PlanformGuess.Kind.RIBS) {
            return of == null ? List.of() : ribs.read();
        }
        boolean tipKnown = switch (of) {
            case TAPER -> tipChord.si() != null;
            case ROUNDED_TIPS -> tipLength.si() != null;
            default -> true;
        };
        return span.si() == null || chord.si() == null || !tipKnown ? List.of() : fromPreset(of);
    }

    private List<Rib> fromPreset(PlanformGuess.Kind of) {
        double tip = of == PlanformGuess.Kind.TAPER ? tipChord.si(0) : tipLength.si(0);
        PlanformGuess wanted = new PlanformGuess(of, span.si(0.4), chord.si(0.1), tip, straight.si(0.25));
        List<Rib> flat = wanted.ribs();
        return flat == null ? List.of() : bent(flat);
    }

    /** Heights rise straight from where the tips begin, twist grows straight from the root. */
    private List<Rib> bent(List<Rib> flat) {
        double half = flat.get(flat.size() - 1).outM();
        double from = breakAt.si(0);
        double up = raised.si(0);
        double turn = twist.si(0);
        if (up == 0 && turn == 0) {
            return flat;
        }
        List<Rib> bent = new ArrayList<>();
        Rib before = null;
        for (Rib rib : flat) {
            if (before != null && from > before.outM() + 1e-6 && from < rib.outM() - 1e-6) {
                double t = (from - before.outM()) / (rib.outM() - before.outM());
                bent.add(lifted(
                        new Rib(
                                from,
                                before.edgeAftM() + t * (rib.edgeAftM() - before.edgeAftM()),
                                before.chordM() + t * (rib.chordM() - before.chordM()),
                                0,
                                0),
                        half,
                        from,
                        up,
                        turn));
            }
            bent.add(lifted(rib, half, from, up, turn));
            before = rib;
        }
        return bent;
    }

    private static Rib lifted(Rib rib, double half, double from, double up, double turn) {
        double beyond = half > from ? Math.max(0, rib.outM() - from) / (half - from) : 0;
        return new Rib(rib.outM(), rib.edgeAftM(), rib.chordM(), up * beyond, half > 0 ? turn * rib.outM() / half : 0);
    }
}
