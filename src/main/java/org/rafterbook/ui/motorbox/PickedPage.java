package org.rafterbook.ui.motorbox;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A page for what is picked in a table. */
abstract class PickedPage<T> implements BoxPage {

    private @Nullable T shown;

    /** Shows what is picked, null for none; what is typed stays where that is the one shown already. */
    final void show(@Nullable T picked) {
        if (!Objects.equals(picked, shown)) {
            shown = picked;
            reset();
        }
    }

    @Override
    public final void begin() {
        shown = null;
        reset();
    }

    /** What is to be put right, null where something new is typed. */
    final @Nullable T shown() {
        return shown;
    }

    /** The fields with a quantity. */
    abstract List<Entry> entries();

    /** Whether all quantities can be kept; each field says what is wrong with it. */
    final boolean entriesAreSound() {
        boolean sound = true;
        for (Entry entry : entries()) {
            sound &= entry.check();
        }
        return sound;
    }

    /** What was typed, beside what was typed before, keyed by the record's component. */
    final Map<String, String> typed(Map<String, String> before) {
        Map<String, String> typed = new HashMap<>(before);
        entries().forEach(entry -> entry.typed(typed));
        return typed;
    }
}
