package org.rafterbook.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rafterbook.units.UserError;

class SheetPathTest {

    private static final List<Rib> RIBS = List.of(new Rib(0, 0, 0.11, 0, 0), new Rib(0.21, 0, 0.11, 0, 0));

    private static final Airframe PLANE = new Airframe(
            List.of(
                    Surface.symmetric("wing", Role.WING, 0.14, 0.02, 0.04, 0.04, RIBS),
                    Surface.symmetric("tail", Role.TAILPLANE, 0.45, 0, 0, 0, RIBS)),
            List.of(new MassItem("wing", 0.0009, 0.19, 0.02), new MassItem("ballast", 0.0001, 0.01, 0)),
            null,
            null);

    @Test
    void aPathIsWrittenAsItWasRead() {
        assertThat(String.valueOf(SheetPath.parse("upper wing.incidence_deg"))).isEqualTo("upper wing.incidence_deg");
    }

    @Test
    void aFreeNameIsNoPath() {
        assertThat(SheetPath.parse("pitch")).isNull();
        assertThat(SheetPath.parse("wing.colour")).isNull();
    }

    @Test
    void slidingASurfaceTakesItsMassAlong() {
        Airframe slid = path("wing.edge_aft_mm").set(PLANE, 0.15);
        assertThat(slid.surfaces().get(0).edgeAftM()).isEqualTo(0.15);
        assertThat(slid.masses().get(0).aftM()).isCloseTo(0.20, within(1e-15));
        assertThat(slid.masses().get(1).aftM()).isEqualTo(0.01);
        assertThat(slid.surfaces().get(1)).isEqualTo(PLANE.surfaces().get(1));
    }

    @Test
    void ballastIsSetByItsOwnName() {
        assertThat(path("ballast.mass_g").set(PLANE, 0.0002).masses().get(1).massKg())
                .isEqualTo(0.0002);
    }

    @Test
    void spanAndChordAreKeysOfRectanglesOnly() {
        Airframe wider = path("wing.chord_mm").set(path("wing.span_mm").set(PLANE, 0.5), 0.12);
        assertThat(wider.surfaces().get(0).ribs())
                .containsExactly(new Rib(0, 0, 0.12, 0, 0), new Rib(0.25, 0, 0.12, 0, 0));
        assertThat(path("wing.span_mm").read(wider)).isEqualTo(0.5);
        Surface tapered = Surface.symmetric(
                "wing", Role.WING, 0, 0, 0, 0, List.of(new Rib(0, 0, 0.11, 0, 0), new Rib(0.21, 0, 0.08, 0, 0)));
        assertThat(path("wing.chord_mm").isIn(new Airframe(List.of(tapered), List.of(), null, null)))
                .isFalse();
    }

    @Test
    void theAngleOfZeroLiftIsAKeyOfSurfacesThatSayIt() {
        assertThat(path("wing.zero_lift_deg").isIn(PLANE)).isFalse();
        Surface own = new Surface("wing", Role.WING, 0, 0, 0, 0.04, RIBS, null, 0, 0, -0.08, -0.12);
        Airframe plane = new Airframe(List.of(own), List.of(), null, null);
        assertThat(path("wing.zero_lift_deg").read(path("wing.zero_lift_deg").set(plane, -0.07)))
                .isEqualTo(-0.07);
        assertThat(path("wing.cm_quarter").set(plane, -0.1).surfaces().get(0).cmQuarter())
                .isEqualTo(-0.1);
    }

    @Test
    void aSurfaceThatIsNotThereIsRefusedByName() {
        assertThatThrownBy(() -> path("canard.edge_aft_mm").set(PLANE, 0.1))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("canard");
    }

    private static SheetPath path(String text) {
        SheetPath path = SheetPath.parse(text);
        assertThat(path).isNotNull();
        return path;
    }
}
