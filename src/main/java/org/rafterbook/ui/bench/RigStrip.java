package org.rafterbook.ui.bench;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.BenchDesk;

/** The rig strip: each occasion on which the model was set to a version, newest on top. */
final class RigStrip extends ScrollPane {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    private final VBox rows = Lay.column(0);

    RigStrip() {
        setContent(rows);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setAccessibleText("Rig strip, newest first");
    }

    void show(List<BenchDesk.Occasion> strip) {
        rows.getChildren().setAll(strip.stream().map(RigStrip::row).toList());
    }

    private static Node row(BenchDesk.Occasion occasion) {
        Rigging rigging = occasion.rigged().rigging();
        String day = rigging == null || rigging.setAt() == null
                ? ""
                : DAY.format(rigging.setAt().atZone(ZoneId.systemDefault()));
        MarkView mark =
                new MarkView(VersionMark.dealt(occasion.rigged().version().number() - 1));
        Label flights = Words.small(occasion.flights() == 1 ? "1 flight" : occasion.flights() + " flights");
        VBox words = Lay.column(0);
        words.getChildren().add(Lay.row(8, mark, Words.bold(occasion.rigged().name()), Lay.space(), flights));
        if (occasion.isReturn()) {
            words.getChildren().add(Words.small("↩ back to " + occasion.rigged().name()));
        }
        occasion.changes().forEach(c -> words.getChildren().add(wrapped(BenchWords.change(c))));
        if (occasion.changes().isEmpty() && !occasion.isReturn()) {
            words.getChildren().add(Words.hint("as built"));
        }
        Label date = Words.small(day);
        date.setMinWidth(USE_PREF_SIZE);
        date.setPrefWidth(48);
        return Lay.column(0, Lay.styled(Lay.row(8, date, Lay.grow(words)), "pad-8"), Lay.hairline());
    }

    private static Label wrapped(String text) {
        Label label = Words.small(text);
        label.setWrapText(true);
        return label;
    }
}
