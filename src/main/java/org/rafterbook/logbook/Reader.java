package org.rafterbook.logbook;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads stored records as they are at one moment. Rows that are gone are never answered. Valid only while the query or
 * entry it was handed to runs.
 */
public interface Reader {

    /** The record of this id, null when there is none. */
    <R extends Record> @Nullable R find(Class<R> type, String id);

    /** The record of this id; a UserError when there is none. */
    <R extends Record> R get(Class<R> type, String id);

    /** All records of a type in id order, which is the order they were made in. */
    <R extends Record> List<R> all(Class<R> type);

    /**
     * The records that hold a value, in id order.
     *
     * @param component name of the record's component, such as {@code sessionId}
     * @param value of the component's own type; null asks for those without one
     */
    <R extends Record> List<R> where(Class<R> type, String component, @Nullable Object value);

    /**
     * The records that hold a value and anything at all in another component, in id order.
     *
     * @param filled name of the component that must not be null
     */
    <R extends Record> List<R> whereFilled(Class<R> type, String component, @Nullable Object value, String filled);

    /** The records that hold any of the values, in id order; any number of values. */
    <R extends Record> List<R> whereIn(Class<R> type, String component, Collection<?> values);

    /** The value kept under a name, null when none is. */
    @Nullable
    String preference(String name);

    /** The joined, ordered questions about flights. */
    FlightQueries flights();

    /** What was computed from an input of this digest by this version of the engine (JSON), null when not yet. */
    @Nullable
    String computed(String kind, String digest, String engine);
}
