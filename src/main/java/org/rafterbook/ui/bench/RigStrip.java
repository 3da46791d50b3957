package org.rafterbook.ui.bench;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.TrimChange;
import org.rafterbook.ui.draw.Icon;
import org.rafterbook.ui.draw.IconView;
import org.rafterbook.ui.draw.MarkStyle;
import org.rafterbook.ui.draw.MarkView;
import org.rafterbook.ui.draw.VersionMark;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.SettingWords;
import org.rafterbook.ui.kit.Words;
import org.rafterbook.units.Counted;
import org.rafterbook.work.BenchDesk;
import org.rafterbook.work.Rigged;

/** The rig strip: an upright rule with a graduation for each occasion on which the model was rigged, newest on top. */
final class RigStrip {

    private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    private final ZoneId zone;
    private final Consumer<Rigged> picked;
    private final VBox rows = Lay.column(0);
    private final ScrollPane node = Lay.rolling(rows);
    private List<BenchDesk.Occasion> strip = List.of();
    private final List<Node> rowNodes = new ArrayList<>();
    private int here = -1;

    RigStrip(ZoneId zone, Consumer<Rigged> picked) {
        this.zone = zone;
        this.picked = picked;
        rows.getStyleClass().add("rig-strip");
        node.setAccessibleText("Rig strip, newest first");
    }

    Node node() {
        return node;
    }

    /** Shows the strip with the rows of one version marked. */
    void show(List<BenchDesk.Occasion> newStrip, @Nullable Rigged shown) {
        if (!newStrip.equals(strip)) {
            strip = List.copyOf(newStrip);
            here = -1;
            rowNodes.clear();
            String day = "";
            for (BenchDesk.Occasion occasion : strip) {
                String own = day(occasion.rigged().rigging());
                rowNodes.add(row(rowNodes.size(), occasion, own.equals(day) ? "" : own));
                day = own;
            }
            rows.getChildren().setAll(rowNodes);
        }
        if (shown == null
                || here < 0
                || here >= strip.size()
                || !same(strip.get(here).rigged(), shown)) {
            here = newest(shown);
        }
        for (int i = 0; i < strip.size(); i++) {
            rowNodes.get(i).pseudoClassStateChanged(HERE, i == here);
        }
    }

    /** The newest row of a version, -1 where there is none. */
    private int newest(@Nullable Rigged version) {
        for (int i = 0; i < strip.size(); i++) {
            if (version != null && same(strip.get(i).rigged(), version)) {
                return i;
            }
        }
        return -1;
    }

    /** Marks a row and says which version was picked by it: one version may have several. */
    private void pick(int row) {
        here = row;
        picked.accept(strip.get(row).rigged());
    }

    private static boolean same(Rigged a, Rigged b) {
        return a.version().id().equals(b.version().id());
    }

    private String day(@Nullable Rigging rigging) {
        Instant at = rigging == null ? null : rigging.setAt();
        return at == null ? "" : DAY.format(at.atZone(zone));
    }

    private Node row(int at, BenchDesk.Occasion occasion, String day) {
        Rigged rigged = occasion.rigged();
        VBox words = Lay.column(0, head(rigged, occasion.flights()));
        words.getChildren().add(change(occasion));
        words.getChildren().add(Words.hint(handling(occasion)));
        if (rigged.version().markedGood()) {
            words.getChildren().add(Words.small("well-behaved"));
        }
        Label date = Lay.styled(Words.small(day), "strip-day");
        Region tick = Lay.styled(new Region(), "strip-tick");
        HBox row = new HBox(date, tick, Lay.grow(Lay.styled(words, "strip-words")));
        row.getStyleClass().add("strip-row");
        row.setOnMouseClicked(event -> pick(at));
        row.setAccessibleText(rigged.name() + ", " + Counted.of(occasion.flights(), "flight"));
        return row;
    }

    private static String handling(BenchDesk.Occasion occasion) {
        int upset = occasion.upsets().of();
        if (upset > 0) {
            return occasion.upsets().counts() + (upset == 1 ? " upset" : " upsets") + " recovered";
        }
        return occasion.flights() > 0 ? "no upset" : "not flown yet";
    }

    static HBox head(Rigged rigged, int flights) {
        MarkStyle style = rigged.version().sketch() ? MarkStyle.OPEN : MarkStyle.CLEAN;
        MarkView mark = new MarkView(VersionMark.dealt(rigged.version().number() - 1), style);
        Label name = Words.bold(rigged.name());
        name.setMinWidth(Region.USE_PREF_SIZE);
        HBox head = Lay.row(8, mark, name);
        Label count = Words.small(Counted.of(flights, "flight"));
        count.setMinWidth(Region.USE_PREF_SIZE);
        head.getChildren().addAll(Lay.space(), count);
        return head;
    }

    private static Node change(BenchDesk.Occasion occasion) {
        String changes = occasion.changes().stream()
                .map(occasion.isReturn() ? RigStrip::to : SettingWords::change)
                .collect(Collectors.joining(", "));
        if (occasion.isReturn()) {
            String back = "back to " + occasion.rigged().name() + (changes.isEmpty() ? "" : ", " + changes);
            HBox row = Lay.row(4, new IconView(Icon.BACK, 1), Lay.grow(wrapped(back)));
            row.setAlignment(Pos.TOP_LEFT);
            return row;
        }
        Rigging rigging = occasion.rigged().rigging();
        String reason = rigging == null || rigging.reason() == null ? "as built" : rigging.reason();
        return wrapped(changes.isEmpty() ? reason : changes);
    }

    /** What a setting was changed to. */
    static String to(TrimChange change) {
        return change.setting().label() + " " + SettingWords.value(change.setting(), change.to());
    }

    private static Label wrapped(String text) {
        Label label = Words.small(text);
        label.setWrapText(true);
        return label;
    }

    /** Goes to the oldest row. */
    void pickLast() {
        if (!strip.isEmpty()) {
            pick(strip.size() - 1);
        }
    }

    /** Goes to the row above (-1) or below (1) the one marked; false at the end. */
    boolean step(int step) {
        int to = here + step;
        boolean there = here >= 0 && to >= 0 && to < strip.size();
        if (there) {
            pick(to);
        }
        return there;
    }
}
