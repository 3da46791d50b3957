package org.rafterbook.exchange;

import org.rafterbook.airframe.Airframe;

/**
 * One airframe sheet: the geometry and masses of a model as one version of it flew.
 *
 * @param model name of the model, never blank
 * @param version name of the version, empty where the sheet names none
 */
public record AirframeSheet(String model, String version, Airframe airframe) {}
