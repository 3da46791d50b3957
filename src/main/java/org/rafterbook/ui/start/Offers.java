package org.rafterbook.ui.start;

import java.util.List;
import java.util.function.DoubleConsumer;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Lay;

/** What can be done, below a few words: one of the rows is picked by the arrow keys and done by Enter. */
final class Offers extends VBox {

    private final List<OfferRow> rows;
    private DoubleConsumer follow = share -> {};
    private int picked;

    Offers(Keys keys, List<Label> head, List<OfferRow> rows) {
        this.rows = rows;
        VBox words = Lay.styled(Lay.column(8), "offer-head");
        for (Label label : head) {
            label.setWrapText(true);
            label.setMinHeight(USE_PREF_SIZE);
            words.getChildren().add(label);
        }
        getChildren().add(words);
        rows.forEach(row -> getChildren().addAll(Lay.hairline(), row));
        getChildren().add(Lay.hairline());
        keys.on("↑", "Pick the one above", () -> pick(picked - 1));
        keys.on("↓", "Pick the one below", () -> pick(picked + 1));
        pick(0);
    }

    /** Told how far down the picked row stands, 0 to 1, so that it can be brought into sight. */
    void onPicked(DoubleConsumer taker) {
        follow = taker;
    }

    void pick(int index) {
        picked = Math.floorMod(index, rows.size());
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).picked(i == picked);
        }
        follow.accept((double) picked / (rows.size() - 1));
    }

    /** Does what is picked. */
    void run() {
        rows.get(picked).run();
    }
}
