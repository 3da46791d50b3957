package org.rafterbook.work;

import java.util.List;

/**
 * One rigging of a model's history.
 *
 * @param version name of its version, such as v13
 * @param versionNumber counts the model's versions from 1
 * @param changes what was changed from the rigging before, in words such as "wing edge 146 mm, was 149"
 * @param back true where the version had been rigged before
 * @param trial true where it was made for a trial
 */
public record ReviewRigging(
        String id, String version, int versionNumber, List<String> changes, boolean back, boolean trial) {

    public ReviewRigging {
        changes = List.copyOf(changes);
    }
}
