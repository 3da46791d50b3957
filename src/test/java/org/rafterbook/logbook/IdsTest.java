package org.rafterbook.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class IdsTest {

    @Test
    void idsAreVersion7WithTheTimeInFront() {
        long before = System.currentTimeMillis();
        UUID id = UUID.fromString(Logbook.newId());
        assertThat(id.version()).isEqualTo(7);
        assertThat(id.variant()).isEqualTo(2);
        // RFC 9562, section 5.7: the first 48 bits are milliseconds since 1970. Ids made faster than 4096 a millisecond
        // run ahead of the clock.
        assertThat(id.getMostSignificantBits() >>> 16).isBetween(before, before + 1000);
    }

    @Test
    void idsSortInTheOrderTheyAreMade() {
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < 20_000; i++) {
            ids.add(Logbook.newId());
        }
        assertThat(ids).isSorted();
        assertThat(new HashSet<>(ids)).hasSameSizeAs(ids);
    }

    @Test
    void idsKeepTheirOrderWhenTheClockStepsBack() {
        long now = System.currentTimeMillis();
        String first = Ids.at(now);
        String second = Ids.at(now - 3_600_000);
        assertThat(second).isGreaterThan(first);
    }
}
