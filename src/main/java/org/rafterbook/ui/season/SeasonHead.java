package org.rafterbook.ui.season;

import java.util.List;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Button;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Figure;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.ProgressRule;
import org.rafterbook.work.Season;

/** The head of the season: which it is and where, how much was flown, another season, the report. */
final class SeasonHead {

    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ObservableList<Node> figures = FXCollections.observableArrayList();
    private final ChoiceField<Integer> seasons;
    private final ProgressRule progress;
    private final List<Button> ways;
    private final Button report;

    /**
     * @param ways to more flights
     */
    SeasonHead(ChoiceField<Integer> seasons, ProgressRule progress, List<Button> ways, Button report) {
        this.seasons = Lay.styled(seasons, "season-choice");
        this.progress = progress;
        this.ways = List.copyOf(ways);
        this.report = report;
    }

    ReadOnlyStringProperty subtitle() {
        return subtitle.getReadOnlyProperty();
    }

    ObservableList<Node> figures() {
        return figures;
    }

    void show(Season season, SeasonModel model) {
        Integer year = model.year();
        List<Integer> years = model.years();
        StringBuilder words = new StringBuilder();
        if (year != null) {
            words.append(SeasonWords.season(year));
            season.venues().stream()
                    .findFirst()
                    .ifPresent(venue -> words.append(", ").append(venue));
            if (!model.flyer().isEmpty()) {
                words.append(", ").append(model.flyer());
            }
        }
        subtitle.set(words.toString());
        seasons.offer(years, year);
        figures.setAll(progress);
        if (years.size() > 1) {
            figures.add(seasons);
        }
        if (!season.flights().isEmpty()) {
            long lower = season.flights().stream().filter(Season.Flown::atLeast).count();
            figures.add(new Figure("Flights", season.flights().size() + ", " + lower + " “at least”").strong());
            figures.add(new Figure("In the air", SeasonWords.hours(season.aloftS())));
            figures.add(new Figure("Motors", season.motors() + ", " + season.broken() + " broke"));
            figures.addAll(ways);
            figures.add(report);
        }
    }
}
