package org.rafterbook.ui.season;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.TextFiles;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.shell.Following;
import org.rafterbook.ui.shell.Kept;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.Counted;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.UserError;
import org.rafterbook.work.Book;
import org.rafterbook.work.ExportSummary;
import org.rafterbook.work.ScreenChoices;
import org.rafterbook.work.Season;
import org.rafterbook.work.SeasonDesk;
import org.rafterbook.work.SeasonReport;

/** The season without its controls: what was read, which season and which model are picked, report and export. */
final class SeasonModel {

    /** What was read: one of the seasons, and the flyer's name. */
    private record Read(SeasonDesk.Seasons seasons, SeasonShown shown, String flyer) {}

    private final Book book;
    private final FxBackground background;
    private final FxBackground.Display progress;
    private final Errors errors;
    private final Kept kept;
    private final Following following;
    private final FxBackground.Slot slot = new FxBackground.Slot();
    private final ReadOnlyObjectWrapper<SeasonShown> shown;
    private final ObjectProperty<@Nullable String> picked = new SimpleObjectProperty<>(this, "picked");
    private @Nullable Integer year;
    private List<Integer> years = List.of();
    private String flyer = "";
    private boolean loaded;

    SeasonModel(Book book, Tools tools, FxBackground.Display progress) {
        this.book = book;
        this.background = tools.background();
        this.errors = tools.errors();
        this.kept = tools.kept();
        this.progress = progress;
        shown = new ReadOnlyObjectWrapper<>(
                this, "shown", new SeasonShown(new Season(List.of(), Map.of(), Map.of()), LocalDate.now(book.clock())));
        this.following = new Following(book, background, this::load);
    }

    /** The years in which there is a season, the newest first. */
    List<Integer> years() {
        return years;
    }

    /** The season on show. */
    ReadOnlyObjectProperty<SeasonShown> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** Name of the picked model, null before one is. */
    ObjectProperty<@Nullable String> pickedProperty() {
        return picked;
    }

    /** The year in whose July the season on show begins. */
    @Nullable
    Integer year() {
        return year;
    }

    String flyer() {
        return flyer;
    }

    /** True once it is known whether there is any season. */
    boolean isLoaded() {
        return loaded;
    }

    void attach() {
        following.start();
    }

    void detach() {
        slot.cancel();
        following.stop();
    }

    private void load() {
        Integer wanted = year;
        background
                .call(at -> {
                    String name = book.preference(ScreenChoices.Name.FLYER.key());
                    SeasonDesk.Seasons seasons = book.season().load(wanted, at);
                    SeasonShown ready = new SeasonShown(seasons.season(), LocalDate.now(book.clock()));
                    return new Read(seasons, ready, name == null ? "" : name);
                })
                .in(slot)
                .showing(progress)
                .then(this::show);
    }

    private void show(Read read) {
        loaded = true;
        flyer = read.flyer();
        years = read.seasons().years();
        year = read.seasons().year();
        shown.set(read.shown());
    }

    /** Shows the season that begins in July of this year. */
    void turnTo(Integer wanted) {
        year = wanted;
        load();
    }

    /** Writes the season's report as a page for print. */
    void report(Path file, DisplayUnits units) {
        Season season = shown.get().season();
        String name = year == null ? "" : SeasonWords.season(year);
        String by = flyer;
        background
                .call(at -> {
                    TextFiles.write(file, new SeasonReport(season, name, by, units).html());
                    return file;
                })
                .showing(progress)
                .then(written -> kept.say("report written to " + written.getFileName()));
    }

    /**
     * Writes everything as plain files into a folder.
     *
     * @param mayOverwrite asks whether files of the same names there may be replaced
     */
    void export(Path folder, BooleanSupplier mayOverwrite) {
        background
                .call(at -> book.exports().write(folder, false))
                .showing(progress)
                .otherwise(failure -> {
                    boolean there = failure instanceof UserError error && error.kind() == UserError.Kind.BAD_INPUT;
                    if (!there) {
                        errors.show(failure);
                    } else if (mayOverwrite.getAsBoolean()) {
                        background
                                .call(at -> book.exports().write(folder, true))
                                .showing(progress)
                                .then(this::tell);
                    }
                })
                .then(this::tell);
    }

    private void tell(ExportSummary written) {
        kept.say(Counted.of(written.flights(), "flight") + " in "
                + Counted.of(written.files().size(), "file") + " in "
                + written.folder().getFileName());
    }
}
