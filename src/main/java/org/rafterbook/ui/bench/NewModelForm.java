package org.rafterbook.ui.bench;

import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Words;

/** A new model: only a name is needed. */
final class NewModelForm extends EntryForm {

    private final Field<String> name = Field.words("Name").required();

    NewModelForm(BenchContext context) {
        super(context, "New model", "");
        form.add(
                name,
                Words.prose(
                        "With only a name it can be flown at once. Its surfaces, masses and settings can be added later,"
                                + " under the flights it has then."));
        actions("Add the model", this::keep);
    }

    private void keep() {
        if (name.check()) {
            String typed = name.typed();
            model.enter(
                    progress -> context.book().riggings().addModel(typed),
                    made -> {
                        back();
                        model.choose(made);
                    },
                    name::refuse);
        }
    }
}
