package org.rafterbook.ui.imports;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.exchange.ColumnRule;
import org.rafterbook.exchange.FlightField;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.ChoiceField;
import org.rafterbook.ui.kit.Field;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.UserError;
import org.rafterbook.work.ImportDraft.Column;

/** The form for the picked column: what it is, its setting's name, its unit, and what its words mean. */
final class ColumnForm extends VBox {

    private static final int MOST_WORDS = 8;

    private final TakingIn taking;
    private final Runnable said;
    private final Label heading = Words.bold("");
    private final Label samples = Words.hint("");
    private final ChoiceField<Becoming> becoming = new ChoiceField<>("What it is", Becoming::label);
    private final Field<String> name = Field.words("The setting's name").required();
    private final ChoiceField<String> sheet = new ChoiceField<>("Which of the sheet", path -> path);
    private final ChoiceField<String> unit =
            new ChoiceField<>("Unit of bare numbers", symbol -> symbol.isEmpty() ? "as the setting has it" : symbol);
    private final FlowPane meanings = new FlowPane();
    private @Nullable Column column;

    /**
     * @param said called after each answer, to go back to the list of columns
     */
    ColumnForm(TakingIn taking, Keys keys, Runnable said) {
        this.taking = taking;
        this.said = said;
        getStyleClass().add("section");
        meanings.getStyleClass().add("tiles");
        becoming.key(keys.on("B", "What the column is", becoming::open)).onChosen(this::become);
        name.key(keys.on("N", "Name of the setting", name::edit)).onKept(this::named);
        sheet.key(keys.on("S", "Which setting of the sheet", sheet::open)).onChosen(path -> say(setting(path)));
        unit.key(keys.on("U", "Unit of the column", unit::open)).onChosen(this::in);
        HBox row = Lay.row(12, grown(becoming), grown(name), grown(sheet), grown(unit));
        row.setAlignment(Pos.TOP_LEFT);
        samples.setMinWidth(0);
        getChildren().addAll(Lay.baseline(12, heading, samples), row, meanings);
        show(null);
    }

    private static <N extends VBox> N grown(N field) {
        field.setPrefWidth(1);
        field.setMinWidth(0);
        return Lay.grow(field);
    }

    /** Shows what is known of a column, null for none. */
    void show(@Nullable Column now) {
        column = now;
        setVisible(now != null);
        if (now == null) {
            return;
        }
        ColumnRule rule = now.rule();
        Becoming is = Becoming.of(rule);
        heading.setText("“" + now.heading() + "”");
        samples.setText(String.join(", ", now.samples()));
        becoming.offer(Becoming.all(!taking.sheetSettings().isEmpty(), is), is);
        String setting = rule == null ? null : rule.setting();
        boolean own = is != null && is.kind() == Becoming.Kind.OWN_SETTING;
        boolean ofSheet = is != null && is.kind() == Becoming.Kind.SHEET_SETTING;
        Lay.show(name, own);
        Lay.show(sheet, ofSheet);
        name.fill(own && setting != null ? setting : "");
        if (ofSheet && setting != null) {
            List<String> paths = new ArrayList<>(taking.sheetSettings());
            if (!paths.contains(setting)) {
                paths.add(0, setting);
            }
            sheet.offer(paths, setting);
        }
        List<String> units = Becoming.units(rule);
        Lay.show(unit, !units.isEmpty());
        unit.offer(units, Becoming.unit(rule));
        showWords(now, is == null ? null : is.field());
    }

    private void become(Becoming what) {
        Column now = column;
        if (now != null && !what.equals(Becoming.of(now.rule()))) {
            String first = taking.sheetSettings().stream().findFirst().orElse("");
            say(what.rule(now.heading(), first));
        }
    }

    private void named(@Nullable String typed) {
        if (typed != null && !typed.isBlank()) {
            say(setting(typed.strip()));
        }
    }

    private @Nullable ColumnRule setting(String path) {
        Column now = column;
        ColumnRule rule = now == null ? null : now.rule();
        return now == null
                ? null
                : new ColumnRule(now.heading(), ColumnRule.SETTING + path, rule == null ? null : rule.unit());
    }

    private void in(String symbol) {
        Column now = column;
        ColumnRule rule = now == null ? null : now.rule();
        if (now != null && rule != null) {
            say(new ColumnRule(now.heading(), rule.target(), symbol, rule.words()));
        }
    }

    private void say(@Nullable ColumnRule rule) {
        Column now = column;
        if (now != null && rule != null && !rule.equals(now.rule())) {
            try {
                taking.say(now, rule);
                said.run();
            } catch (UserError e) {
                name.refuse(e.sentence());
            }
        }
    }

    /** Asks what the table's own words mean, such as "wall" for touched. */
    private void showWords(Column now, @Nullable FlightField field) {
        meanings.getChildren().clear();
        List<String> known = field == null ? List.of() : field.words();
        if (!known.isEmpty()) {
            now.cells().stream()
                    .map(cell -> cell.toLowerCase(Locale.ROOT))
                    .distinct()
                    .filter(cell -> !known.contains(cell))
                    .limit(MOST_WORDS)
                    .forEach(cell -> meanings.getChildren().add(meaning(now, cell, known)));
        }
        Lay.show(meanings, !meanings.getChildren().isEmpty());
    }

    private ChoiceField<String> meaning(Column now, String cell, List<String> known) {
        ChoiceField<String> means = new ChoiceField<>("“" + cell + "” means", word -> word);
        ColumnRule rule = now.rule();
        Consumer<String> taker = word -> {
            if (rule != null) {
                Map<String, String> words = new HashMap<>(rule.words());
                words.put(cell, word);
                say(new ColumnRule(now.heading(), rule.target(), rule.unit(), words));
            }
        };
        return means.offer(known, rule == null ? null : rule.words().get(cell)).onChosen(taker);
    }
}
