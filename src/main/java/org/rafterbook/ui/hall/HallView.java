package org.rafterbook.ui.hall;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.animation.AnimationTimer;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import org.rafterbook.flight.AirReading;
import org.rafterbook.ui.action.FxBackground;
import org.rafterbook.ui.action.Keys;
import org.rafterbook.ui.kit.Figure;
import org.rafterbook.ui.kit.FittingFrame;
import org.rafterbook.ui.kit.Lay;
import org.rafterbook.ui.kit.OneInFront;
import org.rafterbook.ui.shell.Place;
import org.rafterbook.ui.shell.Tools;
import org.rafterbook.units.DisplayUnits;
import org.rafterbook.units.Quantity;
import org.rafterbook.units.QuantityFormat;
import org.rafterbook.work.Evening;
import org.rafterbook.work.HeightMark;

/** The Hall: today's session by keyboard alone, from preparing a flight to its landing. */
public final class HallView implements Place {

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final double NARROW_EM = 78;
    private static final double LOW_EM = 56;
    private static final PseudoClass WIDE = PseudoClass.getPseudoClass("wide");
    private static final int FRAMES_PER_LOOK_AT_THE_CLOCK = 60;
    private static final int FRAMES_PER_SHEET = 20;

    private final HallModel model;
    private final Followed followed = new Followed();
    private final QuantityFormat format;
    private final ZoneId zone;
    private final Map<HallState, Keys> keys = new EnumMap<>(HallState.class);
    private final Map<HallState, HallSheet> sheets = new EnumMap<>(HallState.class);
    private final Set<HallState> stale = EnumSet.noneOf(HallState.class);
    private final FxBackground background;
    private final Function<HallState, HallSheet> maker;
    private final EveningSide evening;
    private final EveningRule rule;
    private final OneInFront left = new OneInFront();
    private final OneInFront right = new OneInFront();
    private final HBox page;
    private final FittingFrame node = new FittingFrame((width, height, em) -> fold(width, height));
    private final ObservableValue<Keys> keysNow;
    private boolean narrow;
    private boolean low;
    private boolean sideInFront;
    private boolean begun;
    private boolean sheetIn;
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper(this, "subtitle", "");
    private final Figure airFigure = new Figure("Air", "not read yet");
    private final Figure now = new Figure("Now", "").strong();
    private final ObservableList<Node> figures = FXCollections.observableArrayList(airFigure, now);
    private final AnimationTimer timer = new AnimationTimer() {
        private int frames;

        @Override
        public void handle(long frame) {
            if (sheets.get(HallState.IN_THE_AIR) instanceof AirView air) {
                air.tick(System.nanoTime());
            }
            if (frames++ % FRAMES_PER_LOOK_AT_THE_CLOCK == 0) {
                showClock();
            }
            if (frames % FRAMES_PER_SHEET == 0 && model.data() != null && sheets.size() < HallState.values().length) {
                makeAnother();
            }
        }
    };

    public HallView(Tools tools, HallModel model, DisplayUnits units, ZoneId zone) {
        this.model = model;
        this.background = tools.background();
        this.format = new QuantityFormat(units);
        this.zone = zone;
        for (HallState state : HallState.values()) {
            keys.put(state, tools.keys());
        }
        maker = state -> switch (state) {
            case PREPARING -> new PreparingView(model, keysOf(state), units, followed);
            case WINDING -> new WindView(model, keysOf(state), units);
            case VISIT -> new VisitView(model, keysOf(state), units);
            case IN_THE_AIR -> new AirView(model, keysOf(state), units, zone, followed, this::putSide);
            case LANDING -> new LandingView(model, keysOf(state), units, zone, followed);
        };
        Keys first = keysOf(HallState.PREPARING);
        evening = new EveningSide(model, first, format, followed);
        rule = new EveningRule(zone);
        first.on("Q", "This evening", this::turnSide).at(right);
        keysNow = model.stateProperty().map(this::of);
        left.setMinSize(0, 0);
        left.setAlignment(Pos.TOP_LEFT);
        right.getStyleClass().add("hall-side");
        page = Lay.styled(Lay.row(12, Lay.grow(left), right), "page", "hall");
        page.setFillHeight(true);
        node.show(page);
        followed.follow(model.stateProperty(), this::showState);
        followed.follow(model.dataProperty(), holder -> {
            HallData data = holder.data();
            if (data != null) {
                show(data);
            }
        });
    }

    private Keys keysOf(HallState state) {
        return Objects.requireNonNull(keys.get(state));
    }

    /** The keys of a state, which its sheet deals; that of the next flight does so once today's session is on the screen. */
    private Keys of(HallState state) {
        if (!isToFollow(state)) {
            sheet(state);
        }
        return keysOf(state);
    }

    /** The sheet for the next flight is neither made nor laid out before the first frame. */
    private boolean isToFollow(HallState state) {
        return !sheetIn && state == HallState.PREPARING;
    }

    /** Made when it is first needed, so that the window is quick to show; the others follow when there is time. */
    private HallSheet sheet(HallState state) {
        HallSheet made = sheets.get(state);
        if (made == null) {
            made = maker.apply(state);
            sheets.put(state, made);
            made.fold(narrow, low);
            stale.add(state);
        }
        return made;
    }

    private void makeAnother() {
        for (HallState state : HallState.values()) {
            if (!sheets.containsKey(state)) {
                HallSheet made = sheet(state);
                refresh(state);
                left.prepare(made.node());
                if (made instanceof AirView air) {
                    right.prepare(air.side());
                }
                return;
            }
        }
    }

    private void showState(HallState state) {
        sideInFront = false;
        turn();
        if (isToFollow(state)) {
            right.front(evening.node());
        } else {
            putSheet(state);
            right.front(sheet(state) instanceof AirView air ? air.side() : evening.node());
        }
        // a field of the sheet that goes must not keep the keys
        if (page.getScene() != null) {
            page.getScene().getRoot().requestFocus();
        }
    }

    private void putSheet(HallState state) {
        sheetIn = true;
        HallSheet sheet = sheet(state);
        refresh(state);
        left.front(sheet.node());
    }

    /** A frame later than today's session, which the window is opened for, and what takes long a frame later still. */
    private void begin() {
        if (!begun) {
            begun = true;
            background.afterFrame(page.getScene(), () -> {
                if (!sheetIn) {
                    putSheet(model.stateProperty().get());
                }
                evening.complete();
                background.afterFrame(page.getScene(), model::complete);
            });
        }
    }

    /** Fits the parts to the room, in em: with little width the side is in front only when asked for. */
    private void fold(double widthEm, double heightEm) {
        narrow = widthEm < NARROW_EM;
        low = heightEm < LOW_EM;
        sheets.values().forEach(sheet -> sheet.fold(narrow, low));
        turn();
    }

    private void turnSide() {
        sideInFront = !sideInFront;
        turn();
    }

    private void putSide(boolean inFront) {
        sideInFront = inFront;
        turn();
    }

    private void turn() {
        HallState state = model.stateProperty().get();
        boolean turns = state == HallState.PREPARING || state == HallState.IN_THE_AIR;
        boolean side = !narrow || sideInFront && turns;
        Lay.show(right, side);
        Lay.show(left, !narrow || !side);
        right.pseudoClassStateChanged(WIDE, narrow);
    }

    /** The sheet in sight first; what stands round it follows part by part, so that keys are never kept waiting. */
    private void show(HallData data) {
        stale.addAll(sheets.keySet());
        HallState state = model.stateProperty().get();
        if (!isToFollow(state)) {
            refresh(state);
        }
        List<Consumer<HallData>> parts = new ArrayList<>(evening.parts());
        parts.add(newest -> {
            rule.show(newest.evening(), model.now());
            subtitle.set(subtitle(newest.evening()));
            showClock();
        });
        parts.add(newest -> begin());
        for (Consumer<HallData> part : parts) {
            background.later(() -> {
                if (model.data() == data) {
                    part.accept(data); // else a newer reading brings its own
                }
            });
        }
    }

    private void refresh(HallState state) {
        HallData data = model.data();
        if (data != null && stale.remove(state)) {
            sheet(state).show(data);
        }
    }

    private String subtitle(Evening today) {
        LocalDate date = today.session() == null
                ? LocalDate.ofInstant(model.now(), zone)
                : today.session().localDate();
        StringBuilder text = new StringBuilder();
        text.append(today.venue() == null ? "No venue yet" : today.venue().name())
                .append(", ")
                .append(DATE.format(date));
        for (HeightMark mark : today.heights()) {
            text.append(", ").append(mark.name()).append(" at ").append(format.text(Quantity.HEIGHT, mark.heightM()));
        }
        return text.toString();
    }

    private void showClock() {
        Instant instant = model.now();
        now.show(CLOCK.format(instant.atZone(zone)));
        HallData data = model.data();
        AirReading read = data == null ? null : data.evening().air();
        if (data != null && read != null) {
            String ago = read.at() == null || read.at().isAfter(instant)
                    ? ""
                    : Duration.between(read.at(), instant).toMinutes() + " min ago: ";
            airFigure.show(ago + format.text(Quantity.TEMPERATURE, read.temperatureK()) + ", "
                    + format.text(Quantity.HUMIDITY, read.humidity()) + ", "
                    + format.text(Quantity.DENSITY, data.evening().densityKgPerM3()));
        } else {
            airFigure.show("not read yet");
        }
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public ObservableValue<Keys> keys() {
        return keysNow;
    }

    @Override
    public ObservableValue<String> subtitle() {
        return subtitle.getReadOnlyProperty();
    }

    @Override
    public ObservableList<Node> figures() {
        return figures;
    }

    @Override
    public Node rule() {
        return rule.node();
    }

    @Override
    public void shown() {
        followed.attach();
        model.attach();
        timer.start();
    }

    @Override
    public void hidden() {
        timer.stop();
        model.detach();
        followed.detach();
    }
}
