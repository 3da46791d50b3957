package org.rafterbook.ui.review;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import org.rafterbook.ui.action.Action;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Buttons;
import org.rafterbook.units.Counted;
import org.rafterbook.work.FlightFlag;
import org.rafterbook.work.ModelReview;
import org.rafterbook.work.ReviewChange;
import org.rafterbook.work.ReviewPoint;
import org.rafterbook.work.ReviewWords;

/** What the whole review rests on: flights in, flights left out and flagged, what is held equal, scatter and trend. */
final class Basis {

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);

    private final ReviewModel model;
    private final Sentences sentences = new Sentences();
    private final Action late;

    Basis(ReviewModel model, Keys keys) {
        this.model = model;
        late = keys.on("L", "Leave late-flagged flights out", this::turnLate);
        model.part(this::offer);
        model.part(sentences.visibleProperty(), this::show, model.changeProperty());
    }

    Sentences node() {
        return sentences;
    }

    private void turnLate() {
        ModelReview answer = model.answer();
        if (answer != null) {
            boolean leaveOut = !answer.lateFlags();
            model.enter(
                    id -> {
                        model.desk().countLateFlags(id, leaveOut);
                        return leaveOut;
                    },
                    done -> model.load());
        }
    }

    private void offer() {
        ModelReview answer = model.answer();
        late.enabledProperty().set(answer != null && answer.flagged().stream().anyMatch(Basis::isLate));
        late.labelProperty()
                .set(
                        answer != null && answer.lateFlags()
                                ? "Count late-flagged flights"
                                : "Leave late-flagged flights out");
    }

    private void show() {
        ModelReview answer = model.answer();
        List<Node> said = new ArrayList<>();
        if (answer != null) {
            ReviewChange change = model.changeProperty().get();
            if (change != null) {
                List<String> basis = ReviewWords.basis(answer, change);
                said.add(Sentences.verdict(basis.get(0)));
                basis.stream().skip(1).map(Sentences::prose).forEach(said::add);
                said.add(Sentences.verdict("The whole review:"));
            }
            ReviewWords.basis(answer).stream().map(Sentences::prose).forEach(said::add);
            int partial = answer.setAside();
            if (partial > 0) {
                said.add(Sentences.small(Counted.of(partial, "flight")
                        + " on partial motors set aside; F takes them in, scaled and compared with their like."));
            }
            answer.leftOut().stream()
                    .filter(p -> p.flag() == null)
                    .map(p -> Sentences.small("left out: " + FlightWords.line(p)))
                    .forEach(said::add);
            for (ReviewPoint point : answer.flagged()) {
                said.add(Sentences.small("flagged" + flag(point) + ": " + FlightWords.line(point)));
            }
            if (late.enabledProperty().get()) {
                said.add(Buttons.secondary(late));
            }
        }
        sentences.show(said);
    }

    private static boolean isLate(ReviewPoint point) {
        FlightFlag flag = point.flag();
        return flag != null && !Boolean.TRUE.equals(flag.beforeTime());
    }

    private static String flag(ReviewPoint point) {
        FlightFlag flag = point.flag();
        if (flag == null) {
            return "";
        }
        ZoneId zone = point.zone();
        return (flag.by() == null || flag.by().isEmpty() ? "" : " by " + flag.by())
                + (flag.at() == null ? "" : ", " + MOMENT.format(flag.at().atZone(zone)));
    }
}
