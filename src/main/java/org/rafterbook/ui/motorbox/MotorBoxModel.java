package org.rafterbook.ui.motorbox;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.shell.Following;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Book;
import org.rafterbook.work.MotorDesk;

/** The Motor box without its controls: what is in it, and every entry on its way to disk. */
final class MotorBoxModel {

    private final MotorDesk desk;
    private final FxBackground background;
    private final Errors errors;
    private final Following following;
    private final FxBackground.Slot slot = new FxBackground.Slot();
    private final ReadOnlyObjectWrapper<MotorDesk.Box> box =
            new ReadOnlyObjectWrapper<>(this, "box", new MotorDesk.Box(List.of(), List.of()));

    MotorBoxModel(Tools tools, Book book) {
        this.desk = book.motors();
        this.background = tools.background();
        this.errors = tools.errors();
        this.following = new Following(book, background, this::load);
    }

    ReadOnlyObjectProperty<MotorDesk.Box> boxProperty() {
        return box.getReadOnlyProperty();
    }

    private void load() {
        background.call(progress -> desk.load()).in(slot).then(box::set);
    }

    void attach() {
        following.start();
    }

    void detach() {
        slot.cancel();
        following.stop();
    }

    /** Makes an entry, then does what follows; a refusal stands beside the field, anything else in the bar under the head. */
    <T> void enter(Function<MotorDesk, T> entry, Field<?> beside, Runnable then) {
        background
                .call(progress -> entry.apply(desk))
                .entry()
                .otherwise(failure -> {
                    if (failure instanceof UserError error && error.kind() == UserError.Kind.BAD_INPUT) {
                        beside.refuse(error.sentence());
                    } else {
                        errors.show(failure);
                    }
                })
                .then(kept -> then.run());
    }
}
