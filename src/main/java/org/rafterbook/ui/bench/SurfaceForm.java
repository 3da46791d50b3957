package org.rafterbook.ui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Airframe;
import org.rafterbook.airframe.AirframeProblem;
import org.rafterbook.airframe.AirframeProblems;
import org.rafterbook.airframe.Rib;
import org.rafterbook.airframe.Role;
import org.rafterbook.airframe.Surface;
import org.rafterbook.ui.kit.Amount;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Segments;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.work.Airframes;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Rigged;

/** One surface: what it is for, its planform, where it sits, and its angles; drawn while it is typed. */
final class SurfaceForm extends EntryForm {

    private final @Nullable Surface before;
    private final Field<String> name = Field.words("Name");
    private final Segments<Role> role =
            new Segments<>("It is a", List.of(Role.values()), r -> r.name().toLowerCase(Locale.ROOT));
    private final PlanformFields planform;
    private final Amount edge;
    private final Amount rise;
    private final AngleFields incidence;
    private final Amount camber;
    private final Amount leftTwist;
    private final Amount offset;
    private final Amount tilt;
    private final Amount zeroLift;
    private final Amount moment;
    private final VBox since = Lay.column(0);
    private @Nullable SinceChoice asked;
    private String proposedName = "";
    private String proposedCamber = "";
    private boolean filling = true;

    /**
     * @param before the surface to be changed, null for a new one
     */
    SurfaceForm(BenchContext context, @Nullable Surface before) {
        super(context, before == null ? "A new surface" : before.name(), "lengths aft of the bearing");
        this.before = before;
        DisplayUnits units = context.units();
        planform = new PlanformFields(form.keys(), units, this::look);
        edge = new Amount("Leading edge at", Quantity.LENGTH, units);
        rise = new Amount("Above the stick", Quantity.LENGTH, units);
        incidence = new AngleFields(units, this::look);
        camber = new Amount("Camber of the section", Quantity.FRACTION, units);
        leftTwist = new Amount("Left tip washed in more by", Quantity.ANGLE, units).decimals(2);
        offset = new Amount("Offset to the left", Quantity.LENGTH, units);
        tilt = new Amount("Tilt, left tip up", Quantity.ANGLE, units).decimals(2);
        zeroLift = new Amount("Angle of zero lift", Quantity.ANGLE, units).decimals(2);
        moment = new Amount("Moment coefficient at ¼ chord", Quantity.PLAIN, units);
        zeroLift.field().quietly("empty: from the camber");
        moment.field().quietly("empty: from the camber");
        for (Amount amount : List.of(edge, rise, camber, leftTwist, offset, tilt, zeroLift, moment)) {
            amount.field().valueProperty().subscribe((was, now) -> look());
        }
        edge.field().quietly("empty: drawn at the bearing");
        name.valueProperty().subscribe((was, now) -> look());
        role.onChosen(this::turn);
        if (before == null) {
            form.add(name, Lay.column(4, Words.small("It is a"), role));
        }
        form.add(planform.node())
                .beside(edge.field(), rise.field())
                .add(incidence.node(), camber.field(), since)
                .caption("Where both halves are not alike, and the section's own figures")
                .beside(leftTwist.field(), offset.field())
                .beside(tilt.field(), zeroLift.field())
                .add(moment.field());
        if (before != null) {
            form.add(name.quietly("another name is put right in every version"));
            form.keys().on("Ctrl+Del", "Take the surface away", this::remove);
            form.keys().hint("Ctrl+Del", "take it away");
        }
        actions("Keep the surface", this::keep);
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        SinceChoice choice = new SinceChoice(bench);
        asked = choice;
        since.getChildren().setAll(choice.node());
        Surface now = before;
        if (now == null) {
            Role usual = surfaces(bench).stream().anyMatch(s -> s.role() == Role.WING) ? Role.TAILPLANE : Role.WING;
            role.choose(usual);
            planform.fresh();
            incidence.fill(0);
            propose(bench, usual);
        } else {
            role.choose(now.role());
            name.fill(now.name());
            planform.fill(now.ribs());
            edge.fill(now.edgeAftM());
            rise.fill(now.riseM());
            incidence.fill(now.incidenceRad());
            camber.fill(now.camber());
            leftTwist.fill(more(now));
            offset.fill(now.offsetLeftM() == 0 ? null : now.offsetLeftM());
            tilt.fill(now.tiltRad() == 0 ? null : now.tiltRad());
            zeroLift.fill(now.zeroLiftRad());
            moment.fill(now.cmQuarter());
        }
        filling = false;
        super.opened(bench);
    }

    /** Name and camber of a new surface follow what it is, unless they were typed. */
    private void turn(Role chosen) {
        BenchDesk.Bench bench = model.bench().get();
        if (before == null && bench != null) {
            propose(bench, chosen);
        }
        look();
    }

    private void propose(BenchDesk.Bench bench, Role of) {
        if (name.typed().equals(proposedName)) {
            boolean taken = surfaces(bench).stream().anyMatch(s -> s.name().equals(name(of)));
            proposedName = taken ? "second " + name(of) : name(of);
            name.fill(proposedName);
        }
        if (camber.field().typed().equals(proposedCamber)) {
            camber.fill(of == Role.WING ? 0.04 : 0.0);
            proposedCamber = camber.field().typed();
        }
    }

    private static String name(Role role) {
        return role == Role.TAILPLANE ? "tail" : role.name().toLowerCase(Locale.ROOT);
    }

    private static List<Surface> surfaces(BenchDesk.Bench bench) {
        Airframe airframe = bench.shown().airframe();
        return airframe == null ? List.of() : airframe.surfaces();
    }

    /** By how much the left tip is washed in more than the right; null where the halves do not differ. */
    private static @Nullable Double more(Surface surface) {
        if (surface.ribsLeft() == null) {
            return null;
        }
        List<Rib> left = surface.leftRibs();
        List<Rib> right = surface.ribs();
        double apart = left.get(left.size() - 1).twistRad()
                - right.get(right.size() - 1).twistRad();
        return apart == 0 ? null : apart;
    }

    private @Nullable List<Rib> left(List<Rib> ribs) {
        Surface now = before;
        Double more = leftTwist.si();
        if (now != null && now.ribsLeft() != null && ribs.equals(now.ribs()) && Objects.equals(more, more(now))) {
            return now.ribsLeft();
        }
        if (more == null || more == 0) {
            return null;
        }
        double half = ribs.get(ribs.size() - 1).outM();
        return ribs.stream()
                .map(r -> new Rib(r.outM(), r.edgeAftM(), r.chordM(), r.riseM(), r.twistRad() + more * r.outM() / half))
                .toList();
    }

    /** The surface as typed; null where too little is typed for one. */
    private @Nullable Surface typed() {
        List<Rib> ribs = planform.read();
        Role is = role.chosen();
        if (ribs.size() < 2 || is == null || name.typed().isBlank()) {
            return null;
        }
        return new Surface(
                name.typed().strip(),
                is,
                edge.si(0),
                rise.si(0),
                incidence.rad(0),
                camber.si(0),
                ribs,
                left(ribs),
                offset.si(0),
                tilt.si(0),
                zeroLift.si(),
                moment.si());
    }

    /** Draws what is typed; where nothing can be drawn of it, the version as it stands, and says so. */
    private void look() {
        Rigged shown = shown();
        if (filling || shown == null) {
            return;
        }
        Surface typed = form.isReadable() ? typed() : null;
        String why = typed == null
                ? "Not drawn yet."
                : AirframeProblems.of(typed).stream()
                        .findFirst()
                        .map(AirframeProblem::sentence)
                        .orElse("");
        boolean drawn = typed != null && why.isEmpty();
        form.remark(
                drawn || shown.geometry() == null
                        ? ""
                        : why + " Drawing and figures are still those of " + shown.name() + ".");
        if (typed == null || !drawn) {
            model.look((Airframe) null);
            return;
        }
        Airframe now = shown.geometry();
        List<Surface> surfaces = new ArrayList<>(now == null ? List.of() : now.surfaces());
        surfaces.removeIf(s -> s.name().equals(before == null ? typed.name() : before.name()));
        surfaces.add(typed);
        model.look(
                now == null
                        ? new Airframe(surfaces, List.of(), null, null)
                        : new Airframe(surfaces, now.masses(), now.measuredBalanceM(), now.motor()));
    }

    private void remove() {
        String version = versionId();
        Airframes.Since when = asked == null ? Airframes.Since.ALWAYS : asked.chosen();
        enter(progress -> context.book().bench().airframes().surface(version, before, null, when));
    }

    private void keep() {
        name.required();
        edge.field().required();
        boolean sound = name.check()
                & planform.check()
                & edge.field().check()
                & rise.field().check()
                & incidence.check();
        for (Amount amount : List.of(camber, leftTwist, offset, tilt, zeroLift, moment)) {
            sound &= amount.field().check();
        }
        Surface typed = typed();
        if (!sound || typed == null) {
            return;
        }
        for (AirframeProblem problem : AirframeProblems.of(typed)) {
            form.refuse(problem.sentence());
            return;
        }
        Rigged shown = shown();
        Airframe now = shown == null ? null : shown.geometry();
        if ((before == null || !before.name().equals(typed.name()))
                && now != null
                && now.surfaces().stream().anyMatch(s -> s.name().equals(typed.name()))) {
            name.refuse("There is a surface of that name already.");
            return;
        }
        String version = versionId();
        Airframes.Since when = asked == null ? Airframes.Since.ALWAYS : asked.chosen();
        enter(progress -> context.book().bench().airframes().surface(version, before, typed, when));
    }
}
