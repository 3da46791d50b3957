package org.rafterbook.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.Setting;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Version;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.MoistAir;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.Venue;
import org.rafterbook.logbook.FlightLine;
import org.rafterbook.logbook.Logbook;
import org.rafterbook.logbook.Reader;
import org.rafterbook.power.Motor;
import org.rafterbook.power.Wind;
import org.rafterbook.units.UserError;

/** Today's session as the Hall works on it: what there is, the next flight, and the way to everything entered there. */
public final class HallDesk {

    private static final String MODEL = "hall.model";
    private static final String NO_MODEL = "none";

    private final Book book;
    private final Logbook logbook;
    private final MarginText margins;
    private final Flying flying;
    private final LandingAnswers answers;
    private final Winding winding;
    private final Visit visit;

    public HallDesk(Book book, MarginText margins) {
        this.book = book;
        this.logbook = book.logbook();
        this.margins = margins;
        this.flying = new Flying(logbook, book.clock());
        this.answers = new LandingAnswers(logbook, book.clock());
        this.winding = new Winding(logbook, book.clock());
        this.visit = new Visit(logbook, book.clock());
    }

    /** The same desk but for the margins, which take longer than all else: for what a window shows first. */
    public HallDesk withoutMargins() {
        return new HallDesk(book, (rigged, motor) -> MarginText.LATER);
    }

    public Book book() {
        return book;
    }

    /** Launches, landings and what happens between. */
    public Flying flying() {
        return flying;
    }

    /** What is told of a flight after it has landed. */
    public LandingAnswers answers() {
        return answers;
    }

    /** Motors and their winds. */
    public Winding winding() {
        return winding;
    }

    /** Venue, heights and air. */
    public Visit visit() {
        return visit;
    }

    /** Today's session with its flights. */
    public Evening evening() {
        return logbook.read(r -> {
            Session session = Sessions.today(r, book.clock());
            List<FlightLine> flights = session == null ? List.of() : r.flights().ofSession(session.id());
            List<FlightLine> inTheAir = r.flights().inTheAir();
            String venueId = session == null ? null : session.venueId();
            Venue venue = venueId == null ? null : r.find(Venue.class, venueId);
            AirReading air = session == null ? null : newestAir(r, session);
            return new Evening(
                    session,
                    venue,
                    Heights.of(r, session, venue),
                    air,
                    density(air),
                    flights,
                    events(r, flights, inTheAir),
                    margins(r, flights),
                    inTheAir);
        });
    }

    private static @Nullable AirReading newestAir(Reader reader, Session session) {
        List<AirReading> air = reader.flights().airOf(List.of(session.id()));
        return air.isEmpty() ? null : air.get(air.size() - 1);
    }

    /** Density of a reading, kg/m3; null where one of its three values is missing. */
    public static @Nullable Double density(@Nullable AirReading air) {
        if (air == null) {
            return null;
        }
        Double temperature = air.temperatureK();
        Double pressure = air.pressurePa();
        Double humidity = air.humidity();
        if (temperature == null || pressure == null || humidity == null) {
            return null;
        }
        try {
            return MoistAir.densityKgPerM3(temperature, pressure, humidity);
        } catch (UserError outside) {
            return null; // the reading stands as typed, only the formula does not reach there
        }
    }

    private static Map<String, List<FlightEvent>> events(
            Reader reader, List<FlightLine> flights, List<FlightLine> inTheAir) {
        Set<String> ids = new HashSet<>();
        flights.forEach(l -> ids.add(l.flight().id()));
        inTheAir.forEach(l -> ids.add(l.flight().id()));
        Map<String, List<FlightEvent>> events = new HashMap<>();
        for (FlightEvent event : reader.whereIn(FlightEvent.class, "flightId", ids)) {
            events.computeIfAbsent(event.flightId(), id -> new ArrayList<>()).add(event);
        }
        return events;
    }

    private Map<String, MarginText.Answer> margins(Reader reader, List<FlightLine> flights) {
        Map<String, Rigged> rigged = new HashMap<>();
        Map<String, MarginText.Answer> answers = new HashMap<>();
        for (FlightLine line : flights) {
            Version version = line.version();
            Model model = line.model();
            if (version != null && model != null) {
                Rigged as = rigged.computeIfAbsent(
                        version.id(), id -> Riggings.rigged(reader, model, line.rigging(), version));
                answers.put(line.flight().id(), margins.of(as, line.motor()));
            }
        }
        return answers;
    }

    /** The next flight, prepared from the last. */
    public Prepared prepare() {
        return logbook.read(r -> {
            Session session = Sessions.today(r, book.clock());
            List<FlightLine> evening = session == null ? List.of() : r.flights().ofSession(session.id());
            int ordinal =
                    evening.stream().mapToInt(l -> l.flight().ordinal()).max().orElse(0) + 1;
            Wind wind = session == null ? null : onTheMotor(r, session);
            Motor motor = wind == null || wind.motorId() == null ? null : r.find(Motor.class, wind.motorId());
            String modelId = chosenModel(r, evening);
            if (modelId == null) {
                Wind again = evening.isEmpty()
                        ? null
                        : evening.get(evening.size() - 1).wind();
                return new Prepared(ordinal, null, null, null, null, null, wind, motor, null, again, List.of());
            }
            Rigged now = Riggings.now(r, modelId);
            FlightLine last = r.flights().lastOfModel(modelId);
            Rigged before = last == null || last.version() == null
                    ? null
                    : Riggings.rigged(r, now.model(), last.rigging(), last.version());
            Motor lastMotor = last == null ? null : last.motor();
            Motor counts = motor == null ? lastMotor : motor;
            return new Prepared(
                    ordinal,
                    now,
                    margins.of(now, counts),
                    before,
                    before == null ? null : margins.of(before, lastMotor),
                    last,
                    wind,
                    motor,
                    wind == null ? Winding.rested(r, lastMotor) : null,
                    last != null && session != null && last.session().id().equals(session.id()) ? last.wind() : null,
                    r.flights().versionsFlown(modelId));
        });
    }

    private static @Nullable Wind onTheMotor(Reader reader, Session session) {
        Wind newest = null;
        for (Wind wind : reader.where(Wind.class, "sessionId", session.id())) {
            if (wind.end() == null
                    && reader.where(Flight.class, "windId", wind.id()).isEmpty()) {
                newest = wind;
            }
        }
        return newest;
    }

    /** The model the next flight is prepared for, null where flights are just timed or there is no model. */
    static @Nullable String chosenModel(Reader reader, List<FlightLine> evening) {
        String chosen = reader.preference(MODEL);
        if (NO_MODEL.equals(chosen)) {
            return null;
        }
        if (chosen != null && reader.find(Model.class, chosen) != null) {
            return chosen;
        }
        for (int i = evening.size() - 1; i >= 0; i--) {
            Rigging rigging = evening.get(i).rigging();
            if (rigging != null) {
                return rigging.modelId();
            }
        }
        Rigging newest = null;
        for (Rigging rigging : reader.all(Rigging.class)) {
            newest = rigging;
        }
        return newest == null ? null : newest.modelId();
    }

    /** The model the next flight is prepared for; null to just time flights. */
    public void choose(@Nullable String modelId) {
        logbook.enter("model chosen", w -> {
            w.preference(MODEL, modelId == null ? NO_MODEL : modelId);
            return true;
        });
    }

    /** Adds a model by its name and chooses it. */
    public Model addModel(String name) {
        return logbook.enter("model " + name.strip(), w -> {
            Model model = book.riggings().addModel(w, name);
            w.preference(MODEL, model.id());
            return model;
        });
    }

    /** Turns a setting of the model by so many of its usual steps. */
    public Rigged step(String modelId, String settingId, int steps) {
        Rigged now = book.riggings().now(modelId);
        SettingDef def = definition(now, settingId);
        Setting value = now.values().get(settingId);
        Double number = value == null ? null : value.number();
        Double step = def.step();
        if (number == null || step == null) {
            throw UserError.badInput(
                    def.label() + (number == null ? " has no number yet; type it." : " has no usual step; type it."));
        }
        // whole steps from where it stands, free of the rounding that adding leaves behind
        double turned = Math.round((number + steps * step) * 1e9) / 1e9;
        Double low = def.low();
        Double high = def.high();
        if (low != null && turned < low - 1e-9 || high != null && turned > high + 1e-9) {
            throw UserError.badInput(def.label() + " cannot go further; its limit is reached.");
        }
        return set(modelId, settingId, Setting.of(turned));
    }

    /** Sets one setting of the model. */
    public Rigged set(String modelId, String settingId, Setting value) {
        SettingDef def = definition(book.riggings().now(modelId), settingId);
        String trial = logbook.read(r -> Optional.ofNullable(Trials.keptTo(r, modelId, settingId, value)))
                .orElse(null);
        return book.riggings().trim(modelId, Map.of(settingId, value), def.label(), trial);
    }

    private static SettingDef definition(Rigged rigged, String settingId) {
        return rigged.settings().stream()
                .filter(d -> d.id().equals(settingId))
                .findFirst()
                .orElseThrow(() -> UserError.badInput("This model has no such setting."));
    }
}
