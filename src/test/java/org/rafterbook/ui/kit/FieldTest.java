package org.rafterbook.ui.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.event.ActionEvent;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.TypedRange;
import org.rafterbook.units.TypedValue;

@FxTest
class FieldTest {

    private final List<@Nullable TypedValue> kept = new ArrayList<>();
    private final Field<TypedValue> chord = Field.quantity("Chord", Quantity.LENGTH, DisplayUnits.METRIC)
            .quietly("was 105 mm")
            .refuseIf(value -> value.si() > 1, value -> "More than a metre.")
            .onKept(kept::add);

    @BeforeEach
    void show() {
        Fx.show(chord);
    }

    private void enter() {
        chord.input().fireEvent(new ActionEvent());
    }

    @Test
    void whatWasTypedIsKeptOnEnterOnce() {
        chord.input().setText("110");
        assertThat(kept).isEmpty();
        enter();
        enter();
        assertThat(kept).hasSize(1);
        assertThat(kept.get(0)).isNotNull();
        assertThat(kept.get(0).si()).isEqualTo(0.11);
    }

    @Test
    void theOtherUnitIsToldWhileTyping() {
        assertThat(chord.message()).isEqualTo("was 105 mm");
        chord.input().setText("110");
        assertThat(chord.message()).isEqualTo("4.33 in");
        chord.input().setText("14 1/2 in");
        assertThat(chord.message()).contains("368.3 mm");
    }

    @Test
    void whatCannotBeReadStaysTypedWithASentenceAndIsNotKept() {
        chord.input().setText("11o");
        assertThat(chord.refusal()).as("while typing").isEmpty();
        enter();
        assertThat(chord.refusal()).isNotEmpty();
        assertThat(chord.message()).startsWith("× ");
        assertThat(chord.typed()).isEqualTo("11o");
        assertThat(chord.value()).isNull();
        assertThat(kept).isEmpty();
    }

    @Test
    void theSentenceGoesAsSoonAsItNoLongerHolds() {
        chord.input().setText("1100");
        enter();
        assertThat(chord.refusal()).isEqualTo("More than a metre.");
        chord.input().setText("110");
        assertThat(chord.refusal()).isEmpty();
    }

    @Test
    void anEmptiedFieldIsKeptAsNoValue() {
        chord.fill("110");
        assertThat(kept).isEmpty();
        chord.input().setText("");
        enter();
        assertThat(kept).containsExactly((TypedValue) null);
    }

    @Test
    void aRequiredFieldIsRefusedByItsName() {
        assertThat(chord.required().check()).isFalse();
        assertThat(chord.refusal()).isEqualTo("This is needed.");
    }

    @Test
    void aBareTimeIsShownBackInFull() {
        Field<TypedValue> time = Field.quantity("Time", Quantity.TIME, DisplayUnits.METRIC);
        time.input().setText("1050");
        assertThat(time.message()).isEqualTo("17:30");
    }

    @Test
    void aRangeIsReadWithItsUnit() {
        Field<TypedRange> peak = Field.range("Peak height", Quantity.HEIGHT, DisplayUnits.METRIC);
        peak.fill("7.9 to 9.4");
        assertThat(peak.value()).isNotNull();
        assertThat(peak.value().highSi()).isEqualTo(9.4);
    }

    @Test
    void lettersPassThroughANumberFieldUnlessTheyAreAUnits() {
        NumberInput input = (NumberInput) chord.input();
        assertThat(input.takes('i')).as("nothing typed yet").isFalse();
        input.setText("14.5");
        input.end();
        assertThat(input.takes('i')).as("in").isTrue();
        assertThat(input.takes('h')).as("no unit begins so").isFalse();
        input.setText("14.5 ");
        input.end();
        assertThat(input.takes('h')).as("after a space").isTrue();
        input.selectAll();
        assertThat(input.takes('i')).as("all selected").isFalse();
    }

    @Test
    void theFieldSaysItsNameUnitAndTrouble() {
        assertThat(chord.input().getAccessibleText()).isEqualTo("Chord, in mm");
        chord.refuse("More than 1980 wound.");
        assertThat(chord.input().getAccessibleHelp()).isEqualTo("× More than 1980 wound.");
    }
}
