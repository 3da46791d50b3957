package org.rafterbook.review;

/**
 * Something that changed together with a setting.
 *
 * @param name the setting's key, or 'motor', 'build', 'share of the motor'
 * @param isSetting true for a setting
 * @param contrast what the change adds to the joint effect, one coefficient a column
 */
record Partner(String name, boolean isSetting, double[] contrast) {

    Partner turned() {
        double[] turned = contrast.clone();
        for (int j = 0; j < turned.length; j++) {
            turned[j] = -turned[j];
        }
        return new Partner(name, isSetting, turned);
    }
}
