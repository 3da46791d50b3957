package org.rafterbook.flight;

import java.util.Map;

/**
 * A thing at a known height, m, against which peak heights are judged.
 *
 * @param limit true where it hangs in the way and a touch costs time
 */
public record VenueMark(
        String id, String venueId, String name, double heightM, boolean limit, Map<String, String> asTyped) {}
