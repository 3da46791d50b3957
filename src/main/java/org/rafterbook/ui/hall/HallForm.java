package org.rafterbook.ui.hall;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.units.TypedValue;

/** What the sheets of the Hall have in common: fields in rows, checked together, and keys that leave them. */
final class HallForm {

    private HallForm() {}

    /** Fields and buttons in one row, on their lower edges. */
    static HBox row(Node... nodes) {
        HBox row = Lay.row(12, nodes);
        row.setAlignment(Pos.BOTTOM_LEFT);
        return row;
    }

    /** Fields beside each other on their labels, whatever stands below them. */
    static HBox fields(Node... nodes) {
        HBox row = Lay.row(12, nodes);
        row.setAlignment(Pos.TOP_LEFT);
        return row;
    }

    /** Takes the cursor out of the sheet's fields, so that letters are keys again. */
    static void leave(Node sheet) {
        if (sheet.getScene() != null) {
            sheet.getScene().getRoot().requestFocus();
        }
    }

    /** True where none of the fields holds what cannot be read; each that does says so. */
    static boolean check(List<? extends Field<?>> fields) {
        boolean sound = true;
        for (Field<?> field : fields) {
            sound &= field.check();
        }
        return sound;
    }

    /** True where none of the fields was refused. */
    static boolean accepted(List<? extends Field<?>> fields) {
        return fields.stream().allMatch(field -> field.refusal().isEmpty());
    }

    /** What was typed in SI, null for an empty field. */
    static @Nullable Double si(Field<TypedValue> field) {
        TypedValue value = field.value();
        return value == null ? null : Double.valueOf(value.si());
    }

    /** Empties the field once what it holds now is kept, unless something else was typed since. */
    static Runnable emptied(Field<?> field) {
        String sent = field.typed();
        return () -> {
            if (field.typed().equals(sent)) {
                field.fill("");
            }
        };
    }
}
