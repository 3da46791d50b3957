package org.rafterbook.ui.imports;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.ColumnRule;
import org.rafterbook.exchange.DatePatterns;
import org.rafterbook.exchange.FlightField;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.units.DecimalMark;
import org.rafterbook.work.ImportChoices;
import org.rafterbook.work.ImportDraft;
import org.rafterbook.work.ImportDraft.Column;
import org.rafterbook.work.ImportFile;
import org.rafterbook.work.ImportPlan;
import org.rafterbook.work.ImportSummary;
import org.rafterbook.work.Imports;

/**
 * The files on their way in, without controls: what each column is, how things are written, the rows as they would be
 * read. Whatever is said, all is read anew in the background.
 */
final class TakingIn {

    /** The files as read by what was said, and what keeping them would add. */
    record Reading(ImportPlan plan, ImportSummary summary) {

        boolean sound() {
            return plan.problems().isEmpty() && summary.problems().isEmpty();
        }
    }

    /** What was kept, in sentences. */
    record Done(List<String> sentences) {}

    private final Imports imports;
    private final FxBackground background;
    private final FxBackground.Display progress;
    private final Consumer<Throwable> failed;
    private final FxBackground.Slot slot = new FxBackground.Slot();
    private final ObservableList<Column> columns = FXCollections.observableArrayList();
    private final Map<FlightField, String> fixed = new HashMap<>();
    private final ObjectProperty<DecimalMark> mark = new SimpleObjectProperty<>(this, "mark", DecimalMark.EITHER);
    private final ObjectProperty<@Nullable String> days = new SimpleObjectProperty<>(this, "days");
    private final ReadOnlyObjectWrapper<List<String>> dayChoices =
            new ReadOnlyObjectWrapper<>(this, "dayChoices", DatePatterns.known());
    private final ObjectProperty<@Nullable Double> ratio = new SimpleObjectProperty<>(this, "ratio");
    private final ReadOnlyObjectWrapper<@Nullable Reading> reading = new ReadOnlyObjectWrapper<>(this, "reading");
    private final ReadOnlyBooleanWrapper keeping = new ReadOnlyBooleanWrapper(this, "keeping");
    private final ReadOnlyObjectWrapper<@Nullable Done> done = new ReadOnlyObjectWrapper<>(this, "done");
    private List<ImportFile> files = List.of();
    private Set<String> sheetSettings = Set.of();
    private boolean filling;

    /** @param failed told of what could not be kept */
    TakingIn(Imports imports, FxBackground background, FxBackground.Display progress, Consumer<Throwable> failed) {
        this.imports = imports;
        this.background = background;
        this.failed = failed;
        this.progress = progress;
        mark.subscribe(this::said);
        days.subscribe(this::said);
        ratio.subscribe(this::said);
    }

    /** The columns of all tables of flights, each with what it is by now. */
    ObservableList<Column> columns() {
        return columns;
    }

    ObjectProperty<DecimalMark> markProperty() {
        return mark;
    }

    /** How days are written; null while nobody has said. */
    ObjectProperty<@Nullable String> daysProperty() {
        return days;
    }

    /** The ways in which the column of days can be read. */
    ReadOnlyObjectProperty<List<String>> dayChoicesProperty() {
        return dayChoices.getReadOnlyProperty();
    }

    /** Motor turns for one turn of the winder's handle. */
    ObjectProperty<@Nullable Double> ratioProperty() {
        return ratio;
    }

    /** The rows as they would be read; null while a column is not said, and while they are being read. */
    ReadOnlyObjectProperty<@Nullable Reading> readingProperty() {
        return reading.getReadOnlyProperty();
    }

    /** True while it is being kept: nothing else is taken until that has ended. */
    ReadOnlyBooleanProperty keepingProperty() {
        return keeping.getReadOnlyProperty();
    }

    /** What was kept last, null before that and once other files are chosen. */
    ReadOnlyObjectProperty<@Nullable Done> doneProperty() {
        return done.getReadOnlyProperty();
    }

    List<ImportFile> files() {
        return files;
    }

    /** The numbers of airframe sheets that a column can be. */
    Set<String> sheetSettings() {
        return sheetSettings;
    }

    /** The column that is this field by now, null where none is. */
    @Nullable
    Column columnOf(FlightField field) {
        return ImportDraft.columnOf(field, columns);
    }

    /** The headings of which nobody has said what they are. */
    List<String> open() {
        return columns.stream()
                .filter(column -> column.rule() == null)
                .map(Column::heading)
                .toList();
    }

    boolean countsWinderTurns() {
        return columns.stream()
                .anyMatch(c -> c.rule() != null
                        && ColumnRule.WINDER_TURNS.equals(c.rule().unit()));
    }

    /** Looks at these files in the place of those before. */
    void take(List<Path> chosen) {
        if (keeping.get()) {
            return;
        }
        background
                .call(at -> imports.draft(chosen.stream().map(ImportFile::of).toList()))
                .in(slot)
                .showing(progress)
                .then(this::look);
    }

    private void look(ImportDraft draft) {
        filling = true;
        files = draft.files();
        sheetSettings = draft.sheetSettings();
        fixed.clear();
        draft.fixed().forEach((heading, value) -> FlightField.of(heading).ifPresent(field -> fixed.put(field, value)));
        mark.set(draft.mark());
        ratio.set(draft.winderRatio());
        days.set(draft.datePattern());
        columns.setAll(draft.columns());
        done.set(null);
        filling = false;
        lookAtDays();
        said();
    }

    /** Finds out how days are written where the table leaves only one way. */
    private void lookAtDays() {
        Column column = columnOf(FlightField.SESSION_DATE);
        if (column == null) {
            dayChoices.set(DatePatterns.known());
            return;
        }
        List<String> cells = column.cells();
        background.call(at -> DatePatterns.reading(cells)).then(fitting -> {
            if (columnOf(FlightField.SESSION_DATE) != column) {
                return;
            }
            dayChoices.set(fitting.isEmpty() ? DatePatterns.known() : fitting);
            boolean found = fitting.contains(DatePatterns.ISO) || fitting.size() == 1;
            if (days.get() == null && found) {
                days.set(fitting.get(0));
            }
        });
    }

    /** Says what a column is; null takes it back. */
    void say(Column column, @Nullable ColumnRule rule) {
        int index = columns.indexOf(column);
        if (index < 0) {
            return;
        }
        boolean ofDays = isDays(column.rule()) || isDays(rule);
        columns.set(index, column.by(rule));
        if (ofDays) {
            days.set(null);
            lookAtDays();
        }
        said();
    }

    private static boolean isDays(@Nullable ColumnRule rule) {
        return rule != null && rule.field() == FlightField.SESSION_DATE;
    }

    /** Says what holds for every row; an empty text takes it back. */
    void sayForAll(FlightField field, String value) {
        if (value.isBlank()) {
            fixed.remove(field);
        } else {
            fixed.put(field, value.strip());
        }
        said();
    }

    /** What holds for every row, empty where nothing was said. */
    String forAll(FlightField field) {
        return fixed.getOrDefault(field, "");
    }

    private ImportChoices choices() {
        List<ColumnRule> rules = new ArrayList<>();
        columns.forEach(column -> {
            if (column.rule() != null) {
                rules.add(column.rule());
            }
        });
        Map<String, String> all = new HashMap<>();
        fixed.forEach((field, value) -> all.put(field.heading(), value));
        return new ImportChoices(null, rules, all, mark.get(), ratio.get(), days.get());
    }

    /** Reads everything anew by what has been said, and by what the logbook holds by now. */
    void said() {
        if (filling || keeping.get() || files.isEmpty()) {
            return;
        }
        slot.cancel();
        reading.set(null);
        if (!open().isEmpty()) {
            return;
        }
        ImportChoices choices = choices();
        List<ImportFile> read = files;
        background
                .call(at -> {
                    ImportPlan plan = imports.plan(read, choices);
                    return new Reading(plan, imports.preview(plan, at));
                })
                .in(slot)
                .showing(progress)
                .then(reading::set);
    }

    /** Keeps it all, and under a name what was said, if one is given; asked again while that runs it does nothing. */
    void carryOut(String keepAs) {
        Reading now = reading.get();
        if (now == null || !now.sound() || keeping.get()) {
            return;
        }
        keeping.set(true);
        background
                .call(at -> {
                    List<String> sentences = new ArrayList<>(
                            imports.carryOut(now.plan(), keepAs, at).lines());
                    if (!keepAs.isBlank()) {
                        sentences.add("What the columns are is kept as “" + keepAs.strip()
                                + "”: the next table with these headings needs no more.");
                    }
                    return new Done(sentences);
                })
                .entry()
                .showing(progress)
                .ifCancelled(() -> keeping.set(false))
                .otherwise(failure -> {
                    keeping.set(false);
                    failed.accept(failure);
                })
                .then(this::kept);
    }

    private void kept(Done what) {
        keeping.set(false);
        files = List.of();
        columns.clear();
        reading.set(null);
        done.set(what);
    }

    /** Stops what is being read. */
    void stop() {
        slot.cancel();
    }
}
