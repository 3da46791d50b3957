package org.rafterbook.review;

import org.jspecify.annotations.Nullable;

/**
 * Something that changed together with a setting.
 *
 * @param name the setting's key, or 'motor', 'build', 'share of the motor', 'date', 'turns' and the like
 * @param from a setting's value beside the first value of the pair; null for anything else
 * @param to its value beside the other
 * @param contrast what the change adds to the joint effect, one coefficient a column
 */
@SuppressWarnings("ArrayRecordComponent") // a part of a computation, never compared
record Partner(String name, @Nullable Level from, @Nullable Level to, double[] contrast) {

    static Partner unnamed(String name, double[] contrast) {
        return new Partner(name, null, null, contrast);
    }

    boolean isSetting() {
        return from != null;
    }

    Partner turned() {
        double[] turned = contrast.clone();
        for (int j = 0; j < turned.length; j++) {
            turned[j] = -turned[j];
        }
        return new Partner(name, to, from, turned);
    }
}
