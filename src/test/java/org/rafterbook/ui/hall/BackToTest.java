package org.rafterbook.ui.hall;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rafterbook.airframe.SettingDef;
import org.rafterbook.airframe.Version;
import org.rafterbook.review.BackChoice;
import org.rafterbook.work.GoBack;
import org.rafterbook.work.ReviewEvenings;

class BackToTest {

    @TempDir
    Path folder;

    private ReviewEvenings evenings;

    /** t2 (600 s), t3 marked, t4, t5, now t6: the best time is on the first. */
    @BeforeEach
    void open() {
        evenings = new ReviewEvenings(folder.resolve("a.rafterbook"));
        SettingDef wing = evenings.setting("wing edge", "LENGTH", "mm");
        double[] seconds = {600, 500, 510, 520};
        for (int i = 0; i < seconds.length; i++) {
            evenings.trim(wing, 0.150 - 0.001 * i);
            evenings.fly(seconds[i]);
        }
        evenings.book().bench().mark(flown(2).id(), true);
        evenings.trim(wing, 0.140);
    }

    @AfterEach
    void close() {
        evenings.close();
    }

    /** The versions flown, the newest first. */
    private Version flown(int at) {
        return evenings.book().hall().prepare().flown().get(at);
    }

    @Test
    void theLastSettingLeadsThenTheWellBehavedThenTheHighestEstimateAndNeverTheBestTime() {
        assertThat(BackTo.of(evenings.book().hall().prepare(), null))
                .extracting(BackTo::words)
                .containsExactly("t5, last setting", "t3, well-behaved", "t4", "t2");
        GoBack highest = new GoBack(flown(1), "t4", Set.of(BackChoice.Reason.HIGHEST_ESTIMATE), null);
        assertThat(BackTo.of(evenings.book().hall().prepare(), highest))
                .extracting(BackTo::words)
                .containsExactly("t5, last setting", "t3, well-behaved", "t4, highest estimate", "t2");
    }

    @Test
    void theVersionOfNowIsNoneToGoBackTo() {
        evenings.book().riggings().backTo(flown(2).id(), "back", null);
        assertThat(BackTo.of(evenings.book().hall().prepare(), null))
                .extracting(BackTo::name)
                .doesNotContain("t3");
        assertThat(Objects.requireNonNull(evenings.book().hall().prepare().rigged())
                        .name())
                .isEqualTo("t3");
    }
}
