package org.rafterbook.ui.kit;

import java.util.List;
import javafx.scene.control.IndexRange;
import javafx.scene.control.TextField;
import org.rafterbook.ui.action.LetsLettersThrough;

/** A text field for quantities that leaves letters to the keys of the place unless they can belong to a unit. */
final class NumberInput extends TextField implements LetsLettersThrough {

    private List<String> units = List.of();

    /** Units that may be typed right after the number, so that their first letters belong to the field. */
    void units(List<String> symbols) {
        units = symbols;
    }

    @Override
    public boolean takes(char letter) {
        IndexRange selection = getSelection();
        String before = getText(0, Math.min(selection.getStart(), getLength()));
        if (before.isBlank()) {
            return false;
        }
        char last = before.charAt(before.length() - 1);
        boolean begun = Character.isLetter(last) || Character.isSpaceChar(last) || last == '-' || last == '·';
        return begun || units.stream().anyMatch(unit -> unit.regionMatches(true, 0, String.valueOf(letter), 0, 1));
    }
}
