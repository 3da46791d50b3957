package org.rafterbook.logbook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.rafterbook.airframe.AirframeEvent;
import org.rafterbook.airframe.Model;
import org.rafterbook.airframe.Part;
import org.rafterbook.airframe.PartUse;
import org.rafterbook.airframe.Propeller;
import org.rafterbook.airframe.Rigging;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.SettingValue;
import org.rafterbook.airframe.Version;
import org.rafterbook.airframe.Weighing;
import org.rafterbook.flight.AirReading;
import org.rafterbook.flight.Flight;
import org.rafterbook.flight.FlightEvent;
import org.rafterbook.flight.Session;
import org.rafterbook.flight.SessionLimit;
import org.rafterbook.flight.Trial;
import org.rafterbook.flight.Venue;
import org.rafterbook.flight.VenueMark;
import org.rafterbook.power.Motor;
import org.rafterbook.power.RubberBatch;
import org.rafterbook.power.Wind;
import org.rafterbook.power.WindReading;
import org.rafterbook.rules.ClassSheet;

/** The tables of all stored records. */
final class Tables {

    /** In an order in which a row comes after those it points to. */
    static final List<Class<? extends Record>> TYPES = List.of(
            ClassSheet.class,
            Model.class,
            Part.class,
            PartUse.class,
            Propeller.class,
            SettingDef.class,
            Version.class,
            SettingValue.class,
            Trial.class,
            Rigging.class,
            Weighing.class,
            AirframeEvent.class,
            RubberBatch.class,
            Motor.class,
            Venue.class,
            VenueMark.class,
            Session.class,
            AirReading.class,
            SessionLimit.class,
            Wind.class,
            WindReading.class,
            Flight.class,
            FlightEvent.class);

    private static final ClassValue<RecordTable<?>> BY_TYPE = new ClassValue<>() {
        @Override
        protected RecordTable<?> computeValue(Class<?> type) {
            return new RecordTable<>(type.asSubclass(Record.class));
        }
    };

    private static final Map<String, Class<? extends Record>> BY_NAME = new LinkedHashMap<>();

    static {
        TYPES.forEach(type -> BY_NAME.put(Column.snakeCase(type.getSimpleName()), type));
    }

    private Tables() {}

    @SuppressWarnings("unchecked")
    static <R extends Record> RecordTable<R> of(Class<R> type) {
        return (RecordTable<R>) BY_TYPE.get(type);
    }

    static Set<String> names() {
        return BY_NAME.keySet();
    }

    /** The table of this name; null where it holds no records, as for preferences. */
    static @Nullable RecordTable<?> named(String name) {
        Class<? extends Record> type = BY_NAME.get(name);
        return type == null ? null : of(type);
    }
}
