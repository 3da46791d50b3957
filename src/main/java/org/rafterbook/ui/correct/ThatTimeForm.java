package org.rafterbook.ui.correct;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.flight.Flight;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.FormSheet;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Segments;
import org.rafterbook.ui.kit.SettingWords;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.ClockTime;
import org.rafterbook.work.Book;
import org.rafterbook.work.Job;
import org.rafterbook.work.Recordings;
import org.rafterbook.work.Rigged;

/** 'It was different that time': moves flights to another rigging, or to a rigging of their own with another value. */
public final class ThatTimeForm {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private enum Way {
        VALUE("a setting stood elsewhere"),
        RIGGING("another rigging");

        private final String words;

        Way(String words) {
            this.words = words;
        }
    }

    private final Book book;
    private final FxBackground background;
    private final Job<Recordings.Recorded> load;
    private final @Nullable String ticked;
    private final Runnable leave;
    private final FormSheet form;
    private final VBox flights = Lay.column(4);
    private final List<CheckBox> ticks = new ArrayList<>();
    private final Segments<Way> way = new Segments<>("What was different", List.of(Way.values()), w -> w.words);
    private final ChoiceField<SettingDef> settings = new ChoiceField<>("Setting", SettingDef::label);
    private final VBox value = Lay.column(0);
    private final VBox byValue = Lay.column(12, settings, value);
    private final ChoiceField<Rigged> riggings = new ChoiceField<>("Flown on", ThatTimeForm::name);
    private @Nullable Field<Setting> stood;
    private Recordings.@Nullable Recorded recorded;

    private ThatTimeForm(
            Tools tools, Book book, Job<Recordings.Recorded> load, @Nullable String ticked, Runnable leave) {
        this.book = book;
        this.background = tools.background();
        this.load = load;
        this.ticked = ticked;
        this.leave = leave;
        form = new FormSheet(tools.keys(), "It was different that time", "these flights alone");
        way.choose(Way.VALUE);
        way.onChosen(this::show);
        settings.onChosen(this::choose);
        form.add(Lay.column(4, Words.small("What was different"), way), byValue, riggings);
        form.add(Words.prose("The strip is laid anew; no flight changes its time or notes, and Ctrl+Z takes it back."));
        form.caption("Which flights").add(flights);
        form.keep("Move the flights", this::keep);
        form.leave(leave);
        show(Way.VALUE);
    }

    /**
     * The form for the flights round one flight: those of its rigging, this one ticked.
     *
     * @param leave called when it is done or left
     */
    public static ThatTimeForm ofFlight(Tools tools, Book book, String flightId, Runnable leave) {
        return new ThatTimeForm(tools, book, progress -> book.recordings().around(flightId), flightId, leave);
    }

    /** The form for the flights of a version, none ticked. */
    public static ThatTimeForm ofVersion(Tools tools, Book book, String versionId, Runnable leave) {
        return new ThatTimeForm(tools, book, progress -> book.recordings().ofVersion(versionId), null, leave);
    }

    public Node node() {
        return form.node();
    }

    public Keys keys() {
        return form.keys();
    }

    /** Loads the flights; called when the form comes into sight. */
    public void opened() {
        background.<Recordings.Recorded>call(load).otherwise(form::refuse).then(this::loaded);
    }

    private void loaded(Recordings.Recorded now) {
        recorded = now;
        ticks.clear();
        flights.getChildren().clear();
        if (now.flights().isEmpty()) {
            flights.getChildren().add(Words.prose("This model has not flown yet."));
        }
        for (FlightLine line : now.flights()) {
            CheckBox tick = new CheckBox(name(now.model(), line) + words(line));
            tick.setSelected(line.flight().id().equals(ticked));
            tick.setMnemonicParsing(false);
            tick.setMaxWidth(Double.MAX_VALUE);
            ticks.add(tick);
            flights.getChildren().add(tick);
        }
        List<SettingDef> all =
                now.strip().isEmpty() ? List.of() : now.strip().get(0).settings();
        settings.offer(all, all.isEmpty() ? null : all.get(0));
        if (!all.isEmpty()) {
            choose(all.get(0));
        }
        List<Rigged> newest = new ArrayList<>(now.strip());
        Collections.reverse(newest);
        riggings.offer(newest, null);
        form.focusFirst();
    }

    private static String name(Model model, FlightLine line) {
        return line.version() == null ? "" : model.letter() + line.version().number() + ", ";
    }

    private static String words(FlightLine line) {
        Flight flight = line.flight();
        Double duration = flight.durationS();
        String notes = flight.notes() == null ? "" : ", " + flight.notes();
        return DAY.format(line.session().localDate()) + ", flight " + flight.ordinal() + ", "
                + (duration == null ? "in the air" : ClockTime.minutesSeconds(duration)) + notes;
    }

    private static String name(Rigged rigged) {
        var rigging = rigged.rigging();
        if (rigging == null) {
            return rigged.name();
        }
        String reason = rigging.reason() == null ? "" : ", " + rigging.reason();
        String at = rigging.setAt() == null
                ? ""
                : ", set " + DAY.format(rigging.setAt().atZone(ZoneId.systemDefault()));
        return rigged.name() + at + reason;
    }

    private void show(Way chosen) {
        Lay.show(byValue, chosen == Way.VALUE);
        Lay.show(riggings, chosen == Way.RIGGING);
    }

    private void choose(SettingDef setting) {
        Field<Setting> field = SettingWords.field("Stood at", setting).required();
        Recordings.Recorded now = recorded;
        Setting was = now == null || now.flights().isEmpty() ? null : valueOf(now, setting);
        field.quietly(was == null ? "nothing is recorded" : "recorded as " + SettingWords.value(setting, was));
        stood = field;
        value.getChildren().setAll(field);
    }

    private static @Nullable Setting valueOf(Recordings.Recorded now, SettingDef setting) {
        String rigging = now.flights().get(0).flight().riggingId();
        return now.strip().stream()
                .filter(r -> r.rigging() != null && r.rigging().id().equals(rigging))
                .findFirst()
                .map(r -> r.values().get(setting.id()))
                .orElse(null);
    }

    private void keep() {
        Recordings.Recorded now = recorded;
        List<String> moved = new ArrayList<>();
        for (int i = 0; now != null && i < ticks.size(); i++) {
            if (ticks.get(i).isSelected()) {
                moved.add(now.flights().get(i).flight().id());
            }
        }
        if (moved.isEmpty()) {
            form.refuse("Tick the flights that were different.");
            return;
        }
        if (way.chosen() == Way.RIGGING) {
            Rigged to = riggings.chosen();
            var rigging = to == null ? null : to.rigging();
            if (rigging == null) {
                riggings.quietly("× Choose the rigging they were flown on.");
                return;
            }
            String id = rigging.id();
            enter(progress -> {
                book.corrections().thatTime(moved, id);
                return true;
            });
            return;
        }
        SettingDef setting = settings.chosen();
        Field<Setting> field = stood;
        if (setting != null && field != null && field.check() && field.value() != null) {
            Map<String, Setting> changed = Map.of(setting.id(), field.value());
            enter(progress -> {
                book.corrections().thatTime(moved, changed);
                return true;
            });
        }
    }

    private void enter(Job<Boolean> correction) {
        background.<Boolean>call(correction).entry().otherwise(form::refuse).then(done -> leave.run());
    }
}
