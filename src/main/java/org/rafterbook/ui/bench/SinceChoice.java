package org.rafterbook.ui.bench;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.Segments;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.work.Airframes;
import org.rafterbook.work.BenchDesk;

/** Asks whether an entry puts right what was recorded or tells of a change; not asked before the first flight. */
final class SinceChoice {

    private final Segments<Airframes.Since> choice = new Segments<>(
            "This was so",
            List.of(Airframes.Since.ALWAYS, Airframes.Since.NOW),
            since -> since == Airframes.Since.ALWAYS ? "always so" : "from now on");
    private final Label says = Words.hint("");
    private final VBox node = Lay.column(4, Words.small("This was"), choice, says);

    SinceChoice(BenchDesk.Bench bench) {
        boolean asked = bench.facts().flights() > 0
                && !BenchModel.shown(bench).version().sketch();
        says.setWrapText(true);
        choice.onChosen(this::say);
        choice.choose(Airframes.Since.ALWAYS);
        say(Airframes.Since.ALWAYS);
        Lay.show(node, asked);
    }

    Node node() {
        return node;
    }

    Airframes.Since chosen() {
        Airframes.Since chosen = choice.chosen();
        return chosen == null ? Airframes.Since.ALWAYS : chosen;
    }

    private void say(Airframes.Since since) {
        says.setText(
                since == Airframes.Since.ALWAYS
                        ? "Puts it right in every version that carries the old value; flights stay where they are."
                        : "The airframe was changed: the next flight flies a new version.");
    }
}
