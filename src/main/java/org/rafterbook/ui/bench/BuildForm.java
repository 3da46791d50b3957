package org.rafterbook.ui.bench;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import javafx.scene.layout.VBox;
import org.rafterbook.airframe.AirframeEvent;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Segments;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Builds;

/** A crash, repair or new covering, and whether the model is the same as before. */
final class BuildForm extends EntryForm {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private final Segments<Builds.Kind> kind =
            new Segments<>("What happened", List.of(Builds.Kind.values()), Builds.Kind::word);
    private final Segments<Boolean> same =
            new Segments<>("The model is", List.of(false, true), is -> is ? "same as before" : "a new build");
    private final Field<String> notes = Field.words("Notes");
    private final VBox before = Lay.column(4);

    BuildForm(BenchContext context) {
        super(context, "Crashed, repaired, re-covered", "");
        kind.choose(Builds.Kind.REPAIRED);
        same.choose(false);
        form.add(Lay.column(4, Words.small("It was"), kind), notes, Lay.column(4, Words.small("It is"), same));
        form.add(
                Words.prose(
                        "A new build is another version even with the same settings, so that its flights are not pooled with"
                                + " those before. Weighings are made anew for it."),
                before);
        actions("Keep it", this::keep);
    }

    @Override
    public void opened(BenchDesk.Bench bench) {
        before.getChildren().clear();
        for (AirframeEvent event : bench.facts().events()) {
            String build = event.newBuild() == null ? "same as before" : "build " + event.newBuild();
            before.getChildren()
                    .add(Words.small(DAY.format(event.at().atZone(ZoneId.systemDefault())) + ": " + event.kind() + ", "
                            + build + (event.notes() == null ? "" : ", " + event.notes())));
        }
        super.opened(bench);
    }

    private void keep() {
        String id = modelId();
        Builds.Kind what = kind.chosen();
        boolean unchanged = Boolean.TRUE.equals(same.chosen());
        String said = notes.typed().isBlank() ? null : notes.typed().strip();
        if (what != null) {
            enter(progress -> context.book().bench().builds().happened(id, what, said, unchanged));
        }
    }
}
