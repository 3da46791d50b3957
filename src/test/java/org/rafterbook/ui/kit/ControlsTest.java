package org.rafterbook.ui.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.Test;
import org.rafterbook.ui.Fx;
import org.rafterbook.ui.FxTest;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Errors;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.work.Running;
import org.rafterbook.work.Step;

@FxTest
class ControlsTest {

    private final Keys keys = new Keys(new Errors());
    private final List<String> heard = new ArrayList<>();

    @Test
    void aButtonFollowsItsAction() {
        Action action = keys.on("M", "Model", () -> heard.add("model"));
        Button button = Buttons.secondary(action);
        assertThat(button.getAccessibleText()).isEqualTo("Model");
        button.fire();
        action.labelProperty().set("Other model");
        action.enabledProperty().set(false);
        assertThat(button.getText()).isEqualTo("Other model");
        assertThat(button.isDisabled()).isTrue();
        assertThat(action.targets()).containsExactly(button);
        assertThat(heard).containsExactly("model");
    }

    @Test
    void theMainActionIsAtLeast54PixelsHigh() {
        Button button = Buttons.main(keys.on("Space", "Start the watch", () -> {}), Words.body("Kept at once."));
        Fx.show(new VBox(button));
        assertThat(button.getHeight()).isBetween(54.0, 64.0);
    }

    @Test
    void segmentsTellTheUsersChoiceOnly() {
        Segments<String> theme =
                new Segments<>("Theme", List.of("Light", "Dark", "Dim"), name -> name).onChosen(heard::add);
        theme.choose("Light");
        assertThat(heard).isEmpty();
        ToggleButton dark = (ToggleButton) theme.getChildren().get(1);
        dark.fire();
        dark.fire();
        assertThat(theme.chosen()).isEqualTo("Dark");
        assertThat(heard).startsWith("Dark");
        assertThat(dark.getAccessibleText()).isEqualTo("Theme: Dark");
    }

    @Test
    void segmentsAreTurnedWithTheArrows() {
        Segments<String> theme = new Segments<>("Theme", List.of("Light", "Dark", "Dim"), name -> name).choose("Light");
        Scene scene = Fx.show(new VBox(theme));
        theme.getChildren().get(0).requestFocus();
        Fx.key(scene, KeyCode.RIGHT, "");
        assertThat(theme.chosen()).isEqualTo("Dark");
    }

    @Test
    void aChangedSettingSaysWhatItWas() {
        SettingRow row = new SettingRow(keys.on("P", "Wing position", () -> {})).show("146 mm", "149");
        assertThat(row.getAccessibleText()).isEqualTo("Wing position, 146 mm, was 149");
        row.show("149 mm", null);
        assertThat(row.getAccessibleText()).isEqualTo("Wing position, 149 mm");
        assertThat(row.getPseudoClassStates()).extracting(Object::toString).doesNotContain("changed");
    }

    @Test
    void aChoiceOffersWithoutChoosing() {
        ChoiceField<Integer> motor =
                new ChoiceField<Integer>("Motor", number -> "M" + number).onChosen(number -> heard.add("M" + number));
        motor.offer(List.of(16, 17), 17);
        assertThat(heard).isEmpty();
        assertThat(motor.chosen()).isEqualTo(17);
        motor.box().getSelectionModel().select(Integer.valueOf(16));
        assertThat(heard).containsExactly("M16");
    }

    @Test
    void aTableKeepsItsSelectionWhenItsRowsAreReadAgain() {
        Table<String> table = new Table<>("motors");
        table.text("motor", 6, row -> row);
        Fx.show(table);
        table.rows(List.of("M16", "M17", "M18"));
        table.select("M17");
        table.rows(List.of("M17", "M18"));
        assertThat(table.selected()).isEqualTo("M17");
        table.rows(List.of("M18"));
        assertThat(table.selected()).isNull();
    }

    @Test
    void tableRowsAre28PixelsAndGrowingColumnsFillTheWidth() {
        Table<String> table = new Table<>("motors");
        table.text("motor", 6, row -> row);
        table.text("state", 6, row -> "ready").grow();
        table.number("mass", "g", 4, row -> "1.04");
        table.rows(List.of("M16", "M17"));
        Fx.show(table, 600, 400);
        assertThat(table.view().getFixedCellSize()).isEqualTo(28);
        double sum = table.view().getColumns().stream()
                .mapToDouble(column -> column.getWidth())
                .sum();
        assertThat(sum).isBetween(598.0, 600.0);
    }

    @Test
    void theWatchReadsTenths() {
        WatchFace watch = new WatchFace(WatchFace.Size.PICKED);
        Fx.show(watch);
        watch.show(402.38);
        assertThat(watch.text()).isEqualTo("6:42.3");
        Label seconds = (Label) watch.getChildren().get(0);
        assertThat(seconds.getFont().getSize()).isEqualTo(175);
    }

    @Test
    void anOlderJobsEndDoesNotHideTheProgressOfANewerOne() {
        ProgressRule rule = new ProgressRule();
        Running old = new Job();
        Running newer = new Job();
        rule.started(old);
        rule.started(newer);
        rule.still(new Step(1, 2, "versions"));
        rule.ended(old);
        assertThat(rule.isVisible()).isTrue();
        rule.ended(newer);
        assertThat(rule.isVisible()).isFalse();
    }

    @Test
    void escapeCancelsWhileProgressIsShown() {
        ProgressRule rule = new ProgressRule();
        Scene scene = Fx.show(new VBox(rule));
        Job job = new Job();
        rule.started(job);
        Fx.key(scene, KeyCode.ESCAPE, "");
        assertThat(job.cancelled).as("not shown yet").isFalse();
        rule.still(new Step(1, 2, "versions"));
        Fx.key(scene, KeyCode.ESCAPE, "");
        assertThat(job.cancelled).isTrue();
    }

    @Test
    void aColumnFoldsInTheOrderOfRanksAndUnfoldsWhatIsAskedFor() {
        Region chart = part(200);
        Region picture = part(200);
        Region watch = part(200);
        FoldingColumn column = new FoldingColumn();
        column.add(watch)
                .add(chart, 2, keys.on("C", "Evening chart", () -> column.unfold(chart)))
                .add(picture, 1, keys.on("E", "Expected flight", () -> column.unfold(picture)));
        Scene scene = Fx.show(column, 400, 620);
        assertThat(column.isFolded(chart) || column.isFolded(picture)).isFalse();
        column.resize(400, 500);
        column.layout();
        assertThat(column.isFolded(picture)).isTrue();
        assertThat(column.isFolded(chart)).isFalse();
        column.unfold(picture);
        column.layout();
        assertThat(column.isFolded(picture)).isFalse();
        assertThat(column.isFolded(chart)).isTrue();
        assertThat(scene.getRoot()).isSameAs(column);
    }

    private static Region part(double height) {
        Region part = new Region();
        part.setPrefSize(100, height);
        return part;
    }

    private static final class Job implements Running {

        private boolean cancelled;

        @Override
        public void cancel() {
            cancelled = true;
        }

        @Override
        public boolean ended() {
            return false;
        }
    }
}
